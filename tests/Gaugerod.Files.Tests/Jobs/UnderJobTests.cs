using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>An invented wall with what goes under its tile and stands in its joints, and slips in them.</summary>
public sealed class UnderJobTests
{
    private const double Gallon = 3.785411784, SquareFoot = 0.09290304, Foot = 0.3048;

    // 10 by 8 ft with a niche of 12 by 24 in and a pipe of 2 in.
    private const string Wall = """
        { "format": "gaugerod-job/1", "name": "Wet wall", "note": "Invented.", "units": "in", "edgeJoint": "1/8",
          "products": [{ "name": "tile", "width": "12", "height": "12", "thickness": "3/8" }],
          "supplies": [{ "name": "roll-on", "kind": "membrane", "pack": "gallon", "yield": "1 gal", "dry": "25 mil", "solids": 50 },
            { "name": "corner band", "kind": "band", "yield": "33 ft" }, { "name": "primer", "kind": "primer", "yield": "200 ft2" }, { "name": "stone sealer", "kind": "sealer", "yield": "100 ft2" },
            { "name": "crosses", "kind": "spacers", "yield": 100 }, { "name": "clips", "kind": "clips", "yield": 50 }, { "name": "wedges", "kind": "wedges", "yield": 50 }],
          "faces": [{ "name": "wall", "outline": [[0, 0], ["120", 0], ["120", "96"], [0, "96"]],
            "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "free" }, { "name": "left", "kind": "free" }],
            "openings": [{ "name": "niche", "left": "40", "bottom": "40", "width": "12", "height": "24", "edge": { "kind": "outside corner", "finish": "mitre" } }],
            "holes": [{ "name": "pipe", "x": "90", "y": "45", "diameter": "2" }],
            "under": { "primer": { "of": "primer", "coats": 1 }, "membrane": { "of": "roll-on", "to": "72", "band": "corner band" } } }],
          "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": "1/8",
            "setting": { "spacers": { "of": "crosses" }, "clips": { "of": "clips", "every": "6" }, "wedges": "wedges", "sealer": { "of": "stone sealer", "coats": 2 } } }] }
        """;

    // By hand: 10 by 6 ft less 2 ft2 of niche are 58 ft2; 25 mil dry of half solids are 32.1 ft2 a gallon (1604 over 50).
    [Fact]
    public void A_membrane_takes_its_face_to_its_height_over_what_a_gallon_covers()
    {
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, Wall));
        var plan = Planner.Plan(Job(Wall));
        var membrane = plan.Supplies.Single(line => line.Supply.Name == "roll-on");
        Assert.Equal(58 / 32.085, membrane.Amount / Gallon, 1e-3);
        Assert.Equal(2, membrane.Packs);
        Assert.Equal("58.0 ft² of face, 72 in high, 50 mil wet to dry to 25 mil, in 2 coats", membrane.Uses[0].How);
        Assert.Equal((10 + 6) * Foot, Of("corner band"), 1e-9);
        Assert.Equal(78 * SquareFoot, Of("primer"), 1e-9);
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(plan))));

        double Of(string name) => plan.Supplies.Single(line => line.Supply.Name == name).Amount;
    }

    // Source: trade-press figures: a maker that states 55 ft2 a gallon means 29.2 mil wet.
    [Fact]
    public void Or_over_what_its_maker_says_a_pack_covers()
    {
        var plan = Planner.Plan(Job(Wall.Replace("\"dry\": \"25 mil\", \"solids\": 50", "\"covers\": \"55 ft2\"", StringComparison.Ordinal)));
        var membrane = plan.Supplies.Single(line => line.Supply.Name == "roll-on");
        Assert.Equal(58 / 55.0, membrane.Amount / Gallon, 1e-9);
        Assert.Equal(29.2, membrane.Supply.Coat!.Wet / 0.0254, 0.05);
    }

    // By hand, bands of 3 in: foot 120 and corner 72, the niche's 72 round, and a ring of 3 in round a pipe of 2.
    [Fact]
    public void In_bands_it_takes_corners_foot_openings_and_pipes_only()
    {
        var plan = Planner.Plan(Job(Wall.Replace("\"to\": \"72\"", "\"to\": \"72\", \"bands\": \"3\"", StringComparison.Ordinal)));
        var squareInches = ((120 + 72 + 72) * 3) + (Math.PI * (16 - 1));
        Assert.Equal(squareInches / 144 / 32.085, plan.Supplies.Single(line => line.Supply.Name == "roll-on").Amount / Gallon, 1e-3);
    }

    [Fact]
    public void Sealer_goes_on_the_field_as_often_as_it_is_wiped_and_wedges_are_used_again()
    {
        var plan = Planner.Plan(Job(Wall));
        var field = (double)plan.Runs[0].Faces[0].Face.Field.DoubledArea / 2 / (3200.0 * 3200.0) / 1e6;
        Assert.Equal(2 * field, plan.Supplies.Single(line => line.Supply.Name == "stone sealer").Amount, 1e-9);
        Assert.Equal(plan.Supplies.Single(line => line.Supply.Name == "clips").Amount, plan.Supplies.Single(line => line.Supply.Name == "wedges").Amount);
        Assert.InRange(plan.Supplies.Single(line => line.Supply.Name == "crosses").Amount, 60, 100);
    }

    [Theory]
    [InlineData(", \"dry\": \"25 mil\", \"solids\": 50", "", "supplies[0].covers", null)]
    [InlineData("\"dry\": \"25 mil\"", "\"dry\": \"25 mil\", \"covers\": \"55 ft2\"", "supplies[0].dry", "leave it out")]
    [InlineData(", \"solids\": 50", "", "supplies[0].solids", null)]
    [InlineData("\"solids\": 50", "\"solids\": 0", "supplies[0].solids", "1")]
    [InlineData("\"dry\": \"25 mil\"", "\"dry\": \"25 miles\"", "supplies[0].dry", null)]
    [InlineData("\"kind\": \"primer\"", "\"kind\": \"primer\", \"covers\": \"9 ft2\"", "supplies[2].covers", "leave it out")]
    [InlineData("\"yield\": 100 }", "\"yield\": 2.5 }", "supplies[4].yield", null)]
    [InlineData("\"membrane\": { \"of\": \"roll-on\"", "\"membrane\": { \"of\": \"rollon\"", "faces[0].under.membrane.of", "\"roll-on\"")]
    [InlineData("\"to\": \"72\"", "\"to\": \"0\"", "faces[0].under.membrane.to", null)]
    [InlineData("\"to\": \"72\"", "\"to\": \"72\", \"bands\": 0", "faces[0].under.membrane.bands", "7/16 in")]
    [InlineData("\"primer\": { \"of\": \"primer\", \"coats\": 1 }", "\"primer\": { \"of\": \"primer\", \"coats\": 9 }", "faces[0].under.primer.coats", "5")]
    [InlineData("\"clips\": { \"of\": \"clips\", \"every\": \"6\" }, ", "", "runs[0].setting.wedges", "\"clips\": \"..\"")]
    [InlineData("\"under\": {", "\"under\": { \"filler\": \"primer\",", "faces[0].under.filler", null)]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest)
    {
        var spoilt = Wall.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(Wall, spoilt);
        Assert.Contains((path, nearest), Samples.Faults(spoilt).Select(fault => (fault.Path, fault.Nearest)));
    }

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job;
}
