using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>Turns the sides of a piece that are not the tile's own into marks a person can set out on the tile.</summary>
internal static class CutMarks
{
    /// <summary>The marks, in the outline's order. Drilled holes have none.</summary>
    public static Sequence<CutMark> Of(TaggedCorner[] outline, Box cell, FieldRings field)
    {
        var marks = new List<CutMark>();
        for (var i = 0; i < outline.Length; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Length]);
            if (a.Tag >= 0 && !field.IsDrilled(a.Tag)) marks.Add(Of(a, b, cell, field.Face.Edges[a.Tag].Name));
        }

        return marks.ToSequence();
    }

    /// <summary>The piece lies to the left of its outline's run, so a side that runs down takes the tile's left away.</summary>
    public static TileSide Away(TaggedCorner a, TaggedCorner b)
    {
        var (run, rise) = (b.X - a.X, b.Y - a.Y);
        return Math.Abs(run) <= Math.Abs(rise)
            ? rise < 0 ? TileSide.Left : TileSide.Right
            : run > 0 ? TileSide.Bottom : TileSide.Top;
    }

    private static CutMark Of(TaggedCorner a, TaggedCorner b, Box cell, string faces)
    {
        var away = Away(a, b);
        if (away is TileSide.Left or TileSide.Right)
        {
            var (low, high) = a.Y <= b.Y ? (a, b) : (b, a);
            var (first, last) = away == TileSide.Left
                ? (cell.Right.Steps - low.X, cell.Right.Steps - high.X)
                : (low.X - cell.Left.Steps, high.X - cell.Left.Steps);
            return Mark(away, first, last, low.Y - cell.Bottom.Steps, high.Y - cell.Bottom.Steps, faces);
        }

        var (near, far) = a.X <= b.X ? (a, b) : (b, a);
        var (one, other) = away == TileSide.Bottom
            ? (cell.Top.Steps - near.Y, cell.Top.Steps - far.Y)
            : (near.Y - cell.Bottom.Steps, far.Y - cell.Bottom.Steps);
        return Mark(away, one, other, near.X - cell.Left.Steps, far.X - cell.Left.Steps, faces);
    }

    private static CutMark Mark(TileSide away, long first, long last, long from, long to, string faces) =>
        new(away, Length.FromSteps(first), Length.FromSteps(last), Length.FromSteps(from), Length.FromSteps(to), faces);
}
