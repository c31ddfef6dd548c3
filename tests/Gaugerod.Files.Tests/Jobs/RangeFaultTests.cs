using System.Globalization;
using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Ranges that no thing can use are refused, with the nearest that would do; and that nearest is then understood. A wall of 1523 by 2231 mm.</summary>
public sealed class RangeFaultTests
{
    [Theory]
    [InlineData("bench", "[250, 5000]", "range", "[250 mm, 2231 mm]")]
    [InlineData("bench", """{ "height": [250, 5000], "from": [320, 340] }""", "range.height", "[250 mm, 2231 mm]")]
    [InlineData("bench", """{ "to": [590, 1600] }""", "range.to", "[590 mm, 1523 mm]")]
    [InlineData("bench", """{ "from": [-10, 340] }""", "range.from", "[0 mm, 340 mm]")]
    [InlineData("niche", """{ "studs": [-5000, 1055] }""", "range.studs", "[0 mm, 1055 mm]")]
    [InlineData("niche", """{ "left": [700, 1400] }""", "range.left", "[700 mm, 1213 mm]")]
    [InlineData("niche", """{ "bottom": [1100, 1900] }""", "range.bottom", "[1100 mm, 1801 mm]")]
    [InlineData("niche", """{ "width": [0, 320] }""", "range.width", "[1 mm, 320 mm]")]
    [InlineData("niche", """{ "height": [-40, 440] }""", "range.height", "[1 mm, 440 mm]")]
    [InlineData("niche", """{ "width": [300, 900] }""", "range.width", "[300 mm, 806 mm]")]
    [InlineData("dado", "[-550, 1700]", "range", "[0 mm, 1700 mm]")]
    [InlineData("dado", "[1600, 2400]", "range", "[1600 mm, 2181 mm]")]
    public void A_range_beyond_the_face_is_refused_with_the_nearest_within_it(string thing, string range, string path, string nearest)
    {
        var fault = Assert.Single(Faults(Job(thing, range)));
        Assert.EndsWith(path, fault.Path, StringComparison.Ordinal);
        Assert.Equal(nearest, fault.Nearest);

        // What is offered does.
        var name = path.Split('.')[^1];
        var (from, to) = (range.IndexOf('[', name == "range" ? 0 : range.IndexOf(name, StringComparison.Ordinal)), 0);
        to = range.IndexOf(']', from);
        Assert.Empty(Faults(Job(thing, range[..from] + nearest.Replace(" mm", "", StringComparison.Ordinal) + range[(to + 1)..])));
    }

    [Theory]
    [InlineData("""{ "left": [600, 800], "studs": [680, 1060] }""", "left", "[680 mm, 750 mm]")]
    [InlineData("""{ "left": [690, 800], "studs": [680, 1060] }""", "left", "[690 mm, 750 mm]")]
    [InlineData("""{ "left": [600, 800], "width": [290, 330], "studs": [680, 1060] }""", "left", "[680 mm, 770 mm]")]
    [InlineData("""{ "width": [290, 400], "studs": [680, 1060] }""", "width", "[290 mm, 380 mm]")]
    [InlineData("""{ "left": [700, 750], "width": [300, 400], "studs": [680, 1060] }""", "width", "[300 mm, 360 mm]")]
    public void A_niche_whose_range_reaches_past_its_studs_is_refused_with_the_nearest_between_them(string range, string path, string nearest)
    {
        var fault = Assert.Single(Faults(Job("niche", range)));
        Assert.EndsWith("range." + path, fault.Path, StringComparison.Ordinal);
        Assert.Equal(nearest, fault.Nearest);

        // What is offered does, and is the last that does.
        string With(string offered) => range[..range.IndexOf('[', range.IndexOf(path, StringComparison.Ordinal))] + offered + range[(range.IndexOf(']', range.IndexOf(path, StringComparison.Ordinal)) + 1)..];
        var (least, most) = (int.Parse(nearest[1..4], CultureInfo.InvariantCulture), int.Parse(nearest[9..12], CultureInfo.InvariantCulture));
        Assert.Empty(Faults(Job("niche", With(FormattableString.Invariant($"[{least}, {most}]")))));
        Assert.Single(Faults(Job("niche", With(FormattableString.Invariant($"[{least}, {most + 1}]")))));
    }

    [Theory]
    [InlineData("bench")]
    [InlineData("niche")]
    public void A_range_of_nothing_is_refused(string thing)
    {
        var fault = Assert.Single(Faults(Job(thing, "{ }")));
        Assert.Equal("a range of nothing", fault.Found);
        Assert.NotNull(fault.Nearest);
    }

    [Theory]
    [InlineData("""{ "from": [320, 590], "to": [580, 640] }""", "\"to\": [591 mm, 640 mm]")]
    [InlineData("""{ "from": [320, 610] }""", "\"from\": [320 mm, 599 mm]")]
    [InlineData("""{ "to": [320, 640] }""", "\"to\": [331 mm, 640 mm]")]
    [InlineData("""{ "from": [320, 620], "to": [580, 640] }""", "\"from\": [320 mm, 599 mm], \"to\": [600 mm, 640 mm]")]
    public void Ranges_in_which_a_bench_might_end_before_it_begins_are_told_how_far_they_may_reach(string range, string nearest) =>
        Assert.Equal(nearest, Assert.Single(Faults(Job("bench", range))).Nearest);

    [Fact]
    public void Heights_from_a_level_line_are_told_from_that_line()
    {
        var job = Job("niche", """{ "bottom": [50, 1400] }""").Replace("\"bottom\": 1130", "\"bottom\": 130, \"heightsFrom\": \"level line\"", StringComparison.Ordinal)
            .Replace("\"left\": 2231 }", "\"left\": 2231 }, \"levelLine\": { \"left\": 1000, \"right\": 1000 }", StringComparison.Ordinal);
        Assert.Equal("[50 mm, 801 mm]", Assert.Single(Faults(job)).Nearest);
    }

    private static IReadOnlyList<(string Path, string Found, string? Nearest)> Faults(string job) => JobReader.Read(Encoding.UTF8.GetBytes(job), "job.json") switch
    {
        JobReading.Refused refused => [.. refused.Faults.Select(fault => (fault.Path, fault.Found, fault.Nearest))],
        JobReading.Understood understood => [.. JobCheck.Check(understood.Job).Select(fault => (fault.Path, fault.Found, fault.Nearest))],
        _ => [],
    };

    private static string Job(string thing, string range)
    {
        string Of(string name) => name == thing ? $", \"range\": {range}" : "";
        var bands = $$"""{ "kind": "band", "name": "dado", "from": 1650, "to": 1700{{Of("dado")}} }, { "kind": "band", "name": "upper", "from": 1700 }""";
        return $$"""
            { "format": "gaugerod-job/1", "name": "niche", "units": "mm", "edgeJoint": 3,
              "products": [{ "name": "t", "width": 297, "height": 97 }],
              "faces": [{ "name": "north", "readings": { "width": { "foot": 1523 }, "height": { "left": 2231 } },
                "fixtures": [{ "name": "bench", "from": 330, "to": 600, "height": 455{{Of("bench")}} }],
                "openings": [{ "name": "niche", "left": 717, "bottom": 1130, "width": 310, "height": 430{{Of("niche")}} }],
                "zones": [{{(thing == "dado" ? bands : "")}}] }],
              "runs": [{ "name": "north", "product": "t", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """;
    }
}
