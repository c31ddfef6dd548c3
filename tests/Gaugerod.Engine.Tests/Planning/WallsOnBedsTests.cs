using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Bases;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Bases.Beds;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>Walls that stand over floors that fall. Heights by hand: a fall times the way to the drain, and Pythagoras.</summary>
public sealed class WallsOnBedsTests
{
    private static readonly JointRange Joint = new(Mm(3), Mm(3), Mm(3));

    [Fact]
    public void Over_a_bed_with_a_level_edge_the_foot_is_level_and_as_high_as_its_corners()
    {
        // 36 by 60, the drain in the middle: 34.99 in to a corner, 0.7289 in at 1 in 48.
        var outline = Finished(Wall(Mm(36 * 254 / 10)), Shower(36, 60, 18, 30, new(In(1, 1, 2)))).Outline;
        var foot = outline.Points.Where(point => point.Y < Mm(500)).Select(point => (double)point.Y.Millimetres).ToList();
        Assert.Equal(2, foot.Count);
        Assert.All(foot, height => Assert.Equal((1.5 + (Math.Sqrt((18 * 18) + (30 * 30)) / 48)) * 25.4, height, 0.005));
    }

    [Fact]
    public void Over_a_bed_of_constant_fall_the_foot_rises_from_before_the_drain_and_the_lowest_pieces_with_it()
    {
        // The drain 6 in from the west wall: seen from the room that is to the left on the north wall.
        var job = Job(Wall(Mm(914)), Shower(36, 60, 6, 30, new(In(1, 1, 2)) { Perimeter = Perimeter.Constant }));
        Assert.Empty(JobCheck.Check(job));
        var face = Planner.Plan(job).Runs[0].Faces[0];
        double Foot(double x) => (1.5 * 25.4) + (Math.Sqrt((30 * 30) + (((x / 25.4) - 6) * ((x / 25.4) - 6))) / 48 * 25.4);
        var lowest = face.Face.Outline.Points.Where(point => point.Y < Mm(500)).ToList();
        Assert.True(lowest.Count > 4);
        Assert.All(lowest, point => Assert.Equal(Foot((double)point.X.Millimetres), (double)point.Y.Millimetres, 0.1));
        Assert.True(lowest.MinBy(point => point.Y.Steps).X < Mm(200));
        // Every piece of the lowest course stands a joint of 3 over it, and none is without its cut there.
        var course = face.Pieces.Where(piece => piece.Course == face.Pieces.Min(one => one.Course)).ToList();
        Assert.All(course, piece => Assert.Contains(piece.Cuts, cut => cut.Faces == "foot"));
        Assert.All(course.SelectMany(piece => piece.Outline.Points).Where(point => point.Y < Mm(70)), point => Assert.Equal(Foot((double)point.X.Millimetres) + 3, (double)point.Y.Millimetres, 0.15));
    }

    [Fact]
    public void Along_the_walls_of_400_floors_a_bed_stands_as_high_as_the_way_to_the_drain_makes_it()
    {
        // A drain that sees every wall of a floor without corners that point in: the way is straight. The line is never off by more than 0.1 mm.
        Gen.Select(Gen.Long[600, 3000], Gen.Long[600, 3000], Gen.Long[-300, 300], Gen.Double[0.05, 0.95], Gen.Double[0.05, 0.95], Gen.Int[1, 40]).Each(
            drawn =>
            {
                var (w, d, skew, px, py, part) = drawn;
                var (x, y) = ((long)(w * px), (long)(d * py));
                (long X, long Y)[] ring = [(0, 0), (w, 0), (w + Math.Abs(skew), d), (0, d)];
                var fall = part / 1000.0;
                var bed = Make(Floor(ring, (x, y), new(Mm(10)) { Fall = new(part, 1000), Perimeter = Perimeter.Constant }), Tape.Millimetres);
                Assert.Equal(4, bed.Edges.Count);
                foreach (var (edge, i) in bed.Edges.Select((edge, i) => (edge, i)))
                {
                    var (a, b) = (ring[i], ring[(i + 1) % 4]);
                    var length = Math.Sqrt(((double)(b.X - a.X) * (b.X - a.X)) + ((double)(b.Y - a.Y) * (b.Y - a.Y)));
                    var line = new EdgeHeights("foot", edge.Line);
                    for (var k = 0; k <= 60; k++)
                    {
                        var (atX, atY) = (a.X + ((b.X - a.X) * k / 60.0), a.Y + ((b.Y - a.Y) * k / 60.0));
                        var over = fall * Math.Sqrt(((atX - x) * (atX - x)) + ((atY - y) * (atY - y)));
                        Assert.Equal(over, line.At(length * k / 60 * Length.StepsPerMillimetre) / Length.StepsPerMillimetre, 0.1);
                    }
                }
            },
            iter: 400);
    }

