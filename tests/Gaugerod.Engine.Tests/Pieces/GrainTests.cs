using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Tests.Cutting;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Pieces;

/// <summary>Which way veins run on the wall, seen by the tiles' own outlines.</summary>
public sealed class GrainTests
{
    /// <summary>Source: plane geometry. Of a tile longer than it is wide the grain along its width is the direction of its longest side on the wall.</summary>
    [Fact]
    public void A_grain_along_a_long_tile_runs_as_its_long_side_lies_whatever_the_bond()
    {
        foreach (var bond in DirectionTests.Bonds.Append(new BondRequest.Chevron(Angle.FromDegrees(40))).Append(new BondRequest.Chevron(Angle.FromDegrees(45)) { Turn = Angle.FromDegrees(20) }))
        {
            foreach (var (grain, across) in new[] { (Grain.AlongWidth, 0.0), (Grain.AlongHeight, 90.0) })
            {
                var pieces = DirectionTests.Planned(bond, Turning.Free, grain).Plan.Runs[0].Faces[0].Pieces;
                Assert.NotEmpty(pieces);
                Assert.All(pieces, piece =>
                {
                    var way = (double)piece.GrainOnFace!.Value.Degrees;
                    Assert.InRange(way, 0, 179.999);
                    var apart = Math.Abs(way - Longest(piece) - across) % 180;
                    Assert.InRange(Math.Min(apart, 180 - apart), 0, 0.02);
                });
            }
        }
    }

    [Fact]
    public void A_tile_without_a_grain_says_nothing_of_it() =>
        Assert.All(DirectionTests.Planned(new BondRequest.Herringbone(1), Turning.None, null).Plan.Runs[0].Faces[0].Pieces, piece => Assert.Null(piece.GrainOnFace));

    /// <summary>A square says nothing by its outline; how its run stands it does.</summary>
    [Theory]
    [InlineData(Lay.Level, Grain.AlongWidth, 0)]
    [InlineData(Lay.Level, Grain.AlongHeight, 90)]
    [InlineData(Lay.Upright, Grain.AlongWidth, 90)]
    [InlineData(Lay.Upright, Grain.AlongHeight, 0)]
    public void A_square_tile_stands_as_its_course_runs(Lay lay, Grain grain, int degrees)
    {
        var job = OneWall.Job(Mm(1000), Mm(800), Mm(3), Mm(200), JointRange.Only(Mm(2)), Tape.Millimetres, bond: new BondRequest.Grid(lay));
        var plan = OneWall.Plan(job with { Products = [job.Products[0] with { Grain = grain }] });
        Assert.All(plan.Faces[0].Pieces, piece => Assert.Equal(degrees, piece.GrainOnFace!.Value.Degrees));
    }

    [Fact]
    public void A_grain_that_changes_direction_is_said_as_a_note_where_the_bond_means_it_and_as_a_warning_elsewhere()
    {
        Assert.Empty(Findings(new BondRequest.Grid(Lay.Upright)));
        Assert.Empty(Findings(new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay) { Turn = Angle.FromDegrees(30) }));
        foreach (var bond in new BondRequest[] { new BondRequest.Herringbone(1), new BondRequest.Basketweave(), new BondRequest.Chevron(Angle.FromDegrees(45)) })
        {
            Assert.Equal((FindingLevel.Note, "wall"), Assert.Single(Findings(bond)));
        }

        // Veined squares, the small ones with their veins the other way.
        var job = OneWall.Job(Mm(1000), Mm(800), Mm(3), Mm(200), JointRange.Only(Mm(2)), Tape.Millimetres, bond: new BondRequest.Pinwheel { With = ["small"] });
        job = job with { Products = [job.Products[0] with { Grain = Grain.AlongWidth }, new("small", Mm(90), Mm(90), Mm(8)) { Grain = Grain.AlongHeight }] };
        var finding = Assert.Single(Gaugerod.Engine.Planning.Planner.Plan(job).Findings, f => f.Rule == "grain");
        Assert.Equal((FindingLevel.Warn, "level, plumb", "common practice, no source"), (finding.Level, finding.Value, finding.Source));

        static List<(FindingLevel, string)> Findings(BondRequest bond) =>
            [.. DirectionTests.Planned(bond, Turning.Free, Grain.AlongWidth).Plan.Findings.Where(f => f.Rule == "grain").Select(f => (f.Level, f.Where))];
    }

    [Fact]
    public void The_strips_of_a_border_turn_the_grain_and_are_warned_of_but_not_a_side_that_is_out_of_level_by_a_hair()
    {
        Assert.Equal("level, plumb", Assert.Single(Border(0, 90, 179, 91)).Value);
        Assert.Equal(FindingLevel.Warn, Assert.Single(Border(0, 90)).Level);
        Assert.Empty(Border(0, 179, 1));

        static IEnumerable<Finding> Border(params int[] ways) =>
            GrainRules.Findings(new("frame", new BondRequest.Grid(Lay.Level), IsBorder: true, ways.Select(Angle.FromDegrees).ToSequence()));
    }

    [Theory]
    [InlineData(0, "level")]
    [InlineData(179_700, "level")]
    [InlineData(90_164, "plumb")]
    [InlineData(45_000, "rising to the right at 45°")]
    [InlineData(150_000, "falling to the right at 30°")]
    public void A_grain_is_said_as_one_sees_it(int thousandths, string words) => Assert.Equal(words, GrainWords.Of(Angle.FromThousandths(thousandths)));

    private static double Longest(Piece piece)
    {
        var points = piece.Laid.Points;
        var (most, way) = (0.0, 0.0);
        for (var i = 0; i < points.Count; i++)
        {
            var (dx, dy) = ((double)(points[(i + 1) % points.Count].X - points[i].X).Steps, (double)(points[(i + 1) % points.Count].Y - points[i].Y).Steps);
            if (Math.Sqrt((dx * dx) + (dy * dy)) is var length && length > most) (most, way) = (length, Math.Atan2(dy, dx) * 180 / Math.PI);
        }

        return way;
    }

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);
}
