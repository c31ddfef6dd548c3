using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>Where the courses of a face stand, planned and set, in steps.</summary>
/// <param name="First">The face's first course.</param>
/// <param name="Bottom">The height of its lower side.</param>
/// <param name="Depth">A tile's size across the courses.</param>
/// <param name="Joint">The level joint as planned.</param>
/// <param name="Set">The last course that is set; one less than the first for none.</param>
/// <param name="Left">Where the top of that course stands at the left.</param>
/// <param name="Right">The same at the right.</param>
/// <param name="Head">Where the field ends above.</param>
internal readonly record struct SetCourses(int First, long Bottom, long Depth, long Joint, int Set, long Left, long Right, long Head)
{
    public long Rise => Depth + Joint;

    /// <summary>The lower side of a course as planned.</summary>
    public long Planned(int course) => Bottom + ((course - First) * Rise);

    /// <summary>The last course as planned.</summary>
    public int Last => First + (int)Grid.FloorDiv(Head - 1 - Bottom, Rise);
}

/// <summary>Heights of courses still to be set.</summary>
/// <param name="Joint">The joint from what is set to where it ends, at the side where it differs more from the plan.</param>
/// <param name="BackAt">The first course that stands as planned; null for none.</param>
/// <param name="Courses">The courses.</param>
internal sealed record AgainRows(long Joint, int? BackAt, IReadOnlyList<(int Course, long Left, long Right)> Courses)
{
    /// <summary>The least and the widest joint up to the last height that must be met, where several are met one after another; else null.</summary>
    public (long Least, long Most)? Between { get; init; }
}

/// <summary>
/// The ways in which courses can go on from what is set. Between two places the joints are all alike: what is evened out over
/// more of them shows less.
/// </summary>
internal static class AgainHeights
{
    /// <summary>The ways whose joints the run allows; the one that goes on with the joint as planned is always among them, the last.</summary>
    public static IEnumerable<AgainRows> Ways(SetCourses set, JointRange joint, IEnumerable<long> heights)
    {
        var (least, most) = (joint.Least.Steps, joint.Most.Steps);
        for (var back = set.Set + 1; back <= set.Last; back++)
        {
            if (Evened(set, back, set.Planned(back), least, most) is { } way) yield return way;
        }

        // A height that is asked for may be met by another course than was planned.
        foreach (var height in heights)
        {
            for (var course = set.Set + 1; course <= set.Last + 1; course++)
            {
                // The middle of the joint under the course: its lower side less half a joint, which is itself what is looked for.
                var joints = course - set.Set;
                var left = (height - set.Left - ((joints - 1) * set.Depth)) * 2 / ((2 * joints) - 1);
                if (left < least || left > most || height == set.Planned(course) - (set.Joint / 2)) continue;
                if (Evened(set, course, height + (left / 2), least, most) is { } way) yield return way with { BackAt = null };
            }
        }

        yield return On(set, least, most);
    }

    /// <summary>Joints all alike up to a course that stands at a height, then as planned; null where they are not allowed.</summary>
    private static AgainRows? Evened(SetCourses set, int to, long height, long least, long most)
    {
        var (joints, tiles) = (to - set.Set, (to - set.Set - 1) * set.Depth);
        var (left, right) = (Grid.FloorDiv(height - set.Left - tiles, joints), Grid.FloorDiv(height - set.Right - tiles, joints));
        if (left < least || left > most || right < least || right > most) return null;
        var rows = new List<(int, long, long)>();
        for (var course = set.Set + 1; course < to; course++)
        {
            var below = to - course;
            rows.Add((course, height - (below * (set.Depth + left)), height - (below * (set.Depth + right))));
        }

        for (var course = to; height + ((course - to) * set.Rise) < set.Head; course++) rows.Add((course, height + ((course - to) * set.Rise), height + ((course - to) * set.Rise)));
        return new(Math.Abs(left - set.Joint) >= Math.Abs(right - set.Joint) ? left : right, to, rows);
    }

    /// <summary>The joint as planned from what is set on; a slope is evened out as soon as the joints allow.</summary>
    private static AgainRows On(SetCourses set, long least, long most)
    {
        var rows = new List<(int, long, long)>();
        var (left, right) = (set.Left, set.Right);
        for (var course = set.Set + 1; ; course++)
        {
            // The higher side takes the least joint, the lower the widest, until both are level.
            var level = ((left + right) / 2) + set.Joint;
            (left, right) = (Math.Clamp(level, left + least, left + most), Math.Clamp(level, right + least, right + most));
            if (Math.Min(left, right) >= set.Head) break;
            rows.Add((course, left, right));
            (left, right) = (left + set.Depth, right + set.Depth);
        }

        return new(set.Joint, null, rows);
    }
}
