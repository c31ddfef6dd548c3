using CsCheck;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using Geometry = NetTopologySuite.Geometries.Geometry;

namespace Gaugerod.Engine.Tests.Pieces;

/// <summary>
/// Pieces of random rooms, judged by NetTopologySuite. A cut across a side that is neither plumb nor level falls between
/// two steps and comes to the nearest, so a piece may miss the true shape by one step along its slanted sides; where all
/// is plumb and level nothing is rounded and nothing may be missed.
/// </summary>
public sealed class PiecesAgainstRefereeTests
{
    /// <summary>What doubles lose on the area of a whole face, in square steps.</summary>
    private const double Doubles = 1;

    [Fact]
    public void Every_piece_is_its_tile_cut_to_the_field_and_pieces_and_joints_make_the_field() =>
        Gen.Select(RandomRooms.Any, Spot.Random).Each(
            (run, spot) =>
            {
                foreach (var face in run.Faces)
                {
                    var (x, y) = spot.On(face, run.Product);
                    Check(run, FieldRings.Of(face), x, y);
                }
            },
            iter: 2_000);

    private static void Check(RandomRun run, FieldRings field, long x, long y)
    {
        var judge = new Judge(field.Covered);
        var pieces = PieceCutter.Cut(field, run.Laid, new(Length.FromSteps(x), Length.FromSteps(y), run.Joint), run.Product, Tape.Millimetres, "A");
        var byCell = pieces.ToLookup(piece => piece.Cell);
        var cells = Cells.Around(field.Covered.Outer.Bounds, run, x, y);
        Assert.Empty(byCell.Select(group => group.Key).Except(cells));
        Assert.Equal(pieces.Count, pieces.Select(piece => piece.Id).Distinct().Count());

        var (slanted, area) = (Judge.SlantedLength(judge.Field), 0.0);
        foreach (var cell in cells)
        {
            var (expected, found) = (judge.Parts(cell), byCell[cell].ToList());
            area += found.Sum(piece => (double)Twice(piece) / 2);
            if (found is [{ Kind: PieceKind.Full } whole])
            {
                // Tiles do not overlap, so pieces of different tiles do not.
                Assert.Equal(4, whole.Outline.Points.Count);
                Assert.Equal(cell.Corners().ToHashSet(), whole.Outline.Points.ToHashSet());
                var missing = ((double)Ring.Of(cell).DoubledArea / 2) - expected.Sum(part => part.Area);
                Assert.InRange(missing, -Doubles, expected.Sum(Judge.SlantedLength) + Doubles);
                continue;
            }

            CheckCut(cell, expected, found);
        }

        // Joints are what of the field lies in no tile; with tiles set tight there are none.
        var joints = run.Joint == Length.Zero ? 0 : judge.JointArea(cells);
        Assert.InRange(judge.Field.Area - area - joints, -slanted - Doubles, slanted + Doubles);
    }

    private static void CheckCut(Box cell, List<NetTopologySuite.Geometries.Polygon> expected, List<Piece> found)
    {
        var shapes = found.Select(piece => Judge.Shape(piece.Outline, piece.Inner)).ToList();
        foreach (var (piece, shape) in found.Zip(shapes))
        {
            Assert.True(shape.IsValid, $"{piece.Id} {piece.Outline.Points.Count} corners, {shape}");
            Assert.True(piece.Outline.DoubledArea > 0);
            Assert.All(piece.Outline.Points, p => Assert.True(p.X >= cell.Left && p.X <= cell.Right && p.Y >= cell.Bottom && p.Y <= cell.Top));
        }

        for (var i = 0; i < shapes.Count; i++)
        {
            for (var j = i + 1; j < shapes.Count; j++)
            {
                Assert.InRange(shapes[i].Intersection(shapes[j]).Area, 0, Judge.SlantedLength(shapes[i]) + Judge.SlantedLength(shapes[j]));
            }
        }

        var (want, have) = (Judge.Many(expected), Judge.Many(shapes));
        var slanted = expected.Sum(Judge.SlantedLength) + shapes.Sum(Judge.SlantedLength);
        if (slanted == 0)
        {
            Assert.Equal(expected.Count, found.Count);
            Assert.Equal(want.Area, have.Area);
            Assert.Equal(0, Apart(expected, shapes));
            return;
        }

        Assert.InRange(Apart(expected, shapes), 0, slanted);

        // A part no wider than two steps may vanish when its corners come to whole steps.
        Assert.True(expected.Count(IsSure) <= shapes.Count && shapes.Count(IsSure) <= expected.Count, $"{want}\n{have}");
    }

    /// <summary>The area in which two lists of shapes differ.</summary>
    private static double Apart(List<NetTopologySuite.Geometries.Polygon> some, List<NetTopologySuite.Geometries.Polygon> others)
    {
        Geometry left = Judge.Many(some);
        foreach (var shape in others) left = left.SymmetricDifference(shape);
        return left.Area;
    }

    private static bool IsSure(Geometry part) => part.Area > 2 * part.Length;

    private static Int128 Twice(Piece piece)
    {
        var twice = piece.Outline.DoubledArea;
        foreach (var hole in piece.Inner) twice -= hole.DoubledArea;
        return twice;
    }
}
