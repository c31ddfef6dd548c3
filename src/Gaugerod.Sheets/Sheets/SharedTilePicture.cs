using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>
/// A tile with the pieces that share it. Every cut has its number in a ring at the end of its line, outside the tile where the
/// line reaches its side; a piece too small for its number has it beside, with a leader. No number covers another.
/// </summary>
/// <param name="pen">The pen.</param>
/// <param name="frame">Where the tile is drawn.</param>
/// <param name="perStep">Its scale.</param>
/// <param name="room">Where letters may stand.</param>
internal sealed class SharedTilePicture(Pen pen, Frame frame, double perStep, Frame room)
{
    /// <summary>The radius of the ring round a cut's number.</summary>
    private const double Ring = 1.7;

    /// <summary>The radius of the dot a leader begins at.</summary>
    private const double Dot = 0.35;

    /// <summary>How much a line runs on to its ring.</summary>
    private const double Tail = 1;

    /// <summary>What the rings take above the tile and to its right.</summary>
    public const double Margin = Tail + (2 * Ring);

    private readonly List<Frame> _taken = [];

    /// <summary>A tile by itself, so wide with the rings at its right.</summary>
    public static Drawing Alone(CutTile tile, Product product, double width)
    {
        // A number beside its piece may stand to the left of the tile, or under it.
        const double aside = 4;
        var perStep = Math.Min((width - aside - Margin) / product.Width.Steps, 74.0 / product.Height.Steps);
        var frame = new Frame(aside, Margin, product.Width.Steps * perStep, product.Height.Steps * perStep);
        var pen = new Pen();
        new SharedTilePicture(pen, frame, perStep, new(0, 0, width, frame.Bottom + aside)).Draw(tile);
        return new(width, frame.Bottom + aside, $"Tile {Figures.Number(tile.Number)}", $"Tile {Figures.Number(tile.Number)} with {string.Join(", ", tile.Pieces.Select(piece => piece.Id))}, its cuts numbered in order.", pen.Marks);
    }

    public void Draw(CutTile tile)
    {
        pen.Area(frame, Fill.Offcut, Stroke.Ghost);
        var pieces = tile.Pieces.Select(piece => (piece.Id, Ring: piece.At.Points.Select(On).ToSequence())).ToList();
        foreach (var (id, ring) in pieces) pen.Area(ring, Fill.Straight, Stroke.CutEdge, id);
        var cuts = tile.Cuts.Select(LineOf).ToList();
        foreach (var cut in cuts) pen.Line(cut.From, cut.To, Stroke.Dimension);
        var beside = pieces.Where(piece => !Within(piece.Id, piece.Ring)).ToList();
        for (var i = 0; i < cuts.Count; i++) Number(Figures.Number(i + 1), cuts[i]);
        foreach (var (id, ring) in beside) Beside(id, ring, pieces.ConvertAll(piece => Frame.Around(piece.Ring)));
    }

    private Spot On(Point point) => new(frame.X + (point.X.Steps * perStep), frame.Bottom - (point.Y.Steps * perStep));

    /// <summary>A cut's line; it ends above or to the right.</summary>
    private (Spot From, Spot To) LineOf(SawCut cut) => cut.Upright
        ? (On(new(cut.At, cut.Over.Bottom)), On(new(cut.At, cut.Over.Top)))
        : (On(new(cut.Over.Left, cut.At)), On(new(cut.Over.Right, cut.At)));

    private bool Within(string id, Sequence<Spot> ring)
    {
        foreach (var size in new[] { 9.0, 8, 7, 6.5 })
        {
            foreach (var upright in new[] { false, true })
            {
                foreach (var at in PieceNumbers.Candidates([ring]))
                {
                    var box = Pen.BoxAround(at, id, size, bold: true, upright);
                    if (!Region.Holds([ring], box)) continue;
                    pen.TextAround(at, id, size, bold: true, upright, onPaper: true);
                    _taken.Add(box);
                    return true;
                }
            }
        }

        return false;
    }

    private void Number(string number, (Spot From, Spot To) cut)
    {
        var places = Places(cut).ToList();
        var (at, end) = places.Find(place => RingAt(place.At) is var box && room.Holds(box) && !_taken.Exists(box.Meets)) is { At.X: > 0 } free ? free : places[^1];
        if (at != end) pen.Line(end, at, Stroke.Dimension);
        pen.Area(Pen.Circle(at, Ring), Fill.Paper, Stroke.Dimension);
        pen.TextAround(at, number, 6.5, bold: true);
        _taken.Add(RingAt(at));
    }

    private static Frame RingAt(Spot at) => new(at.X - Ring, at.Y - Ring, 2 * Ring, 2 * Ring);

    /// <summary>Where the ring may stand, the best first, and from where a line leads to it: outside the tile, there a little aside, then back along the cut.</summary>
    private IEnumerable<(Spot At, Spot End)> Places((Spot From, Spot To) cut)
    {
        var (from, to) = cut;
        var upright = from.X == to.X;
        var (reach, length) = (Tail + Ring, Math.Abs(upright ? from.Y - to.Y : to.X - from.X));
        if (upright ? to.Y < frame.Y + 0.01 : to.X > frame.Right - 0.01)
        {
            foreach (var aside in new[] { 0, 2 * Ring, -2 * Ring, 4 * Ring, -4 * Ring })
            {
                yield return (upright ? new(to.X + aside, frame.Y - reach) : new(frame.Right + reach, to.Y + aside), to);
            }
        }

        for (var back = Ring + 0.3; back < length - Ring; back += Ring / 2) yield return Along(back);
        yield return Along(length / 2);

        (Spot, Spot) Along(double back)
        {
            Spot at = upright ? new(to.X, to.Y + back) : new(to.X - back, to.Y);
            return (at, at);
        }
    }

    private void Beside(string id, Sequence<Spot> ring, List<Frame> areas)
    {
        const double size = 6.5;

        // A dot within the piece itself: the middle of a bent one lies in what was cut out of it.
        var from = PieceNumbers.Candidates([ring]).FirstOrDefault(at => Region.Holds([ring], DotAt(at)), Frame.Around(ring).Middle);
        foreach (var clear in new[] { true, false })
        {
            foreach (var at in Around(from))
            {
                var box = Pen.BoxAround(at, id, size, bold: true, upright: false);
                Spot end = new(Math.Clamp(from.X, box.X, box.Right), Math.Clamp(from.Y, box.Y, box.Bottom));
                if (!room.Holds(box) || _taken.Exists(box.Meets) || (clear && (areas.Exists(box.Meets) || _taken.Exists(other => Region.Crosses(from, end, other))))) continue;
                pen.Line(from, end, Stroke.Leader);
                pen.Area(Pen.Circle(from, Dot), Fill.Ink);
                pen.TextAround(at, id, size, bold: true, onPaper: true);
                _taken.Add(box);
                return;
            }
        }
    }

    private static Frame DotAt(Spot at) => new(at.X - Dot, at.Y - Dot, 2 * Dot, 2 * Dot);

    private static IEnumerable<Spot> Around(Spot middle)
    {
        for (var reach = 3.5; reach <= 40; reach += 1)
        {
            for (var i = 0; i < 16; i++) yield return new(middle.X + (reach * Math.Cos(Math.Tau * i / 16)), middle.Y + (reach * Math.Sin(Math.Tau * i / 16)));
        }
    }
}
