using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>Zones that cannot be cut are refused with what was found, what would do and the nearest that does.</summary>
public sealed class ZoneFaultTests
{
    [Fact]
    public void A_border_wider_than_half_the_floor_is_refused_and_a_narrower_one_is_not()
    {
        var fault = One(new Zone.Border("frame", Mm(400), Mitred: true));
        Assert.Equal(("faces[0].zones[0].width", "400 mm"), (fault.Path, fault.Found));
        Assert.Contains("leaves more than 5 mm of \"floor\"", fault.Expected, StringComparison.Ordinal);
        // The field is 1194 by 594 mm: 297 mm less half of the 3 mm joint is the most, and more than 5 mm, a tile's least side, must be left: under 293 mm.
        Assert.Equal("292 mm", fault.Nearest);
        Assert.Empty(Faults(Job(new Zone.Border("frame", Mm(292), Mitred: true))));
        Assert.NotEmpty(Faults(Job(new Zone.Border("frame", Mm(293), Mitred: true))));
    }

    [Fact]
    public void A_band_that_reaches_over_the_head_is_refused()
    {
        var fault = One(new Zone.Strip("dado", Mm(500), Mm(700)));
        Assert.Equal(("faces[0].zones[0].to", "a band from 500 mm to 700 mm"), (fault.Path, fault.Found));
        Assert.Contains("over 3 mm, under 597 mm", fault.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_with_its_heights_exchanged_is_told_so()
    {
        var fault = One(new Zone.Strip("dado", Mm(400), Mm(300)));
        Assert.Equal(("faces[0].zones[0].to", "the two heights exchanged"), (fault.Path, fault.Nearest));
        Assert.Empty(Faults(Job(new Zone.Strip("dado", Mm(300), Mm(400)), new Zone.Strip("upper", Mm(400), null))));
    }

    [Fact]
    public void A_rug_that_lies_over_an_edge_is_refused()
    {
        var fault = One(new Zone.Rug("rug", new(Mm(-50), Mm(100), Mm(400), Mm(400))));
        Assert.Equal(("faces[0].zones[0]", "a rug from -50 mm to 400 mm across and from 100 mm to 400 mm up"), (fault.Path, fault.Found));
        Assert.Equal("a rectangle with tile of \"floor\" all round it; the edge \"west\" is in the way", fault.Expected);
    }

    [Fact]
    public void A_band_that_begins_under_anothers_head_is_told_which_is_in_the_way_and_where_that_ends()
    {
        var fault = One(new Zone.Strip("dado", Mm(200), Mm(300)), new Zone.Strip("upper", Mm(250), null));
        Assert.Equal(("faces[0].zones[1].from", "all from 250 mm up", "from 300 mm"), (fault.Path, fault.Found, fault.Nearest));
        Assert.Equal("heights clear of \"dado\", which is laid from 200 mm to 300 mm up", fault.Expected);
        Assert.Equal([new Mend("faces[0].zones[1].from", "\"300 mm\"")], fault.Mends);
    }

    [Fact]
    public void A_rug_over_a_rug_is_told_which_is_in_the_way()
    {
        var fault = One(new Zone.Rug("rug", new(Mm(200), Mm(200), Mm(500), Mm(400))), new Zone.Rug("mat", new(Mm(400), Mm(200), Mm(800), Mm(400))));
        Assert.Equal("a rectangle with tile of \"floor\" all round it; the zone \"rug\" is in the way", fault.Expected);
        // The rug ends at 500 mm, half a joint beyond that its own tile's edge; another half and the next mark leave tile between.
        Assert.Equal("left 504 mm, width 296 mm", fault.Nearest);
    }

    [Fact]
    public void A_rug_off_the_wall_is_said_to_lie_outside_it()
    {
        // The floor's tile goes from 3 to 1,197 mm across and from 3 to 597 mm up.
        var fault = One(new Zone.Rug("rug", new(Mm(3000), Mm(200), Mm(3300), Mm(400))));
        Assert.Equal("a rectangle on the tile of \"floor\", from 3 mm to 1197 mm across and from 3 mm to 597 mm up; it lies outside the wall", fault.Expected);
    }

    /// <summary>A band from 150 mm up holds the rug as a whole, in whichever order the two are asked for.</summary>
    [Fact]
    public void A_rug_that_lies_in_a_band_is_put_into_it_whichever_was_asked_for_first()
    {
        Zone[] zones = [new Zone.Strip("above", Mm(150), null), new Zone.Rug("rug", new(Mm(200), Mm(250), Mm(500), Mm(400)))];
        Assert.Empty(Faults(Job(zones)));
        var job = Job(zones);
        job = job with { Runs = [job.Runs[0] with { Faces = ["above"] }] };
        var other = Job(zones[1], zones[0]) with { Runs = job.Runs };
        Assert.Equal(JobRuns.Finish(other, 0).Faces, JobRuns.Finish(job, 0).Faces);
        Assert.Single(JobRuns.Finish(job, 0).Faces[0].Field.Inner);
    }

    [Fact]
    public void A_hole_over_a_whole_rug_is_refused_and_one_over_its_edge_is_said_to_be_in_no_drawing()
    {
        Job With(long diameter)
        {
            var job = Job(new Zone.Rug("rug", new(Mm(200), Mm(200), Mm(400), Mm(400))));
            return job with { Faces = [job.Faces[0] with { Holes = [new Hole("drain", new(Mm(300), Mm(300)), Mm(diameter))] }] };
        }

        var fault = Assert.Single(Faults(With(290)));
        Assert.Equal(("faces[0].holes[0].diameter", "a hole of 290 mm that takes all of \"rug\""), (fault.Path, fault.Found));
        Assert.Empty(Faults(With(220)));
        Assert.Contains(JobRuns.Finish(With(220), 0).Findings, finding => finding.Text.StartsWith("The hole 'drain' reaches over the edge of 'rug' and 'floor'", StringComparison.Ordinal));
        Assert.Contains("takes all of \"floor\"", Faults(With(5000))[0].Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_that_parts_the_face_asks_for_a_zone_above_it_and_with_that_it_is_cut()
    {
        var fault = One(new Zone.Strip("dado", Mm(200), Mm(300)));
        Assert.Equal(("faces[0].zones", "zones that leave \"floor\" in several parts"), (fault.Path, fault.Found));
        Assert.Equal("a zone more for what lies above \"dado\", a band \"above dado\" from 300 mm up", fault.Nearest);
        Assert.Empty(Faults(Job(new Zone.Strip("upper", Mm(300), null), new Zone.Strip("dado", Mm(200), null))));
        Assert.Empty(Faults(Job(new Zone.Strip("dado", Mm(200), Mm(300)), new Zone.Strip("upper", Mm(300), null))));
    }

    [Fact]
    public void Two_zones_of_one_face_are_not_laid_as_one_run()
    {
        var job = Job(new Zone.Strip("upper", Mm(300), null));
        var fault = Assert.Single(Faults(job with { Runs = [job.Runs[0] with { Faces = ["floor", "upper"] }] }));
        Assert.Equal(("runs[0].faces", "two zones of \"floor\"", "one zone of each face in a run", "a run of its own for each"), (fault.Path, fault.Found, fault.Expected, fault.Nearest));
    }

    [Fact]
    public void A_band_on_three_walls_carries_round()
    {
        // Walls of 900, 1,200 and 900 mm; the band 900 to 1,000 mm up on each, so that one bond goes round at one height.
        Face Wall(string name, long width) => Read(name, width) with { Zones = [new Zone.Strip("upper " + name, Mm(1000), null), new Zone.Strip("band " + name, Mm(900), null)] };
        var job = Job() with { Faces = [Wall("west", 900), Wall("north", 1200), Wall("east", 900)] };
        job = job with { Runs = [job.Runs[0] with { Faces = ["band west", "band north", "band east"] }] };
        Assert.Empty(JobCheck.Check(job));
        var run = Assert.Single(Planner.Plan(job).Runs);
        Assert.Equal(["band west", "band north", "band east"], run.Faces.Select(face => face.Face.Name));
        Assert.Single(run.Best.Faces.Select(place => place.Y).Distinct());
        var whole = JobRuns.Finish(job with { Runs = [job.Runs[0] with { Faces = ["west", "north", "east"] }] }, 0).Faces;
        Assert.Equal(whole.Select(face => face.Unrolled), run.Faces.Select(face => face.Face.Unrolled));
        Assert.All(run.Faces, face => Assert.Equal((Mm(900) + Half, Mm(1000) - Half), (face.Face.Field.Outer.Bounds.Bottom, face.Face.Field.Outer.Bounds.Top)));
    }

    /// <summary>Half of a 3 mm joint.</summary>
    private static readonly Length Half = Length.FromSteps(4800);

    private static Fault One(params Zone[] zones) => Assert.Single(Faults(Job(zones)));

    private static Sequence<Fault> Faults(Job job) => JobCheck.Check(job);

    /// <summary>A floor of 1,200 by 600 mm with 3 mm joints at its edges.</summary>
    private static Job Job(params Zone[] zones)
    {
        var floor = Given("floor", [(0, 0), (1200, 0), (1200, 600), (0, 600)], Stop("south"), Stop("east"), Stop("north"), Stop("west")) with { Zones = zones.ToSequence() };
        var run = new RunRequest("floor", "tile", ["floor"], new BondRequest.Grid(Lay.Level), Corners.Wrap, JointRange.Only(Mm(3)), null, new(null, Mm(10), HalfTile: true), [], ScoreOrder.Usual);
        return new("zones", null, Tape.Millimetres, Paper.A4, Mm(3), [new("tile", Mm(100), Mm(100), Mm(9)) { BondCoat = Mm(3) }], [floor], [run]);
    }
}
