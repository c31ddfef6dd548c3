using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;
using Point = Gaugerod.Plane.Shapes.Point;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Trims along edges that rake or bend. Source: NetTopologySuite, which is handed the outlines of tiles and trims, and trigonometry by hand.</summary>
public sealed class RakesAndBendsTests
{
    /// <summary>A line so many steps inside the field: a joint that runs out at a slant is shifted there by that over the slant's tangent.</summary>
    private const int Inside = 8;

    [Fact]
    public void On_100_raking_heads_every_joint_that_runs_out_over_the_rake_is_beside_the_trim()
    {
        var joints = 0;
        var gen =
            from width in Gen.Int[900, 2600]
            from height in Gen.Int[700, 1200]
            from degrees in Gen.Int[4, 40]
            from falls in Gen.Bool
            from tile in Gen.Select(Gen.Int[90, 300], Gen.Int[90, 300], Gen.Int[1, 5])
            from running in Gen.Bool
            select (Width: width, Height: height, Degrees: degrees, Falls: falls, Tile: tile, Running: running);
        gen.Each(drawn =>
        {
            var rise = (long)Math.Round(drawn.Width * Math.Tan(double.DegreesToRadians(drawn.Degrees)));
            var (left, right) = drawn.Falls ? (drawn.Height + rise, (long)drawn.Height) : (drawn.Height, drawn.Height + rise);
            var ring = new Ring([At(0, 0), At(drawn.Width, 0), At(drawn.Width, right), At(0, left)]);
            var job = Job(
                ring, [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), Trimmed("head", Bullnose, TrimJoints.Free), new("left", EdgeKind.InsideCorner)], [], Bullnose,
                new("tile", Mm(drawn.Tile.Item1), Mm(drawn.Tile.Item2), Mm(9)), Mm(drawn.Tile.Item3), drawn.Running ? new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay) : new BondRequest.Grid(Lay.Level));
            if (JobCheck.Check(job).Count > 0) return;
            var plan = Planner.Plan(job);
            var line = Assert.Single(plan.Trims.Lines);
            var face = plan.Runs[0].Faces[0];
            var edge = face.Face.Edges.Single(side => side.Name == "head");
            var seen = Gaps(edge, face.Pieces.Select(piece => (Geometry)Judge.Shape(piece.Outline, piece.Inner)));
            var begins = Along(edge, line.From);
            var said = line.Beside.Select(at => at.Steps + begins).Order().ToList();
            Assert.True(said.Count == seen.Count, $"{drawn}: {said.Count} are said and {seen.Count} seen: {string.Join(" ", said.Select(at => at / 3200))} and {string.Join(" ", seen.Select(at => at / 3200))}");
            var slack = 6 + (Inside / Math.Tan(double.DegreesToRadians(Math.Min(drawn.Degrees, 90 - drawn.Degrees))));
            Assert.All(said.Zip(seen), pair => Assert.InRange(pair.First - pair.Second, -slack, slack));
            TrimReferee.Look(job, plan);
            Interlocked.Add(ref joints, said.Count);
        });
        Assert.True(joints > 500, $"{joints} joints were looked at");
    }

    /// <summary>Two slopes of 8 degrees each, named as one edge: they bend by 16 at the ridge, and each trim is mitred there by 8, which takes 50 tan 8° = 7.03 mm.</summary>
    [Fact]
    public void A_gable_of_sixteen_degrees_whose_slopes_have_one_name_is_two_lines_mitred_at_the_ridge()
    {
        var rise = (long)Math.Round(1000 * Math.Tan(double.DegreesToRadians(8)));
        var head = Trimmed("head", Bullnose, TrimJoints.Free);
        var plan = Look(new([At(0, 0), At(2000, 0), At(2000, 1000), At(1000, 1000 + rise), At(0, 1000)]), [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), head, head, new("left", EdgeKind.InsideCorner)]);
        Assert.Equal([(TrimEnd.Hidden, TrimEnd.Mitre), (TrimEnd.Mitre, TrimEnd.Hidden)], plan.Trims.Lines.Select(line => (line.Begin, line.End)));
        Assert.All([plan.Trims.Lines[0].Pieces[^1], plan.Trims.Lines[1].Pieces[0]], piece => Assert.InRange(piece.MitreTakes.Steps / 3200.0, 7.02, 7.06));
        Assert.DoesNotContain(plan.Findings, finding => finding.Rule is "trim" or "trim-corner");
    }

    /// <summary>
    /// Where one slope has a trim and the other has none, and they bend by less than one in four, the field steps at the ridge and the trim ends against the tile
    /// beside the step, as good as square. Where they bend more, the trim runs on under the other slope to a point that no saw makes: 50 mm over 16 degrees is 50 / tan 16° = 174 mm long (the rise, to a whole millimetre, makes it 16.05).
    /// </summary>
    [Theory]
    [InlineData(6, true)]
    [InlineData(6, false)]
    [InlineData(8, true)]
    [InlineData(8, false)]
    public void Of_a_gable_one_slope_alone_may_have_a_trim(int degrees, bool right)
    {
        var rise = (long)Math.Round(1000 * Math.Tan(double.DegreesToRadians(degrees)));
        Edge trimmed = Trimmed("trimmed", Bullnose, TrimJoints.Free), bare = new("bare", EdgeKind.Ceiling);
        var plan = Look(
            new([At(0, 0), At(2000, 0), At(2000, 1000), At(1000, 1000 + rise), At(0, 1000)]),
            [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), right ? trimmed : bare, right ? bare : trimmed, new("left", EdgeKind.InsideCorner)]);
        var line = Assert.Single(plan.Trims.Lines);
        Assert.Equal((TrimEnd.Hidden, TrimEnd.Hidden), (line.Begin, line.End));
        var ridge = right ? line.Pieces[^1] : line.Pieces[0];
        Assert.DoesNotContain(plan.Findings, finding => finding.Rule == "trim");
        if (degrees == 6)
        {
            // A slope is 1,005.5 mm long; what the joints and the step take of it is less than 30.
            Assert.InRange(line.Length.Steps / 3200.0, 975, 1015);
            Assert.InRange(ridge.MitreTakes.Steps / 3200.0, 0, 0.7);
            Assert.DoesNotContain(plan.Findings, finding => finding.Rule == "trim-corner");
            return;
        }

        Assert.InRange(ridge.MitreTakes.Steps / 3200.0, 173.5, 174.5);
        Assert.Contains($"The trim's {(right ? "left" : "right")} end would lean 74° off square against bare", Assert.Single(plan.Findings, finding => finding.Rule == "trim-corner").Text, StringComparison.Ordinal);
    }

    /// <summary>What is asked for at an end of an edge that bends is asked for where the edge ends.</summary>
    [Fact]
    public void An_edge_that_bends_covers_and_returns_where_it_ends_and_not_at_its_bend()
    {
        var head = Trimmed("head", Bullnose, TrimJoints.Free);
        head = head with { Trimmed = head.Trimmed! with { Left = new(TrimCorner.Covers), Right = new(TrimCorner.Covers, Mm(90)) } };
        var plan = Look(new([At(0, 0), At(2000, 0), At(2000, 1000), At(1000, 1200), At(0, 1000)]), [new("foot", EdgeKind.Floor), new("right", EdgeKind.Free), head, head, Trimmed("left", Bullnose, TrimJoints.Free)], returns: true);
        var lines = plan.Trims.Lines.Where(line => line.Edge == "head").ToList();
        Assert.Equal([(TrimEnd.Mitre, TrimEnd.Mitre), (TrimEnd.Mitre, TrimEnd.Covers)], lines.Select(line => (line.Begin, line.End)));
        Assert.False(Assert.Single(lines[0].Returns).AtLeft);
        Assert.Empty(lines[1].Returns);
    }

    /// <summary>Under a rake of 20 degrees the trim ends against plumb walls: its ends lean by 20 off square, which takes 50 tan 20° = 18.20 mm of the one side or the other.</summary>
    [Fact]
    public void An_end_sawn_to_a_lean_is_said_with_its_short_point_too()
    {
        var rise = (long)Math.Round(2000 * Math.Tan(double.DegreesToRadians(20)));
        var plan = Look(new([At(0, 0), At(2000, 0), At(2000, 1000 + rise), At(0, 1000)]), [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), Trimmed("head", Bullnose, TrimJoints.Free), new("left", EdgeKind.InsideCorner)]);
        var line = Assert.Single(plan.Trims.Lines);
        Assert.All([line.Pieces[0], line.Pieces[^1]], piece => Assert.InRange(piece.MitreTakes.Steps / 3200.0, 18.19, 18.22));
        Assert.All(line.Pieces.Skip(1).SkipLast(1), piece => Assert.Equal(Length.Zero, piece.MitreTakes));
    }

    /// <summary>One piece between two leans: both ends lean the same way and shorten another side each, so that it is shorter by one of them and not by both.</summary>
    [Fact]
    public void One_piece_between_two_plumb_walls_under_a_rake_is_shorter_by_one_lean()
    {
        var rise = (long)Math.Round(280 * Math.Tan(double.DegreesToRadians(20)));
        var plan = Look(new([At(0, 0), At(280, 0), At(280, 1000 + rise), At(0, 1000)]), [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), Trimmed("head", Bullnose with { Stock = Mm(600) }, TrimJoints.Free), new("left", EdgeKind.InsideCorner)], Bullnose with { Stock = Mm(600) });
        Assert.InRange(Assert.Single(Assert.Single(plan.Trims.Lines).Pieces).MitreTakes.Steps / 3200.0, 18.1, 18.3);
    }

    private static Plan Look(Ring ring, Sequence<Edge> edges, TrimProduct? product = null, bool returns = false)
    {
        var job = Job(ring, edges, [], product ?? Bullnose, new("tile", Mm(197), Mm(197), Mm(8)) { BondCoat = Mm(3) }, Mm(3), new BondRequest.Grid(Lay.Level));
        Assert.Empty(JobCheck.Check(job));
        var plan = Planner.Plan(job);
        Assert.All(plan.Trims.Lines, line => Assert.NotEmpty(line.Pieces));
        // A return's mitre lies against a piece that no face shows.
        if (!returns) TrimReferee.Look(job, plan);
        return plan;
    }

    /// <summary>The middles of the gaps between tiles just inside an edge, from where it begins; none at its ends.</summary>
    private static List<double> Gaps(FieldEdge edge, IEnumerable<Geometry> tiles)
    {
        var (dx, dy) = ((double)(edge.To.X - edge.From.X).Steps, (double)(edge.To.Y - edge.From.Y).Steps);
        var size = Math.Sqrt((dx * dx) + (dy * dy));
        var (offX, offY) = (-dy / size * Inside, dx / size * Inside);
        var probe = Judge.Factory.CreateLineString([new(edge.From.X.Steps + offX, edge.From.Y.Steps + offY), new(edge.To.X.Steps + offX, edge.To.Y.Steps + offY)]);
        var covered = tiles.Select(tile => tile.Intersection(probe)).Where(part => part.Length > 1)
            .Select(part => part.Coordinates.Select(at => (((at.X - edge.From.X.Steps) * dx) + ((at.Y - edge.From.Y.Steps) * dy)) / size).ToList()).Select(at => (From: at.Min(), To: at.Max())).OrderBy(part => part.From).ToList();
        return [.. covered.Zip(covered.Skip(1), (one, next) => (one.To + next.From) / 2)];
    }

    private static double Along(FieldEdge edge, Point point)
    {
        var (dx, dy) = ((double)(edge.To.X - edge.From.X).Steps, (double)(edge.To.Y - edge.From.Y).Steps);
        return ((((point.X - edge.From.X).Steps * dx) + ((point.Y - edge.From.Y).Steps * dy)) / Math.Sqrt((dx * dx) + (dy * dy)));
    }

    private static Point At(long x, long y) => new(Mm(x), Mm(y));
}
