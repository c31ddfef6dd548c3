using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>An invented floor measured corner to corner, and slips in it.</summary>
public sealed class SurveyJobTests
{
    private const string Floor = """
        { "format": "gaugerod-job/1", "name": "Utility floor", "note": "Invented.", "units": "mm",
          "products": [{ "name": "tile", "width": 300, "height": 300 }],
          "faces": [{ "name": "floor",
            "survey": { "corners": ["A", "B", "C", "D"], "spots": ["drain"],
              "readings": [
                { "from": "A", "to": "B", "is": 3000 }, { "from": "B", "to": "C", "is": 2000 }, { "from": "C", "to": "D", "is": 3000 }, { "from": "D", "to": "A", "is": 2000 },
                { "from": "A", "to": "C", "is": 3606, "by": "laser" }, { "from": "B", "to": "D", "is": 3605, "within": 2 },
                { "corner": "B", "is": 1500 },
                { "side": ["A", "B"], "to": "drain", "is": 800 }, { "side": ["D", "A"], "to": "drain", "is": 1200 },
                { "strings": [["A", "C"], ["B", "D"]], "is": 1803 },
                { "from": { "from": "A", "towards": "B", "at": 1000 }, "to": "D", "is": 2236 }] },
            "edges": [{ "name": "south", "kind": "inside corner" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "threshold" }] }],
          "runs": [{ "name": "floor", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    [Fact]
    public void It_is_read_weighed_and_planned()
    {
        var read = Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(Floor), "job.json"));
        var survey = Assert.Single(Planner.Plan(read.Job).Surveys);
        Assert.Equal(11, survey.Readings.Count);

        // Eight numbers stand free, less three for where the floor lies, and two of the drain.
        Assert.Equal(11 - 7, survey.Beyond);
        Assert.Empty(survey.Suspects);
        var drain = survey.Corners[^1];
        Assert.Equal("drain", drain.Name);
        Assert.True((drain.Place.X - Length.FromMillimetres(1200)).Abs() < Length.FromMillimetres(2) && (drain.Place.Y - Length.FromMillimetres(800)).Abs() < Length.FromMillimetres(2), $"{drain.Place}");
    }

    [Fact]
    public void A_drain_stands_where_the_survey_settles_its_spot_and_its_bed_falls_to_it()
    {
        var job = Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(WithDrain), "job.json")).Job;
        Assert.Empty(JobCheck.Check(job));
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, WithDrain));
        var plan = Planner.Plan(job);
        var hole = Assert.Single(plan.Runs[0].Faces[0].Face.Holes);
        Assert.Equal(plan.Surveys[0].Corners[^1].Place, hole.Centre);
        Assert.Equal(hole.Centre, plan.Beds[0].Drains[0].From);
        Assert.Contains(plan.Findings, finding => finding.Rule == "bed" && finding.Text.StartsWith("No folds are cut on it", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"spot\": \"drain\"", "\"spot\": \"drian\"", "faces[0].holes[0].spot", "\"drain\"")]
    [InlineData("\"spot\": \"drain\"", "\"spot\": \"drain\", \"x\": 3", "faces[0].holes[0].spot", "\"spot\" alone")]
    [InlineData("\"spot\": \"drain\"", "\"x\": 3", "faces[0].holes[0].y", null)]
    public void A_hole_at_no_spot_is_said_where_it_stands(string old, string changed, string path, string? nearest) =>
        Assert.Contains((path, nearest), Samples.Faults(WithDrain.Replace(old, changed, StringComparison.Ordinal)).Select(fault => (fault.Path, fault.Nearest)));

    private static readonly string WithDrain = Floor.Replace("\"edges\": [", """
        "holes": [{ "name": "outlet", "spot": "drain", "diameter": 110 }], "falls": { "drains": ["outlet"], "least": 30 }, "edges": [
        """, StringComparison.Ordinal);

    [Theory]
    [InlineData("\"to\": \"C\", \"is\": 3606", "\"to\": \"Q\", \"is\": 3606", "faces[0].survey.readings[4].to", "\"B\"")]
    [InlineData("\"spots\": [\"drain\"]", "\"spots\": [\"drian\"]", "faces[0].survey.readings[7].to", "\"drian\"")]
    [InlineData("\"to\": \"B\", \"is\": 3000", "\"to\": \"A\", \"is\": 3000", "faces[0].survey.readings[0].to", null)]
    [InlineData("\"corner\": \"B\", \"is\": 1500", "\"is\": 1500", "faces[0].survey.readings[6]", null)]
    [InlineData("\"corner\": \"B\", \"is\": 1500", "\"corner\": \"B\", \"from\": \"A\", \"is\": 1500", "faces[0].survey.readings[6]", null)]
    [InlineData("\"is\": 1500", "\"is\": 1500, \"legs\": [900]", "faces[0].survey.readings[6].legs", null)]
    [InlineData("\"by\": \"laser\"", "\"by\": \"lazer\"", "faces[0].survey.readings[4].by", "\"laser\"")]
    [InlineData("\"within\": 2", "\"within\": -2", "faces[0].survey.readings[5].within", "2 mm")]
    [InlineData("\"B\", \"is\": 3000 }", "\"B\" }", "faces[0].survey.readings[0].is", null)]
    [InlineData("[\"A\", \"B\", \"C\", \"D\"], \"spots\"", "[\"A\", \"B\"], \"spots\"", "faces[0].survey.corners", null)]
    [InlineData("[\"A\", \"B\", \"C\", \"D\"], \"spots\"", "[\"A\", \"B\", \"C\", \"C\"], \"spots\"", "faces[0].survey.corners[3]", "\"C 2\"")]
    [InlineData("[\"A\", \"B\", \"C\", \"D\"], \"spots\"", "[\"A\", \"B\", \"C\", { \"name\": \"D\", \"near\": [0, 2000] }], \"spots\"", "faces[0].survey.corners[0]", "{ \"name\": \"A\", \"near\": [x, y] }")]
    [InlineData("[[\"A\", \"C\"], [\"B\", \"D\"]]", "[\"A\", \"C\"]", "faces[0].survey.readings[9].strings", null)]
    [InlineData("{ \"name\": \"west\", \"kind\": \"threshold\" }", "", "faces[0].edges", null)]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest)
    {
        var spoilt = Floor.Replace(old, changed, StringComparison.Ordinal).Replace("\"inside corner\" }, ]", "\"inside corner\" }]", StringComparison.Ordinal);
        Assert.NotEqual(Floor, spoilt);
        var refused = Samples.Faults(spoilt);
        Assert.Contains(refused, fault => fault.Path == path && fault.Nearest == nearest);
    }

    [Fact]
    public void A_wall_whose_foot_is_the_floor_s_side_is_weighed_with_it_and_its_heights_from_the_level_line_follow()
    {
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, WithWall));
        var job = Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(WithWall), "job.json")).Job;
        Assert.Empty(JobCheck.Check(job));
        var plan = Planner.Plan(job);
        Assert.Equal(["floor", "wall"], plan.Surveys.SelectMany(survey => survey.With));
        var wall = plan.Surveys.Single(survey => survey.Face == "wall");

        // Read as 3000 on the floor and as 3004 on the wall: between them, nearer its own, since the two sides may differ too.
        Assert.InRange((double)wall.Sides[0].Value.Millimetres, 3002, 3003);
        Assert.True(wall.Readings[0].Redundancy > 0.3);
        var json = Encoding.UTF8.GetString(Files.Plans.PlanWriter.Write(plan));
        Assert.Contains("\"with\": [", json, StringComparison.Ordinal);
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, json));
    }

    [Theory]
    [InlineData("\"face\": \"floor\"", "\"face\": \"flor\"", "faces[1].survey.same[0].face", "\"floor\"")]
    [InlineData("\"face\": \"floor\"", "\"face\": \"wall\"", "faces[1].survey.same[0].face", null)]
    [InlineData("\"as\": [\"A\", \"B\"]", "\"as\": [\"A\", \"C\"]", "faces[1].survey.same[0].as", "[\"A\", \"B\"]")]
    [InlineData("\"as\": [\"A\", \"B\"]", "\"as\": [\"E\", \"B\"]", "faces[1].survey.same[0].as[0]", "\"A\"")]
    [InlineData(", \"as\": [\"A\", \"B\"]", "", "faces[1].survey.same[0].as", null)]
    [InlineData("\"side\": [\"P\", \"Q\"]", "\"side\": [\"P\", \"P\"]", "faces[1].survey.same[0].side", null)]
    [InlineData("\"same\": [", "\"smae\": [", "faces[1].survey.smae", "\"same\"")]
    public void A_slip_in_a_shared_side_is_said_where_it_stands(string old, string changed, string path, string? nearest)
    {
        var spoilt = WithWall.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(WithWall, spoilt);
        Assert.Contains((path, nearest), Samples.Faults(spoilt).Select(fault => (fault.Path, fault.Nearest)));
    }

    [Fact]
    public void A_wall_taken_for_the_wrong_side_is_named_beside_its_foot_and_nothing_else_is_blamed()
    {
        var spoilt = WithWall.Replace("\"as\": [\"A\", \"B\"]", "\"as\": [\"B\", \"C\"]", StringComparison.Ordinal);
        var fault = Assert.Single(JobCheck.Check(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(spoilt), "job.json")).Job));
        Assert.Equal("faces[1].survey.readings[0].is", fault.Path);
        Assert.Contains("P–Q of wall taken for B–C of floor", fault.Expected, StringComparison.Ordinal);
    }

    private static readonly string WithWall = Floor.Replace("""
        "threshold" }] }],
        """, """
        "threshold" }] },
          { "name": "wall",
            "survey": { "corners": ["P", "Q", "R", "S"], "same": [{ "side": ["P", "Q"], "face": "floor", "as": ["A", "B"] }],
              "readings": [{ "from": "P", "to": "Q", "is": 3004 }, { "from": "R", "to": "S", "is": 3000 }, { "from": "P", "to": "S", "held": "plumb", "is": 2400 }, { "from": "Q", "to": "R", "held": "plumb", "is": 2400 },
                { "from": "P", "to": "Q", "held": "plumb", "is": 0 }, { "from": "P", "to": "S", "held": "level", "is": 0 }, { "from": "P", "to": "level line", "is": 1000 }] },
            "holes": [{ "name": "valve", "x": 500, "y": 200, "heightsFrom": "level line", "diameter": 40 }],
            "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }] }],
        """, StringComparison.Ordinal).Replace("\"runs\": [", """
        "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": 3 },
        """, StringComparison.Ordinal);

    [Fact]
    public void A_diagonal_two_metres_long_of_a_box_is_refused_with_what_it_should_be_and_the_mend_is_accepted()
    {
        var spoilt = Floor.Replace("\"is\": 3605", "\"is\": 5605", StringComparison.Ordinal);
        var read = Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(spoilt), "job.json"));
        var fault = Assert.Single(JobCheck.Check(read.Job));
        Assert.Equal("faces[0].survey.readings[5].is", fault.Path);
        var mended = Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(spoilt.Replace("\"is\": 5605", $"\"is\": {Assert.Single(fault.Mends).Value}", StringComparison.Ordinal)), "job.json"));
        Assert.Empty(JobCheck.Check(mended.Job));
    }
}
