using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Cutting.Make;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>What may be cut from an offcut of a tile with a grain or a direction (common practice, no source).</summary>
public sealed class DirectionTests
{
    private static readonly Angle s_upright = Angle.FromDegrees(90);

    [Fact]
    public void A_square_tile_with_a_grain_is_not_turned_a_quarter_to_save_one()
    {
        var plain = Tile(300, 300);
        var veined = plain with { Grain = Grain.AlongWidth };
        Assert.Equal(1, Bought(plain));
        Assert.Equal(2, Bought(veined));
        Assert.Equal(1, CuttingPlanner.Plan(veined, [Straight(veined, "A1", TileSide.Right, Mm(100)), Straight(veined, "A2", TileSide.Right, Mm(100))], Tape.Millimetres).Bought);

        static int Bought(Product tile) =>
            CuttingPlanner.Plan(tile, [Straight(tile, "A1", TileSide.Right, Mm(100)), Straight(tile, "A2", TileSide.Top, Mm(100))], Tape.Millimetres).Bought;
    }

    [Fact]
    public void A_square_tile_that_is_laid_upright_and_may_not_be_turned_a_quarter_is_laid_back_for_the_saw()
    {
        var tile = Tile(300, 300, Turning.None);
        var level = Straight(tile, "A1", TileSide.Right, Mm(100));

        // Stood up with its left end down, the lower end of an upright piece is the tile's left one, the upper its right one.
        var lower = Straight(tile, "A2", TileSide.Top, Mm(100)) with { Lies = s_upright };
        var upper = Straight(tile, "A3", TileSide.Bottom, Mm(100)) with { Lies = s_upright };
        Assert.Equal(2, CuttingPlanner.Plan(tile, [level, lower], Tape.Millimetres).Bought);
        var shared = Assert.Single(CuttingPlanner.Plan(tile, [level, upper], Tape.Millimetres).Tiles);
        Assert.Equal([0, 3], shared.Pieces.Select(piece => piece.Turned));
    }

    /// <summary>Source: the definition of each bond. A piece of a tile that lies level goes into its tile as it is, one that stands upright a quarter back.</summary>
    [Theory]
    [InlineData(Turning.None)]
    [InlineData(Turning.Half)]
    public void No_bond_cuts_a_piece_out_of_a_tile_turned_another_way_than_it_is_set(Turning turning)
    {
        foreach (var bond in Bonds)
        {
            var (job, plan) = Planned(bond, turning, null);
            var pieces = plan.Runs.SelectMany(run => run.Faces).SelectMany(face => face.Pieces).ToDictionary(piece => piece.Id, StringComparer.Ordinal);
            var cutting = Assert.Single(plan.Cutting);
            Assert.Equal(pieces.Count, cutting.Tiles.Sum(tile => tile.Pieces.Count));
            foreach (var cut in cutting.Tiles.SelectMany(tile => tile.Pieces))
            {
                var back = pieces[cut.Id].Cell.Width == job.Products[0].Width ? 0 : 3;
                Assert.Contains(cut.Turned, turning == Turning.None ? [back] : new[] { back, (back + 2) % 4 });
            }
        }
    }

    [Fact]
    public void A_herringbone_of_tiles_with_a_direction_is_laid_and_saves_tiles_only_where_the_ends_are_opposite()
    {
        var bond = new BondRequest.Herringbone(1);
        var (free, none) = (Planned(bond, Turning.Free, null).Plan, Planned(bond, Turning.None, null).Plan);
        Assert.Equal(Keys(free), Keys(none));
        Assert.InRange(none.Cutting[0].Bought, free.Cutting[0].Bought, none.Runs[0].Faces[0].Pieces.Count);
        var pieces = none.Runs[0].Faces[0].Pieces.ToDictionary(piece => piece.Id, StringComparer.Ordinal);
        var shared = none.Cutting[0].Tiles.Where(tile => tile.Pieces.Count == 2).ToList();
        Assert.Contains(shared, tile => pieces[tile.Pieces[0].Id].Cell.Width != pieces[tile.Pieces[1].Id].Cell.Width);
        Assert.All(shared, tile => Assert.True(
            tile.Pieces[0].At.Bounds.Right <= tile.Pieces[1].At.Bounds.Left || tile.Pieces[1].At.Bounds.Right <= tile.Pieces[0].At.Bounds.Left
            || tile.Pieces[0].At.Bounds.Top <= tile.Pieces[1].At.Bounds.Bottom || tile.Pieces[1].At.Bounds.Top <= tile.Pieces[0].At.Bounds.Bottom));

        static IEnumerable<Plane.Shapes.Ring> Keys(Plan plan) => plan.Runs[0].Faces[0].Pieces.Select(piece => piece.Outline);
    }

    internal static readonly BondRequest[] Bonds =
    [
        new BondRequest.Grid(Lay.Level), new BondRequest.Grid(Lay.Upright), new BondRequest.Running(Lay.Upright, 1, 3, Stepping.OneWay),
        new BondRequest.Grid(Lay.Level) { Turn = Angle.FromDegrees(90) }, new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay) { Turn = Angle.FromDegrees(30) },
        new BondRequest.Herringbone(1), new BondRequest.Herringbone(2) { Turn = Angle.FromDegrees(45) }, new BondRequest.Basketweave(),
        new BondRequest.Planks(Mm(60), "north"),
    ];

    // Of tiles 302 by 100 with joints of 1 every bond can be made: three abreast with two joints are one long.
    internal static (Job Job, Plan Plan) Planned(BondRequest bond, Turning turning, Grain? grain)
    {
        var job = OneWall.Job(Mm(2000), Mm(1500), Mm(3), Mm(302), JointRange.Only(Mm(1)), Tape.Millimetres, bond: bond, depth: Mm(100));
        job = job with { Products = [job.Products[0] with { Turning = turning, Grain = grain }] };
        return (job, Planner.Plan(job));
    }
}
