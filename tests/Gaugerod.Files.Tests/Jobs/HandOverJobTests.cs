using System.Text;
using System.Text.Json;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>An invented wall and what its setter noted for the client, and slips in it.</summary>
public sealed class HandOverJobTests
{
    private const string Wall = """
        { "format": "gaugerod-job/1", "name": "Utility wall", "note": "Invented.", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "tile", "width": 300, "height": 300, "thickness": 8, "perBox": 10, "spares": 2 }],
          "supplies": [{ "name": "grey grout", "kind": "grout", "yield": "3 l" }],
          "handover": { "care": ["Wipe it dry."],
            "lots": [{ "of": "tile", "lot": "07 B", "colour": "chalk", "caliber": "09", "note": "one pallet" }, { "of": "grey grout", "lot": "2214" }],
            "kept": "in the cellar", "renew": 5,
            "photographs": [{ "of": "wall", "what": "pipes before boards", "where": "album 1" }],
            "tests": [{ "what": "flood test", "on": "2027-03-16", "by": "the setter", "result": "level held", "again": "2028-03-16" }] },
          "faces": [{ "name": "wall", "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]],
            "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }] }],
          "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    [Fact]
    public void What_was_noted_is_read_as_the_schema_has_it_and_the_plan_says_it_again()
    {
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, Wall));
        var job = Job(Wall);
        Assert.Equal(new LotNote("tile", "07 B", "chalk", "09", "one pallet"), job.HandOver!.Lots[0]);
        Assert.Equal(new Photograph("wall", "pipes before boards", "album 1"), job.HandOver.Photographs[0]);
        Assert.Equal(new TestNote("flood test", new(2027, 3, 16), "the setter", "level held", new(2028, 3, 16)), job.HandOver.Tests[0]);

        using var plan = Written(job);
        var given = plan.RootElement.GetProperty("handover");
        Assert.Equal(["tile", "grey grout"], given.GetProperty("lots").EnumerateArray().Select(lot => lot.GetProperty("of").GetString()!));
        Assert.Equal((2, 5), (given.GetProperty("left")[0].GetProperty("spares").GetInt32(), given.GetProperty("renew").GetInt32()));

        // By hand: two sides of 2394 and two of 2994, what 2400 by 3000 leave between soft joints of 3.
        Assert.Equal([2394, 2394, 2994, 2994], given.GetProperty("softJoints").EnumerateArray().Select(joint => joint.GetProperty("length").GetDouble()).Order());
    }

    [Fact]
    public void An_empty_group_asks_for_it_and_a_job_without_one_has_none()
    {
        var (at, end) = (Wall.IndexOf("\"handover\": {", StringComparison.Ordinal), Wall.IndexOf("\"faces\"", StringComparison.Ordinal));
        var bare = Wall[..at] + "\"handover\": {}, " + Wall[end..];
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, bare));
        using var plan = Written(Job(bare));
        Assert.NotEmpty(plan.RootElement.GetProperty("handover").GetProperty("toPhotograph").EnumerateArray());
        Assert.Equal(JsonValueKind.Null, plan.RootElement.GetProperty("handover").GetProperty("renew").ValueKind);
        using var without = Written(Job(Wall[..at] + Wall[end..]));
        Assert.False(without.RootElement.TryGetProperty("handover", out _));
    }

    [Theory]
    [InlineData("\"of\": \"grey grout\"", "\"of\": \"gray grout\"", "job.json:5: handover.lots[1].of: found \"gray grout\", expected a tile, a trim, a board or a supply of this job: \"tile\" or \"grey grout\". Nearest: \"grey grout\".")]
    [InlineData("\"renew\": 5", "\"renew\": 0", "job.json:6: handover.renew: found 0, expected a whole number from 1 to 50. Nearest: 1.")]
    [InlineData("\"on\": \"2027-03-16\"", "\"on\": \"2027-02-30\"", "job.json:8: handover.tests[0].on: found \"2027-02-30\", expected a date, year, month and day, such as \"2027-03-08\". Nearest: \"2027-02-28\".")]
    [InlineData("\"again\": \"2028-03-16\"", "\"again\": \"2026-03-16\"", "job.json:8: handover.tests[0].again: found \"2026-03-16\", expected a day not before \"on\". Nearest: \"2027-03-16\".")]
    [InlineData("\"what\": \"flood test\", ", "", "job.json:8: handover.tests[0].what: found nothing, expected what was tested, such as \"flood test\".")]
    [InlineData("\"what\": \"pipes before boards\"", "\"what\": \" \"", "job.json:7: handover.photographs[0].what: found \" \", expected text that says something.")]
    [InlineData("\"care\": [\"Wipe it dry.\"]", "\"care\": \"Wipe it dry.\"", "job.json:4: handover.care: found \"Wipe it dry.\", expected a list [ ].")]
    [InlineData("\"colour\"", "\"color\"", "job.json:5: handover.lots[0].color: found an unknown field \"color\", expected \"of\", \"lot\", \"colour\", \"caliber\" or \"note\". Nearest: \"colour\".")]
    public void A_slip_is_said_where_it_stands(string old, string changed, string said)
    {
        Assert.Equal(2, Wall.Split(old).Length);
        Assert.Contains(said, Samples.Messages(Wall.Replace(old, changed, StringComparison.Ordinal)));
    }

    /// <summary>Nothing hangs on it: the plan before is gone on from.</summary>
    [Fact]
    public void A_lot_that_is_noted_searches_nothing_anew()
    {
        var before = Planner.Plan(Job(Wall));
        var ready = JobCheck.Steps(Job(Wall.Replace("2214", "2215", StringComparison.Ordinal)), large: true).Last()!;
        var steps = Planner.Steps(ready, before).ToList();
        Assert.DoesNotContain(steps, step => step.Text.Contains("looking for", StringComparison.Ordinal));
        var after = steps[^1].Plan!;
        Assert.Same(before.Runs, after.Runs);
        Assert.Equal("2215", HandingOver.Of(after)!.Lots[1].Notes[0].Lot);
    }

    private static JsonDocument Written(Job job)
    {
        var file = Encoding.UTF8.GetString(PlanWriter.Write(Planner.Plan(job)));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, file));
        return JsonDocument.Parse(file);
    }

    private static Job Job(string text) => Assert.IsType<Gaugerod.Files.Jobs.JobReading.Understood>(Samples.Read(text)).Job;
}
