using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using Shape = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Engine.Tests.Bonds;

/// <summary>
/// Every bond fills the plane: its tiles, each let out by half a joint, have just the area of a repeat, and no two tiles come
/// nearer than the joint (NetTopologySuite measures). Both together leave no gap and no overlap anywhere.
/// </summary>
public sealed class BondGeometryTests
{
    [Fact]
    public void Tiles_let_out_by_half_a_joint_fill_a_repeat() => RandomBonds.Any().Each(
        given =>
        {
            var bond = given.Bond;
            var filled = bond.Motif.Sum(tile => LetOut(tile.Shape, given.Joint.Steps / 2.0));
            // Corners and steps of the lattice come to whole steps.
            Assert.InRange(filled - (double)bond.Lattice.Area, -Slack(bond), Slack(bond));
        },
        iter: 3_000);

    [Fact]
    public void No_two_tiles_are_nearer_than_the_joint_and_along_every_side_one_is_at_it() => RandomBonds.Any().Each(
        given =>
        {
            var (bond, joint) = (given.Bond, given.Joint.Steps);
            var mine = bond.Motif.Select(tile => Referee.Shape(tile.Shape)).ToList();
            var others = Around(bond, mine, joint + 100);
            foreach (var tile in mine)
            {
                var near = others.Where(other => other != tile && other.EnvelopeInternal.Distance(tile.EnvelopeInternal) <= joint + 100).ToList();
                Assert.All(near, other => Assert.True(other.Distance(tile) >= joint - 2, $"{tile} {other}"));
                foreach (var side in Sides(tile))
                {
                    Assert.InRange(near.Min(other => other.Distance(side)), joint - 2, joint + 2);
                }
            }
        },
        iter: 400);

    [Fact]
    public void A_motif_begins_at_the_origin_with_convex_tiles_run_counter_clockwise() => RandomBonds.Any().Each(
        given =>
        {
            Assert.Equal((0L, 0L), (given.Bond.Motif[0].Cell.Left.Steps, given.Bond.Motif[0].Cell.Bottom.Steps));
            foreach (var tile in given.Bond.Motif)
            {
                var p = tile.Shape.Points;
                Assert.All(Enumerable.Range(0, p.Count), i => Assert.Equal(1, Segments.Turn(p[i], p[(i + 1) % p.Count], p[(i + 2) % p.Count])));
                Assert.InRange(tile.Product, 0, given.Products.Count - 1);
            }
        },
        iter: 1_000);

    [Fact]
    public void A_sheet_of_chips_is_filled_by_its_chips_and_their_joints() => RandomBonds.Any().Each(
        given =>
        {
            if (given.Request is not BondRequest.Mosaic mosaic) return;
            var chip = Assert.IsType<Bond>(given.Bond.Chips).Motif[0].Cell;
            Assert.InRange((given.Products[0].Width - (chip.Width * mosaic.Across) - (given.Joint * (mosaic.Across - 1))).Steps, 0, mosaic.Across - 1);
            Assert.InRange((given.Products[0].Height - (chip.Height * mosaic.Up) - (given.Joint * (mosaic.Up - 1))).Steps, 0, mosaic.Up - 1);
        },
        iter: 1_000);

    /// <summary>A convex shape's area when every side is moved out, corners kept sharp: a strip on each side, and at each corner two right triangles.</summary>
    private static double LetOut(Ring shape, double by)
    {
        var (area, p) = ((double)shape.DoubledArea / 2, shape.Points);
        for (var i = 0; i < p.Count; i++)
        {
            var (a, b, c) = (p[i], p[(i + 1) % p.Count], p[(i + 2) % p.Count]);
            var turn = Math.Atan2((double)Segments.Cross(a, b, b, c), (double)Segments.Dot(a, b, b, c));
            area += (by * Math.Sqrt((double)Segments.Dot(a, b, a, b))) + (by * by * Math.Tan(turn / 2));
        }

        return area;
    }

    private static double Slack(Bond bond) => 2 * bond.Motif.Sum(tile => Referee.Shape(tile.Shape).Length);

    private static List<Shape> Around(Bond bond, List<Shape> mine, double reach)
    {
        var box = new Envelope();
        foreach (var tile in mine) box.ExpandToInclude(tile.EnvelopeInternal);
        box.ExpandBy(reach);
        var (first, second) = (bond.Lattice.First, bond.Lattice.Second);
        var found = new List<Shape>();
        for (var i = -5; i <= 5; i++)
        {
            for (var j = -5; j <= 5; j++)
            {
                var (right, up) = ((first.Along * i) + (second.Along * j), (first.Across * i) + (second.Across * j));
                found.AddRange(i == 0 && j == 0 ? mine : bond.Motif.Select(tile => Referee.Shape(tile.Shape.Moved(right, up))).Where(tile => tile.EnvelopeInternal.Intersects(box)));
            }
        }

        return found;
    }

    private static IEnumerable<LineString> Sides(Shape tile) =>
        Enumerable.Range(0, tile.NumPoints - 1).Select(i => new LineString([tile.Coordinates[i], tile.Coordinates[i + 1]]));
}
