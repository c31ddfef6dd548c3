using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Patterns;

/// <summary>The lines to snap before a pattern's first tile, and the rods that are marked from them.</summary>
internal sealed class PatternLines(PatternModel model, PatternPlaces places)
{
    /// <summary>
    /// Whether lines are snapped by a face's first tile: of the planes of a folded face, over which one pattern runs, only by that
    /// of one of them, whole and nearest to the middle of all.
    /// </summary>
    public bool IsSnappedOn(PatternPlacing placing, int face)
    {
        if (model.Fields[face].Field.Face.Plane is not { } plane) return true;
        return face == Enumerable.Range(0, model.Fields.Length).Where(f => string.Equals(model.Fields[f].Field.Face.Plane?.Face, plane.Face, StringComparison.Ordinal))
            .OrderBy(f => places.Nearest(placing, f) is var nearest && nearest.Whole ? 0 : 1).ThenBy(f => places.Nearest(placing, f).Off).First();
    }

    /// <summary>The level and the plumb line through the first tile's mark on a face.</summary>
    public Sequence<SnapLine> Crossing(PatternPlacing placing, int face)
    {
        var at = places.OnFace(placing, face);
        var name = model.Fields[face].Field.Face.SetOut.Name;
        var mark = places.IsCorner ? "the lower left corner of the first tile" : "the middle of the first tile";
        return
        [
            new(Axis.Level, name, at.Y, $"Where this line and the plumb line cross stands {mark}."),
            new(Axis.Plumb, name, at.X, $"Where this line and the level line cross stands {mark}."),
        ];
    }

    /// <summary>Rods along level and plumb, where the pattern comes round again that way within a few repeats. They go over all planes of a folded face.</summary>
    public Sequence<Rod> Rods(PatternPlacing placing, int face)
    {
        var (field, at) = (model.Fields[face].Field.Face.SetOut, places.OnFace(placing, face));
        var bounds = field.Field.Outer.Bounds;
        var rods = new List<Rod>();
        if (Steps(Point.FromSteps(0, 1), bounds.Height) is { } up) rods.Add(new(Axis.Plumb, field.Name, "the level line" + Words(up.Rows), at.Y, Marks(at.Y, up.Step, bounds.Bottom, bounds.Top)));
        if (Steps(Point.FromSteps(1, 0), bounds.Width) is { } along) rods.Add(new(Axis.Level, field.Name, "the plumb line" + Words(along.Rows), at.X, Marks(at.X, along.Step, bounds.Left, bounds.Right)));
        return rods.ToSequence();

        string Words(int rows)
        {
            var mark = places.IsCorner ? "the same corner" : "the middle";
            return rows == 1
                ? $"; each mark is {mark} of another tile like the first"
                : string.Create(CultureInfo.InvariantCulture, $"; each mark is {mark} of tiles like the first, every {rows}{(rows == 2 ? "nd" : rows == 3 ? "rd" : "th")} in line with it, those between beside it");
        }

        (double Step, int Rows)? Steps(Point way, Length over)
        {
            // A long step, so that turning it back loses nothing.
            const int Far = 1 << 24;
            var laid = model.Heading.Back(Point.FromSteps(way.X.Steps * Far, way.Y.Steps * Far));
            var (x, y) = ((double)laid.X.Steps / Far, (double)laid.Y.Steps / Far);
            return places.StepAlong(x, y, over.Steps) is { } step ? (step / places.RowsWithin(x, y, step), places.RowsWithin(x, y, step)) : null;
        }
    }

    /// <summary>The lines along the first tile's two sides, where those are neither level nor plumb.</summary>
    public Sequence<TurnedLine> Turned(PatternPlacing placing, int face)
    {
        if (model.Heading.IsSquare) return [];
        var start = places.Marked(placing, face);
        var field = model.Fields[face].Field.Face.Plane is { } plane ? new Pieces.TurnedField(Pieces.FieldRings.Of(plane.Whole), model.Heading) : model.Fields[face];
        return
        [
            .. Along(field.Field.Face, start, 1, 0, field, "the first tile's long side lies"),
            .. Along(field.Field.Face, start, 0, 1, field, "the first tile's other side lies"),
        ];
    }

    private IEnumerable<TurnedLine> Along(FinishedFace face, Point start, int right, int up, Pieces.TurnedField field, string words)
    {
        var (from, to) = Reach(field, start, right, up);
        if (from >= 0 || to <= 0) yield break;
        Point At(double steps) => field.OnFace(Point.FromSteps(start.X.Steps + (long)(right * steps), start.Y.Steps + (long)(up * steps)));
        var marks = places.StepAlong(right, up, to - from) is { } step
            ? Marks(Length.Zero, step, Length.FromSteps((long)from), Length.FromSteps((long)to))
            : [];
        yield return new(face.Name, At(from), field.OnFace(start), At(to), marks, $"Along this line {words}; it crosses the level and the plumb line where they cross.");
    }

    /// <summary>How far a line through a place runs in the field either way, before it meets the outline.</summary>
    private static (double From, double To) Reach(Pieces.TurnedField field, Point start, int right, int up)
    {
        var (from, to) = (double.NegativeInfinity, double.PositiveInfinity);
        foreach (var edge in field.Edges)
        {
            var across = (edge.AlongX * up) - (edge.AlongY * right);
            if (Math.Abs(across) < 1e-9) continue;
            var (x, y) = (edge.X - start.X.Steps, edge.Y - start.Y.Steps);
            var at = ((edge.AlongX * y) - (edge.AlongY * x)) / across;
            var on = ((right * at) - x) * edge.AlongX + (((up * at) - y) * edge.AlongY);
            if (on < 0 || on > edge.Length) continue;
            if (at <= 0) from = Math.Max(from, at);
            else to = Math.Min(to, at);
        }

        return double.IsInfinity(from) || double.IsInfinity(to) ? (0, 0) : (from, to);
    }

    private static Sequence<Length> Marks(Length start, double step, Length from, Length to)
    {
        var marks = new List<Length>();
        for (var n = (long)Math.Ceiling((from - start).Steps / step); start.Steps + (n * step) < to.Steps; n++) marks.Add(Grid.Nearest(n * step));
        return marks.ToSequence();
    }
}
