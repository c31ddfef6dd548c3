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
                .SelectMany(left => chains.From([.. few.Where((_, i) => (left >> i & 1) == 0)])).Take(MostWays).ToList();
            foreach (var way in ways) yield return chains.Rows(way);
            if (ways.Count > 0) yield break;
        }
    }

    /// <summary>From what is set on. What was set out of level keeps nothing by the joint above it.</summary>
    private IEnumerable<List<Anchor>> From(List<AgainTarget> targets)
    {
        var (low, high) = (Math.Min(set.Left, set.Right) - set.Depth, Math.Max(set.Left, set.Right) - set.Depth);
        if (low == high) return Chains(targets, [], new(set.Set, low, low, null), isHeld: false);
        var next = new Anchor(set.Set + 1, high + _rise.Least, low + _rise.Most, null);
        return next.Low <= next.High ? Chains(targets, [], next, isHeld: false) : [];
    }

    /// <summary>The ways in which a course and those above it can keep all targets.</summary>
    /// <param name="left">The targets.</param>
    /// <param name="before">The courses below that are held to something.</param>
    /// <param name="here">Where the course can stand.</param>
    /// <param name="isHeld">Whether it is held there by what the one below it keeps.</param>
    private IEnumerable<List<Anchor>> Chains(List<AgainTarget> left, List<Anchor> before, Anchor here, bool isHeld)
    {
        if (left.Count == 0)
        {
            if (isHeld) yield return [.. before, here];
            else if (before.Count > 0) yield return before;
            yield break;
        }

        if (here.Course > set.Last + 1 || left.Exists(target => here.Low > Math.Max(target.High, target.Edge is var (edge, _) ? edge - set.Depth : long.MinValue))) yield break;
        foreach (var (kept, held) in Kept(left, 0, new(here.Low, here.High, here.Low + _rise.Least, here.High + _rise.Most, null, false), here.Course > set.Set))
        {
            var isAnchor = here.Course > set.Set && (isHeld || kept.Count < left.Count);
            List<Anchor> below = isAnchor ? [.. before, new(here.Course, held.Low, held.High, here.Over)] : before;
            var next = new Anchor(here.Course + 1, held.NextLow, held.NextHigh, isAnchor ? held.Joint : null);
            foreach (var chain in Chains(kept, below, next, held.HoldsNext)) yield return chain;
        }
    }

    /// <summary>What a course, and the one over it, are held to by what the course keeps.</summary>
    /// <param name="Low">The course no lower.</param>
    /// <param name="High">No higher.</param>
    /// <param name="NextLow">The next course no lower.</param>
    /// <param name="NextHigh">No higher.</param>
    /// <param name="Joint">The middle of the joint between the two; null for anywhere.</param>
    /// <param name="HoldsNext">Whether the next course is held to anything but what it can reach.</param>
    private readonly record struct Held(long Low, long High, long NextLow, long NextHigh, long? Joint, bool HoldsNext)
    {
        /// <summary>The same with the course no lower and no higher than that, the next no lower; null where that cannot be.</summary>
        public Held? Within(long low, long high, long nextLow, (long Least, long Most) rise, long depth)
        {
            var (least, most) = (Math.Max(Low, low), Math.Min(High, high));
            var (next, nextMost) = (Math.Max(Math.Max(NextLow, nextLow), least + rise.Least), Math.Min(NextHigh, most + rise.Most));
            if (Joint is { } height)
            {
                // The one hangs on the other.
                var both = (2 * height) - depth;
                (next, nextMost) = (Math.Max(next, both - most), Math.Min(nextMost, both - least));
                (least, most) = (both - nextMost, both - next);
            }
            else
            {
                (least, most) = (Math.Max(least, next - rise.Most), Math.Min(most, nextMost - rise.Least));
            }

            return least <= most && next <= nextMost ? new(least, most, next, nextMost, Joint, HoldsNext) : null;
        }
    }

    /// <summary>Every choice of targets that a course keeps, with those that are left to the courses above; keeping none of them among the choices.</summary>
    private IEnumerable<(List<AgainTarget> Left, Held Held)> Kept(List<AgainTarget> targets, int at, Held held, bool byItself)
    {
        if (at == targets.Count)
        {
            yield return ([], held);
            yield break;
        }

        var target = targets[at];
        foreach (var with in Ways(target, held, byItself).OfType<Held>())
        {
            foreach (var rest in Kept(targets, at + 1, with, byItself)) yield return rest;
        }

        foreach (var (left, rest) in Kept(targets, at + 1, held, byItself)) yield return ([target, .. left], rest);
    }

    /// <summary>The ways in which a course keeps a target: by where it stands, by the joint over it, or by an edge in that joint. What is set already keeps none by where it stands.</summary>
    private IEnumerable<Held?> Ways(AgainTarget target, Held held, bool byItself)
    {
        if (target.Joint is { } height)
        {
            if (held.Joint is null || held.Joint == height) yield return (held with { Joint = height, HoldsNext = true }).Within(target.Low, target.High, long.MinValue, _rise, set.Depth);
            yield break;
        }

        if (byItself) yield return held.Within(target.Low, target.High, long.MinValue, _rise, set.Depth);
        if (target.Edge is var (low, high)) yield return (held with { HoldsNext = true }).Within(long.MinValue, low - set.Depth, high, _rise, set.Depth);
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
