using Gaugerod.Engine.Lines;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// The places one way at which a run with movable things may be best: where what does not move has a leg of a size that counts,
/// or two of its legs are alike, and where a thing comes to the end of its range. docs/patterns.md says what that leaves out.
/// </summary>
/// <param name="model">The run with its things where they were asked.</param>
/// <param name="movable">By face, the edges that may move.</param>
internal sealed class MovableStarts(RunModel model, IReadOnlyList<IReadOnlyList<MovableEdge>> movable)
{
    /// <summary>Between the places that are sought out, so many are spread over a repeat.</summary>
    private const int Spread = 12;

    /// <summary>The places for some faces, in order.</summary>
    /// <param name="axis">Which way.</param>
    /// <param name="first">The first face.</param>
    /// <param name="end">One past the last.</param>
    /// <param name="onRun">Whether they are on the run rather than on each face.</param>
    /// <param name="rows">For how many courses to list them.</param>
    public long[] Of(CheckAxis axis, int first, int end, bool onRun, int rows)
    {
        var courses = model.Courses;
        var along = axis == CheckAxis.Along;
        var (step, size) = along ? (courses.Period, courses.Length) : (courses.Rise, courses.Depth);
        long[] offsets = along ? model.Offsets : [0];
        var (begins, ends, found) = (new HashSet<long>(), new HashSet<long>(), new SortedSet<long>());
        for (var f = first; f < end; f++)
        {
            var frame = model.Frames[f];
            var shift = !onRun ? 0 : along ? frame.RunAlong : frame.RunAcross;
            foreach (var edge in along ? frame.Sides : frame.Levels)
            {
                var name = frame.Face.Edges[edge.Edge].Name;
                var (least, most) = along ? (edge.LeastAlong, edge.MostAlong) : (edge.LeastAcross, edge.MostAcross);
                if (movable[f].FirstOrDefault(one => string.Equals(one.Name, name, StringComparison.Ordinal)) is { Name: not null } moves)
                {
                    // On a joint where it was asked, and where it reaches no further.
                    var at = (edge.TileAfter ? least : most - size) + shift;
                    foreach (var by in new[] { 0, moves.Least.Steps, moves.Most.Steps }) Add(at + by);
                    continue;
                }

                (edge.TileAfter ? begins : ends).Add(least + shift);
                (edge.TileAfter ? begins : ends).Add(most + shift);
            }

            foreach (var check in model.Checks.Where(check => check.Face == f))
            {
                foreach (var target in check.TargetsOn(axis)) Add(target + shift);
            }
        }

        foreach (var leg in Legs(axis, size, step).Distinct())
        {
            foreach (var at in begins) Add(at + leg - size);
            foreach (var at in ends) Add(at - leg);
        }

        foreach (var at in begins)
        {
            // Two legs that face each other are alike where half of what is left over lies at either side.
            foreach (var other in ends)
            {
                var leg = Grid.Mod(other - at + size, step) / 2;
                Add(other - leg);
                Add(other - leg - (step / 2));
            }
        }

        for (var i = 0; i < Spread; i++) found.Add(step * i / Spread);
        return [.. Enumerable.Range(0, rows).SelectMany(row => found.Select(at => at + (row * step)))];

        void Add(long at)
        {
            foreach (var offset in offsets) found.Add(Grid.Mod(at - offset, step));
        }
    }

    /// <summary>The legs that count: none, a hair, the whole tile and no joint beyond it, slivers, and what was asked for.</summary>
    private IEnumerable<long> Legs(CheckAxis axis, long size, long step)
    {
        foreach (var leg in new[] { 0, 1, size, size - 1, size - step, model.Problem.Limits.Sliver.Steps }) yield return leg;
        foreach (var check in model.Checks.OfType<Check.AtLeast>()) yield return axis == CheckAxis.Along ? check.SideSize : check.LevelSize;
    }
}
