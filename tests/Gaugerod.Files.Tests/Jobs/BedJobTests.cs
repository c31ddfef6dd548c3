using System.Text;
using System.Text.Json;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Beds and flatness, read from files as they are written, and written into the plan.</summary>
public sealed class BedJobTests
{
    private const string Shower = """
        { "format": "gaugerod-job/1", "name": "shower", "units": "in", "edgeJoint": "1/8",
          "products": [{ "name": "t", "width": "5 7/8", "height": "5 7/8" }],
          "faces": [{ "name": "floor", "outline": [[0, 0], [36, 0], [36, 60], [0, 60]],
            "edges": [{ "name": "south", "kind": "threshold" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "inside corner" }],
            "holes": [{ "name": "drain", "x": 18, "y": 30, "diameter": 4 }],
            "falls": { "to": "drain", "least": "1 1/2", "fall": "1/4 per ft", "bag": { "name": "60 lb", "yield": "0.45 ft3" } },
            "flatness": { "grid": { "from": [6, 6], "step": 12, "heights": [[0, 0, 0], [0, "-1/4", 0], [0, 0, 0]] } } }],
          "runs": [{ "name": "floor", "product": "t", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": "1/8" }] }
        """;

    [Fact]
    public void A_bed_goes_from_the_file_into_the_plan_with_its_volume_bags_and_stakes()
    {
        var job = Read(Shower);
        Assert.Empty(JobCheck.Check(job));
        var plan = Planner.Plan(job);
        using var json = JsonDocument.Parse(PlanWriter.Write(plan));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(plan))));
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, Shower));
        var bed = json.RootElement.GetProperty("prep").GetProperty("beds")[0];
        // 2.482 ft3 by hand, six bags at 0.45.
        Assert.Equal(2.482 * 28.3168, bed.GetProperty("litres").GetDouble(), 0.02);
        Assert.Equal(6, bed.GetProperty("bags").GetInt32());
        Assert.Equal(38.1m, bed.GetProperty("least").GetDecimal());
        Assert.Contains(bed.GetProperty("stakes").EnumerateArray(), stake => stake.GetProperty("on").GetString() == "to south and east");
        Assert.Contains(plan.Findings, finding => finding.Rule == "bed" && finding.Text.Contains("6 bags of 60 lb", StringComparison.Ordinal));
    }

    // A setter's page on the mix for shower beds: 60 lb of a 3:1 mix and 30 lb of sand are 15 of cement to 75 of sand, 1:5.
    [Fact]
    public void A_bag_made_leaner_says_the_sand_that_goes_to_it_and_to_all()
    {
        var leaner = Shower.Replace("\"0.45 ft3\"", "\"0.45 ft3\", \"sand\": { \"weight\": \"60 lb\", \"from\": 3, \"to\": 5 }", StringComparison.Ordinal);
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, leaner));
        var plan = Planner.Plan(Read(leaner));
        Assert.Contains("30 lb of dry sand, 180 lb in all", Assert.Single(plan.Findings, finding => finding.Rule == "bed-mix").Text, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(PlanWriter.Write(plan));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(plan))));
        Assert.Equal(180 * 0.45359237, json.RootElement.GetProperty("prep").GetProperty("beds")[0].GetProperty("sand").GetDouble(), 0.05);
        Assert.Equal(30.0 * 0.45359237, new MoreSand(60 * 0.45359237, 3, 5).Added, 1e-9);
    }

    [Fact]
    public void A_dip_under_the_straightedge_is_found_with_what_fills_it()
    {
        // Of a face that falls nothing is judged: nobody says whether base or bed was read.
        var level = Shower.Replace("\"falls\": { \"to\": \"drain\", \"least\": \"1 1/2\", \"fall\": \"1/4 per ft\", \"bag\": { \"name\": \"60 lb\", \"yield\": \"0.45 ft3\" } },", "", StringComparison.Ordinal);
        var plan = Planner.Plan(Read(level));
        // A quarter inch deep between two neighbours a foot away: within 1/4 in 10 ft, beyond nothing shorter that three readings lie in.
        var flat = Assert.Single(plan.Flat);
        Assert.Equal(Length.FromInches(0, 1, 4), flat.Gaps[0].Hollow);
        Assert.True(flat.Gaps[0].IsWithin);
        Assert.Contains(plan.Findings, finding => finding.Rule == "flatness" && finding.Level == FindingLevel.Note && finding.Text.Contains("Read nearer together", StringComparison.Ordinal));
        var deep = Planner.Plan(Read(level.Replace("-1/4", "-3/8", StringComparison.Ordinal)));
        Assert.Contains(deep.Findings, finding => finding.Rule == "flatness" && finding.Level == FindingLevel.Warn && finding.Value == "3/8 in");
        Assert.Contains(deep.Findings, finding => finding.Rule == "flatness" && finding.Text.Contains("fill ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("1/4 per ft", 1, 48)]
    [InlineData("1/4 in per foot", 1, 48)]
    [InlineData("1:48", 1, 48)]
    [InlineData("1 in 48", 1, 48)]
    [InlineData("2 %", 1, 50)]
    [InlineData("2.5%", 1, 40)]
    [InlineData("20 mm per m", 1, 50)]
    [InlineData("20 per m", 1, 50)]
    public void A_fall_is_read_as_one_says_it(string said, long rise, long over) =>
        Assert.Equal(new Fall(rise, over), Read(Shower.Replace("1/4 per ft", said, StringComparison.Ordinal)).Faces[0].Falls!.Bed!.Fall);

    [Theory]
    [InlineData("\"floor\": \"floor\", ", "", "faces[1].beds[0].floor", null)]
    [InlineData("\"edge\": \"north\"", "\"edg\": \"north\"", "faces[1].beds[0].edg", "\"edge\"")]
    [InlineData("\"lowest\": \"1\"", "\"lowest\": \"high\"", "faces[1].beds[0].lowest", null)]
    [InlineData("[\"18\", \"48 1/8\"]", "\"18\"", "faces[1].readings.levelLine.between[0]", null)]
    [InlineData("\"to\": \"drain\"", "\"to\": \"drain\", \"toward\": \"south\"", "faces[0].falls.toward", "one of the two")]
    public void Of_a_wall_on_a_bed_what_nobody_can_mean_is_named_with_what_fits(string old, string changed, string path, string? nearest)
    {
        var refused = Assert.IsType<JobReading.Refused>(JobReader.Read(Encoding.UTF8.GetBytes(WithWall.Replace(old, changed, StringComparison.Ordinal)), "job.json"));
        Assert.Contains((path, nearest), refused.Faults.Select(fault => (fault.Path, fault.Nearest)));
    }

    [Theory]
    [InlineData("[\"18\", \"48 1/8\"]", "[\"40\", \"48 1/8\"]", "faces[1].readings.levelLine.between[0]")]
    [InlineData("[\"18\", \"48 1/8\"]", "[\"18\", \"4 1/8\"]", "faces[1].readings.levelLine.between[0]")]
    [InlineData("\"edge\": \"north\"", "\"edge\": \"nort\"", "faces[1].beds[0].edge")]
    [InlineData("\"lowest\": \"1\"", "\"lowest\": \"100\"", "faces[1].beds")]
    public void A_wall_on_a_bed_that_cannot_stand_there_is_named(string old, string changed, string path) =>
        Assert.Contains(path, JobCheck.Check(Read(WithWall.Replace(old, changed, StringComparison.Ordinal))).Select(fault => fault.Path));

    [Fact]
    public void A_wall_on_a_bed_is_read_with_its_stations_and_stands_where_the_bed_is()
    {
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, WithWall));
        var job = Read(WithWall);
        Assert.Equal(new OnBed("foot", "floor", "north") { Lowest = Length.FromInches(1) }, job.Faces[1].Beds[0]);
        Assert.Equal(Length.FromInches(48, 1, 8), ((FaceShape.Read)job.Faces[1].Shape).Readings.LevelLine!.Between[0].Height);
        Assert.Empty(JobCheck.Check(job));
        // 1 in and the rise of the corner 34.99 in away: 1.73 in.
        Assert.Equal(1.729 * 25.4, (double)Planner.Plan(job).Runs[1].Faces[0].Face.Outline.Points.Min(point => point.Y.Millimetres), 0.02);
    }

    private static readonly string WithWall = Shower
        .Replace("[0, 0, 0]] } } }],", """
            [0, 0, 0]] } } },
            { "name": "north", "readings": { "width": { "foot": "36" }, "height": { "left": "96" }, "levelLine": { "left": "48", "right": "48", "between": [["18", "48 1/8"]] } },
              "beds": [{ "floor": "floor", "edge": "north", "lowest": "1" }] }],
            """, StringComparison.Ordinal)
        .Replace("\"joint\": \"1/8\" }] }", "\"joint\": \"1/8\" }, { \"name\": \"wall\", \"product\": \"t\", \"faces\": [\"north\"], \"bond\": { \"kind\": \"grid\" }, \"joint\": \"1/8\" }] }", StringComparison.Ordinal);

    [Theory]
    [InlineData("\"fall\": \"1/4 per ft\"", "\"fall\": \"1:4\"", "faces[0].falls.fall", "\"1 in 8\"")]
    [InlineData("\"fall\": \"1/4 per ft\"", "\"fall\": 2", "faces[0].falls.fall", "\"2 %\"")]
    [InlineData("\"fall\": \"1/4 per ft\"", "\"fall\": \"steep\"", "faces[0].falls.fall", null)]
    [InlineData("\"least\": \"1 1/2\"", "\"least\": \"-1 1/2\"", "faces[0].falls.least", "1 1/2 in")]
    [InlineData("\"least\": \"1 1/2\", ", "", "faces[0].falls", "\"least\": \"1 1/2\", or 0 where it feathers out")]
    [InlineData("\"to\": \"drain\", ", "", "faces[0].falls", "\"to\": the drain's name")]
    [InlineData("\"to\": \"drain\"", "\"drains\": [\"drian\"]", "faces[0].falls.drains[0]", "\"drain\"")]
    [InlineData("\"to\": \"drain\"", "\"to\": \"drain\", \"drains\": [\"drain\"]", "faces[0].falls.drains", "one of the two")]
    [InlineData("\"to\": \"drain\"", "\"to\": \"drain\", \"perimeter\": \"levl\"", "faces[0].falls.perimeter", "\"level\"")]
    [InlineData("0.45 ft3", "much", "faces[0].falls.bag.yield", null)]
    [InlineData("\"0.45 ft3\"", "\"0.45 ft3\", \"sand\": { \"weight\": \"60 lb\", \"from\": 5, \"to\": 3 }", "faces[0].falls.bag.sand.to", "6")]
    [InlineData("\"0.45 ft3\"", "\"0.45 ft3\", \"sand\": { \"weight\": \"60 st\", \"from\": 3, \"to\": 5 }", "faces[0].falls.bag.sand.weight", null)]
    [InlineData("\"step\": 12", "\"step\": 0", "faces[0].flatness.grid.step", null)]
    [InlineData("\"heights\": [[0, 0, 0], ", "\"heights\": [[0, 0], ", "faces[0].flatness.grid.heights[1]", null)]
    [InlineData("\"heights\"", "\"gaps\": [], \"heights\"", "faces[0].flatness.grid", null)]
    public void What_nobody_can_mean_is_named_with_what_fits(string old, string changed, string path, string? nearest)
    {
        var refused = Assert.IsType<JobReading.Refused>(JobReader.Read(Encoding.UTF8.GetBytes(Shower.Replace(old, changed, StringComparison.Ordinal)), "job.json"));
        var fault = Assert.Single(refused.Faults.DistinctBy(fault => fault.Path));
        Assert.Equal((path, nearest), (fault.Path, fault.Nearest));
    }

    [Fact]
    public void Drains_without_folds_leave_the_tile_whole_and_say_how_large_it_may_be()
    {
        var plan = Planner.Plan(Read(Shower.Replace("\"to\": \"drain\"", "\"drains\": [\"drain\"]", StringComparison.Ordinal)));
        Assert.Equal("floor", Assert.Single(plan.Runs[0].Faces).Face.Name);
        Assert.Contains(plan.Findings, finding => finding.Rule == "bed" && finding.Where == "floor" && finding.Text.StartsWith("No folds are cut on it", StringComparison.Ordinal));
    }

    [Fact]
    public void A_place_of_the_grid_that_could_not_be_read_is_left_out_and_the_others_stand()
    {
        var without = Shower.Replace("[0, \"-1/4\", 0]", "[\"\", \"-1/4\", null]", StringComparison.Ordinal);
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, without));
        var read = Read(without).Faces[0].Flatness!;
        Assert.Null(read.Grid);
        Assert.Equal(7, read.Points.Count);
        Assert.Contains(new FlatReading(new(Length.FromInches(18), Length.FromInches(18)), -Length.FromInches(0, 1, 4)), read.Points);
        Assert.Equal(7, Planner.Plan(Read(without)).Flat[0].Spots.Count);
        var refused = Assert.IsType<JobReading.Refused>(JobReader.Read(Encoding.UTF8.GetBytes(Shower.Replace("[[0, 0, 0], [0, \"-1/4\", 0], [0, 0, 0]]", "[[\"\", \"\"], [0, 0]]", StringComparison.Ordinal)), "job.json"));
        Assert.Equal(("faces[0].flatness.grid.heights", "a grid with 2 readings and some left out"), refused.Faults.Select(fault => (fault.Path, fault.Found)).Single());
    }

    [Fact]
    public void A_grid_off_the_face_is_named() =>
        Assert.Equal("faces[0].flatness.grid", Assert.Single(JobCheck.Check(Read(Shower.Replace("\"step\": 12", "\"step\": 20", StringComparison.Ordinal)))).Path);

    private static Job Read(string job) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job), "job.json")).Job;
}
