using System.Globalization;
using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Invented rooms with their soft joints and what fills them, and slips in them.</summary>
public sealed class SoftJointJobTests
{
    private const double CubicInch = 0.016387064, Foot = 0.3048;

    // 10 ft of wall over a floor, a joint of 1/4 in there and free edges else.
    private const string TenFeet = """
        { "format": "gaugerod-job/1", "name": "Ten feet", "note": "Invented.", "units": "in",
          "products": [{ "name": "tile", "width": "12", "height": "12", "thickness": "3/8" }],
          "supplies": [{ "name": "silicone", "kind": "sealant", "pack": "10.1 oz tube", "yield": "10.1 fl oz" }, { "name": "cord", "kind": "backer", "yield": "20 ft" }],
          "faces": [{ "name": "wall", "outline": [[0, 0], ["120", 0], ["120", "48"], [0, "48"]],
            "edges": [{ "name": "foot", "kind": "floor", "joint": "1/4" }, { "name": "right", "kind": "free" }, { "name": "head", "kind": "free" }, { "name": "left", "kind": "free" }] }],
          "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": "1/8",
            "setting": { "sealant": "silicone", "sealantDepth": "1/4", "backer": "cord" } }] }
        """;

    // A tray 900 by 900 with three walls of 2 m; joints of 3 mm. The back wall runs through.
    private const string Shower = """
        { "format": "gaugerod-job/1", "name": "Shower", "note": "Invented.", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "tile", "width": 300, "height": 300, "thickness": 8 }, { "name": "small", "width": 50, "height": 50, "thickness": 8 }],
          "supplies": [{ "name": "silicone", "kind": "sealant", "pack": "tube", "yield": "310 ml", "loss": 10 }],
          "faces": [
            { "name": "left", "readings": { "width": { "foot": 900 }, "height": { "left": 2000 } }, "edges": { "left": { "kind": "free" } }, "beds": [{ "floor": "floor", "edge": "west" }] },
            { "name": "back", "readings": { "width": { "foot": 900 }, "height": { "left": 2000 } }, "beds": [{ "floor": "floor", "edge": "north" }] },
            { "name": "floor", "outline": [[0, 0], [900, 0], [900, 900], [0, 900]],
              "edges": [{ "name": "south", "kind": "threshold" }, { "name": "east", "kind": "fixture" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "inside corner" }],
              "holes": [{ "name": "drain", "x": 450, "y": 450, "diameter": 100 }],
              "falls": { "to": "drain", "least": 30, "fall": "2 %", "bag": { "name": "bed mix", "yield": "14 l" } } }],
          "runs": [
            { "name": "walls", "product": "tile", "faces": ["left", "back"], "through": "back", "bond": { "kind": "grid" }, "joint": 3, "setting": { "sealant": "silicone" } },
            { "name": "tray", "product": "small", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 2, "setting": { "sealant": "silicone" } }] }
        """;

