using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>Finds the tiles that an edge of the field runs through, without making any piece: quick enough for a tiling that slides.</summary>
internal static class CrossedCells
{
    /// <summary>The crossed tiles of a face, each once.</summary>
    /// <param name="frame">The face.</param>
    /// <param name="courses">The courses.</param>
    /// <param name="u">Where a tile of course 0 begins, along, on the face.</param>
    /// <param name="v">Where course 0 begins, across, on the face.</param>
    /// <param name="cells">Takes the tiles.</param>
    public static void Find(FaceFrame frame, Courses courses, long u, long v, ICollection<Box> cells)
    {
        var columns = new List<long>();
        for (var k = Grid.FloorDiv(frame.LeastAcross - v - courses.Depth, courses.Rise) + 1; v + (k * courses.Rise) < frame.MostAcross; k++)
        {
            var (start, bottom) = (u + courses.Offset(k), v + (k * courses.Rise));
            columns.Clear();
            foreach (var edge in frame.Sides) Cross(edge, bottom, start, courses, columns);
            foreach (var edge in frame.Levels) Cross(edge, bottom, start, courses, columns);
            foreach (var edge in frame.Raking) Cross(edge, bottom, start, courses, columns);
            foreach (var column in columns) cells.Add(Cell(start + (column * courses.Period), bottom, courses, frame.Lay));
        }
    }

    /// <summary>A tile's box on the face.</summary>
    public static Box Cell(long along, long across, Courses courses, Lay lay)
    {
        var (left, bottom, right, top) = (Length.FromSteps(along), Length.FromSteps(across), Length.FromSteps(along + courses.Length), Length.FromSteps(across + courses.Depth));
        return lay == Lay.Level ? new(left, bottom, right, top) : new(bottom, left, top, right);
    }

    private static void Cross(in FrameEdge edge, long bottom, long start, Courses courses, List<long> columns)
    {
        var top = bottom + courses.Depth;
        long from, to;
        if (edge.Class == EdgeClass.Side)
        {
            var (low, high) = (Math.Max(bottom, edge.LeastAcross), Math.Min(top, edge.MostAcross));
            if (low >= high) return;
            var (one, other) = (edge.AlongAt(low), edge.AlongAt(high));
            (from, to) = (Math.Min(one, other), Math.Max(one, other));
        }
        else
        {
            if (edge.MostAcross <= bottom || edge.LeastAcross >= top) return;
            (from, to) = (edge.LeastAlong, edge.MostAlong);
            if (edge.B0 != edge.B1)
            {
                var (one, other) = (edge.AlongAtAcross(Math.Max(bottom, edge.LeastAcross)), edge.AlongAtAcross(Math.Min(top, edge.MostAcross)));
                (from, to) = (Math.Min(one, other), Math.Max(one, other));
            }
        }

        // A side that just touches a tile's own side does not run through it.
        var first = Grid.FloorDiv(from - start - courses.Length, courses.Period) + 1;
        for (var column = first; start + (column * courses.Period) < to; column++)
        {
            if (!columns.Contains(column)) columns.Add(column);
        }
    }
}
