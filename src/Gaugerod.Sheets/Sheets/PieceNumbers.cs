using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>
/// Puts its number on every cut piece: inside it, level or upright, as large as fits; beside it with a leader when it is
/// too small. No number covers another.
/// </summary>
internal sealed class PieceNumbers(FacePicture picture, Pen pen, Frame room, Figures figures)
{
    private static readonly double[] Sizes = [9, 8, 7, 6.5];

    private static readonly (int I, int J)[] s_outwards =
    [
        .. from i in Enumerable.Range(-6, 13)
           from j in Enumerable.Range(-6, 13)
           orderby (i * i) + (j * j)
           select (i, j),
    ];

    private readonly List<Frame> _taken = [];
    private readonly List<Frame> _lines = [];
    private readonly List<Frame> _cutPieces = [];

    /// <summary>Keeps a place free.</summary>
    public void Keep(Frame frame) => _taken.Add(frame);

    /// <summary>Keeps a line free where that can be had.</summary>
    public void KeepLine(Spot from, Spot to) => _lines.Add(Frame.Around([from, to]).Grown(0.4));

    public void Draw(IEnumerable<Piece> pieces)
    {
        foreach (var _ in OneByOne(pieces))
        {
            // Nothing to do between.
        }
    }

    /// <summary>As <see cref="Draw"/>, a piece at a time.</summary>
    public IEnumerable<Piece> OneByOne(IEnumerable<Piece> pieces)
    {
        var cut = pieces.Where(p => p.Kind != PieceKind.Full).Select(p => (Piece: p, Rings: picture.Rings(p))).ToArray();
        _cutPieces.AddRange(cut.Select(c => Frame.Around(c.Rings[0])));
        var outside = new List<(Piece Piece, Sequence<Sequence<Spot>> Rings)>();
        foreach (var one in cut)
        {
            if (!Inside(one.Piece, one.Rings)) outside.Add(one);
            yield return one.Piece;
        }

        foreach (var (piece, rings) in outside)
        {
            Beside(piece, rings);
            yield return piece;
        }
    }

    private bool Inside(Piece piece, Sequence<Sequence<Spot>> rings)
    {
        return (piece.Kind == PieceKind.Straight && WithSize(piece, rings)) || Within(piece.Id, rings);
    }

    /// <summary>Writes a number inside what it belongs to, as large as fits; false where it does not fit.</summary>
    public bool Within(string id, Sequence<Sequence<Spot>> rings)
    {
        foreach (var clear in new[] { true, false })
        {
            foreach (var size in Sizes)
            {
                foreach (var upright in new[] { false, true })
                {
                    if (Place(rings, id, size, upright, clear) is not { } at) continue;
                    pen.TextAround(at, id, size, bold: true, upright, onPaper: true);
                    _taken.Add(Pen.BoxAround(at, id, size, bold: true, upright));
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>A piece with one straight cut carries its cut size under its number where both fit.</summary>
    private bool WithSize(Piece piece, Sequence<Sequence<Spot>> rings)
    {
        if (piece.Cuts.Count != 1) return false;
        var size = figures.Cut(piece.Cuts[0].Least);
        var (top, foot) = (Pen.BoxAround(default, piece.Id, 9, bold: true, upright: false), Pen.BoxAround(default, size, 8, bold: false, upright: false));
        var (width, height) = (Math.Max(top.Width, foot.Width), top.Height + foot.Height);
        foreach (var at in Candidates(rings))
        {
            var box = new Frame(at.X - (width / 2), at.Y - (height / 2), width, height);
            if (!Free(rings, box, clear: true)) continue;
            pen.TextAround(new(at.X, box.Y + (top.Height / 2)), piece.Id, 9, bold: true, onPaper: true);
            pen.TextAround(new(at.X, box.Bottom - (foot.Height / 2)), size, 8, onPaper: true);
            _taken.Add(box);
            return true;
        }

        return false;
    }

    private Spot? Place(Sequence<Sequence<Spot>> rings, string words, double size, bool upright, bool clear)
    {
        foreach (var at in Candidates(rings))
        {
            if (Free(rings, Pen.BoxAround(at, words, size, bold: true, upright), clear)) return at;
        }

        return null;
    }

    private bool Free(Sequence<Sequence<Spot>> rings, Frame box, bool clear) =>
        Region.Holds(rings, box) && !_taken.Exists(box.Meets) && !(clear && _lines.Exists(box.Meets));

    /// <summary>The middle of the piece first, then places further out.</summary>
    internal static IEnumerable<Spot> Candidates(Sequence<Sequence<Spot>> rings)
    {
        var frame = Frame.Around(rings[0]);
        var middle = frame.Middle;
        return s_outwards.Select(way => new Spot(middle.X + (way.I * frame.Width / 14), middle.Y + (way.J * frame.Height / 14)));
    }

    private void Beside(Piece piece, Sequence<Sequence<Spot>> rings)
    {
        const double size = 6.5;
        var middle = Frame.Around(rings[0]).Middle;
        foreach (var strict in new[] { true, false })
        {
            foreach (var (dx, dy) in Around())
            {
                var at = new Spot(middle.X + dx, middle.Y + dy);
                var box = Pen.BoxAround(at, piece.Id, size, bold: true, upright: false);
                if (!room.Holds(box) || _taken.Exists(box.Meets) || (strict && (_cutPieces.Exists(box.Meets) || _lines.Exists(box.Meets)))) continue;
                Lead(piece.Id, middle, at, box, size);
                return;
            }
        }

        Lead(piece.Id, middle, middle, Pen.BoxAround(middle, piece.Id, size, bold: true, upright: false), size);
    }

    private static IEnumerable<(double X, double Y)> Around()
    {
        for (var reach = 5.5; reach <= 40; reach += 1.5)
        {
            for (var i = 0; i < 16; i++) yield return (reach * Math.Cos(Math.Tau * i / 16), reach * Math.Sin(Math.Tau * i / 16));
        }
    }

    private void Lead(string id, Spot middle, Spot at, Frame box, double size)
    {
        var end = new Spot(Math.Clamp(middle.X, box.X, box.Right), Math.Clamp(middle.Y, box.Y, box.Bottom));
        pen.Line(middle, end, Stroke.Leader);
        pen.Area(Pen.Circle(middle, 0.35), Fill.Ink);
        pen.TextAround(at, id, size, bold: true, onPaper: true);
        _taken.Add(box);
    }
}
