using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bases;

/// <summary>Beds for hand sketches.</summary>
internal static class Beds
{
    public const double CubicFoot = 28_316_846.592;

    public static Point Inch(double x, double y) => new(Grid.Nearest(x * Length.StepsPerInch), Grid.Nearest(y * Length.StepsPerInch));

    /// <summary>A floor of so many inches with walls south, east, north and west.</summary>
    public static Face Shower(double width, double depth, double x, double y, BedRequest bed, EdgeKind south = EdgeKind.Fixture)
    {
        string[] names = ["south", "east", "north", "west"];
        var edges = names.Select((name, i) => new Edge(name, i == 0 ? south : EdgeKind.Fixture)).ToSequence();
        return new("floor", new FaceShape.Outline(new([Inch(0, 0), Inch(width, 0), Inch(width, depth), Inch(0, depth)]), edges, default), [], [new("drain", Inch(x, y), Length.FromInches(4))])
        {
            Falls = new(bed.Drains.Count > 0 ? null : "drain", []) { Bed = bed },
        };
    }

    /// <summary>A floor given in millimetres with a drain.</summary>
    public static Face Floor((long X, long Y)[] ring, (long X, long Y) drain, BedRequest bed, params Opening[] openings) => new(
        "floor", new FaceShape.Outline(RingMm(ring), Enumerable.Range(0, ring.Length).Select(i => new Edge($"side {i}", EdgeKind.Fixture)).ToSequence(), default), openings.ToSequence(), [new("drain", At(drain.X, drain.Y), Mm(100))])
    {
        Falls = new(null, []) { Bed = bed with { Drains = bed.Drains.Count > 0 ? bed.Drains : [new("drain", null)] } },
    };

    public static Bed Make(Face face, Tape? tape = null)
    {
        var bed = Make(face, tape ?? Tape.Sixteenths, out var faults);
        Assert.Empty(faults);
        return bed!;
    }

    public static Fault Refused(Face face)
    {
        Assert.Null(Make(face, Tape.Millimetres, out var faults));
        return Assert.Single(faults);
    }

    private static Bed? Make(Face face, Tape tape, out IReadOnlyList<Fault> faults)
    {
        var remarks = new Remarks(tape);
        var drawn = FaceDrawing.Draw(new(0, face), remarks)!;
        Assert.Empty(remarks.Faults);
        var bed = BedMaker.Make(drawn, face.Falls!, remarks);
        faults = remarks.Faults;
        return bed;
    }
}
