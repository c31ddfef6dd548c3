using System.Text;
using System.Text.Json;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

public sealed class RegionJobTests
{
    [Theory]
    [InlineData("", null)]
    [InlineData("\"region\": null,", null)]
    [InlineData("\"region\": \"US\",", Region.America)]
    [InlineData("\"region\": \"UK\",", Region.Britain)]
    [InlineData("\"region\": \"EU\",", Region.Europe)]
    [InlineData("\"region\": \"AU\",", Region.Australia)]
    public void A_job_says_where_it_lies_and_the_plan_says_it_again(string field, Region? region)
    {
        var job = Assert.IsType<JobReading.Understood>(Read(field)).Job;
        Assert.Equal(region, job.Region);
        using var plan = JsonDocument.Parse(PlanWriter.Write(Planner.Plan(job)));
        Assert.Equal(region is { } of ? Words.Regions.Say(of) : null, plan.RootElement.GetProperty("job").TryGetProperty("region", out var said) ? said.GetString() : null);
    }

    [Theory]
    [InlineData("\"us\"", "Nearest: \"US\".")]
    [InlineData("\"NZ\"", "Nearest: \"AU\".")]
    [InlineData("\"CA\"", "Nearest: \"US\".")]
    [InlineData("7", "expected \"US\", \"UK\", \"EU\" or \"AU\".")]
    public void A_region_that_is_not_known_is_refused_with_the_one_that_was_meant(string region, string said)
    {
        var fault = Assert.Single(Assert.IsType<JobReading.Refused>(Read($"\"region\": {region},")).Faults).Say();
        Assert.StartsWith("job.json:6: region: found ", fault, StringComparison.Ordinal);
        Assert.EndsWith(said, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_goes_by_its_regions_limits_and_says_whose_it_borrows()
    {
        var plan = Planner.Plan(Assert.IsType<JobReading.Understood>(Read("\"region\": \"EU\",")).Job);
        var flat = Assert.Single(plan.Findings, finding => finding.Rule == "flatness");
        Assert.StartsWith("DIN 18202, table 3, row 6", flat.Source, StringComparison.Ordinal);
        Assert.Equal("out of plane by at most 10 mm over 4000 mm, 7 mm over 2000 mm, 5 mm over 1000 mm; where more was agreed, 8 mm over 4000 mm, 5 mm over 2000 mm, 3 mm over 1000 mm", flat.Limit);
        Assert.Contains(plan.Findings, finding => finding.Rule == "joint-variation" && finding.Level == FindingLevel.Warn && finding.Source == "DIN 18157 and DIN 18352 (from memory)" && finding.Limit == "at least 2 mm");
        Assert.Contains(plan.Findings, finding => finding.Rule == "warpage" && finding.Source.EndsWith("a North American figure, for none is held here for the European Union", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_finding_of_a_region_names_its_source_and_none_promises_more_than_a_limit()
    {
        foreach (var region in Words.Regions.All)
        {
            var plan = Planner.Plan(Assert.IsType<JobReading.Understood>(Read($"\"region\": \"{region}\",")).Job);
            Assert.All(plan.Findings, finding => Assert.NotEmpty(finding.Source));
            Assert.All(plan.Findings, finding => Assert.DoesNotMatch(@"(?i)\bsafe\b|complian|complies", finding.Text + finding.Limit + finding.Value));
        }
    }

    // The plain wall, which is invented, with a joint of 1 mm: narrower than any region has it.
    private static JobReading Read(string field) => JobReader.Read(
        Encoding.UTF8.GetBytes(Samples.With("plain-wall", "\"joint\": 3,", "\"joint\": 1,").Replace("\"edgeJoint\": 3", field + " \"edgeJoint\": 3", StringComparison.Ordinal)), "job.json");
}
