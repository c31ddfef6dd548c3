using System.Globalization;
using System.Text.RegularExpressions;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Testing;

namespace Gaugerod.House.Tests;

/// <summary>What docs/lines.md says of the guest shower.</summary>
public sealed class LinesPageTests
{
    [Fact]
    public void The_guest_shower_s_bound_stands_as_far_above_what_was_found_as_the_page_says()
    {
        var page = File.ReadAllText(Path.Combine(Repo.Root, "docs/lines.md"));
        var said = Regex.Match(page, @"On the guest shower the bound is (?<less>less than )?(?<mm>[0-9]+(\.(?<figures>[0-9]+))?) mm above what was found\.");
        Assert.True(said.Success);
        var mm = decimal.Parse(said.Groups["mm"].Value, CultureInfo.InvariantCulture);

        var read = Assert.IsType<JobReading.Understood>(JobReader.Read(File.ReadAllBytes(Path.Combine(Repo.Root, "samples/guest-shower.json")), "guest-shower.json"));
        var run = Assert.Single(Planner.Plan(read.Job).Runs);
        Assert.Equal(ProofKind.Bounded, run.Proof.Kind);
        var above = (run.Proof.Bound - run.Best.Score.SmallestCut).Steps / 3200m;

        if (said.Groups["less"].Success)
        {
            // "Less than" says the next round figure: a tenth of it would have been said otherwise.
            Assert.InRange(above, mm / 10, mm);
            Assert.NotEqual(mm, above);
        }
        else
        {
            Assert.Equal(mm, Math.Round(above, said.Groups["figures"].Length, MidpointRounding.AwayFromZero));
        }
    }
}
