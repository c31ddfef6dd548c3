using CsCheck;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Layouts;

public sealed class PatternLayoutTests
{
    private static readonly Gen<(long U, long V, Box Around)> Places =
        from at in Gen.Select(Gen.Long[-9_000_000, 9_000_000], Gen.Long[-9_000_000, 9_000_000])
        from corner in Gen.Select(Gen.Long[-6_000_000, 6_000_000], Gen.Long[-6_000_000, 6_000_000])
        from size in Gen.Select(Gen.Long[1, 4_000_000], Gen.Long[1, 4_000_000])
        select (at.Item1, at.Item2, new Box(
            Length.FromSteps(corner.Item1), Length.FromSteps(corner.Item2), Length.FromSteps(corner.Item1 + size.Item1), Length.FromSteps(corner.Item2 + size.Item2)));

    [Fact]
    public void Every_tile_that_comes_into_a_box_is_laid_there_once() => Gen.Select(RandomBonds.Any(), Places).Each(
        (given, place) =>
        {
            var (bond, (u, v, around)) = (given.Bond, place);
            var laid = PatternLayout.Tiles(bond, u, v, around).ToList();
            Assert.Equal(laid.Count, laid.Select(tile => (tile.Course, tile.Column)).Distinct().Count());
            Assert.Equal(Repeated.Around(bond, u, v, around).Order(), laid.Select(tile => (tile.Tile, tile.X, tile.Y)).Order());
        },
        iter: 1_000);
}
