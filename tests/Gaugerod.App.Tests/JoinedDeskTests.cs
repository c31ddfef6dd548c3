using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;

namespace Gaugerod.App.Tests;

/// <summary>
/// While readings are typed, the surveys that share sides are weighed together as the job's reader weighs them. The rooms are
/// invented: a floor of 4000 by 3000 mm with one diagonal of 5000 (Pythagoras), which nothing on the floor checks, and walls 2000 high.
/// </summary>
public sealed class JoinedDeskTests
{
    [Fact]
    public void The_desk_weighs_a_floor_with_its_wall_as_the_reader_of_the_job_does()
    {
        var job = Job("3985");
        var desk = Open(job);
        var read = Assert.IsType<JobReading.Understood>(JobReader.Read(System.Text.Encoding.UTF8.GetBytes(job.ToJsonString()), "job")).Job;
        foreach (var (face, i) in read.Faces.Select((face, i) => (face, i)))
        {
            var surveyed = Assert.IsType<FaceShape.Surveyed>(face.Shape);
            var look = desk.Survey(FormattableString.Invariant($"faces[{i}]"))!;
            // All faces in one room: what the engine makes of the same surveys, put together by hand.
            var room = JoinedSurveys.Of(read.Faces.Select((one, at) => new FaceSurveyed(one.Name, at, ((FaceShape.Surveyed)one.Shape).Survey)).ToSequence());
            Assert.Equal(SurveyView.Of(room[i], face.Name, read.Tape), look.Shape);
            Assert.Equal(surveyed.Survey, look.Survey);
        }
    }

    [Fact]
    public void A_slip_on_the_floor_is_in_question_on_the_wall_too_and_nobody_says_that_all_agree()
    {
        var desk = Open(Job("3975"));
        var (floor, south, east) = (desk.Survey("faces[0]")!, desk.Survey("faces[1]")!, desk.Survey("faces[2]")!);
        Assert.True(floor.IsInDoubt);
        Assert.True(south.IsInDoubt);
        Assert.False(east.IsInDoubt);
        Assert.Equal(["floor", "south"], east.OthersInDoubt);
        Assert.Equal(["south", "east"], floor.Shape.Weighed!.With);
        Assert.Contains("A–B of south taken for A–B of floor", floor.Shape.Weighed.Elsewhere);
        Assert.Contains("floor: A to B", south.Shape.Weighed!.Elsewhere);
        Assert.True(floor.IsDoubted(0));
    }

    [Fact]
    public void What_is_still_open_on_either_face_is_left_out_and_the_rest_is_weighed_together()
    {
        var job = Job("4000");
        job["faces"]![1]!["survey"]!["readings"]![2]!["is"] = "";
        job["faces"]![2]!["survey"]!["readings"]![3]!["is"] = "2 0 0";
        var desk = Open(job);
        Assert.Equal(["south", "east"], desk.Survey("faces[0]")!.Shape.Weighed!.With);
        Assert.Equal([2], desk.Survey("faces[1]")!.Open.Select(one => one.Row));
        Assert.Equal([0, 1, 2, 4, 5], desk.Survey("faces[2]")!.Rows);
    }

    [Fact]
    public void A_face_that_cannot_be_read_is_left_out_and_what_was_said_of_it_is_no_fault_of_the_others()
    {
        var job = Job("4000");
        job["faces"]![1]!["survey"]!["corners"] = new JsonArray("A", "A", 3);
        var desk = Open(job);
        Assert.Null(desk.Survey("faces[1]"));
        Assert.Equal("floor", string.Join(", ", desk.Survey("faces[2]")!.Survey.Same.Select(side => side.Face)));
        Assert.Equal(["east"], desk.Survey("faces[0]")!.Shape.Weighed!.With);
    }

    [Fact]
    public void A_side_said_to_be_on_no_face_or_not_chosen_yet_leaves_the_survey_by_itself()
    {
        var job = Job("4000");
        job["faces"]![1]!["survey"]!["same"] = JsonNode.Parse("""[{ "side": ["A", "B"], "face": "", "as": ["", ""] }, { "side": ["A", "C"], "face": "floor", "as": ["A", "B"] }, { "side": ["A", "B"], "face": "attic", "as": ["A", "B"] }]""");
        job["faces"]![2]!["survey"]!.AsObject().Remove("same");
        var desk = Open(job);
        Assert.Empty(desk.Survey("faces[1]")!.Shape.Weighed!.With);
        Assert.Equal(6, desk.Survey("faces[1]")!.Rows.Count);
    }

    [Fact]
    public void A_change_elsewhere_in_the_job_weighs_nothing_anew()
    {
        var desk = Open(Job("4000"));
        var (floor, east) = (desk.Survey("faces[0]"), desk.Survey("faces[2]"));
        desk.Set("name", JsonValue.Create("Another"), "name");
        Assert.Same(floor, desk.Survey("faces[0]"));
        Assert.Same(east, desk.Survey("faces[2]"));
        desk.Set("faces[1].survey.readings[0].is", JsonValue.Create("3999"), "reading");
        Assert.NotSame(floor, desk.Survey("faces[0]"));
    }

    private static JobDesk Open(JsonObject job)
    {
        var desk = new JobDesk();
        desk.Open("job", job.ToJsonString(), [], readOnly: false);
        return desk;
    }

    // The floor's side A to B as given; its wall is south, and east stands on B to C and in south's corner.
    private static JsonObject Job(string side) => (JsonObject)JsonNode.Parse($$"""
        { "format": "gaugerod-job/1", "name": "Invented", "units": "mm", "products": [{ "name": "tile", "width": 300, "height": 200 }],
          "faces": [
            {{Face("floor", $"""["A","B","{side}"],["B","C","3000"],["C","D","4000"],["D","A","3000"],["A","C","5000"]""", "")}},
            {{Face("south", """["A","B","4000"],["B","C","2000"],["C","D","4000"],["D","A","2000"],["A","C","4472"],["B","D","4472"]""", """{ "side": ["A", "B"], "face": "floor", "as": ["A", "B"] }""")}},
            {{Face("east", """["A","B","3000"],["B","C","2000"],["C","D","3000"],["D","A","2000"],["A","C","3606"],["B","D","3606"]""", """{ "side": ["A", "B"], "face": "floor", "as": ["B", "C"] }, { "side": ["D", "A"], "face": "south", "as": ["B", "C"], "within": "2" }""")}}],
          "runs": [{ "name": "run", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 }, { "name": "walls", "product": "tile", "faces": ["south", "east"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """)!;

    private static string Face(string name, string readings, string same)
    {
        var read = JsonNode.Parse($"[{readings}]")!.AsArray().Select(one => $$"""{ "from": "{{one![0]}}", "to": "{{one[1]}}", "is": "{{one[2]}}" }""");
        return $$"""{ "name": "{{name}}", "survey": { "corners": ["A", "B", "C", "D"], "readings": [{{string.Join(", ", read)}}]{{(same.Length > 0 ? $", \"same\": [{same}]" : "")}} }, "edges": [{ "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "inside corner" }] }""";
    }
}
