using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>What somebody found who had not seen the program, on invented walls and floors; the figures are reckoned by hand.</summary>
public sealed class FoundByAttackTests
{
    private const string Set = """{ "mortar": "m", "sealant": "s" }""";

    // 1/8 in is printed as 3 mm: what a job in millimetres leaves unasked is not held against it.
    [Fact]
    public void A_usual_soft_joint_is_as_wide_as_sealant_is_meant_for()
    {
        var root = Wall();
        root.Remove("edgeJoint");
        root["runs"]![0]!["setting"] = JsonNode.Parse(Set);
        Assert.DoesNotContain(Planner.Plan(Job(root)).Findings, finding => finding.Rule is "soft-joint" or "soft-joint-depth");
        root["edgeJoint"] = 2;
        Assert.Contains(Planner.Plan(Job(root)).Findings, finding => finding.Rule is "soft-joint");
    }

    // BS 5385: 4.5 m on walls, 10 m on floors. Three corners and an open side are a floor's; a splash wall stands between fixtures.
    [Theory]
    [InlineData("inside corner", "inside corner", 0)]
    [InlineData("threshold", "inside corner", 0)]
    [InlineData("fixture", "fixture", 1)]
    public void A_floor_with_an_open_side_is_held_to_what_floors_are(string north, string south, int told)
    {
        var root = Wall();
        root["region"] = "UK";
        root["faces"]![0] = JsonNode.Parse($$"""
            { "name": "wall", "outline": [[0, 0], [5000, 0], [5000, 3000], [0, 3000]],
              "edges": [{ "name": "south", "kind": "{{south}}" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "{{north}}" }, { "name": "west", "kind": "free" }] }
            """);
        Without(root, "wants");
        Assert.Equal(told, Planner.Plan(Job(root)).Findings.Count(finding => finding.Rule == "movement-joint"));
    }

    // Foot 2.4 m and two corners of 1.2 m: 4.8 m. Where the floor beside it is said to seal the foot, its band is the floor's.
    [Fact]
    public void A_band_lies_once_where_the_other_face_is_said_to_seal_the_corner()
    {
        var root = Wall();
        root["supplies"]!.AsArray().Add(JsonNode.Parse("""{ "name": "roll-on", "kind": "membrane", "yield": "7 l", "covers": "6 m2" }"""));
        root["supplies"]!.AsArray().Add(JsonNode.Parse("""{ "name": "band", "kind": "band", "yield": "10 m" }"""));
        root["faces"]![0]!["under"] = JsonNode.Parse("""{ "membrane": { "of": "roll-on", "band": "band", "to": "5 m" } }""");
        Assert.Equal((4.8, "4.80 m of corners, foot and thresholds"), Band());
        Assert.DoesNotContain(" high", Planner.Plan(Job(root)).Supplies.Single(line => line.Supply.Name == "roll-on").Uses[0].How, StringComparison.Ordinal);
        root["faces"]![0]!["edges"] = JsonNode.Parse("""{ "foot": { "sealed": false } }""");
        Assert.Equal((2.4, "2.40 m of corners, foot and thresholds"), Band());

        (double, string) Band() => Planner.Plan(Job(root)).Supplies.Single(line => line.Supply.Name == "band") is var line ? (Math.Round(line.Amount, 6), line.Uses[0].How) : default;
    }

    // By hand: the wall of 2.4 by 1.2 m less a niche of 400 by 300 mm, 90 mm deep; its back again, and four sides of 1.4 m by 90 mm: 2.88 - 0.12 + 0.12 + 0.126 m².
    [Fact]
    public void A_niche_that_is_lined_is_primed_inside()
    {
        var root = Wall();
        root["boards"] = JsonNode.Parse("""[{ "name": "board", "width": 1200, "length": 2400, "thickness": 12.5 }]""");
        root["supplies"]!.AsArray().Add(JsonNode.Parse("""{ "name": "primer", "kind": "primer", "yield": "20 m2" }"""));
        root["faces"]![0]!["board"] = JsonNode.Parse("""{ "of": "board", "studs": { "from": 0, "spacing": 600 } }""");
        root["faces"]![0]!["openings"] = JsonNode.Parse("""[{ "name": "niche", "left": 700, "bottom": 500, "width": 400, "height": 300, "depth": 90 }]""");
        root["faces"]![0]!["under"] = JsonNode.Parse("""{ "primer": { "of": "primer" } }""");
        var line = Planner.Plan(Job(root)).Supplies.Single(line => line.Supply.Name == "primer");
        Assert.Equal(3.006, line.Amount, 1e-9);
        Assert.Contains("of face and of what lines its niches", line.Uses[0].How, StringComparison.Ordinal);
    }

