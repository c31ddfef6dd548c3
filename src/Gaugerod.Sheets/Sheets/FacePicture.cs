using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Draws a face to scale: the bare wall, what stands before it, its openings, its pieces and the lines to snap.</summary>
internal sealed class FacePicture(FacePlan plan, FaceMap map, Pen pen)
{
    public FaceMap Map => map;

    public FacePlan Plan => plan;

    /// <summary>What dimensions stand clear of, where that is more than the face.</summary>
    public Box? Around { get; init; }

    /// <summary>What the face covers on the paper.</summary>
    public Frame Bounds => map.Frame(Around ?? plan.Face.Outline.Bounds);

    /// <summary>One picture of each that is set out as one: lines go over all planes of a folded floor and are drawn once.</summary>
    public static IEnumerable<FacePicture> SetOut(IEnumerable<FacePicture> pictures) => pictures.DistinctBy(picture => picture.Plan.Face.SetOut.Name, StringComparer.Ordinal);

    /// <summary>Draws the parts of one wall: first the bare wall, then what other runs lay on it, then their own tiles.</summary>
    /// <param name="parts">The parts, all on one map; at least one.</param>
    /// <param name="others">What other runs lay there.</param>
    /// <param name="trims">The wall's trims.</param>
    public static void DrawTogether(IReadOnlyList<FacePicture> parts, IEnumerable<FacePicture> others, TrimPicture trims)
    {
        foreach (var outline in parts.DistinctBy(part => part.Plan.Face.Outline)) outline.Bare();
        foreach (var part in parts) part.Fixtures();
        foreach (var other in others) other.Quiet();
        foreach (var part in parts) part.Tiles();
        foreach (var opening in parts.SelectMany(part => part.Plan.Face.Openings).Distinct()) parts[0].Opening(opening);
        foreach (var hole in parts.SelectMany(part => part.Plan.Face.Holes).Distinct()) parts[0].Hole(hole);
        foreach (var part in parts) part.Trims(trims);
        trims.Draw();
    }

    private void Bare() => pen.Area(map.Ring(plan.Face.Outline), Fill.Wall, Stroke.Outline, plan.Face.Wall);

    private void Tiles()
    {
        foreach (var piece in plan.Pieces.OrderBy(p => p.Kind == PieceKind.Full ? 0 : 1)) Tile(piece);
    }

    /// <summary>Only the sides of the tiles.</summary>
    private void Quiet()
    {
        foreach (var piece in plan.Pieces) pen.Area(Rings(piece), Fill.None, Stroke.TileEdge);
    }

    /// <summary>Draws the lines to snap where they have wall under them, with a triangle behind each end.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="past">How large the triangles are.</param>
    /// <param name="onTile">Whether they go over the part's own tile only.</param>
    public void Lines(IEnumerable<SnapLine> lines, double past, bool onTile = false)
    {
        foreach (var line in lines.Where(l => LineFace.Is(plan.Face, l.Face)))
        {
            var level = line.Axis == Axis.Level;
            var (start, end) = ((Spot?)null, default(Spot));
            var tile = plan.Face.Field.Outer.Bounds;
            var own = level ? (tile.Left, tile.Right) : (tile.Bottom, tile.Top);
            foreach (var (from, to) in onTile ? [own] : LineReach.On(plan.Face.SetOut, line.Axis, line.At))
            {
                var (one, other) = level ? (map.At(new(from, line.At)), map.At(new(to, line.At))) : (map.At(new(line.At, from)), map.At(new(line.At, to)));

                // On white, so that a copy in grey still tells it from the tiles' sides.
                pen.Area(Frame.Around([one, other]).Grown(LineAir), Fill.Paper);
                pen.Line(one, other, Stroke.SnapLine);
                (start, end) = (start ?? one, other);
            }

            if (start is not { } begin) continue;
            Triangle(begin, end, past);
            Triangle(end, begin, past);
        }
    }

    /// <summary>Draws the lines that are neither level nor plumb.</summary>
    public void Lines(IEnumerable<TurnedLine> lines)
    {
        foreach (var line in lines.Where(l => LineFace.Is(plan.Face, l.Face)))
        {
            pen.Line(map.At(line.From), map.At(line.To), Stroke.SnapLine);
        }
    }

    private const double LineAir = 0.45;

    /// <summary>A triangle that touches the end of a line and points along it.</summary>
    private void Triangle(Spot tip, Spot towards, double size)
    {
        var (dx, dy) = (Math.Sign(towards.X - tip.X) * size, Math.Sign(towards.Y - tip.Y) * size);
        var back = new Spot(tip.X - dx, tip.Y - dy);
        pen.Area(new[] { tip, new(back.X - (dy / 2), back.Y + (dx / 2)), new(back.X + (dy / 2), back.Y - (dx / 2)) }.ToSequence(), Fill.Ink);
    }

    /// <summary>Where a line to snap begins and ends on the paper: left to right, or top to bottom.</summary>
    public (Spot From, Spot To) Ends(SnapLine line, double past)
    {
        var bounds = map.Frame(plan.Face.SetOut.Outline.Bounds);
        var at = map.At(new(line.At, line.At));
        return line.Axis == Axis.Level
            ? (new(bounds.X - past, at.Y), new(bounds.Right + past, at.Y))
            : (new(at.X, bounds.Y - past), new(at.X, bounds.Bottom + past));
    }

    public Sequence<Sequence<Spot>> Rings(Piece piece) => RingsOf(piece).Select(map.Ring).ToSequence();

    public static Fill FillOf(PieceKind kind) => kind switch
    {
        PieceKind.Full => Fill.Full,
        PieceKind.Straight => Fill.Straight,
        PieceKind.Corner => Fill.Corner,
        PieceKind.Notch => Fill.Notch,
        PieceKind.Slot => Fill.Slot,
        PieceKind.Hole => Fill.Hole,
        PieceKind.Taper => Fill.Taper,
        _ => Fill.Shaped,
    };

