using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Ranges of things that are not built yet, as they are written, and those that cannot be meant.</summary>
public sealed class MovableRangeTests
{
    [Fact]
    public void A_bench_has_a_range_for_its_height_and_for_either_end()
    {
        var bench = Bench("""{ "height": [440, 480], "from": [300, 380], "to": [560, 640] }""");
        Assert.Equal(new FixtureRange(new(Mm(440), Mm(480)), new(Mm(300), Mm(380)), new(Mm(560), Mm(640))), bench.Range);
    }

    [Fact]
    public void Two_lengths_alone_are_its_height() => Assert.Equal(new FixtureRange(new(Mm(440), Mm(480)), null, null), Bench("[440, 480]").Range);

    [Fact]
    public void A_niche_between_studs_may_stand_anywhere_in_the_clear_space()
    {
        var niche = Understood(Job("[440, 480]", """{ "studs": [690, 1055] }""")).Faces[0].Openings[0];
        Assert.Equal(new Span(Mm(690), Mm(1055)), niche.Range!.Studs);
        var settled = Planner.Plan(Understood(Job("[440, 480]", """{ "studs": [690, 1055], "bottom": [1100, 1160] }"""))).Job.Faces[0].Openings[0].Ring.Bounds;
        Assert.InRange(settled.Left.Millimetres, 690, 1055 - 310);
        Assert.InRange(settled.Bottom.Millimetres, 1100, 1160);
        Assert.Equal(Mm(310), settled.Width);
    }

    [Theory]
    [InlineData("""{ "to": [610, 640] }""", "", "faces[0].fixtures[0].range.to", "[600 mm, 640 mm]")]
    [InlineData("""{ "from": [320, 590], "to": [580, 640] }""", "", "faces[0].fixtures[0].range.to", "\"to\": [591 mm, 640 mm]")]
    [InlineData("[440, 480]", """{ "studs": [690, 1020] }""", "faces[0].openings[0].range.studs", "[690 mm, 1027 mm]")]
    [InlineData("[440, 480]", """{ "studs": [720, 1055] }""", "faces[0].openings[0].range.studs", "[717 mm, 1055 mm]")]
    public void A_range_that_does_not_hold_what_is_asked_is_refused(string bench, string niche, string path, string? nearest)
    {
        var fault = Assert.Single(Refused(Job(bench, niche)));
        Assert.Equal(path, fault.Path);
        Assert.Equal(nearest, fault.Nearest);
    }

    [Fact]
    public void The_front_of_a_bench_that_reaches_the_corner_cannot_be_left_open()
    {
        var fault = Assert.Single(Refused(Job("""{ "to": [560, 640] }""", "").Replace("\"to\": 600, ", "", StringComparison.Ordinal)));
        Assert.Equal("faces[0].fixtures[0].range.to", fault.Path);
    }

    [Fact]
    public void A_band_moves_as_a_whole_and_what_begins_at_its_head_goes_with_it()
    {
        var plan = Planner.Plan(Understood("""
            { "format": "gaugerod-job/1", "name": "band", "units": "mm", "edgeJoint": 3,
              "products": [{ "name": "t", "width": 197, "height": 97 }, { "name": "strip", "width": 197, "height": 47 }],
              "faces": [{ "name": "north", "readings": { "width": { "foot": 1523 }, "height": { "left": 2231 } },
                "zones": [{ "kind": "band", "name": "dado", "from": 960, "to": 1010, "range": [900, 1020] }, { "kind": "band", "name": "upper", "from": 1010 }] }],
              "runs": [{ "name": "low", "product": "t", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3 },
                { "name": "dado", "product": "strip", "faces": ["dado"], "bond": { "kind": "grid" }, "joint": 3 },
                { "name": "upper", "product": "t", "faces": ["upper"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """));
        var (dado, upper) = ((Zone.Strip)plan.Job.Faces[0].Zones[0], (Zone.Strip)plan.Job.Faces[0].Zones[1]);
        Assert.InRange(dado.From.Millimetres, 900, 1020);
        Assert.Equal(Mm(50), dado.To!.Value - dado.From);
        Assert.Equal(dado.To, upper.From);
        // Judged by the tiles: none of the lower field is cut along the band.
        Assert.DoesNotContain(plan.Runs[0].Faces[0].Pieces.SelectMany(piece => piece.Cuts), cut => cut.Faces == "dado");
    }

    private static Fixture Bench(string range) => ((FaceShape.Read)Understood(Job(range, "")).Faces[0].Shape).Fixtures[0];

    private static string Job(string bench, string niche) => $$"""
        { "format": "gaugerod-job/1", "name": "niche", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "t", "width": 297, "height": 97 }],
          "faces": [{ "name": "north", "readings": { "width": { "foot": 1523 }, "height": { "left": 2231 } },
            "fixtures": [{ "name": "bench", "from": 330, "to": 600, "height": 455, "range": {{bench}} }],
            "openings": [{ "name": "niche", "left": 717, "bottom": 1130, "width": 310, "height": 430{{(niche.Length > 0 ? ", \"range\": " + niche : "")}} }] }],
          "runs": [{ "name": "north", "product": "t", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    private static Engine.Planning.Job Understood(string job) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job), "job.json")).Job;

    private static IEnumerable<FileFault> Refused(string job) => Assert.IsType<JobReading.Refused>(JobReader.Read(Encoding.UTF8.GetBytes(job), "job.json")).Faults;

    private static Length Mm(int mm) => Length.FromMillimetres(mm);
}
