using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Pieces;

/// <summary>How much of a tile a straight side of the field leaves: by hand, and against the depth measured at many places along the side (NetTopologySuite).</summary>
public sealed class TileShapeTests
{
    private static readonly BondTile s_tile = BondTile.At(default, default, Mm(300), Mm(200));

    private static readonly Gen<(BondTile Tile, EdgeLine Edge)> Crossings =
        from given in RandomBonds.Any()
        from motif in Gen.Int[0, 1000]
        from ends in Gen.Select(Gen.Double[-0.5, 1.5], Gen.Double[-0.5, 1.5], Gen.Double[-0.5, 1.5], Gen.Double[-0.5, 1.5])
        let tile = given.Bond.Motif[motif % given.Bond.Motif.Count]
        let x = new Func<double, long>(part => (long)(tile.Cell.Left.Steps + (tile.Cell.Width.Steps * part)))
        let y = new Func<double, long>(part => (long)(tile.Cell.Bottom.Steps + (tile.Cell.Height.Steps * part)))
        select (tile, EdgeLine.Of(x(ends.Item1), y(ends.Item2), x(ends.Item3), y(ends.Item4) + 1));

    /// <summary>A plumb side 50 mm from the tile's left, tile to its right: 250 mm are left; run the other way, 50 mm.</summary>
    [Theory]
    [InlineData(50, 400, 50, -100, 250)]
    [InlineData(50, -100, 50, 400, 50)]
    // A level side 30 mm under the tile's head, tile below it.
    [InlineData(900, 170, -900, 170, 170)]
    // A side that ends 20 mm into the tile, at a corner of the field: the tile beside it is as deep all the same.
    [InlineData(50, 400, 50, 180, 250)]
    public void A_straight_cut_leaves_the_rest_of_the_tile(long fromX, long fromY, long toX, long toY, long left) =>
        Assert.Equal(Mm(left).Steps, Leg(s_tile, EdgeLine.Of(Mm(fromX).Steps, Mm(fromY).Steps, Mm(toX).Steps, Mm(toY).Steps))!.Value, 1e-3);

    /// <summary>A cut through (200, 200) and (300, 100) leaves a triangle with legs of 100 mm: its height over the cut is 100 / √2.</summary>
    [Fact]
    public void Of_a_corner_cut_off_its_height_over_the_cut_is_left() =>
        Assert.Equal(320_000 / Math.Sqrt(2), Leg(s_tile, EdgeLine.Of(Mm(300).Steps, Mm(100).Steps, Mm(200).Steps, Mm(200).Steps), turned: true)!.Value, 1e-3);

    [Fact]
    public void A_side_along_the_tile_s_own_does_not_cut_it()
    {
        Assert.Null(Leg(s_tile, EdgeLine.Of(0, Mm(400).Steps, 0, -Mm(100).Steps)));
        Assert.Null(Leg(s_tile, EdgeLine.Of(PatternCutter.Hair, Mm(400).Steps, PatternCutter.Hair, -Mm(100).Steps)));
        Assert.NotNull(Leg(s_tile, EdgeLine.Of(PatternCutter.Hair + 1, Mm(400).Steps, PatternCutter.Hair + 1, -Mm(100).Steps)));
    }

    [Fact]
    public void The_leg_is_the_greatest_depth_along_the_side() => Crossings.Each(
        (tile, edge) =>
        {
            if (Leg(tile, edge) is not { } leg) return;
            var (shape, most) = (Judge.Shape(tile.Shape, []), 0.0);
            const int Places = 400;
            for (var i = 0; i <= Places; i++)
            {
                var (x, y) = (edge.X + (edge.AlongX * edge.Length * i / Places), edge.Y + (edge.AlongY * edge.Length * i / Places));
                if (!shape.Intersects(Judge.Factory.CreatePoint(new Coordinate(x, y)))) continue;
                var inwards = Judge.Factory.CreateLineString([new(x, y), new(x - (edge.AlongY * 1e8), y + (edge.AlongX * 1e8))]);
                most = Math.Max(most, inwards.Intersection(shape).Length);
            }

            // Between two places measured the depth changes by no more than the tile's sides climb.
            var box = tile.Cell.Width.Steps + tile.Cell.Height.Steps;
            Assert.True(leg >= most - 2, $"{leg} for {most}");
            Assert.True(leg <= box, $"{leg}");
            if (edge.Length > box / 4.0 && most > 0) Assert.True(leg <= most + (edge.Length / Places * 60), $"{leg} for {most}");
        },
        iter: 3_000);

    private static double? Leg(BondTile tile, EdgeLine edge, bool turned = false)
    {
        if (turned) edge = EdgeLine.Of((long)(edge.X + (edge.AlongX * edge.Length)), (long)(edge.Y + (edge.AlongY * edge.Length)), (long)edge.X, (long)edge.Y);
        var shape = new TileShape(tile);
        Span<double> exact = stackalloc double[shape.Sides];
        exact.Clear();
        return shape.Crossed(edge, 0, 0, exact) is { } chord ? shape.Leg(edge, 0, 0, chord, exact) : null;
    }
}
