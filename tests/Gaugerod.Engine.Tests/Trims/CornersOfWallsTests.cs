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

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Two walls with a trim along the head of each that meet at their corner. Source: NetTopologySuite, which is handed the outlines of each wall's tiles, trims and corner pieces.</summary>
public sealed class CornersOfWallsTests
{
    private const double Hair = 20_000;

    private static readonly TrimCorner?[] s_asked = [null, TrimCorner.Mitred, TrimCorner.Covers, TrimCorner.Butts, TrimCorner.Piece];

    [Fact]
    public void On_150_pairs_of_walls_what_meets_at_their_corner_lies_clear_and_a_corner_piece_stands_a_joint_from_both()
    {
        var (pieces, mitres) = (0, 0);
        var gen =
            from outside in Gen.Bool
            from size in Gen.Select(Gen.Int[700, 2000], Gen.Int[700, 2000], Gen.Int[600, 1200])
            from bar in Gen.Bool
            from product in Gen.Select(Gen.Int[150, 320], Gen.Int[15, 60], Gen.Int[0, 4], Gen.Int[6, 12])
            from reach in Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60])
            from has in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2])
            from asked in Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4])
            from joints in Gen.Select(Gen.Enum<TrimJoints>(), Gen.Enum<TrimJoints>())
            let trim = Bullnose with
            {
                Kind = bar ? TrimKind.Profile : TrimKind.Bullnose, ByBar = bar, Stock = Mm(bar ? product.Item1 * 8 : product.Item1), Width = Mm(product.Item2), Joint = Mm(product.Item3), Thickness = Mm(product.Item4), Least = Mm(30),
                Outside = has.Item1 > 0 ? Mm(product.Item2 + reach.Item1) : null, Inside = has.Item2 > 0 ? Mm(product.Item2 + reach.Item2) : null,
            }
            select (Corner: outside ? EdgeKind.OutsideCorner : EdgeKind.InsideCorner, Size: size, Trim: trim, One: s_asked[asked.Item1], Next: s_asked[asked.Item2], Joints: joints);
        gen.Each(
            drawn =>
            {
                var job = Walls(drawn.Corner, drawn.Size, drawn.Trim, (drawn.Joints.Item1, drawn.One), (drawn.Joints.Item2, drawn.Next));
                Assert.Empty(JobCheck.Check(job));
                var plan = Planner.Plan(job);
                foreach (var face in plan.Runs[0].Faces) Lies(plan, face, drawn.Trim);
                if (plan.Trims.Lines.SelectMany(line => line.CornerPieces).DistinctBy(piece => piece.Id).SingleOrDefault() is { } corner)
                {
                    Goes(plan, corner, drawn.Corner == EdgeKind.OutsideCorner ? drawn.Trim.Outside!.Value : drawn.Trim.Inside!.Value, drawn.Trim);
                    Interlocked.Increment(ref pieces);
                }

                var (left, right) = (plan.Trims.Lines.Single(line => line.Face == "left"), plan.Trims.Lines.Single(line => line.Face == "right"));
                Assert.Equal(left.Begin == TrimEnd.Mitre, right.End == TrimEnd.Mitre);
                if (left.Begin != TrimEnd.Mitre) return;
                // Both to the very corner, one of each hand; a mitre round two walls takes the trim's thickness.
                Assert.Equal((Corner(plan, 0), Corner(plan, 1)), (left.Pieces[0].Outline.Bounds.Right, right.Pieces[^1].Outline.Bounds.Left));
                Assert.Equal((PieceEnd.Mitred, PieceEnd.Mitred), (left.Pieces[0].Begin, right.Pieces[^1].End));
                Assert.All([left.Pieces[0], right.Pieces[^1]], piece => Assert.Equal(drawn.Trim.Thickness, piece.MitreTakes));
                Interlocked.Increment(ref mitres);
            },
            iter: 150);
        Assert.True(pieces > 15 && mitres > 30, $"{pieces} corner pieces and {mitres} mitres were looked at");
    }

    /// <summary>Where the field ends at the corner: the right side of the left wall, the left side of the right one.</summary>
    private static Length Corner(Plan plan, int wall) => plan.Runs[0].Faces[wall].Face.Field.Outer.Bounds is var box && wall == 0 ? box.Right : box.Left;

    private static void Lies(Plan plan, FacePlan face, TrimProduct trim)
    {
        var tiles = face.Pieces.Select(piece => (Geometry)Judge.Shape(piece.Outline, piece.Inner)).ToList();
        var name = face.Face.Name;
        List<Geometry> all =
        [
            .. plan.Trims.Lines.Where(line => line.Face == name).SelectMany(line => line.Pieces).Select(piece => Judge.Shape(piece.Outline, [])),
            .. plan.Trims.Lines.SelectMany(line => line.CornerPieces).DistinctBy(piece => piece.Id).SelectMany(piece => piece.Parts).Where(part => part.Face == name).Select(part => Judge.Shape(part.Outline, [])),
        ];
        var box = face.Face.Field.Outer.Bounds;
        foreach (var (shape, i) in all.Select((shape, i) => (shape, i)))
        {
            Assert.All(tiles, tile => Assert.True(tile.Intersection(shape).Area < Hair, "it lies on a tile"));
            Assert.All(all.Skip(i + 1), other => Assert.True(other.Intersection(shape).Area < Hair, "it lies on another"));
            var reaches = shape.EnvelopeInternal;
            Assert.True(reaches.MinX >= box.Left.Steps - 2 && reaches.MaxX <= box.Right.Steps + 2, "it leaves the wall");
            Assert.InRange(reaches.Height - trim.Width.Steps, -2, 2);
        }
    }

    /// <summary>It reaches as far along both walls, ends at the corner, and stands a joint from what ends at it.</summary>
    private static void Goes(Plan plan, CornerPiece corner, Length reach, TrimProduct trim)
    {
        Assert.Equal(reach, corner.Reach);
        Assert.Equal(["left", "right"], corner.Parts.Select(part => part.Face).Order());
        foreach (var part in corner.Parts)
        {
            var (box, wall) = (part.Outline.Bounds, part.Face == "left" ? 0 : 1);
            Assert.Equal((reach, trim.Width), (box.Width, box.Height));
            Assert.Equal(Corner(plan, wall), wall == 0 ? box.Right : box.Left);
            var line = plan.Trims.Lines.Single(trims => trims.Face == part.Face);
            Assert.Equal(corner, wall == 0 ? line.AtBegin : line.AtEnd);
            if (line.Pieces.Count > 0) Assert.Equal(trim.Joint, wall == 0 ? box.Left - line.Pieces[0].Outline.Bounds.Right : line.Pieces[^1].Outline.Bounds.Left - box.Right);
        }

        Assert.Equal([new CornerPieceCount(corner.Kind, RoundWalls: true, 0, 1)], Assert.Single(plan.Trims.Stocks).CornerPieces);
    }

    private static Job Walls(EdgeKind corner, (int Left, int Right, int Height) size, TrimProduct trim, (TrimJoints Joints, TrimCorner? Corner) one, (TrimJoints Joints, TrimCorner? Corner) next)
    {
        var corners = new Edge("corner", corner) { Finish = corner == EdgeKind.OutsideCorner ? CornerFinish.Mitre : null };
        Edge foot = new("foot", EdgeKind.Floor), end = new("end", EdgeKind.InsideCorner);
        var left = Wall("left", size.Left, size.Height, [foot, corners, Trimmed("head", trim, one.Joints, null, one.Corner), end]);
        var right = Wall("right", size.Right, size.Height, [foot, end, Trimmed("head", trim, next.Joints, null, next.Corner), corners]);
        var job = Job(Ring.Of(new Box(Length.Zero, Length.Zero, Mm(2000), Mm(1000))), [foot, end, end with { Name = "other" }, end with { Name = "last" }], [], trim, new("tile", Mm(197), Mm(197), Mm(8)) { BondCoat = Mm(3) }, Mm(3), new BondRequest.Grid(Lay.Level));
        return job with { Faces = [left, right], Runs = [job.Runs[0] with { Faces = ["left", "right"] }] };
    }

    private static Face Wall(string name, int width, int height, Sequence<Edge> edges) =>
        new(name, new FaceShape.Outline(Ring.Of(new Box(Length.Zero, Length.Zero, Mm(width), Mm(height))), edges, Length.Zero), [], []);
}
