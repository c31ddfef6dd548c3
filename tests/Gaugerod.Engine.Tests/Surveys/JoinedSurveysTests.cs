using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using MathNet.Numerics.Distributions;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Surveys;

/// <summary>A floor measured corner to corner, and the walls that stand around it.</summary>
public sealed class JoinedSurveysTests(ITestOutputHelper output)
{
    private const double Tape = 1.5;
    private const double Within = 2;

    private static readonly string[] Walls = ["south", "east", "north", "west"];

    /// <summary>
    /// Source: what a wall's foot says of the floor is its reading, off by the tape and by how far the two sides may differ. The floor
    /// by itself, with four such readings more, is what AdjustmentTests hold against MathNet.Numerics.
    /// </summary>
    [Fact]
    public void Floors_with_their_walls_come_out_as_floors_whose_sides_were_read_twice_in_300_rooms()
    {
        var chance = new Random(68);
        for (var room = 0; room < 300; room++)
        {
            var read = Room(chance, both: room % 2 == 0);
            var joined = JoinedSurveys.Of(read);
            Assert.All(joined, of => Assert.Same(joined[0], of));
            var floor = read[0].Survey;
            var feet = read.Skip(1).Select(wall => wall.Survey.Readings[0]).Select((foot, i) => new SurveyReading(ReadAs.Straight, Spot(i), Spot((i + 1) % 4), foot.Value, Mm(Math.Sqrt((Tape * Tape) + (Within * Within)))));
            var twice = SurveyView.Of(floor with { Same = [], Readings = [.. floor.Readings, .. feet] }, "floor", Sketch.Metric.Tape).Weighed!;
            var weighed = SurveyView.Of(joined[0], "floor", Sketch.Metric.Tape).Weighed!;

            Assert.Equal(Walls, weighed.With);
            foreach (var (one, other) in weighed.Corners.Zip(twice.Corners))
            {
                Assert.InRange((one.Place.X - other.Place.X).Steps, -4, 4);
                Assert.InRange((one.Place.Y - other.Place.Y).Steps, -4, 4);
            }

            foreach (var (one, other) in weighed.Readings.Zip(twice.Readings))
            {
                Assert.Equal(other.Redundancy, one.Redundancy, 1e-4);
                Assert.Equal(other.Standardised, one.Standardised, 1e-2);
            }
        }
    }

    /// <summary>Source: the theory of data snooping (W. Baarda 1968), as in SlipTests.</summary>
    [Fact]
    public void Standardised_corrections_of_10_000_rooms_follow_the_normal_law_on_floor_and_walls()
    {
        var chance = new Random(69);
        var sample = new List<double>();
        var (doubted, tests) = (0, 0);
        for (var room = 0; room < 10_000; room++)
        {
            var all = JoinedSurveys.Of(Room(chance, both: false))[0].Network.Adjusted!;
            Assert.True(all.IsSettled);
            var own = Enumerable.Range(0, all.Network.Readings.Count).Where(i => !all.IsUnchecked(i)).ToArray();
            sample.Add(all.Standardised(own[chance.Next(own.Length)]));

            // A side, its wall's foot and that the two are one are three tests of one thing: it is counted once.
            tests += 4;
            doubted += Enumerable.Range(0, 4).Count(i => Math.Abs(all.Standardised(i)) > Adjusted.Critical);
        }

        sample.Sort();
        var apart = sample.Select((w, i) => Math.Max(Math.Abs(Normal.CDF(0, 1, w) - ((i + 1.0) / sample.Count)), Math.Abs(Normal.CDF(0, 1, w) - ((double)i / sample.Count)))).Max();
        output.WriteLine($"farthest from the normal law {apart:0.0000}; doubted {doubted} of {tests}");
        Assert.True(apart < 1.63 / Math.Sqrt(sample.Count), $"{apart}");
        Assert.InRange((double)doubted / tests, 0.0005, 0.0015);
    }

