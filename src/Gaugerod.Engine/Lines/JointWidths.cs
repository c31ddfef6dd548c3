using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>The joint widths worth trying: the wanted one, and those that bring a whole number of courses from one wanted line to another.</summary>
internal static class JointWidths
{
    /// <summary>The widths, the wanted one first, then the nearer to it the earlier.</summary>
    public static IReadOnlyList<Length> Of(RunProblem problem)
    {
        var (wanted, least, most) = (problem.Joint.Wanted, problem.Joint.Least.Steps, problem.Joint.Most.Steps);
        if (least == most) return [wanted];
        // A wanted line may move with the joint's width, evenly: the middle of a joint stands half a joint from the tile.
        var narrow = Lines(new(problem, problem.Joint.Least));
        var wide = Lines(new(problem, problem.Joint.Most));
        var depth = new RunModel(problem, wanted).Courses.Depth;
        var widths = new SortedSet<long>();
        for (var low = 0; low < narrow.Count; low++)
        {
            for (var high = 0; high < narrow.Count; high++)
            {
                var (near, far) = (narrow[high] - narrow[low], wide[high] - wide[low]);
                if (near > 0) Between(near, far, depth, least, most, widths);
            }
        }

        return [wanted, .. widths.Where(width => width != wanted.Steps)
            .OrderBy(width => Math.Abs(width - wanted.Steps)).ThenBy(width => width).Select(Length.FromSteps)];
    }

    private static List<long> Lines(RunModel model) =>
        [.. model.Checks
            .SelectMany(check => check.TargetsOn(CheckAxis.Across).Select(target => target + model.Frames[check.Face].RunAcross))];

    /// <summary>The widths at which so many tiles and as many joints just reach from one line to the other.</summary>
    private static void Between(long near, long far, long depth, long least, long most, SortedSet<long> widths)
    {
        for (var courses = Math.Max(1, near / (depth + most)); courses <= (far / depth) + 1; courses++)
        {
            var (shortBy, over) = (near - (courses * (depth + least)), (courses * (depth + most)) - far);
            if (shortBy < 0 || over < 0 || shortBy + over == 0) continue;
            widths.Add(least + Grid.NearestStep((Int128)(most - least) * shortBy, shortBy + over));
        }
    }
}