    // Source: an article on sealant: 10 ft of 1/4 by 1/4 in are 7.5 in3; a seller's table: a 10.1 oz tube is 18.2 in3, and reaches 24 to 27 ft of it; 24.3 by arithmetic.
    [Fact]
    public void Ten_feet_of_a_quarter_by_a_quarter_take_7_5_cubic_inches_of_a_tube_that_reaches_24_feet()
    {
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, TenFeet));
        var plan = Planner.Plan(Job(TenFeet));
        var (sealant, cord) = (plan.Supplies[0], plan.Supplies[1]);
        Assert.Equal(7.5, sealant.Amount / CubicInch, 1e-9);
        Assert.Equal(18.2, sealant.Supply.Makes / CubicInch, 0.05);
        Assert.Equal(24.3, sealant.Supply.Makes / sealant.Amount * 10, 0.05);
        Assert.Equal(1, sealant.Packs);
        Assert.Equal(10 * Foot, cord.Amount, 1e-9);
        Assert.Equal("10 ft at the floor, 1/4 in wide, 1/4 in deep", sealant.Uses[0].How);
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(plan))));
    }

    // Source: a seller's table of cartridges: 27 oz 48.7 in3, 30 oz 54.1 in3.
    [Theory]
    [InlineData("27 fl oz", 48.7)]
    [InlineData("30 fl oz", 54.1)]
    public void A_cartridge_holds_what_its_ounces_come_to(string ounces, double cubicInches) =>
        Assert.Equal(cubicInches, Job(TenFeet.Replace("\"10.1 fl oz\"", $"\"{ounces}\"", StringComparison.Ordinal)).Supplies[0].Makes / CubicInch, 0.05);

    [Fact]
    public void A_corner_of_two_walls_and_the_foot_of_a_wall_on_a_bed_are_sealed_once()
    {
        var plan = Planner.Plan(Job(Shower));

        // By hand: the back wall's field is 894 mm wide, the left wall's 889, for it stops 8 mm of tile and a joint short, so its foot is counted by the floor's 894; two corners as high as the walls are.
        var high = plan.Runs[0].Faces[1].Face.Field.Outer.Bounds.Height.Steps / 3200.0 / 1000;
        Assert.Equal(
            string.Create(CultureInfo.InvariantCulture, $"{2 * high:0.00} m in corners, 0.89 m at the floor, 1.78 m at the ceiling, 3 mm wide, 3 mm deep"),
            plan.Supplies[0].Uses.Single(use => use.Where == "walls").How);

        // By hand: half as deep as wide is less than 1/8 in, so 3.175 mm deep; a tenth on top; three of the floor's sides are 894 mm of tile each.
        var sealant = plan.Supplies[0];
        Assert.Equal(3 * 894 * 3 * 3.175 / 1e6, sealant.Uses.Single(use => use.Where == "tray").Amount, 1e-6);
        Assert.Equal(1.1 * sealant.Uses.Sum(use => use.Amount), sealant.Amount, 1e-12);
        var mix = plan.Supplies[1];
        Assert.Equal(("bed mix", SupplyKind.Mix, plan.Beds[0].Bags), (mix.Supply.Name, mix.Supply.Kind, (int?)mix.Packs));
        Assert.DoesNotContain(plan.Findings, finding => finding.Rule == "soft-joint-twice");
    }

    [Fact]
    public void Where_nothing_joins_the_floor_to_its_walls_the_plan_says_that_they_may_be_counted_twice()
    {
        var apart = Shower.Replace(", \"beds\": [{ \"floor\": \"floor\", \"edge\": \"west\" }]", "", StringComparison.Ordinal);
        Assert.Contains(Planner.Plan(Job(apart)).Findings, finding => finding.Rule == "soft-joint-twice" && finding.Where == "walls");
        var sealedElsewhere = apart.Replace("\"name\": \"west\", \"kind\": \"inside corner\"", "\"name\": \"west\", \"kind\": \"inside corner\", \"sealed\": false", StringComparison.Ordinal);
        var plan = Planner.Plan(Job(sealedElsewhere));
        Assert.DoesNotContain("in corners, 0.89", plan.Supplies[0].Uses.Single(use => use.Where == "tray").How, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"sealant\": \"silicone\"", "\"sealant\": \"silicon\"", "runs[0].setting.sealant", "\"silicone\"")]
    [InlineData("\"sealant\": \"silicone\"", "\"sealant\": \"cord\"", "runs[0].setting.sealant", null)]
    [InlineData("\"backer\": \"cord\"", "\"backer\": \"cord\", \"sealer\": \"cord\"", "runs[0].setting.sealer", null)]
    [InlineData("\"sealant\": \"silicone\", ", "", "runs[0].setting.sealantDepth", "\"sealant\": \"..\"")]
    [InlineData("\"yield\": \"20 ft\"", "\"yield\": \"0\"", "supplies[1].yield", null)]
    [InlineData("\"yield\": \"20 ft\"", "\"yield\": \"20 gal\"", "supplies[1].yield", null)]
    [InlineData("\"joint\": \"1/4\"", "\"joint\": \"1/4\", \"sealed\": \"no\"", "faces[0].edges[0].sealed", null)]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest)
    {
        var spoilt = TenFeet.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(TenFeet, spoilt);
        Assert.Contains((path, nearest), Samples.Faults(spoilt).Select(fault => (fault.Path, fault.Nearest)));
    }

    [Fact]
    public void A_joint_too_narrow_or_too_deep_is_told_with_its_limit()
    {
        var plan = Planner.Plan(Job(TenFeet.Replace("\"joint\": \"1/4\"", "\"joint\": \"1/16\"", StringComparison.Ordinal)));
        Assert.Contains(plan.Findings, finding => finding is { Rule: "soft-joint", Value: "1/16 in" });
        Assert.Contains(Planner.Plan(Job(TenFeet)).Findings, finding => finding is { Rule: "soft-joint-depth", Value: "1/4 in" });
    }

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job;
}