    [Fact]
    public void A_slip_that_nothing_on_the_floor_checks_is_told_by_the_wall_over_it()
    {
        var read = Room(new Random(70), both: false, sure: true);
        var floor = read[0].Survey;
        var slipped = floor with { Readings = [.. floor.Readings.Select((reading, i) => i == 1 ? reading with { Value = reading.Value + Mm(25) } : reading)] };
        Assert.Empty(SurveyView.Of(slipped, "floor", Sketch.Metric.Tape).Weighed!.Suspects);

        var joined = JoinedSurveys.Of([read[0] with { Survey = slipped }, .. read.Skip(1)])[0];
        var (onFloor, onWall, other) = (SurveyView.Of(joined, "floor", Sketch.Metric.Tape), SurveyView.Of(joined, "east", Sketch.Metric.Tape), SurveyView.Of(joined, "west", Sketch.Metric.Tape));
        Assert.Equal([1], onFloor.Weighed!.Suspects);
        Assert.Equal(["east: A to B", "A–B of east taken for B–C of floor"], onFloor.Weighed.Elsewhere);
        Assert.Equal([0], onWall.Weighed!.Suspects);
        Assert.Contains("floor: B to C", onWall.Weighed.Elsewhere);
        Assert.Empty(other.Weighed!.Suspects);
        Assert.Empty(other.Weighed.Elsewhere);

        // It is told once, where it may stand first.
        var told = Assert.Single(onFloor.Findings, finding => finding.Rule == "readings-agree").Text;
        Assert.Contains("One of these: B to C: read", told, StringComparison.Ordinal);
        Assert.Contains("east: A to B: read", told, StringComparison.Ordinal);
        Assert.Contains("they differ by 25 mm", told, StringComparison.Ordinal);
        Assert.DoesNotContain(onWall.Findings, finding => finding.Rule == "readings-agree");

        // The floor may be in no run: every face that is weighed with it says so.
        Assert.All(new[] { onWall, other }, face => Assert.Contains("floor: B to C", Assert.Single(face.Findings, finding => finding.Rule == "readings-elsewhere").Text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_side_taken_for_one_that_is_another_length_is_refused_by_its_place()
    {
        var read = Room(new Random(71), both: true, sure: true);
        var floor = read[0].Survey;
        var west = read[4].Survey;
        Sequence<FaceSurveyed> swapped = [read[0] with { Survey = floor with { Readings = [.. floor.Readings, .. floor.Readings] } }, read[1], read[2], read[3], read[4] with { Survey = west with { Same = [new(0, "floor", 0, Mm(Within))], Readings = [.. west.Readings, Length(0, 1, west.Readings[0].Value)] } }];
        var faults = swapped.SelectMany(face => SurveyView.Of(JoinedSurveys.Of(swapped)[0], face.Face, Sketch.Metric.Tape).Faults).ToList();

        Assert.Contains(faults, fault => fault is { Path: "faces[4].survey.same[0]" } && fault.Found.StartsWith("A–B of west taken for A–B of floor: they differ by", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_one_face_cannot_be_settled_it_says_so_and_the_others_are_weighed_by_themselves()
    {
        var read = Room(new Random(72), both: false, sure: true);
        var lost = read[1].Survey with { Spots = ["valve"] };
        var joined = JoinedSurveys.Of([read[0], read[1] with { Survey = lost }, .. read.Skip(2)])[0];

        Assert.Contains("valve", Assert.Single(SurveyView.Of(joined, "south", Sketch.Metric.Tape).Faults).Nearest, StringComparison.Ordinal);
        Assert.Empty(SurveyView.Of(joined, "floor", Sketch.Metric.Tape).Faults);
        Assert.Empty(SurveyView.Of(joined, "floor", Sketch.Metric.Tape).Weighed!.With);
    }

    [Fact]
    public void The_height_where_two_walls_meet_is_read_on_one_and_holds_for_the_other()
    {
        FaceSurvey Wall(bool left, Sequence<SharedSide> same) => new(
            Corners, [], [Level(0, 1, Mm(2000)), Level(3, 2, Mm(2000)), Level(1, 2, Mm(0)), Level(0, 3, Mm(0)), Plumb(0, 1, Mm(0)), .. left ? [Plumb(0, 3, Mm(2390)), Plumb(1, 2, Mm(2400))] : Array.Empty<SurveyReading>()]) { Same = same };
        var joined = JoinedSurveys.Of([new("left", 0, Wall(true, [])), new("right", 1, Wall(false, [new(3, "left", 1, Mm(0.5))]))])[0];
        var right = SurveyView.Of(joined, "right", Sketch.Metric.Tape).Weighed!;

        Assert.Equal(2400, (double)right.Corners[3].Place.Y.Millimetres, 0.01);
        Assert.Equal(["C–D level"], right.Assumed);
    }

    private static readonly Sequence<SurveyCorner> Corners = [.. "ABCD".Select(name => new SurveyCorner($"{name}", false, null))];

    // The floor by four sides and as many diagonals as asked; each wall by its foot, its heights and a diagonal.
    private static Sequence<FaceSurveyed> Room(Random chance, bool both, bool sure = false)
    {
        var truth = Rooms.Four(chance);
        double Read(double value) => value + (sure ? 0 : Tape * TrueRoom.Normal(chance));
        var sides = truth.Network.Readings.Select(reading => reading.Value).ToArray();
        SurveyReading[] floor = [.. Enumerable.Range(0, 4).Select(i => Length(i, (i + 1) % 4, Mm(Read(sides[i])))), Length(0, 2, Mm(Read(sides[4]))), .. both ? [Length(1, 3, Mm(Read(sides[5])))] : Array.Empty<SurveyReading>()];
        var faces = new List<FaceSurveyed> { new("floor", 0, new(Corners, [], [.. floor])) };
        for (var i = 0; i < 4; i++)
        {
            var same = new SharedSide(0, "floor", i, Mm(Within));
            SurveyReading[] wall = [Length(0, 1, Mm(Read(sides[i]) + (sure ? 0 : Within * TrueRoom.Normal(chance)))), Level(1, 2, Mm(Read(0))), Level(0, 3, Mm(Read(0))), Plumb(0, 1, Mm(Read(0))), Plumb(0, 3, Mm(Read(2400))), Plumb(1, 2, Mm(Read(2400)))];
            faces.Add(new(Walls[i], i + 1, new(Corners, [], [.. wall]) { Same = i == 1 ? [same, same] : [same] }));

            // Said on both faces it is still one thing.
            if (i == 2) faces[0] = faces[0] with { Survey = faces[0].Survey with { Same = [new(2, Walls[i], 0, Mm(Within))] } };
        }

        return [.. faces];
    }

    private static SurveySpot Spot(int corner) => SurveySpot.Of(corner);

    private static Length Mm(double millimetres) => SurveyNetwork.Rounded(millimetres);

    private static SurveyReading Length(int from, int to, Length value) => new(ReadAs.Straight, Spot(from), Spot(to), value, Mm(Tape));

    private static SurveyReading Level(int from, int to, Length value) => new(ReadAs.Level, Spot(from), Spot(to), value, Mm(Tape));

    private static SurveyReading Plumb(int from, int to, Length value) => new(ReadAs.Plumb, Spot(from), Spot(to), value, Mm(Tape));
}
