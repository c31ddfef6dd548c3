using System.Globalization;
using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Invented floors too large to go without a soft joint across them.</summary>
public sealed class MovementJobTests
{
    private const string Hall = """
        { "format": "gaugerod-job/1", "name": "Hall", "note": "Invented.", "units": "in", "edgeJoint": 0,
          "products": [{ "name": "tile", "width": "11 7/8", "height": "11 7/8", "thickness": "3/8" }],
          "supplies": [{ "name": "silicone", "kind": "sealant", "yield": "10.1 fl oz" }],
          "faces": [{ "name": "floor", "outline": [[0, 0], ["WIDE", 0], ["WIDE", "48"], [0, "48"]],
            "edges": [{ "name": "south", "kind": "fixture", "joint": 0 }, { "name": "east", "kind": "fixture", "joint": 0 }, { "name": "north", "kind": "fixture", "joint": 0 }, { "name": "west", "kind": "fixture", "joint": 0 }] }],
          "runs": [{ "name": "floor", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": "1/8", "movement": { "exposure": "inside" }, "setting": { "sealant": "silicone", "sealantDepth": "1/8" } }] }
        """;

    // Source: trade press on TCNA EJ171: inside 25 ft at the most, in direct sun 12 ft.
    [Theory]
    [InlineData(24.9, "inside", 0)]
    [InlineData(26, "inside", 1)]
    [InlineData(11.9, "sun", 0)]
    [InlineData(12.1, "sun", 1)]
    [InlineData(12.1, "outside", 1)]
    [InlineData(25.2, "sun", 2)]
    public void A_field_larger_than_is_published_gets_the_joints_it_needs(double feet, string exposure, int joints)
    {
        var plan = Planner.Plan(Job(feet, exposure));
        Assert.Equal(joints, plan.Movement.Count);
        Assert.Equal(joints > 0, plan.Findings.Any(finding => finding.Rule == "movement-joint"));
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(plan))));
    }

    // By hand: one joint, 48 in long, 1/8 by 1/8; on a joint of the grid, so no tile is cut, and neither part is over 25 ft.
    [Fact]
    public void It_stands_on_a_joint_of_the_grid_and_is_sealed()
    {
        var plan = Planner.Plan(Job(26, "inside"));
        var joint = Assert.Single(plan.Movement);
        Assert.Equal((true, 0), (joint.IsPlumb, joint.Cut));
        Assert.InRange(joint.At.Steps / 3200.0 / 304.8, 12, 14);
        var half = (joint.At.Steps - (joint.Width.Steps / 2), joint.At.Steps + (joint.Width.Steps / 2));
        Assert.Equal(4, plan.Runs[0].Faces[0].Pieces.Count(piece => Math.Abs(piece.Outline.Bounds.Right.Steps - half.Item1) <= 1));
        Assert.Equal(48 * 0.125 * 0.125, plan.Supplies[0].Amount / 0.016387064, 1e-6);
        Assert.Equal("4.0 ft across the field, 1/8 in wide, 1/8 in deep", plan.Supplies[0].Uses[0].How);
    }

    // Source: BS 5385-3 as a supplier of joints gives it: edges of floors from 2 m on. 1.95 m is 76.8 in, 2.05 m is 80.7 in.
    [Theory]
    [InlineData(80.7 / 12, "UK", 1)]
    [InlineData(76.8 / 12, "UK", 0)]
    [InlineData(80.7 / 12, "US", 0)]
    public void A_large_floor_that_is_tight_at_its_edges_is_told_where_the_region_has_a_figure(double feet, string region, int found)
    {
        var told = Planner.Plan(Job(feet, "inside", region)).Findings.Where(finding => finding.Rule == "movement-edges").ToList();
        Assert.Equal(found, told.Count);
        Assert.All(told, finding => Assert.StartsWith("Of floor south, east, north, west have no soft joint", finding.Text, StringComparison.Ordinal));
    }

    // Source: a leaflet of the German tile trade's association, from memory: 40 m² on a heated screed. 4 ft by 100 ft are 37.2 m², by 110 ft 40.9 m².
    [Theory]
    [InlineData(110, "EU", "sun", 1)]
    [InlineData(100, "EU", "sun", 0)]
    [InlineData(110, "EU", "inside", 0)]
    [InlineData(110, "UK", "sun", 0)]
    public void A_heated_floor_is_held_to_the_area_that_its_region_has(double feet, string region, string exposure, int found) =>
        Assert.Equal(found, Planner.Plan(Job(feet, exposure + "\", \"most\": \"120 ft", region)).Findings.Count(finding => finding.Rule == "movement-area"));

    [Theory]
    [InlineData("\"exposure\": \"inside\"", "\"exposure\": \"sunn\"", "runs[0].movement.exposure", "\"sun\"")]
    [InlineData("\"exposure\": \"inside\"", "\"most\": 0", "runs[0].movement.most", "19 11/16 in")]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest) =>
        Assert.Contains((path, nearest), Samples.Faults(Hall.Replace("WIDE", "120", StringComparison.Ordinal).Replace(old, changed, StringComparison.Ordinal)).Select(fault => (fault.Path, fault.Nearest)));

    private static Job Job(double feet, string exposure, string? region = null)
    {
        var text = Hall.Replace("WIDE", (feet * 12).ToString("0.####", CultureInfo.InvariantCulture) + "in", StringComparison.Ordinal).Replace("\"exposure\": \"inside\"", $"\"exposure\": \"{exposure}\"", StringComparison.Ordinal);
        if (region is not null) text = text.Replace("\"units\": \"in\"", $"\"units\": \"in\", \"region\": \"{region}\"", StringComparison.Ordinal);
        return Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job;
    }
}
