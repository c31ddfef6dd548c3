using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>A wall is set with its own pieces, a splash wall is held to what walls are, a hold is no longer than a job, and a membrane that changes is judged anew.</summary>
public sealed class ReadAgainTests
{
    // Uniques itself offers "wall 2" beside "wall".
    [Fact]
    public void A_wall_is_not_set_with_the_pieces_of_one_whose_name_begins_alike()
    {
        var root = JsonNode.Parse(Samples.Text("plain-wall"))!.AsObject();
        var other = root["faces"]![0]!.DeepClone().AsObject();
        other["name"] = "wall 2";
        root["faces"]!.AsArray().Add(other);
        root["runs"]![0]!["faces"]!.AsArray().Add("wall 2");
        root["work"] = new JsonObject { ["start"] = "2027-03-08", ["pace"] = new JsonObject { ["setting"] = "20 pieces" } };
        var plan = Planner.Plan(Job(root));
        Assert.Equal(plan.Runs[0].Faces[0].Pieces.Count, Set("set wall", "set wall, below the line"));
        Assert.Equal(plan.Runs[0].Faces[1].Pieces.Count, Set("set wall 2", "set wall 2, below the line"));

        double Set(params string[] names) => plan.Work!.Tasks.Where(task => names.Contains(task.Name)).Sum(task => task.Amounts.Single(amount => amount.Unit == PaceUnit.Pieces).Amount);
    }

    [Theory]
    [InlineData("300000 weeks")]
    [InlineData("999999 days 999999 days")]
    public void A_time_longer_than_any_job_is_refused_and_nothing_breaks(string time)
    {
        var root = JsonNode.Parse(Samples.Text("plain-wall"))!.AsObject();
        root["work"] = new JsonObject { ["start"] = "2027-03-08", ["flood"] = time };
        Assert.Contains(Samples.Faults(root.ToJsonString()), fault => fault.Path == "work.flood");
    }

    // A splash wall between fixtures and an open side is no floor, whatever stands at its foot: BS 5385 asks for 3 mm of floors, for 2 mm of walls.
    [Fact]
    public void A_wall_with_a_free_edge_is_no_floor()
    {
        var root = JsonNode.Parse(File.ReadAllText(Path.Combine(Gaugerod.Testing.Repo.Root, "samples", "galley-splash.json")))!.AsObject();
        root["region"] = "UK";
        Assert.False(Narrow(), "its joints of 2 mm are a wall's");

        // With its open side shut it is one: a corner or a fixture all round.
        root["faces"]![0]!["edges"]![1]!["kind"] = "inside corner";
        root["faces"]![0]!["edges"]![1]!.AsObject().Remove("trim");
        Assert.True(Narrow());

        bool Narrow() => Planner.Plan(Job(root)).Findings.Any(finding => finding is { Rule: "joint-variation", Level: Engine.FindingLevel.Warn });
    }

    // What the membrane's height is held against hangs on no search either.
    [Fact]
    public void In_a_region_a_membrane_that_is_changed_gives_the_plan_made_anew()
    {
        var root = JsonNode.Parse(Samples.Text("plain-wall"))!.AsObject();
        root["region"] = "US";
        root["supplies"] = JsonNode.Parse("""[{ "name": "roll-on", "kind": "membrane", "yield": "7 l", "covers": "6 m2" }]""");
        root["faces"]![0]!["under"] = JsonNode.Parse("""{ "membrane": { "of": "roll-on", "to": "300 mm" } }""");
        var before = Planner.Plan(Job(root));
        root["faces"]![0]!["under"] = null;
        var job = Job(root);
        var after = Planner.Steps(JobCheck.Steps(job, large: true).Last()!, before).Last().Plan!;
        Assert.Equal(Planner.Plan(job).Findings, after.Findings);
        Assert.NotEqual(before.Findings, after.Findings);
    }

    private static Job Job(JsonObject root) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(root.ToJsonString()), "job.json")).Job;
}