    private static IEnumerable<Ring> RingsOf(Piece piece) => [piece.Outline, .. piece.Inner];

    private void Tile(Piece piece)
    {
        var (rings, whole) = (Rings(piece), piece.Kind == PieceKind.Full);
        pen.Area(rings, FillOf(piece.Kind), whole ? Stroke.TileEdge : Stroke.CutEdge, piece.Id);

        // In a cut piece stands its number.
        if (whole && piece.GrainOnFace is { } way) GrainArrow.Draw(pen, rings, way, 7);
    }

    /// <summary>What stands at the foot or hangs at the head: from its edge to the lowest or the highest of the face.</summary>
    private void Fixtures()
    {
        var box = plan.Face.Outline.Bounds;
        foreach (var edges in Chains(plan.Face.Edges.Where(e => e.Kind == EdgeKind.Fixture && OnOuter(e))))
        {
            var (from, to, name) = (edges[0].From, edges[^1].To, edges[0].Name);
            var rest = to.X > from.X ? box.Bottom : box.Top;
            var tall = edges.Max(edge => Length.Max((edge.From.Y - rest).Abs(), (edge.To.Y - rest).Abs()));
            if (to.X == from.X || map.Across(tall) < 1) continue;
            var ring = map.Ring(new([from, .. edges.Select(edge => edge.To), new(to.X, rest), new(from.X, rest)]));
            pen.Area(ring, Fill.Fixture, Stroke.FixtureEdge, name);
            Name(Frame.Around(ring), name);
        }
    }

    /// <summary>Edges of one name that run on from one another: the chords of an arc are one thing.</summary>
    private static List<List<FieldEdge>> Chains(IEnumerable<FieldEdge> edges)
    {
        var chains = new List<List<FieldEdge>>();
        foreach (var edge in edges)
        {
            if (chains.Count > 0 && chains[^1][^1] is var last && last.To == edge.From && string.Equals(last.Name, edge.Name, StringComparison.Ordinal)) chains[^1].Add(edge);
            else chains.Add([edge]);
        }

        return chains;
    }

    /// <summary>A trim of which only the width is known, along a free edge or an outside corner: a band as wide, up against the bare wall's edge.</summary>
    private void Trims(TrimPicture planned)
    {
        foreach (var edge in plan.Face.Edges.Where(e => e.Trim > Length.Zero && !planned.Stands(e.Name)))
        {
            var (from, to) = (map.At(edge.From), map.At(edge.To));
            var (dx, dy) = (to.X - from.X, to.Y - from.Y);
            var length = Math.Sqrt((dx * dx) + (dy * dy));
            if (length < 0.1) continue;

            // The tile lies to the edge's left, so the trim lies to its right; on the paper y runs down.
            var (outX, outY) = (-dy / length, dx / length);
            var width = map.Across(edge.Trim);
            var joint = Math.Max(0, ToWall(new((from.X + to.X) / 2, (from.Y + to.Y) / 2)) - width);
            Spot Off(Spot spot, double by) => new(spot.X + (outX * by), spot.Y + (outY * by));
            pen.Area(new[] { Off(from, joint), Off(to, joint), Off(to, joint + width), Off(from, joint + width) }.ToSequence(), Fill.Fixture, Stroke.FixtureEdge, edge.Name + " trim");
        }
    }

    /// <summary>How far a place on the paper is from the nearest side of the face or of an opening.</summary>
    private double ToWall(Spot spot)
    {
        var least = double.MaxValue;
        foreach (var ring in plan.Face.Openings.Select(o => o.Ring).Prepend(plan.Face.Outline).Select(map.Ring))
        {
            for (var i = 0; i < ring.Count; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
                var (dx, dy) = (b.X - a.X, b.Y - a.Y);
                var part = Math.Clamp((((spot.X - a.X) * dx) + ((spot.Y - a.Y) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
                least = Math.Min(least, Math.Sqrt(Math.Pow(spot.X - a.X - (part * dx), 2) + Math.Pow(spot.Y - a.Y - (part * dy), 2)));
            }
        }

        return least;
    }

    private bool OnOuter(FieldEdge edge) => plan.Face.Field.Outer.Points.Contains(edge.From);

    private void Opening(NamedRing opening)
    {
        var ring = map.Ring(opening.Ring);
        pen.Area(ring, Fill.Opening, Stroke.FixtureEdge, opening.Name);
        if (ring.Count == 4)
        {
            pen.Line(ring[0], ring[2], Stroke.Leader);
            pen.Line(ring[1], ring[3], Stroke.Leader);
        }

        Name(Frame.Around(ring), opening.Name, onPaper: true);
    }

    private void Hole(Hole hole)
    {
        var middle = map.At(hole.Centre);
        var radius = map.Across(hole.Diameter) / 2;
        pen.Area(Pen.Circle(middle, radius), Fill.Opening, Stroke.FixtureEdge, hole.Name);
        var reach = radius + 1;
        pen.Line(middle.X - reach, middle.Y, middle.X + reach, middle.Y, Stroke.Leader);
        pen.Line(middle.X, middle.Y - reach, middle.X, middle.Y + reach, Stroke.Leader);
    }

    private void Name(Frame frame, string name, bool onPaper = false)
    {
        foreach (var size in new[] { 8.0, 7, 6.5 })
        {
            foreach (var upright in new[] { false, true })
            {
                if (!frame.Holds(Pen.BoxAround(frame.Middle, name, size, bold: false, upright))) continue;
                pen.TextAround(frame.Middle, name, size, upright: upright, onPaper: onPaper);
                return;
            }
        }
    }
}
