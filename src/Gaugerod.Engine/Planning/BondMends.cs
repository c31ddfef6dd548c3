using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Says what an offered bond changes as values to put into the job: where it differs from what was asked.</summary>
internal static class BondMends
{
    /// <summary>The values; none when nothing was offered.</summary>
    /// <param name="job">The job.</param>
    /// <param name="index">The run's place in the job.</param>
    /// <param name="offer">What was offered.</param>
    public static Sequence<Mend> Of(Job job, int index, BondOffer? offer)
    {
        if (offer is null) return [];
        var (run, path) = (job.Runs[index], string.Create(CultureInfo.InvariantCulture, $"runs[{index}]"));
        return [.. OfTiles(job, run, path, offer.Tiles).Distinct(), .. OfBond(job, run.Bond, path + ".bond", offer.Request)];
    }

    private static IEnumerable<Mend> OfTiles(Job job, RunRequest run, string path, BondTiles? offered)
    {
        if (offered is null) yield break;
        var asked = JobRuns.ProductsOf(job, run);
        for (var i = 0; i < asked.Count; i++)
        {
            var (was, now) = (asked[i], offered.Products[i]);
            if (!string.Equals(was.Name, now.Name, StringComparison.Ordinal))
            {
                // The two squares of a pinwheel exchanged.
                yield return Mend.Of(i == 0 ? path + ".product" : path + ".bond.small", now.Name);
                continue;
            }

            var product = string.Create(CultureInfo.InvariantCulture, $"products[{job.Products.ToList().IndexOf(was)}]");
            if (was.Width != now.Width) yield return Mend.Of(product + ".width", now.Width, job.Tape);
            if (was.Height != now.Height) yield return Mend.Of(product + ".height", now.Height, job.Tape);
        }
    }

    private static IEnumerable<Mend> OfBond(Job job, BondRequest asked, string path, BondRequest? offered) => (asked, offered) switch
    {
        (_, BondRequest.Grid grid) => [new(path, $"{{ \"kind\": \"grid\", \"turned\": {Number(grid.Turn)} }}")],
        (_, BondRequest.Chevron chevron) => [new(path + ".slope", Number(chevron.Slope))],
        (_, BondRequest.Herringbone herringbone) => [new(path + ".abreast", BondTiles.Say(herringbone.Abreast))],
        (_, BondRequest.Hexagon { Point: { } point }) => [Mend.Of(path + ".point", point, job.Tape)],
        (BondRequest.Octagon { Corner: not null }, BondRequest.Octagon now) => [now.Corner is { } corner ? Mend.Of(path + ".corner", corner, job.Tape) : new(path + ".corner", "null")],
        (_, BondRequest.Planks planks) => [Mend.Of(path + ".stagger", planks.Stagger, job.Tape)],
        (_, BondRequest.Mosaic mosaic) => [new(path + ".across", BondTiles.Say(mosaic.Across)), new(path + ".high", BondTiles.Say(mosaic.Up))],
        _ => [],
    };

    private static string Number(Angle angle) => angle.Degrees.ToString("0.###", CultureInfo.InvariantCulture);
}
