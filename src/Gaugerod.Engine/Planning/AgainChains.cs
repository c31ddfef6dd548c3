using Gaugerod.Engine.Bonds;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// Ways that meet several musts, each with the course that can: from one to the next the joints are all alike. Where any joints
/// within the run's limits keep all of some musts, such a way does, since a course can stand anywhere from all joints least to all
/// joints widest above the one before. docs/again.md has the argument.
/// </summary>
/// <param name="set">What is set.</param>
/// <param name="joint">The joints allowed.</param>
internal sealed class AgainChains(SetCourses set, JointRange joint)
{
    /// <summary>More musts than these are not looked at together; the lowest are.</summary>
    private const int Most = 8;

    private readonly (long Least, long Most) _rise = (set.Depth + joint.Least.Steps, set.Depth + joint.Most.Steps);

    /// <summary>A course whose lower side may stand anywhere within some heights.</summary>
    /// <param name="Course">The course.</param>
    /// <param name="Low">The lowest of the heights.</param>
    /// <param name="High">The highest.</param>
    /// <param name="Over">Where its height hangs on the anchor's before: the middle of the joint between the two.</param>
    private readonly record struct Anchor(int Course, long Low, long High, long? Over);

    /// <summary>More ways than these are not looked at.</summary>
    private const int MostWays = 24;

    /// <summary>The ways that keep most of the musts: all of them, else all but one, and so on.</summary>
    /// <param name="plan">The run as planned.</param>
    /// <param name="face">The face as planned.</param>
    /// <param name="set">What is set.</param>
    /// <param name="mark">The tape's mark.</param>
    public static IEnumerable<AgainRows> Ways(RunPlan plan, FacePlan face, SetCourses set, long mark)
    {
        var few = new AgainTargets(plan, face, set, mark).All().Take(Most).ToList();
        var chains = new AgainChains(set, plan.Request.Joint);
        for (var without = 0; without < few.Count; without++)
        {
            var ways = Enumerable.Range(0, 1 << few.Count).Where(left => System.Numerics.BitOperations.PopCount((uint)left) == without)
                .SelectMany(left => chains.Chains([.. few.Where((_, i) => (left >> i & 1) == 0)], 0, [])).Take(MostWays).ToList();
            foreach (var way in ways) yield return chains.Rows(way);
            if (ways.Count > 0) yield break;
        }
    }

    /// <summary>The ways in which courses can meet the targets from one on, what meets those before it being settled.</summary>
    private IEnumerable<List<Anchor>> Chains(List<AgainTarget> targets, int next, List<Anchor> before)
    {
        if (next == targets.Count) return before.Count > 0 ? [before] : [];
        return Meet(targets[next], before).SelectMany(anchors => Chains(targets, next + 1, anchors));
    }

    private IEnumerable<List<Anchor>> Meet(AgainTarget target, List<Anchor> before)
    {
        var first = before.Count > 0 ? before[^1].Course : set.Set;
        for (var course = first; course <= set.Last + 1; course++)
        {
            if (Reach(before, course) is not var (low, high)) continue;
            if (low > target.High) yield break;
            (low, high) = (Math.Max(low, target.Low), Math.Min(high, target.High));
            // What is set already keeps no must that is still open, but for the joint over it.
            if (low > high || (course == set.Set && target.Joint is null)) continue;
            var settled = course == first ? before.SkipLast(before.Count > 0 ? 1 : 0) : before;
            var over = course == first && before.Count > 0 ? before[^1].Over : null;
            List<Anchor> anchors = course == set.Set ? [] : [.. settled, new(course, low, high, over)];
            if (target.Joint is { } height) anchors.Add(new(course + 1, (2 * height) - set.Depth - high, (2 * height) - set.Depth - low, course == set.Set ? null : height));
            yield return anchors;
        }
    }

    /// <summary>How low and how high the lower side of a course can stand; null where it cannot stand level.</summary>
    private (long Low, long High)? Reach(List<Anchor> before, int course)
    {
        if (before.Count > 0)
        {
            var (last, on) = (before[^1], course - before[^1].Course);
            return (last.Low + (on * _rise.Least), last.High + (on * _rise.Most));
        }

        var courses = course - set.Set;
        var (low, high) = (Math.Max(set.Left, set.Right) - set.Depth + (courses * _rise.Least), Math.Min(set.Left, set.Right) - set.Depth + (courses * _rise.Most));
        return low <= high ? (low, high) : null;
    }

    /// <summary>Of all heights that the anchors leave, those nearest to the plan, settled from the last back.</summary>
    private AgainRows Rows(List<Anchor> anchors)
    {
        var at = new long[anchors.Count];
        for (var i = anchors.Count - 1; i >= 0; i--)
        {
            var (course, low, high, _) = anchors[i];
            if (i + 1 < anchors.Count && anchors[i + 1].Over is { } height)
            {
                at[i] = (2 * height) - set.Depth - at[i + 1];
                continue;
            }

            if (i + 1 < anchors.Count)
            {
                var on = anchors[i + 1].Course - course;
                (low, high) = (Math.Max(low, at[i + 1] - (on * _rise.Most)), Math.Min(high, at[i + 1] - (on * _rise.Least)));
            }

            at[i] = Math.Max(low, Math.Min(high, set.Planned(course)));
        }

        var (rows, joints) = (new List<(int Course, long Left, long Right)>(), new List<long>());
        var (last, left, right) = (set.Set, set.Left - set.Depth, set.Right - set.Depth);
        for (var i = 0; i < at.Length; i++)
        {
            var on = anchors[i].Course - last;
            for (var k = 1; k <= on; k++) rows.Add((last + k, left + ((at[i] - left) * k / on), right + ((at[i] - right) * k / on)));
            joints.Add(((at[i] - left) / on) - set.Depth);
            joints.Add(((at[i] - right) / on) - set.Depth);
            (last, left, right) = (anchors[i].Course, at[i], at[i]);
        }

        for (var course = last + 1; left + ((course - last) * set.Rise) < set.Head; course++) rows.Add((course, left + ((course - last) * set.Rise), left + ((course - last) * set.Rise)));
        rows.RemoveAll(row => Math.Min(row.Left, row.Right) >= set.Head);
        return new(joints.MaxBy(each => Math.Abs(each - set.Joint)), null, rows) { Between = (joints.Min(), joints.Max()) };
    }
}
