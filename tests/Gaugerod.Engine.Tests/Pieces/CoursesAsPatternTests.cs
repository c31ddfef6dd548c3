using CsCheck;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Pieces;

/// <summary>A grid or a running bond can be cut in two ways, by courses or as any other bond: the pieces are the same, a hair apart.</summary>
public sealed class CoursesAsPatternTests
{
    [Fact]
    public void Courses_cut_as_a_pattern_have_the_same_pieces() => Gen.Select(RandomRooms.Any, Spot.Random).Each(
        (run, spot) =>
        {
            var face = run.Faces[0] with { Unrolled = default, Raised = default };
            var (field, bond) = (FieldRings.Of(face), run.Laid with { Lay = Engine.Bonds.Lay.Level });
            var (x, y) = spot.On(face, run.Product);
            var courses = PieceCutter.Cut(field, bond, new(Length.FromSteps(x), Length.FromSteps(y), run.Joint), run.Product, Tape.Millimetres, "A");
            var pattern = new PatternCutter(new(field, Heading.Of(Angle.Zero)), bond, [run.Product], Tape.Millimetres).Cut(x, y, "A");

            var there = courses.ToLookup(piece => piece.Cell);
            Assert.Empty(pattern.Select(piece => piece.Cell).Except(courses.Select(piece => piece.Cell)));
            foreach (var cell in pattern.GroupBy(piece => piece.Cell))
            {
                var (mine, theirs) = (Judge.Many(cell.Select(Shaped)), Judge.Many(there[cell.Key].Select(Shaped)));
                Assert.True(mine.SymmetricDifference(theirs).Buffer(-(PatternCutter.Hair * 0.75) - 3).IsEmpty, $"{mine}\n{theirs}");
                Assert.All(cell, piece => Assert.True(piece.Upright == piece.Outline && piece.OfRectangle));
            }

            // What the pattern leaves out is narrower than a hair.
            Assert.All(courses.Where(piece => pattern.All(other => other.Cell != piece.Cell)), piece => Assert.True(Shaped(piece).Buffer(-(PatternCutter.Hair * 0.75) - 3).IsEmpty));
        },
        iter: 1_000);

    private static NetTopologySuite.Geometries.Geometry Shaped(Piece piece) => Judge.Shape(piece.Outline, piece.Inner);
}
