using System.Globalization;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What came of measuring again.</summary>
/// <param name="Faces">The faces.</param>
/// <param name="Findings">What was entered and cannot be.</param>
internal sealed record AgainFound(Sequence<AgainFace> Faces, Sequence<Finding> Findings)
{
    /// <summary>The pieces, planned or new, that are still to be cut or set whole, where something is set.</summary>
    public IReadOnlyList<Piece> ToDo { get; init; } = [];
}

/// <summary>Measures again: what is set is fixed, and the rest goes on from where it came to stand.</summary>
internal static class Again
{
    /// <summary>What its findings are called.</summary>
    public const string Rule = "set";

    /// <summary>The faces of a run of which something is set, a course of a way at a time: nothing until the last.</summary>
    public static IEnumerable<AgainFound?> Steps(Job job, RunPlan plan)
    {
        var (faces, findings, todo) = (new List<AgainFace>(), new List<Finding>(), new List<Piece>());
        if (plan.Request.Set.Count > 0 && !plan.IsInCourses) findings.Add(Refused(plan.Request.Name, "Measuring again is for fields laid in level courses; what is set there is left out."));
        foreach (var (face, k) in plan.Faces.Select((face, k) => (face, k)))
        {
            if (!plan.IsInCourses || face.Pieces.Count == 0 || plan.Request.Set.FirstOrDefault(set => face.Face.IsCalled(set.Face)) is not { } asked)
            {
                todo.AddRange(face.Pieces);
                continue;
            }

            var (set, off) = Courses(job, face, plan.Finished[k], asked, findings);
            var from = FirstSet(set, asked, findings);
            // What is below the first course set is hung from it as planned.
            var below = Enumerable.Range(set.First, from - set.First).Select(course => (course, set.Planned(course), set.Planned(course))).ToList();
            var (pieces, wants, ways) = (new AgainPieces(job, plan, face, plan.Finished[k]), new AgainWants(plan, face, job.Tape), new List<AgainWay>());
            yield return null;
            // What alike joints lose of the musts may be kept from one height to the next.
            var several = AgainChains.Ways(plan, face, set, job.Tape.Mark.Steps);
            foreach (var above in AgainHeights.Ways(set, plan.Request.Joint, wants.Heights).Concat(several.TakeWhile(_ => ways.TrueForAll(way => way.MustsMissed > 0))))
            {
                var (rows, cut) = (above with { Courses = [.. below, .. above.Courses] }, new List<Piece>());
                foreach (var course in pieces.CourseByCourse(set, rows, asked.Aside))
                {
                    cut.AddRange(course);
                    yield return null;
                }

                ways.Add(Way(rows, set, cut.ToSequence(), pieces, wants, asked.Aside, job.Tape));
                yield return null;
            }

            var shown = Best(ways, face.Placing.Joint);
            var uses = AgainCut.Uses(Cut(face, set, from, asked, findings), shown[0].Pieces, piece => pieces.IsAsPlanned(piece, asked.Aside), JobRuns.ProductOf(job, plan.Request));
            var had = uses.Where(use => use.Fits || use.Goes is not null).Select(use => use.Goes ?? use.Piece).ToHashSet(StringComparer.Ordinal);
            faces.Add(new(plan.Request.Name, asked.Face, set.Set, off.Left, off.Right, shown) { From = from, Cut = uses });
            todo.AddRange(shown[0].Pieces.Where(piece => !had.Contains(piece.Id)));
            yield return null;
        }

        yield return new(faces.ToSequence(), findings.ToSequence()) { ToDo = todo };
    }

    /// <summary>Evened out the joints show least; soon back, most of the rods and of the plan stays good; and some would rather go on.</summary>
    private static Sequence<AgainWay> Best(IEnumerable<AgainWay> all, Length joint)
    {
        var ways = all.OrderBy(way => way.MustsMissed).ThenBy(way => way.WishesMissed).ThenBy(way => way.Changed.Count)
            .ThenBy(way => (way.Joint - joint).Abs()).ThenBy(way => way.BackAt ?? int.MaxValue)
            .ToList();
        var soonest = ways.Where(way => way.BackAt is not null && way.MustsMissed == ways[0].MustsMissed && way.WishesMissed == ways[0].WishesMissed && way.Changed.Count == ways[0].Changed.Count).MinBy(way => way.BackAt);
        return new[] { ways[0], soonest, ways.Find(way => way.BackAt is null) }.OfType<AgainWay>().Distinct(ReferenceEqualityComparer.Instance).Cast<AgainWay>().ToSequence();
    }

