using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Takeoffs;

/// <summary>What docs/directions.md guarantees of planned boxes. How boxes are blended is common practice, no source; the counts are worked by hand.</summary>
public sealed class BoxTests
{
    private static readonly BondRequest s_grid = new BondRequest.Grid(Lay.Level);

    private static BondRequest Running(int part, int of) => new BondRequest.Running(Lay.Level, part, of, Stepping.OneWay);

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void On_a_wall_of_whole_tiles_in_line_no_two_side_by_side_or_one_above_the_other_are_of_one_box(int open)
    {
        // 8 by 6 tiles have 6 x 7 joints between tiles side by side and 8 x 5 between tiles one above the other.
        var (plan, pieces) = Dealt(Whole(8, 6), s_grid, open, open, 48);
        Assert.All(pieces, piece => Assert.Equal(PieceKind.Full, piece.Kind));
        Assert.Equal((82, 0), (plan.Joints, plan.Alike));
        var box = plan.Courses.SelectMany(course => course.Stretches).SelectMany(stretch => stretch).ToDictionary(piece => piece.Id, piece => piece.Box, StringComparer.Ordinal);
        foreach (var piece in pieces)
        {
            var beside = pieces.Where(other => Math.Abs(other.Course - piece.Course) + Math.Abs(other.Column - piece.Column) == 1).ToList();
            Assert.InRange(beside.Count, 2, 4);
            Assert.All(beside, other => Assert.NotEqual(box[piece.Id], box[other.Id]));
        }
    }

    [Fact]
    public void In_a_running_bond_three_boxes_are_enough()
    {
        foreach (var (part, of) in new[] { (1, 2), (1, 3), (1, 4) })
        {
            foreach (var open in new[] { 3, 4 })
            {
                var (plan, pieces) = Dealt(Whole(8, 6), Running(part, of), open, open, 100);

                // Courses of 8 tiles and of 7 with a half at each end: 3 x 7 and 3 x 8 joints along them, 8 + 9 - 1 between two of them.
                if (of == 2) Assert.Equal(21 + 24 + (5 * 16), plan.Joints);
                var fresh = plan.Courses.SelectMany(course => course.Stretches).SelectMany(stretch => stretch).Where(piece => !piece.IsOffcut).ToDictionary(piece => piece.Id, piece => piece.Box, StringComparer.Ordinal);
                var pairs = Neighbours.Of(pieces, Mm(1)).Select(pair => (One: pieces[pair.One].Id, Other: pieces[pair.Other].Id)).Where(pair => fresh.ContainsKey(pair.One) && fresh.ContainsKey(pair.Other)).ToList();
                Assert.NotEmpty(pairs);
                Assert.All(pairs, pair => Assert.NotEqual(fresh[pair.One], fresh[pair.Other]));
            }
        }
    }

    [Fact]
    public void Where_there_is_a_choice_no_order_repeats_up_the_wall()
    {
        var (plan, _) = Dealt(Whole(9, 14), s_grid, 3, 3, 100);
        var starts = plan.Courses.Select(course => course.Stretches[0][0].Box).ToList();
        var shifts = starts.Zip(starts.Skip(1), (below, above) => (above - below + 3) % 3).ToList();
        Assert.Equal([1, 2], shifts.Distinct().Order());
    }

    [Theory]
    [InlineData(10, 3, "1-3 4-6 7-10")]
    [InlineData(11, 3, "1-3 4-6 7-11")]
    [InlineData(6, 3, "1-3 4-6")]
    [InlineData(5, 3, "1-5")]
    [InlineData(2, 3, "1-2")]
    [InlineData(1, 2, "1-1")]
    public void No_box_is_opened_alone_at_the_end(int boxes, int open, string groups)
    {
        var plan = new BoxPlan("tile", Math.Min(open, boxes), boxes, 10, [], [], 0, 0);
        Assert.Equal(groups, string.Join(' ', plan.Groups.Select(group => $"{group.First}-{group.Last}")));
        var dealt = new OpenBoxes(boxes, 10, open);
        Assert.Equal(Enumerable.Range(1, boxes).SelectMany(box => Enumerable.Repeat(box, 10)), Enumerable.Range(0, boxes * 10).Select(_ => dealt.Take()).Order());
    }

    /// <summary>Walls with a window, cuts at every side and offcuts that share tiles, in bonds of many kinds.</summary>
    [Fact]
    public void Every_tile_has_a_box_that_holds_it_and_its_offcut_goes_with_it() =>
        Gen.Select(Gen.Long[900, 2600], Gen.Long[700, 1900], Gen.Int[0, Bonds.Length - 1], Gen.Int[2, 5], Gen.Int[3, 20]).Each(wall =>
        {
            var (width, height, bond, open, perBox) = wall;
            var job = Window(width, height, Bonds[bond], open, perBox);
            var plan = Planner.Plan(job);
            var (cutting, boxes) = (Assert.Single(plan.Cutting), Assert.Single(plan.Boxes));
            Assert.Equal(plan.Order[0].Packs, boxes.Boxes);
            Assert.Equal(boxes.OfTile.Select(box => (int?)box), cutting.Tiles.Select(tile => tile.Box));
            Assert.All(boxes.OfTile.GroupBy(box => box), box => Assert.InRange(box.Count(), 1, perBox));
            Assert.All(boxes.OfTile, box => Assert.InRange(box, 1, boxes.Boxes));

            var listed = boxes.Courses.SelectMany(course => course.Stretches).SelectMany(stretch => stretch).ToDictionary(piece => piece.Id, StringComparer.Ordinal);
            Assert.Equal(plan.Runs[0].Faces[0].Pieces.Select(piece => piece.Id).Order(), listed.Keys.Order());
            Assert.All(cutting.Tiles, tile =>
            {
                Assert.All(tile.Pieces, piece => Assert.Equal(tile.Box, listed[piece.Id].Box));
                Assert.Single(tile.Pieces, piece => !listed[piece.Id].IsOffcut);
            });
            Assert.Equal(boxes, Assert.Single(Planner.Plan(job).Boxes));
        }, iter: 30);

