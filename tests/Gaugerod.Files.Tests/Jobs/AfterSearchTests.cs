using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>What no search hangs on may be changed without one: the plan is, byte for byte, the one made anew.</summary>
public sealed class AfterSearchTests
{
    private const string Supplies = """
        [{ "name": "mortar", "kind": "mortar", "yield": "14 l" }, { "name": "grey", "kind": "grout", "yield": "2 l" }, { "name": "silicone", "kind": "sealant", "yield": "310 ml" }, { "name": "roll-on", "kind": "membrane", "yield": "7 l", "covers": "6 m2" }]
        """;

    public static TheoryData<string, string, string> Changes => new()
    {
        { "supplies", "", Supplies },
        { "runs[0].setting", Supplies, """{ "mortar": "mortar", "backButter": "2 mm", "jointDepth": "6 mm", "grout": "grey", "sealant": "silicone" }""" },
        { "runs[0].movement", "", """{ "most": "1 m" }""" },
        { "faces[0].under", Supplies, """{ "membrane": { "of": "roll-on", "to": "1 m" } }""" },
        { "fills", """[{ "name": "block", "kind": "masonry", "yield": "9 l" }]""", """[{ "name": "bench", "of": "block", "length": "900 mm", "width": "350 mm", "height": "400 mm" }]""" },
        { "prices", "", """{ "currency": "EUR", "labour": [{ "task": "setting", "of": "tiled area", "per": "m2", "rate": "30" }] }""" },
        { "work", "", """{ "start": "2027-03-08", "pace": { "setting": "1 m2" } }""" },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_change_of_it_leaves_lines_and_cuts_as_they_are_and_gives_the_plan_made_anew(string path, string supplies, string value)
    {
        foreach (var sample in Samples.Names.Select(Samples.Text))
        {
            var root = JsonNode.Parse(sample)!.AsObject();
            if (supplies.Length > 0) root["supplies"] = JsonNode.Parse(supplies);
            var before = Planner.Plan(Job(root));
            Put(root, path, JsonNode.Parse(value)!);
            var job = Job(root);
            Assert.Empty(JobCheck.Check(job));
            var steps = Planner.Steps(JobCheck.Steps(job, large: true).Last()!, before).ToList();
            Assert.DoesNotContain(steps, step => step.Text.Contains("looking for", StringComparison.Ordinal));
            Assert.Equal(Encoding.UTF8.GetString(PlanWriter.Write(Planner.Plan(job))), Encoding.UTF8.GetString(PlanWriter.Write(steps[^1].Plan!)));
        }
    }

    private static void Put(JsonObject root, string path, JsonNode value)
    {
        var steps = path.Split('.');
        JsonObject at = root;
        foreach (var step in steps[..^1]) at = root[step[..step.IndexOf('[', StringComparison.Ordinal)]]![0]!.AsObject();
        at[steps[^1]] = value;
    }

    private static Job Job(JsonObject root) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(root.ToJsonString()), "job.json")).Job;
}