    [Fact]
    public void On_500_floors_with_corners_that_point_in_every_stake_and_every_wall_has_its_height()
    {
        var made = 0;
        RandomFloors.Any(standing: 0, drains: 1, channels: false).Each(
            floor =>
            {
                var drain = floor.Drains[0].A;
                if (!floor.Polygon.Covers(new NetTopologySuite.Geometries.Point(drain.X, drain.Y)) || floor.Polygon.Boundary.Distance(new NetTopologySuite.Geometries.Point(drain.X, drain.Y)) < 1) return;
                var bed = Make(Floor(floor.Outline, drain, new(Mm(10)) { Perimeter = Perimeter.Constant }), Tape.Millimetres);
                // No way along the floor is shorter than the straight one.
                Assert.All(bed.Stakes, stake => Assert.True((double)stake.Over.Millimetres >= (Math.Sqrt(Math.Pow((double)stake.Place.X.Millimetres - drain.X, 2) + Math.Pow((double)stake.Place.Y.Millimetres - drain.Y, 2)) / 48) - 0.01));
                Assert.Equal(floor.Outline.Length, bed.Edges.Count);
                Assert.All(bed.Edges.SelectMany(edge => edge.Line), at => Assert.True(at.Y >= Length.Zero && at.Y <= bed.Rise + Mm(1)));
                Interlocked.Increment(ref made);
            },
            iter: 500);
        Assert.True(made > 400, $"{made}");
    }

    [Fact]
    public void A_bench_that_falls_to_its_front_is_a_quarter_inch_in_a_foot_higher_at_the_wall_behind_it()
    {
        string[] names = ["front", "east", "back", "west"];
        var bench = new Face("bench top", new FaceShape.Outline(new([Inch(0, 0), Inch(36, 0), Inch(36, 14), Inch(0, 14)]), names.Select(name => new Edge(name, EdgeKind.Fixture)).ToSequence(), default), [], [])
        {
            Falls = new(null, []) { Bed = new(Length.Zero) { Perimeter = Perimeter.Constant, Drains = [new(null, null) { Edge = "front" }] } },
        };
        // 36 by 14 in, 14/48 in at the back: half of it is the mean.
        Assert.Equal(36 * 14 * (14 / 48.0) / 2, Make(bench).Volume / 16_387.064, 0.001);
        var behind = Wall(Mm(914), new Fixture("bench", false, Length.Zero, null, In(18), In(18), new("edge", EdgeKind.Fixture), new("side", EdgeKind.Fixture))) with { Beds = [new("bench", "bench top", "back")] };
        var foot = Finished(behind, bench).Outline.Points.Where(point => point.Y < Mm(1000)).ToList();
        Assert.All(foot, point => Assert.Equal((18 + (14 / 48.0)) * 25.4, (double)point.Y.Millimetres, 0.005));
        // Along the wall at its end it falls with the bench: high at the back.
        var beside = Wall(Mm(2000), new Fixture("bench", false, Length.Zero, In(14), In(18), In(18), new("edge", EdgeKind.Fixture), new("side", EdgeKind.Fixture))) with { Beds = [new("bench", "bench top", "east")] };
        var ends = Finished(beside, bench).Outline.Points.Where(point => point.Y > Mm(300) && point.Y < Mm(1000)).Select(point => (double)point.Y.Millimetres).Order().ToList();
        Assert.Equal([18 * 25.4, (18 + (14 / 48.0)) * 25.4], ends.Select(end => Math.Round(end, 2)).Select(end => Math.Abs(end - (18 * 25.4)) < 0.01 ? 18 * 25.4 : Math.Abs(end - ((18 + (14 / 48.0)) * 25.4)) < 0.01 ? (18 + (14 / 48.0)) * 25.4 : end));
    }

