using System.Text.Json.Nodes;
using Gaugerod.App.Stations.Measure;

namespace Gaugerod.App.Tests;

/// <summary>A side that was read on another face too follows faces and corners to their new names, and goes with them.</summary>
public sealed class SharedNamesTests
{
    [Fact]
    public void A_corner_of_the_floor_called_anew_is_called_so_by_the_walls_that_share_its_sides()
    {
        var job = Job();
        SurveyParts.Rename(job, "faces[0]", "A", "door");
        Assert.Equal("""[{"side":["A","B"],"face":"floor","as":["door","B"]},{"side":["B","C"],"face":"east","as":["D","A"]}]""", Same(job, 1));
        Assert.Equal("""[{"side":["A","B"],"face":"floor","as":["B","C"],"within":"2"}]""", Same(job, 2));
    }

    [Fact]
    public void A_corner_of_a_wall_called_anew_is_called_so_in_its_own_sides_and_in_those_of_its_neighbour()
    {
        var job = Job();
        SurveyParts.Rename(job, "faces[2]", "A", "foot");
        Assert.Equal("""[{"side":["A","B"],"face":"floor","as":["A","B"]},{"side":["B","C"],"face":"east","as":["D","foot"]}]""", Same(job, 1));
        Assert.Equal("""[{"side":["foot","B"],"face":"floor","as":["B","C"],"within":"2"}]""", Same(job, 2));
    }

    [Fact]
    public void A_side_whose_corner_is_taken_out_is_shared_no_more_and_other_sides_are()
    {
        var job = Job();
        SurveyParts.Forget(job, "faces[0]", "C");
        Assert.Null(Same(job, 2));
        Assert.Equal("""[{"side":["A","B"],"face":"floor","as":["A","B"]},{"side":["B","C"],"face":"east","as":["D","A"]}]""", Same(job, 1));
        SurveyParts.Forget(job, "faces[1]", "C");
        Assert.Equal("""[{"side":["A","B"],"face":"floor","as":["A","B"]}]""", Same(job, 1));
    }

    [Fact]
    public void A_floor_called_anew_is_called_so_by_its_walls()
    {
        var job = Job();
        JobNames.Face(job, "floor", "bath floor");
        Assert.Equal("""[{"side":["A","B"],"face":"bath floor","as":["A","B"]},{"side":["B","C"],"face":"east","as":["D","A"]}]""", Same(job, 1));
        Assert.Equal("""[{"side":["A","B"],"face":"bath floor","as":["B","C"],"within":"2"}]""", Same(job, 2));
    }

    [Fact]
    public void A_floor_taken_out_leaves_only_what_the_walls_share_with_each_other()
    {
        var job = Job();
        JobNames.ForgetFace(job, "floor");
        Assert.Equal("""[{"side":["B","C"],"face":"east","as":["D","A"]}]""", Same(job, 1));
        Assert.Null(Same(job, 2));
    }

    private static string? Same(JsonObject job, int face) => job["faces"]![face]!["survey"]!["same"]?.ToJsonString();

    private static JsonObject Job() => (JsonObject)JsonNode.Parse("""
        { "faces": [
            { "name": "floor", "survey": { "corners": ["A", "B", { "name": "C" }, "D"], "readings": [{ "from": "A", "to": "B", "is": "1000" }] } },
            { "name": "south", "survey": { "corners": ["A", "B", "C", "D"], "readings": [],
              "same": [{ "side": ["A", "B"], "face": "floor", "as": ["A", "B"] }, { "side": ["B", "C"], "face": "east", "as": ["D", "A"] }] } },
            { "name": "east", "survey": { "corners": ["A", "B", "C", "D"], "readings": [],
              "same": [{ "side": ["A", "B"], "face": "floor", "as": ["B", "C"], "within": "2" }] } }],
          "runs": [{ "name": "run", "faces": ["floor", "south", "east"] }] }
        """)!;
}
