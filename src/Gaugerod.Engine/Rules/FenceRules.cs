using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Sizes that share a setting of the fence are cut at the smallest of them: the others come out short by what they differ.</summary>
internal static class FenceRules
{
    internal static IEnumerable<Finding> Findings(Length fence, RunFacts run)
    {
        if (fence <= run.Joint) yield break;
        yield return new(
            FindingLevel.Warn, "fence", run.Run,
            $"Sizes that share a setting of the fence may differ by more than a joint is wide: pieces may come out so much short, and the edge or the joint they meet must hide it. Nearest: {LengthText.Down(run.Joint, run.Tape)}.",
            $"at most the joint, {LengthText.Nearest(run.Joint, run.Tape)}", LengthText.Nearest(fence, run.Tape), Remarks.NoSource);
    }
}