    /// <summary>The pieces of the plan that are cut already and wait to be set.</summary>
    private static List<Piece> Cut(FacePlan face, SetCourses set, int from, SetSoFar asked, List<Finding> findings)
    {
        var cut = new List<Piece>();
        foreach (var id in asked.Cut)
        {
            if (face.Pieces.FirstOrDefault(piece => string.Equals(piece.Id, id, StringComparison.Ordinal)) is not { } piece) findings.Add(Refused(asked.Face, $"{id} is said to be cut, and the plan has no such piece on {asked.Face}."));
            else if (piece.Course >= from && piece.Course <= set.Set) findings.Add(Refused(asked.Face, $"{id} is said to be cut and not yet set, and is in course {Number(piece.Course)}, which is set."));
            else cut.Add(piece);
        }

        return cut;
    }

    private static (SetCourses Set, (Length Left, Length Right) Off) Courses(Job job, FacePlan face, FinishedFace finished, SetSoFar asked, List<Finding> findings)
    {
        var lowest = face.Pieces.MinBy(piece => piece.Cell.Bottom.Steps)!;
        var (first, depth) = (lowest.Course, lowest.Cell.Height.Steps);
        var planned = new SetCourses(first, lowest.Cell.Bottom.Steps, depth, face.Placing.Joint.Steps, first - 1, 0, 0, finished.Field.Outer.Bounds.Top.Steps);
        var set = asked.Courses == 0 ? first - 1 : asked.Courses;
        if (set > planned.Last || set < first - 1)
        {
            findings.Add(Refused(asked.Face, $"{Number(asked.Courses)} courses are said to be set on {asked.Face}, and the plan has courses {Number(first)} to {Number(planned.Last)} there. {Number(Math.Clamp(set, first - 1, planned.Last))} are taken."));
            set = Math.Clamp(set, first - 1, planned.Last);
        }

        var top = planned.Planned(set) + depth;
        var (left, right) = (asked.Left?.Steps ?? asked.Right?.Steps ?? top, asked.Right?.Steps ?? asked.Left?.Steps ?? top);

        // So far off, it is another course that was read.
        if (Math.Max(Math.Abs(left - top), Math.Abs(right - top)) > planned.Rise / 2)
        {
            findings.Add(Refused(asked.Face, $"The top of course {Number(set)} on {asked.Face} is said to stand at {Say(left)} and {Say(right)}, and was planned at {Say(top)}: more than half a course off. It is taken as planned."));
            (left, right) = (top, top);
        }

        return (planned with { Set = set, Left = left, Right = right }, (Length.FromSteps(left - top), Length.FromSteps(right - top)));

        string Say(long steps) => LengthText.Nearest(Length.FromSteps(steps), job.Tape);
    }

    /// <summary>The first course that is set.</summary>
    private static int FirstSet(SetCourses set, SetSoFar asked, List<Finding> findings)
    {
        if (asked.From <= set.First || set.Set < set.First) return set.First;
        if (asked.From <= set.Set) return asked.From;
        findings.Add(Refused(asked.Face, $"Set on {asked.Face} is said to be course {Number(asked.From)} and what is above it, up to course {Number(set.Set)}. All up to that one is taken as set."));
        return set.First;
    }

    private static AgainWay Way(AgainRows rows, SetCourses set, Sequence<Piece> cut, AgainPieces pieces, AgainWants wants, Length aside, Tape tape)
    {
        var (musts, wishes, words) = wants.Missed(set, rows, cut, aside);
        var joint = Joint(rows.Joint);
        var said = rows.BackAt is { } back
            ? back == set.Set + 1 && rows.Joint == set.Joint ? "As planned." : $"Level joints of {joint} up to course {Number(back)}, which stands as planned; so does all above it."
            : rows.Between is var (least, most) ? $"Level joints from {Joint(least)} to {Joint(most)}: alike from what is set to the first height that must be met, and from there to the next; then as planned."
            : rows.Joint == set.Joint ? "On with the joint as planned, all of it moved." : $"Level joints of {joint} until the height asked for is met, then as planned.";
        var marks = rows.Courses.Select(row => new AgainMark(row.Course, Length.FromSteps(set.Planned(row.Course)), Length.FromSteps(row.Left), Length.FromSteps(row.Right))).ToSequence();
        return new(said, Length.FromSteps(rows.Joint), rows.BackAt, marks, cut, cut.Where(piece => !pieces.IsAsPlanned(piece, aside)).Select(piece => piece.Id).ToSequence(), musts, wishes, words);

        string Joint(long steps) => LengthText.Nearest(Length.FromSteps(steps), new(tape.Unit, Fine(tape)));
    }

    // Joints are told finer than cuts: what is shared out is small.
    private static Length Fine(Tape tape) => tape.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 64) : Length.FromSteps(320);

    private static Finding Refused(string where, string text) => new(FindingLevel.Warn, Rule, where, text, "", "", Remarks.NoSource);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
