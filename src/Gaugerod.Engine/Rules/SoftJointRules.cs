using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How wide and deep soft joints are to be.</summary>
internal static class SoftJointRules
{
    private static readonly Length s_least = LimitTable.For(null, LimitKeys.SoftDepth).Least.Length;

    /// <summary>Half as deep as wide, and never under an eighth of an inch.</summary>
    public static Length UsualDepth(Length width) => Length.Max(s_least, Length.FromSteps((long)(width.Steps * LimitTable.For(null, LimitKeys.SoftShape).Most.Part)));

    /// <summary>What there is to say of a run's soft joints of one width.</summary>
    /// <param name="run">The run.</param>
    /// <param name="width">How wide they are.</param>
    /// <param name="depth">How deep they are filled.</param>
    /// <param name="tape">How it is said.</param>
    /// <param name="region">The job's region; null where it names none.</param>
    public static IEnumerable<Finding> Findings(string run, Length width, Length depth, Tape tape, Region? region = null)
    {
        var (wide, deep) = (LimitTable.For(region, LimitKeys.SoftWidth), LimitTable.For(region, LimitKeys.SoftDepth));
        if (width < wide.LeastOn(tape))
        {
            yield return new(FindingLevel.Warn, "soft-joint", run, "Soft joints narrower than sealant is meant for: it tears there when the room moves." + wide.Do, $"at least {LengthText.Nearest(wide.LeastOn(tape), tape)}{(wide.Limit.Region == Region.America ? " on walls" : "")}", LengthText.Nearest(width, tape), wide.Source);
        }

        if (depth < deep.LeastOn(tape) || depth > UsualDepth(width))
        {
            yield return new(FindingLevel.Warn, "soft-joint-depth", run, "Sealant too deep for its width tears, too thin comes off. Press the cord in to where half the width is left.", $"{LengthText.Nearest(UsualDepth(width), tape)} at {LengthText.Nearest(width, tape)} wide", LengthText.Nearest(depth, tape), deep.Source);
        }
    }

    /// <summary>Said where floors and walls are both sealed and nothing tells that they meet.</summary>
    public static Finding Twice(string run, double length, Tape tape) => new(
        FindingLevel.Note, "soft-joint-twice", run,
        $"{Amounts.Distance(length, tape)} of soft joints at the floor are counted on the walls. If a floor of this job has the same joints, say \"sealed\": false at its edges, or which of its sides were read on the walls too.", "", "", "docs/materials.md");
}
