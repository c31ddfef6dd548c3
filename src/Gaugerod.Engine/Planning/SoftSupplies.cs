using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What the soft joints of a job take of sealant and of the cord behind it.</summary>
internal static class SoftSupplies
{
    private const double Step = 3200;

    /// <summary>The soft joints of the runs that name a sealant, each once.</summary>
    public static IReadOnlyList<SoftJoint> Joints(IReadOnlyList<RunPlan> runs, IReadOnlyList<(EdgeOfFace One, EdgeOfFace Other)> alike) =>
        All(runs.Where(run => run.Request.Setting?.Sealant is not null), alike);

    /// <summary>The soft joints of runs, sealed or not, each once.</summary>
    public static IReadOnlyList<SoftJoint> All(IEnumerable<RunPlan> runs, IReadOnlyList<(EdgeOfFace One, EdgeOfFace Other)> alike) =>
        SoftJoints.Of(runs.Select(run => new RunFaces(run.Request.Name, run.Faces.Select(face => face.Face.SetOut).Distinct(ReferenceEqualityComparer.Instance).Cast<FinishedFace>())), alike);

    /// <summary>How many metres of soft joint each run has, sealed or not, those across its fields among them, by its name.</summary>
    public static Func<string, double> Metres(Job job, IReadOnlyList<RunPlan> runs, IReadOnlyList<MovementJoint> movement)
    {
        var joints = All(runs, SameCorners.Of(job, runs)).Select(joint => (joint.Run, joint.Length)).Concat(movement.Select(joint => (joint.Run, Length: joint.Long))).ToLookup(joint => joint.Run, joint => joint.Length, StringComparer.Ordinal);
        return run => joints[run].Sum() / 1000;
    }

    /// <summary>How deep a joint is filled.</summary>
    public static Length Depth(SettingRequest setting, Length width) => setting.SealantDepth ?? SoftJointRules.UsualDepth(width);

    public static IEnumerable<(string Of, SupplyUse Use)> Of(Job job, IReadOnlyList<RunPlan> runs, IReadOnlyList<(EdgeOfFace One, EdgeOfFace Other)> alike, IReadOnlyList<MovementJoint> movement)
    {
        var across = movement.Where(joint => runs.Any(run => run.Request.Setting?.Sealant is not null && string.Equals(run.Request.Name, joint.Run, StringComparison.Ordinal))).Select(joint => new SoftJoint(joint.Run, new(joint.Face, ""), null, joint.Width, joint.Long));
        foreach (var joints in Joints(runs, alike).Concat(across).GroupBy(joint => joint.Run, StringComparer.Ordinal))
        {
            var setting = runs.First(run => string.Equals(run.Request.Name, joints.Key, StringComparison.Ordinal)).Request.Setting!;
            var sections = joints.GroupBy(joint => joint.Width).OrderBy(section => section.Key).ToList();
            var litres = sections.Sum(section => section.Sum(joint => joint.Length) * Mm(section.Key) * Mm(Depth(setting, section.Key)) / 1e6);
            yield return (setting.Sealant!, new(joints.Key, litres, string.Join("; ", sections.Select(section => Said(section, setting, job.Tape)))));
            if (setting.Backer is { } backer)
            {
                var length = joints.Sum(joint => joint.Length);
                yield return (backer, new(joints.Key, length / 1000, $"{Amounts.Distance(length, job.Tape)} of soft joints"));
            }
        }
    }

    /// <summary>What is to be said of the soft joints that are sealed.</summary>
    public static IEnumerable<Finding> Findings(Job job, IReadOnlyList<RunPlan> runs, IReadOnlyList<MovementJoint> movement)
    {
        var (alike, floors) = (SameCorners.Of(job, runs), job.Faces.Where(FloorFaces.Is).Select(face => face.Name).ToHashSet(StringComparer.Ordinal));
        var joints = Joints(runs, alike);
        var sealedFloor = joints.Any(joint => floors.Contains(joint.At.Face));
        foreach (var run in joints.GroupBy(joint => joint.Run, StringComparer.Ordinal))
        {
            var setting = runs.First(plan => string.Equals(plan.Request.Name, run.Key, StringComparison.Ordinal)).Request.Setting!;
            foreach (var width in run.Select(joint => joint.Width).Concat(movement.Where(joint => string.Equals(joint.Run, run.Key, StringComparison.Ordinal)).Select(joint => joint.Width)).Distinct().Order())
            {
                foreach (var finding in SoftJointRules.Findings(run.Key, width, Depth(setting, width), job.Tape, job.Region)) yield return finding;
            }

            var untold = run.Where(joint => joint.Kind == EdgeKind.Floor && !alike.Any(pair => pair.One == joint.At || pair.Other == joint.At)).Sum(joint => joint.Length);
            if (sealedFloor && untold > 0) yield return SoftJointRules.Twice(run.Key, untold, job.Tape);
        }
    }

    private static string Said(IGrouping<Length, SoftJoint> section, SettingRequest setting, Tape tape)
    {
        var kinds = section.GroupBy(joint => joint.Kind).OrderBy(kind => kind.Key ?? EdgeKind.Zone).Select(kind => $"{Amounts.Distance(kind.Sum(joint => joint.Length), tape)} {At(kind.Key)}");
        return $"{string.Join(", ", kinds)}, {LengthText.Nearest(section.Key, tape)} wide, {LengthText.Nearest(Depth(setting, section.Key), tape)} deep";
    }

    private static string At(EdgeKind? kind) => kind switch
    {
        EdgeKind.InsideCorner => "in corners",
        EdgeKind.Floor => "at the floor",
        EdgeKind.Ceiling => "at the ceiling",
        EdgeKind.Threshold => "at thresholds",
        null => "across the field",
        _ => "at fixtures",
    };

    private static double Mm(Length length) => length.Steps / Step;
}
