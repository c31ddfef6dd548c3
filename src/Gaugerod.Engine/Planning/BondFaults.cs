using System.Globalization;
using Gaugerod.Engine.Bonds;

namespace Gaugerod.Engine.Planning;

/// <summary>Faults of the bond that a run asks for: tiles that do not make it, and what a pattern cannot do.</summary>
internal static class BondFaults
{
    /// <summary>The bond with the joint wanted; null when the tiles do not make it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="index">The run's place in the job.</param>
    /// <param name="faults">What is wrong.</param>
    public static Bond? Bond(Job job, int index, out List<Fault> faults)
    {
        faults = [];
        var run = job.Runs[index];
        var path = string.Create(CultureInfo.InvariantCulture, $"runs[{index}]");
        var made = BondMaker.Make(run.Bond, new(JobRuns.ProductsOf(job, run), run.Joint, run.Joint.Wanted, job.Tape));
        if (made.Refusal is { } refusal) faults.Add(new(path + ".bond", refusal.Found, refusal.Expected, refusal.Nearest) { Mends = BondMends.Of(job, index, refusal.Offer) });
        if (!run.Bond.IsStraight && run.Corners == Corners.Restart && run.Faces.Count > 1)
        {
            faults.Add(new(
                path + ".corners", "\"restart\" with a pattern, or a bond that is turned",
                "\"wrap\": one pattern goes round the corners", "\"wrap\", or a run of its own for each face that is to start anew") { Mends = [Mend.Of(path + ".corners", "wrap")] });
        }

        if (run.Bond.Free is not null && run.Place is not null)
        {
            var turned = run.Bond.Free.From.Degrees.ToString("0.###", CultureInfo.InvariantCulture);
            faults.Add(new(path + ".place", "a place for a bond that may be turned in several ways", "a place and one turn", "\"turned\": " + turned) { Mends = [new(path + ".bond.turned", turned)] });
        }

        return made.Bond;
    }
}
