using Gaugerod.Engine.Boards;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;

namespace Gaugerod.Engine.Tests.Boards;

/// <summary>The seams found, against every choice of seams there is.</summary>
public sealed class SeamSearchTests
{
    [Fact]
    public void No_choice_of_seams_is_better_than_the_one_found() => RandomWalls.Of(2400, 2000).EachBoarded(
        (wall, task) =>
        {
            var layout = BoardPlanner.Steps(task, JointBands.None).Last()!;
            Assert.True(layout.Choice.IsBest);
            var cost = layout.Choice.Cost;
            var referee = new SeamReferee(Field(task), RandomWalls.Corners(wall.Face).Select(corner => new Coordinate(corner.X.Steps, corner.Y.Steps)), [.. layout.Rows.Select(row => row.Band)], task.Middles, task.Sheet(layout.Lay), layout.Choice.ByShares);
            var best = referee.Best();
            Assert.NotNull(best);
            Assert.Equal((best.Value.AtCorners, best.Value.InLine, best.Value.Narrow, best.Value.Shares, best.Value.Pieces), (cost.AtCorners, cost.InLine, cost.Narrow, cost.Shares, cost.Pieces));

            // Where a raking head crosses, each seam is a whole number of steps here.
            Assert.InRange(cost.Seams, best.Value.Seams - 40, best.Value.Seams + 40);
        },
        iter: 150);

    // Studs out of reach of each other: no seams will do, and the referee says so too.
    [Fact]
    public void A_wall_is_refused_just_where_no_choice_of_seams_will_do()
    {
        var refused = 0;
        RandomWalls.Of(2400, 2000).Each(
            wall =>
            {
                var face = wall.Face with { Board = wall.Face.Board! with { Studs = wall.Face.Board.Studs! with { Apart = wall.Board.Length } } };
                var task = Boarding.Task(face, wall.Board);
                var can = task.Lays.Any(lay =>
                {
                    var sheet = task.Sheet(lay);
                    var bands = RowHeights.Of(task.Field.Bounds.Bottom.Steps, task.Field.Bounds.Top.Steps, sheet, []).First();
                    return new SeamReferee(Field(task), [], bands, task.Middles, sheet, byShares: false).Best() is not null;
                });
                Assert.Equal(can, task.TooWide() is null);
                if (!can) Interlocked.Increment(ref refused);
            },
            iter: 100);
        Assert.True(refused > 10);
    }

    internal static Geometry Field(BoardTask task)
    {
        var rings = task.Field.Rings.Select(ring => new Ring([.. ring.Select(corner => corner.Point)]).CounterClockwise()).ToList();
        return Referee.Shape(new Gaugerod.Plane.Shapes.Polygon(rings[0], [.. rings.Skip(1)]));
    }
}