    [Fact]
    public void A_floor_read_at_stations_along_the_wall_bends_at_them()
    {
        // The line 1000 over the corner, 990 in the middle: the floor comes up by 10 there.
        var wall = Wall(Mm(2000)) with { Beds = [] };
        var read = (FaceShape.Read)wall.Shape;
        wall = wall with { Shape = read with { Readings = read.Readings with { LevelLine = new(Mm(1000), Mm(1000)) { Between = [new(Mm(1000), Mm(990))] } } } };
        Assert.Contains(At(1000, 10), Finished(wall, Shower(36, 60, 18, 30, new(In(1)))).Outline.Points);
    }

    [Fact]
    public void A_bed_that_is_not_there_is_named_with_those_that_are()
    {
        var shower = Shower(36, 60, 18, 30, new(In(1, 1, 2)));
        foreach (var (on, path, nearest) in new[]
        {
            (new OnBed("foot", "flor", "north"), "faces[0].beds[0].floor", "\"floor\""),
            (new OnBed("foot", "floor", "nord"), "faces[0].beds[0].edge", null),
            (new OnBed("left", "floor", "north"), "faces[0].beds[0].side", "\"foot\""),
        })
        {
            var fault = Assert.Single(JobCheck.Check(Job(Wall(Mm(914)) with { Beds = [on] }, shower)));
            Assert.Equal((path, nearest), (fault.Path, fault.Nearest));
            // What is put into the file stands there in its quotes.
            if (nearest is not null) Assert.Equal(new Mend(path, nearest), Assert.Single(fault.Mends));
        }
    }

    [Fact]
    public void A_wall_longer_than_its_bed_is_told_and_goes_on_level()
    {
        var job = Job(Wall(Mm(1200)), Shower(36, 60, 18, 30, new(In(1, 1, 2))));
        Assert.Empty(JobCheck.Check(job));
        Assert.Contains(Planner.Plan(job).Findings, finding => finding is { Rule: "bed", Level: FindingLevel.Warn } && finding.Text.StartsWith("foot reaches 11 1/4 in beyond north of floor.", StringComparison.Ordinal));
        var apart = Job(Wall(Mm(1200)) with { Beds = [new("foot", "floor", "north") { From = Mm(1100) }] }, Shower(36, 60, 18, 30, new(In(1, 1, 2))));
        Assert.Contains(Planner.Plan(apart).Findings, finding => finding.Rule == "bed" && finding.Text.EndsWith("it is left as it was read.", StringComparison.Ordinal));
    }

    private static Face Wall(Length width, params Fixture[] fixtures) => new(
        "north", new FaceShape.Read(Surveys.Sketch.Wall(width, Mm(2400), level: (Mm(1000), Mm(1000))), new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), new("head", EdgeKind.Ceiling), new("left", EdgeKind.InsideCorner), fixtures.ToSequence()), [], [])
    {
        Beds = [new("foot", "floor", "north")],
    };

    private static FinishedFace Finished(Face wall, Face floor)
    {
        var ready = JobCheck.Steps(Job(wall, floor)).Last()!;
        Assert.Empty(ready.Faults);
        return ready.Runs[0].Faces[0];
    }

    private static Job Job(Face wall, Face floor)
    {
        var job = OneWall.Job(Mm(900), Mm(2400), Mm(3), Mm(198), Joint, Tape.Sixteenths);
        return job with { Faces = [wall, floor], Runs = [job.Runs[0] with { Faces = ["north"] }] };
    }
}
