using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How wide and deep soft joints are to be.</summary>
internal static class SoftJointRules
{
    private const string Shape = "an estimating handbook of the trade: no less than 1/8 in deep, no more than half as deep as wide, over a backer; width to depth 2 to 1, ASTM C1193, from memory";

    private const string Width = "trade press on movement joints (TCNA EJ171): glazed wall tile and mosaics 1/4 in preferred, 1/8 in at the least; quarry, paver and porcelain floors as the grout joint, 1/4 in at the least";

    private static readonly Length Least = Length.FromInches(0, 1, 8);

    /// <summary>Half as deep as wide, and never under an eighth of an inch.</summary>
    public static Length UsualDepth(Length width) => Length.Max(Least, Length.FromSteps(width.Steps / 2));

    /// <summary>What there is to say of a run's soft joints of one width.</summary>
    /// <param name="run">The run.</param>
    /// <param name="width">How wide they are.</param>
    /// <param name="depth">How deep they are filled.</param>
    /// <param name="tape">How it is said.</param>
    public static IEnumerable<Finding> Findings(string run, Length width, Length depth, Tape tape)
    {
        if (width < Least)
        {
            yield return new(FindingLevel.Warn, "soft-joint", run, "Soft joints narrower than sealant is meant for: it tears there when the room moves.", $"at least {LengthText.Nearest(Least, tape)} on walls", LengthText.Nearest(width, tape), Width);
        }

        if (depth < Least || depth > UsualDepth(width))
        {
            yield return new(FindingLevel.Warn, "soft-joint-depth", run, "Sealant too deep for its width tears, too thin comes off. Press the cord in to where half the width is left.", $"{LengthText.Nearest(UsualDepth(width), tape)} at {LengthText.Nearest(width, tape)} wide", LengthText.Nearest(depth, tape), Shape);
        }
    }

    /// <summary>Said where floors and walls are both sealed and nothing tells that they meet.</summary>
    public static Finding Twice(string run, double length, Tape tape) => new(
        FindingLevel.Note, "soft-joint-twice", run,
        $"{Amounts.Distance(length, tape)} of soft joints at the floor are counted on the walls. If a floor of this job has the same joints, say \"sealed\": false at its edges, or which of its sides were read on the walls too.", "", "", "docs/materials.md");
}