    // By hand: bands of 75 mm along a foot of 2.4 m, two corners of 1.2 m, and to both sides of what seams the boards have: (4.8 + 2 · seams) · 0.075 m².
    [Fact]
    public void Bands_of_membrane_go_over_the_seams_of_board()
    {
        var root = Wall();
        root["boards"] = JsonNode.Parse("""[{ "name": "board", "width": 800, "length": 1200, "thickness": 12.5, "gap": 0 }]""");
        root["supplies"]!.AsArray().Add(JsonNode.Parse("""{ "name": "roll-on", "kind": "membrane", "yield": "7 l", "covers": "6 m2" }"""));
        root["faces"]![0]!["under"] = JsonNode.Parse("""{ "membrane": { "of": "roll-on", "bands": 75 } }""");
        Assert.Equal(4.8 * 0.075 * 7 / 6, Litres(), 1e-9);
        root["faces"]![0]!["board"] = JsonNode.Parse("""{ "of": "board", "studs": { "from": 0, "spacing": 600 }, "foot": 0 }""");
        var seams = (double)Planner.Plan(Job(root)).Boards.Faces[0].SeamLength.Millimetres / 1000;
        Assert.True(seams >= 1.19, $"{seams} m");
        Assert.Equal((4.8 + (2 * seams)) * 0.075 * 7 / 6, Litres(), 1e-6);

        double Litres() => Planner.Plan(Job(root)).Supplies.Single(line => line.Supply.Name == "roll-on").Amount;
    }

    [Fact]
    public void No_mix_begins_before_the_one_before_is_used_up()
    {
        var root = Wall();
        root["faces"]![0]!["readings"] = JsonNode.Parse("""{ "width": { "foot": 4200 }, "height": { "left": 2500 } }""");
        root["runs"]![0]!["setting"] = JsonNode.Parse(Set);
        root["supplies"]![0]!["potLife"] = "30 min";
        root["work"] = JsonNode.Parse("""{ "start": "2027-03-08", "pace": { "setting": "1.2 m2", "cutting": "12 cuts" } }""");
        var mixes = Planner.Plan(Job(root)).Work!.Tasks.Where(task => task.Batches.Count > 1).ToList();
        Assert.NotEmpty(mixes);
        Assert.All(mixes, task => Assert.All(task.Batches.Zip(task.Batches.Skip(1)), pair => Assert.True(pair.Second.Begins >= pair.First.Ends)));
    }

    [Fact]
    public void A_tile_that_takes_more_than_a_pack_is_told()
    {
        var root = Wall();
        root["runs"]![0]!["setting"] = JsonNode.Parse(Set);
        root["supplies"]![0]!["yield"] = "0.2 l";
        root["supplies"]![0]!["potLife"] = "3 h";
        root["work"] = JsonNode.Parse("""{ "start": "2027-03-08", "pace": { "setting": "1.2 m2" } }""");
        Assert.Contains(Planner.Plan(Job(root)).Findings, finding => finding is { Rule: "work-pack", Level: FindingLevel.Note });
    }

    [Theory]
    [InlineData("potLife", "a supply that is no mortar or grout")]
    [InlineData("openTime", "a supply that is no mortar")]
    public void Times_of_what_does_not_stiffen_are_not_passed_over_in_silence(string field, string said)
    {
        var root = Wall();
        root["supplies"]![1]![field] = "20 min";
        Assert.Contains(Samples.Faults(root.ToJsonString()), fault => fault.Path == "supplies[1]." + field && fault.Found.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("14 L", null)]
    [InlineData("14,5 l", "\"14.5 l\"")]
    public void Litres_are_read_by_either_letter_and_with_a_point(string written, string? nearest)
    {
        var root = Wall();
        root["supplies"]![0]!["yield"] = written;
        if (nearest is null) Assert.Equal(14, Job(root).Supplies[0].Makes);
        else Assert.Equal(nearest, Assert.Single(Samples.Faults(root.ToJsonString())).Nearest);
    }

    [Fact]
    public void A_price_of_a_name_nearly_right_is_doubted_with_the_name_that_is_meant()
    {
        var root = Wall();
        root["prices"] = JsonNode.Parse("""{ "currency": "EUR", "items": [{ "item": "tle", "unit": "each", "price": 2 }] }""");
        var read = Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(root.ToJsonString()), "job.json"));
        Assert.Contains(read.Doubts, doubt => doubt.Path == "prices.items[0].item" && doubt.Nearest == "\"tile\"");
        Assert.Contains(Planner.Plan(read.Job).Findings, finding => finding.Rule == "name" && finding.Text == "prices.items[0].item: \"tle\", which nothing that is bought is called. Is \"tile\" meant?");
    }

    [Fact]
    public void More_tasks_than_a_job_has_and_more_words_than_a_row_holds_are_told()
    {
        var root = Wall();
        root["work"] = new JsonObject { ["start"] = "2027-03-08", ["tasks"] = new JsonArray([.. Enumerable.Range(0, 301).Select(i => new JsonObject { ["name"] = $"t{i}", ["takes"] = "1 h" })]) };
        root["prices"] = new JsonObject { ["currency"] = "EUR", ["quote"] = new JsonObject { ["included"] = new JsonArray(new string('m', 1001)) } };
        Assert.Equal(["work.tasks", "prices.quote.included[0]"], Samples.Faults(root.ToJsonString()).Select(fault => fault.Path).Order(StringComparer.Ordinal).Reverse());
    }

    private static JsonObject Wall()
    {
        var root = JsonNode.Parse(Samples.Text("plain-wall"))!.AsObject();
        root["supplies"] = JsonNode.Parse("""[{ "name": "m", "kind": "mortar", "yield": "5 l" }, { "name": "s", "kind": "sealant", "yield": "310 ml" }]""");
        return root;
    }

    private static void Without(JsonObject root, string field) => root["runs"]![0]!.AsObject().Remove(field);

    private static Job Job(JsonObject root) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(root.ToJsonString()), "job.json")).Job;
}
