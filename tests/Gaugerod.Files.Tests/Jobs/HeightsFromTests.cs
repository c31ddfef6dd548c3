using System.Text.Json.Nodes;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Tests.Schemas;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Heights measured from the struck level line, as one measures once the floor is gone.</summary>
public class HeightsFromTests
{
    /// <summary>Reckoned by hand: west's line stands 48 in up, its niche's bottom 42 3/4, the valve 39, the tray 2 3/4; north's line 48 1/8, its window's bottom 54.</summary>
    [Fact]
    public void A_shower_measured_from_the_level_line_is_the_same_shower()
    {
        var job = JsonNode.Parse(Samples.Text("guest-shower"))!;
        var (west, north) = (job["faces"]![0]!, job["faces"]![1]!);
        FromLine(west["openings"]![0]!, "bottom", "-5 1/4");
        FromLine(west["holes"]![0]!, "y", "-9");
        FromLine(west["holes"]![1]!, "y", "32");
        FromLine(west["fixtures"]![0]!, "height", "-45 1/4");
        FromLine(north["openings"]![0]!, "bottom", "5 7/8");
        FromLine(north["fixtures"]![1]!, "heightLeft", "-30");
        FromLine(north["fixtures"]![1]!, "heightRight", "-29 7/8");
        Assert.Equal(Samples.Job("guest-shower"), Assert.IsType<JobReading.Understood>(Samples.Read(job.ToJsonString())).Job);
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, job.ToJsonString()));
    }

    [Fact]
    public void An_outline_from_the_level_line_is_raised_as_a_whole()
    {
        var job = JsonNode.Parse(Samples.Text("cloakroom"))!;
        var face = job["faces"]![0]!;
        face["levelLine"] = 1000;
        var hatch = JsonNode.Parse("""{ "name": "hatch", "outline": [[1040, -580], [1290, -580], [1290, -280], [1040, -280]], "heightsFrom": "level line" }""")!;
        face["openings"]![0] = hatch;
        var opening = Assert.IsType<JobReading.Understood>(Samples.Read(job.ToJsonString())).Job.Faces[0].Openings[0];
        Assert.Equal(Samples.Job("cloakroom").Faces[0].Openings[0].Ring, opening.Ring);
    }

    [Fact]
    public void A_joint_at_a_height_may_count_from_the_level_line_too()
    {
        var from = Samples.With("guest-shower", "{ \"want\": \"full course\", \"face\": \"north\", \"edge\": \"bench\", \"must\": true }", "{ \"want\": \"joint\", \"face\": \"north\", \"height\": \"-6 1/8\", \"heightsFrom\": \"level line\", \"must\": true }");
        var up = Samples.With("guest-shower", "{ \"want\": \"full course\", \"face\": \"north\", \"edge\": \"bench\", \"must\": true }", "{ \"want\": \"joint\", \"face\": \"north\", \"height\": \"42\", \"must\": true }");
        Assert.Equal(Assert.IsType<JobReading.Understood>(Samples.Read(up)).Job, Assert.IsType<JobReading.Understood>(Samples.Read(from)).Job);
    }

    [Fact]
    public void Without_a_level_line_there_is_nothing_to_count_from() =>
        Assert.Equal(
            ["job.json:32: faces[0].openings[0].heightsFrom: found heights from the level line on a face without one, expected the face's \"levelLine\" too. Nearest: read its height above the floor."],
            Samples.Messages(Samples.With("cloakroom", "\"bottom\": 420,", "\"bottom\": 420, \"heightsFrom\": \"level line\",")));

    [Fact]
    public void A_level_line_that_could_not_be_read_is_said_once() =>
        Assert.Equal(
            ["faces[0].readings.levelLine.left"],
            Samples.Faults(Samples.With("guest-shower", "\"left\": \"48\", \"right\": \"48 1/8\"", "\"left\": \"high\", \"right\": \"48 1/8\"")
                .Replace("\"bottom\": \"42 3/4\"", "\"bottom\": \"-5 1/4\", \"heightsFrom\": \"level line\"", StringComparison.Ordinal)).Select(f => f.Path));

    [Fact]
    public void An_edge_is_where_it_is_and_takes_no_height() =>
        Assert.Equal(
            ["runs[0].wants[0].heightsFrom"],
            Samples.Faults(Samples.With("guest-shower", "\"edge\": \"bench\", \"must\": true", "\"edge\": \"bench\", \"heightsFrom\": \"level line\", \"must\": true")).Select(f => f.Path));

    private static void FromLine(JsonNode of, string field, string height)
    {
        of[field] = height;
        of["heightsFrom"] = "level line";
    }
}
