using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Tests.Schemas;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Arcs in the outline of a face or of an opening: a round-headed hatch in the cloakroom, a round column.</summary>
public class ArcTests
{
    private const string Hatch = "{ \"name\": \"hatch\", \"left\": 1040, \"bottom\": 420, \"width\": 250, \"height\": 300 }";

    private const string Arched = """
        { "name": "hatch", "outline": [[1040, 420], [1290, 420], [1290, 720], { "to": [1040, 720], "through": [1165, 845] }],
          "edges": [{ "name": "bottom" }, { "name": "right" }, { "name": "arch", "kind": "free", "trim": 10 }, { "name": "left" }] }
        """;

    private const string Column = """{ "name": "hatch", "outline": [{ "to": [1040, 545], "through": [1165, 670] }, { "to": [1290, 545], "through": [1165, 420] }] }""";

    [Fact]
    public void An_arc_has_one_edge_and_every_chord_of_it_has_its_name()
    {
        var opening = Opening(Arched);

        Assert.Equal(["bottom", "right", "arch", "left"], opening.Edges.Select(edge => edge.Name).Distinct());
        Assert.Equal(opening.Ring.Points.Count, opening.Edges.Count);
        Assert.True(opening.Edges.Count(edge => edge.Name == "arch") > 30);
        Assert.All(opening.Edges.Where(edge => edge.Name == "arch"), edge => Assert.Equal(EdgeKind.Free, edge.Kind));
    }

    [Fact]
    public void Two_arcs_alone_make_a_round_column_and_the_first_corners_arc_is_the_last_side()
    {
        var opening = Opening(Column);

        Assert.Equal(["side 1", "side 2"], opening.Edges.Select(edge => edge.Name).Distinct());
        // The first corner is the left one; from there the second corner's arc runs through the low point.
        Assert.True(opening.Ring.Points[1].Y < opening.Ring.Points[0].Y);
        Assert.True(opening.Ring.Points[^1].Y > opening.Ring.Points[0].Y);
    }

    [Theory]
    [InlineData(Arched)]
    [InlineData(Column)]
    public void A_job_with_arcs_is_planned_and_the_schema_knows_it(string hatch)
    {
        var text = Samples.With("cloakroom", Hatch, hatch);

        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, text));
        var job = Assert.IsType<JobReading.Understood>(Samples.Read(text)).Job;
        Assert.Empty(JobCheck.Check(job));
        Assert.All(Planner.Plan(job).Runs, run => Assert.NotEmpty(run.Faces[0].Pieces));
    }

    [Fact]
    public void A_want_may_name_an_arc()
    {
        var text = Samples.With("cloakroom", Hatch, Arched).Replace(
            "\"face\": \"basin wall\", \"edge\": \"top\"", "\"face\": \"basin wall\", \"edge\": \"hatch.arch\"", StringComparison.Ordinal);
        Assert.Empty(JobCheck.Check(Assert.IsType<JobReading.Understood>(Samples.Read(text)).Job));
    }

    [Theory]
    [InlineData("[1165, 845]", "[1165, 720]", ".outline[3].through: found a point on the straight line through the arc's two ends: an arc of no radius, expected a point beside that line. Nearest: [1040 mm, 720 mm] alone: a straight side.")]
    [InlineData("[1165, 845]", "[1290, 720]", ".outline[3].through: found one of the arc's own ends, [1290 mm, 720 mm], expected a point on the arc between its two ends. Nearest: [1040 mm, 720 mm] alone: a straight side.")]
    [InlineData("[1165, 845]", "[1165, 720.01]", ".outline[3].through: found an arc of a radius of 781250 mm, expected a radius of at most 100000 mm. Nearest: [1040 mm, 720 mm] alone: a straight side.")]
    [InlineData("[1165, 845]", "845", ".outline[3].through: found 845, expected a corner [x, y]: so far from the left, so far up.")]
    [InlineData(", \"through\": [1165, 845]", "", ".outline[3].through: found nothing, expected a point [x, y] on the arc.")]
    [InlineData("\"to\": [1040, 720]", "\"to\": [1290, 720]", ".outline[3].through: found an arc back to the corner it begins at, expected an arc between two corners. Nearest: two arcs of half a circle each.")]
    [InlineData("\"through\": [", "\"trough\": [", ".outline[3].trough: found an unknown field \"trough\", expected \"to\" or \"through\". Nearest: \"through\".")]
    [InlineData("{ \"name\": \"right\" }, ", "", ".edges: found 3 edges, expected one for each of the outline's 4 sides.")]
    public void A_slip_in_an_arc(string old, string changed, string message)
    {
        Assert.Contains(old, Arched, StringComparison.Ordinal);
        var said = Assert.Single(Samples.Messages(Samples.With("cloakroom", Hatch, Arched.Replace(old, changed, StringComparison.Ordinal))));
        Assert.EndsWith("faces[0].openings[0]" + message, said, StringComparison.Ordinal);
    }

    [Fact]
    public void So_many_chords_that_nobody_tiles_them_are_refused()
    {
        var round = """{ "name": "hatch", "outline": [{ "to": [-90000, 545], "through": [1165, 92000] }, { "to": [92330, 545], "through": [1165, -90000] }] }""";
        Assert.Contains("arcs that come to more than 2000 chords", Assert.Single(Samples.Messages(Samples.With("cloakroom", Hatch, round))), StringComparison.Ordinal);
    }

    private static Opening Opening(string hatch) =>
        Assert.IsType<JobReading.Understood>(Samples.Read(Samples.With("cloakroom", Hatch, hatch))).Job.Faces[0].Openings[0];
}