    /// <summary>With boxes that never run empty: what the average over all beginnings promises.</summary>
    [Fact]
    public void A_stretch_draws_evenly_and_brings_no_more_of_one_box_together_than_its_share() =>
        Gen.Select(Gen.Long[900, 2600], Gen.Long[700, 1900], Gen.Int[0, Bonds.Length - 1], Gen.Int[2, 5]).Each(wall =>
        {
            var (width, height, bond, open) = wall;
            var job = Window(width, height, Bonds[bond], open, 1000);
            var run = OneWall.Plan(job);
            var (cutting, pieces, joint) = (Planner.Plan(job).Cutting[0], run.Faces[0].Pieces, run.Best.Placing.Joint);
            var plan = BoxDealing.Of(job.Products[0], cutting, open, [new(pieces, joint)]);
            var tile = cutting.Tiles.SelectMany(t => t.Pieces.Select(piece => (piece.Id, t.Number))).ToDictionary(t => t.Id, t => t.Number, StringComparer.Ordinal);
            var pairs = Neighbours.Of(pieces, joint).Select(pair => (One: tile[pieces[pair.One].Id], Other: tile[pieces[pair.Other].Id])).Where(pair => pair.One != pair.Other).ToList();
            var taken = new HashSet<int>();
            foreach (var stretch in plan.Courses.SelectMany(course => course.Stretches))
            {
                var fresh = stretch.Where(piece => !piece.IsOffcut).ToList();
                Assert.All(fresh.Zip(fresh.Skip(1)), pair => Assert.NotEqual(pair.First.Box, pair.Second.Box));
                for (var from = 0; from < fresh.Count; from++)
                {
                    var counts = Enumerable.Range(1, open).Select(box => fresh.Skip(from).Count(piece => piece.Box == box)).ToList();
                    Assert.InRange(counts.Max() - counts.Min(), 0, 1);
                }

                var mine = fresh.Select(piece => tile[piece.Id]).ToHashSet();
                var joints = pairs.Where(pair => (mine.Contains(pair.One) && taken.Contains(pair.Other)) || (mine.Contains(pair.Other) && taken.Contains(pair.One))).ToList();
                var alike = joints.Count(pair => plan.OfTile[pair.One - 1] == plan.OfTile[pair.Other - 1]);
                Assert.InRange(alike * open, 0, joints.Count);
                taken.UnionWith(mine);
            }
        }, iter: 30);

    private static readonly BondRequest[] Bonds =
    [
        s_grid, Running(1, 2), Running(1, 3), new BondRequest.Grid(Lay.Upright), s_grid with { Turn = Angle.FromDegrees(45) },
        new BondRequest.Herringbone(1), new BondRequest.Basketweave(),
    ];

    private static (long Width, long Height) Whole(int across, int up) => ((across * 302) + across - 1 + 6, (up * 100) + up - 1 + 6);

    private static Job Window(long width, long height, BondRequest bond, int open, int perBox)
    {
        var ring = Ring.Of(new(Mm(width / 3), Mm(height / 3), Mm(width / 3) + Mm(380), Mm(height / 3) + Mm(310)));
        var sides = new[] { "bottom", "right", "top", "left" }.Select(name => new Edge(name, EdgeKind.Fixture)).ToSequence();
        return Blended(OneWall.Job(Mm(width), Mm(height), Mm(3), Mm(302), JointRange.Only(Mm(1)), Tape.Millimetres, openings: [new("window", ring, sides)], bond: bond, depth: Mm(100)), open, perBox);
    }

    private static Job Blended(Job job, int open, int perBox) => job with { Products = [job.Products[0] with { Blend = open, PerBox = perBox }] };

    private static (BoxPlan Plan, Sequence<Piece> Pieces) Dealt((long Width, long Height) wall, BondRequest bond, int open, int boxes, int perBox)
    {
        var job = Blended(OneWall.Job(Mm(wall.Width), Mm(wall.Height), Mm(3), Mm(302), JointRange.Only(Mm(1)), Tape.Millimetres, bond: bond, depth: Mm(100)), open, perBox);
        var plan = Planner.Plan(job);
        var face = plan.Runs[0].Faces[0];
        return (BoxDealing.Of(job.Products[0], plan.Cutting[0], boxes, [new(face.Pieces, plan.Runs[0].Best.Placing.Joint)]), face.Pieces);
    }

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);
}
