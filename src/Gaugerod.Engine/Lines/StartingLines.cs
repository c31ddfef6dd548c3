using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>The lines to snap before the first tile, and the rods that are marked from them.</summary>
internal static class StartingLines
{
    /// <summary>The lines and rods of one face.</summary>
    /// <param name="model">The run.</param>
    /// <param name="placing">The placing.</param>
    /// <param name="face">The face's place on the run.</param>
    public static (Sequence<SnapLine> Lines, Sequence<Rod> Rods) Of(RunModel model, RunPlacing placing, int face)
    {
        var finished = model.Frames[face].Face;
        var grid = new FaceGrid(model, placing, face);
        var bounds = finished.Field.Outer.Bounds;
        var (lines, rods) = (new List<SnapLine>(), new List<Rod>());

        // A course from which less than the tape shows is cut is whole to whoever sets it.
        var mark = model.Problem.Tape.Mark.Steps;
        foreach (var (name, least, top) in LowerEdges(finished))
        {
            var at = Length.FromSteps(grid.CourseAtOrAbove(top - mark + 1));
            if (at >= bounds.Top || lines.Any(line => line.At == at)) continue;
            var below = at.Steps - model.Joint.Steps - least > mark ? "; the course below it is cut" : "";
            lines.Add(new(Axis.Level, finished.Name, at, $"First whole course above {EdgeWords.Of(name)}{below}."));
        }

        var level = lines.Count > 0 ? lines[0].At : Length.FromSteps(grid.CourseAtOrAbove(bounds.Bottom.Steps));
        var (start, courseWords) = grid.ColumnNearest((bounds.Left.Steps + bounds.Right.Steps) / 2, level.Steps);
        var plumb = Length.FromSteps(start);
        lines.Add(new(Axis.Plumb, finished.Name, plumb, $"Left side of a tile {courseWords}."));

        rods.Add(new(
            Axis.Plumb, finished.Name, "the snapped level line", level,
            [.. grid.Bottoms(bounds.Bottom.Steps, bounds.Top.Steps).Select(at => Length.FromSteps(at) - level)]));
        foreach (var (words, lefts) in grid.Lefts(bounds, level.Steps))
        {
            rods.Add(new(
                Axis.Level, finished.Name, $"the plumb line, {words}", plumb,
                lefts.Select(at => Length.FromSteps(at) - plumb).ToSequence()));
        }

        return (lines.ToSequence(), rods.ToSequence());
    }

    /// <summary>The names of the outline's lower edges with the lowest and the highest place of each, the lowest first.</summary>
    public static IEnumerable<(string Name, long Least, long Top)> LowerEdges(FinishedFace face) => face.Edges
        .Take(face.OuterEdges)
        .Where(edge => EdgeClasses.Of(edge) == EdgeClass.Level && edge.To.X > edge.From.X)
        .GroupBy(edge => edge.Name, StringComparer.Ordinal)
        .Select(group => (group.Key, Least: group.Min(edge => Math.Min(edge.From.Y.Steps, edge.To.Y.Steps)), Top: group.Max(edge => Math.Max(edge.From.Y.Steps, edge.To.Y.Steps))))
        .OrderBy(edge => edge.Top);

    /// <summary>Where tiles begin on one face, whichever way the courses run.</summary>
    private sealed class FaceGrid(RunModel model, RunPlacing placing, int face)
    {
        private readonly Courses _courses = model.Courses;
        private readonly long _u = placing.U[face];
        private readonly long _v = placing.V[face];
        private readonly bool _upright = model.Bond.Lay == Lay.Upright;

        /// <summary>The lowest place at or above a height where tiles begin.</summary>
        public long CourseAtOrAbove(long height) => _upright
            ? height + Grid.Mod(_u - height, _courses.Period)
            : height + Grid.Mod(_v - height, _courses.Rise);

        public IEnumerable<long> Bottoms(long from, long to)
        {
            var step = _upright ? _courses.Period : _courses.Rise;
            for (var at = CourseAtOrAbove(from); at < to; at += step) yield return at;
        }

        /// <summary>The left side, nearest to a place, of a tile in the course that stands on a height, and that course in words.</summary>
        public (long At, string Words) ColumnNearest(long place, long height)
        {
            if (_upright) return (Nearest(place, _v, _courses.Rise), "in an upright course");
            var course = Grid.FloorDiv(height - _v, _courses.Rise);
            return (Nearest(place, _u + _courses.Offset(course), _courses.Period), "in the course on the level line");
        }

        /// <summary>The left sides of tiles across the face, for each set of courses that begins alike.</summary>
        public IEnumerable<(string Words, IEnumerable<long> Lefts)> Lefts(Box bounds, long height)
        {
            if (_upright)
            {
                yield return ("every course", Run(_v, _courses.Rise, bounds));
                yield break;
            }

            var first = Grid.FloorDiv(height - _v, _courses.Rise);
            var count = model.Offsets.Length;
            for (var i = 0; i < Math.Min(count, 4); i++)
            {
                var words = count == 1
                    ? "every course"
                    : string.Create(CultureInfo.InvariantCulture, $"courses {i + 1}, {i + 1 + count}, {i + 1 + (2 * count)} and so on, counted up from the level line");
                yield return (words, Run(_u + _courses.Offset(first + i), _courses.Period, bounds));
            }
        }

        private static IEnumerable<long> Run(long start, long step, Box bounds)
        {
            for (var at = bounds.Left.Steps + Grid.Mod(start - bounds.Left.Steps, step); at < bounds.Right.Steps; at += step) yield return at;
        }

        private static long Nearest(long place, long start, long step) => start + (Grid.FloorDiv(place - start + (step / 2), step) * step);
    }
}
