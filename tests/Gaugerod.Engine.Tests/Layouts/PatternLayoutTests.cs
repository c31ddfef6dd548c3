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

    /// <summary>The referee sets the motif down everywhere around and asks each tile's box.</summary>
    [Fact]
    public void Every_tile_that_comes_into_a_box_is_laid_there_once() => Gen.Select(RandomBonds.Any(), Places).Each(
        (given, place) =>
        {
            var (bond, (u, v, around)) = (given.Bond, place);
            var laid = PatternLayout.Tiles(bond, u, v, around).ToList();
            Assert.Equal(laid.Count, laid.Select(tile => (tile.X, tile.Y, tile.Tile)).Distinct().Count());
            Assert.Equal(laid.Count, laid.Select(tile => (tile.Course, tile.Column)).Distinct().Count());

            var (a, b) = (bond.Lattice.First, bond.Lattice.Second);
            var whole = (double)bond.Lattice.Area;
            var found = 0;
            var way = (a.Along.Steps * (double)b.Across.Steps) - (a.Across.Steps * (double)b.Along.Steps) < 0 ? -1 : 1;
            foreach (var (i, j) in Near(around, u, v, (x, y) => ((x * b.Across.Steps) - (y * b.Along.Steps)) / whole * way, (x, y) => ((y * a.Along.Steps) - (x * a.Across.Steps)) / whole * way))
            {
                var (x, y) = (u + (a.Along.Steps * i) + (b.Along.Steps * j), v + (a.Across.Steps * i) + (b.Across.Steps * j));
                for (var tile = 0; tile < bond.Motif.Count; tile++)
                {
                    var cell = bond.Motif[tile].Cell;
                    if (cell.Left.Steps + x >= around.Right.Steps || cell.Right.Steps + x <= around.Left.Steps) continue;
                    if (cell.Bottom.Steps + y >= around.Top.Steps || cell.Top.Steps + y <= around.Bottom.Steps) continue;
                    found++;
                    Assert.Contains(laid, other => other.Tile == tile && other.X == x && other.Y == y);
                }
            }

            Assert.Equal(found, laid.Count);
        },
        iter: 300);

    /// <summary>All repeats of which the box's corners, let out by far, could be.</summary>
    private static IEnumerable<(long I, long J)> Near(Box around, long u, long v, Func<double, double, double> first, Func<double, double, double> second)
    {
        const double Far = 16_000_000;
        var corners = new[] { (around.Left.Steps - Far, around.Bottom.Steps - Far), (around.Right.Steps + Far, around.Bottom.Steps - Far), (around.Right.Steps + Far, around.Top.Steps + Far), (around.Left.Steps - Far, around.Top.Steps + Far) };
        var (i, j) = (corners.Select(c => first(c.Item1 - u, c.Item2 - v)).ToList(), corners.Select(c => second(c.Item1 - u, c.Item2 - v)).ToList());
        for (var one = (long)Math.Floor(i.Min()); one <= i.Max() + 1; one++)
        {
            for (var other = (long)Math.Floor(j.Min()); other <= j.Max() + 1; other++) yield return (one, other);
        }
    }
}
