using CsCheck;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Takeoffs;

/// <summary>Joints of random rooms, leaning walls, windows and baths among them, by NetTopologySuite's areas and lengths.</summary>
public sealed class JointSpaceAgainstRefereeTests
{
    private const double Step = 3200;

    // Steps that a corner of a cut may stand off a slanting edge.
    private const double Near = 2;

    [Fact]
    public void Joints_are_what_no_piece_covers_and_as_long_as_the_sides_that_stand_off_the_field_s_edge() =>
        Gen.Select(RandomRooms.Any, Spot.Random).Each(
            (run, spot) =>
            {
                foreach (var face in run.Faces)
                {
                    var (x, y) = spot.On(face, run.Product);
                    var field = FieldRings.Of(face);
                    var pieces = PieceCutter.Cut(field, run.Laid, new(Length.FromSteps(x), Length.FromSteps(y), run.Joint), run.Product, Tape.Millimetres, "A");
                    var space = JointSpace.Of(field.Covered, pieces);
                    var judge = new Judge(field.Covered);
                    var shapes = pieces.Select(piece => Judge.Shape(piece.Outline, piece.Inner)).ToList();

                    var area = judge.Field.Area - shapes.Sum(shape => shape.Area);
                    Assert.Equal(area / (Step * Step), space.Area, 1 / Step);

                    var beside = judge.Field.Boundary.Buffer(Near, 32);
                    var length = shapes.Sum(shape => shape.ExteriorRing.Difference(beside).Length);
                    Assert.Equal(length / 2 / Step, space.Length, 0.005 * Math.Max(1, pieces.Count));
                }
            },
            iter: 300);
}
