using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>Floors that fall to a drain, judged by NetTopologySuite; where their sides meet at an angle is known from how they were made.</summary>
public sealed class FoldProperties
{
    // As FloorSides has it; about it the two may differ.
    private const double InLine = 1 / 16.0, Doubt = 0.004;

    private int _used, _without, _reflex;

    [Fact]
    public void A_floor_is_its_planes_and_a_joint_along_every_fold_and_a_fold_runs_to_every_true_corner_and_no_other()
    {
        Gen.Select(FallingFloors.Any, Gen.Long[0, 10]).Each((floor, joint) => Check(floor, Mm(joint)), iter: 400);
        Assert.True(_used >= 250, $"{_used} floors");
        Assert.True(_without >= 20 && _reflex >= 20, $"{_without} without a fold, {_reflex} with a plane of more than half a turn");
    }

    [Fact]
    public void Pieces_lie_in_one_plane_each_and_cover_all_of_them() => FallingFloors.Any.EachDear(
        floor =>
        {
            if (Folded(floor.Face, Mm(3)) is null) return;
            var job = OneWall.Job(Mm(1000), Mm(1000), Mm(3), Mm(400), JointRange.Only(default), Tape.Millimetres) with
            {
                Faces = [floor.Face with { Falls = new("drain", []), Holes = [floor.Face.Holes[0] with { Diameter = Mm(1) }] }],
            };
            var plan = OneWall.Plan(job with { Runs = [job.Runs[0] with { Faces = ["floor"] }] });
            foreach (var face in plan.Faces)
            {
                var field = Judge.Shape(face.Face.Field.Outer, face.Face.Field.Inner);
                var pieces = face.Pieces.Select(piece => Judge.Shape(piece.Outline, piece.Inner)).ToList();
                // A cut under a hundredth of a millimetre is not made, and each corner comes to the grid.
                var around = field.Buffer(34);
                Assert.All(pieces, piece => Assert.True(around.Covers(piece), $"{piece}\nbeyond {field}"));
                Assert.InRange(pieces.Sum(piece => piece.Area) - field.Area, -(34 * field.Length) - (3200.0 * 3200), 34 * field.Length);
            }
        }, 12);

    private void Check(FallingFloor floor, Length joint)
    {
        if (Folded(floor.Face, joint) is not var (whole, planes) || floor.Bends.Any(bend => Math.Abs(bend - InLine) < Doubt)) return;
        _ = Interlocked.Increment(ref _used);
        var corners = floor.Corners.Where((_, i) => floor.Bends[i] > InLine).ToList();
        if (corners.Count == 0) _ = Interlocked.Increment(ref _without);
        Assert.All(planes, plane => Assert.Equal(corners.Count > 0, plane.Plane is not null));

        var half = Math.Max(FoldSaw.Least, joint.Steps / 2.0);
        var field = Judge.Shape(whole.Field.Outer, whole.Field.Inner);
        var strips = corners.Select(corner => Strip(floor.Drain, corner, half)).ToList();
        var left = strips.Count == 0 ? field : field.Difference(NetTopologySuite.Operation.Union.UnaryUnionOp.Union(strips));
        var shapes = planes.Select(plane => (Geometry)Judge.Shape(plane.Field.Outer, plane.Field.Inner)).ToList();
        var told = string.Join('\n', shapes);
        Assert.All(shapes, shape => Assert.True(shape.IsValid, told));
        // Each corner is brought to whole steps at a few cuts.
        var rounding = 4 * (field.Length + strips.Sum(strip => strip.Length));
        var apart = left.SymmetricDifference(Judge.Many(shapes));
        Assert.True(apart.Area <= rounding, $"{apart.Area} for {rounding}, the most of it {Enumerable.Range(0, apart.NumGeometries).Select(apart.GetGeometryN).MaxBy(part => part.Area)}\n{left}\nis\n{told}");
        for (var i = 0; i < shapes.Count; i++)
        {
            Assert.All(strips, strip => Assert.True(shapes[i].Intersection(strip).Area <= rounding, told));
            for (var j = 0; j < i; j++) Assert.True(shapes[i].Distance(shapes[j]) >= (half * 2) - 4, told);
        }

        Assert.Equal(Math.Max(1, corners.Count), planes.Count + Narrow(left, corners.Count, planes.Count));
        if (shapes.Exists(shape => shape.Intersects(Judge.Factory.CreatePoint(new Coordinate(floor.Drain.X.Steps, floor.Drain.Y.Steps)).Buffer(half * 3)) && corners.Count is 1 or 2)) _ = Interlocked.Increment(ref _reflex);
    }

    /// <summary>How many planes there is nothing left of, by the referee.</summary>
    private static int Narrow(Geometry left, int corners, int planes) => corners - Enumerable.Range(0, left.NumGeometries).Count(i => left.GetGeometryN(i).Area > 1e6) is var lost && lost > 0 && planes > 0 ? lost : 0;

    private static Geometry Strip(Gaugerod.Plane.Shapes.Point drain, Gaugerod.Plane.Shapes.Point corner, double half)
    {
        // Past the drain by as much as to both sides, and past the corner: all that a drain sees ends there.
        var (x, y) = ((double)(corner.X - drain.X).Steps, (double)(corner.Y - drain.Y).Steps);
        var length = Math.Sqrt((x * x) + (y * y));
        var line = Judge.Factory.CreateLineString(
        [
            new(drain.X.Steps - (x * half / length), drain.Y.Steps - (y * half / length)),
            new(corner.X.Steps + (x * 400 * 3200 / length), corner.Y.Steps + (y * 400 * 3200 / length)),
        ]);
        return line.Buffer(half, new BufferParameters { EndCapStyle = EndCapStyle.Flat });
    }

    private static (FinishedFace Whole, IReadOnlyList<FinishedFace> Planes)? Folded(Face face, Length joint)
    {
        var run = Walls.Finish(face);
        var remarks = new Remarks(Tape.Millimetres);
        if (run.Faults.Count > 0 || FoldedFloor.Of(run.Faces[0], new("drain", []), joint, "faces[0]", remarks) is not { } floor) return null;
        return (run.Faces[0], floor.Cut(run.Faces[0], remarks));
    }
}
