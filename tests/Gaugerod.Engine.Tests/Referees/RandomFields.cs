using System.Globalization;
using CsCheck;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>A face with a bond of any kind on it, turned by any angle, its origin anywhere.</summary>
internal sealed record BondOnFace(FinishedFace Face, BondCase Given, Angle Turn, long U, long V)
{
    public TurnedField Field { get; } = new(FieldRings.Of(Face), Heading.Of(Turn));

    public Sequence<Piece> Pieces() => Pieces(Given.Bond);

    public Sequence<Piece> Pieces(Engine.Bonds.Bond bond) => new PatternCutter(Field, bond, Given.Products, Tape.Millimetres).Cut(U, V, "A");

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Given} turned {Turn} at {U}, {V} on {Face.Name} at {Face.Unrolled.Steps},{Face.Raised.Steps}: {string.Join(' ', Face.Edges.Select(e => $"{e.From.X.Steps},{e.From.Y.Steps}>{e.To.X.Steps},{e.To.Y.Steps}"))}"
        + $" holes {string.Join(' ', Face.Holes.Select(h => $"{h.Centre.X.Steps},{h.Centre.Y.Steps} d {h.Diameter.Steps}"))}");
}

/// <summary>Random faces of every kind, finished by the engine's own room builder and stood anywhere on a run, with random bonds on them.</summary>
internal static class RandomFields
{
    public static Gen<FinishedFace> Faces(int least, int most) =>
        (from face in Gen.Frequency((2, RandomFaces.Square(least, most)), (3, RandomFaces.Crooked(least, most)), (2, RandomFaces.Gable(least, most)), (1, RandomFaces.Read), (2, RoundFaces.Any(least, most)))
         from zones in Gen.Frequency((3, Gen.Const(Sequence.Of<Zone>([]))), (1, Zones(least)))
         from part in Gen.Int[0, 9]
         from right in Gen.Long[-20_000_000, 20_000_000]
         from up in Gen.Long[-8_000_000, 8_000_000]
         select Finish(face, zones, part, right, up)).Where(face => face is not null).Select(face => face!);

    public static Gen<Angle> Turns { get; } = Gen.Frequency(
        (2, Gen.Const(0)), (2, Gen.Const(45_000)), (1, Gen.Int[-1, 3].Select(quarters => quarters * Angle.QuarterTurn)), (1, Gen.Int[-3, 3]), (4, Gen.Int[-180_000, 180_000]))
        .Select(Angle.FromThousandths);

    /// <summary>Faces of half a metre to two, tiles of some centimetres.</summary>
    public static Gen<BondOnFace> Any { get; } =
        from scale in Gen.Frequency((1, Gen.Const(1)), (4, Gen.Const(2)), (2, Gen.Const(4)))
        from given in RandomBonds.Any(scale)
        from face in Faces(500, 1600)
        from turn in Turns
        from at in Gen.Select(Gen.Long[-3_000_000, 3_000_000], Gen.Long[-3_000_000, 3_000_000])
        from corner in Gen.Int[-1, 8]
        select Put(face, given, turn, at.Item1, at.Item2, corner);

    /// <summary>The face of a field, its sides all fixtures'.</summary>
    public static FinishedFace Of(Polygon field)
    {
        var edges = field.Inner.Select(hole => hole.Reversed()).Prepend(field.Outer)
            .SelectMany(ring => ring.Points.Select((p, i) => new FieldEdge(p, ring.Points[(i + 1) % ring.Points.Count], "side", EdgeKind.Fixture)));
        return new("face", field.Outer, [], [], field, edges.ToSequence(), default, default);
    }

    /// <summary>One in nine anywhere; else with the origin's tile just on a corner of the field as it lies, which is where things go wrong.</summary>
    private static BondOnFace Put(FinishedFace face, BondCase given, Angle turn, long x, long y, int corner)
    {
        var put = new BondOnFace(face, given, turn, x, y);
        if (corner < 0) return put;
        var at = put.Field.Rings[0][corner % put.Field.Rings[0].Length];
        return corner % 2 == 0 ? put with { U = at.X, V = at.Y } : put with { U = at.X };
    }

    /// <summary>A frame, a rug in it, and a band: the field is then one of those, or what they leave.</summary>
    private static Gen<Sequence<Zone>> Zones(int least) =>
        from border in Gen.Select(Gen.Long[30, least / 5], Gen.Bool)
        from rug in Gen.Select(Gen.Long[least / 4, least / 2], Gen.Long[least / 4, least / 2], Gen.Long[50, least / 3])
        from band in Gen.Long[least / 5, least / 2]
        from kinds in Gen.Int[1, 7]
        select Sequence.Of<Zone>(
        [
            .. (kinds & 1) > 0 ? [new Zone.Border("frame", Mm(border.Item1), border.Item2)] : Array.Empty<Zone>(),
            .. (kinds & 2) > 0 ? [new Zone.Rug("rug", new(Mm(rug.Item1), Mm(rug.Item2), Mm(rug.Item1 + rug.Item3), Mm(rug.Item2 + rug.Item3)))] : Array.Empty<Zone>(),
            .. (kinds & 4) > 0 ? [new Zone.Strip("upper", Mm(band), null)] : Array.Empty<Zone>(),
        ]);

    private static FinishedFace? Finish(Face face, Sequence<Zone> zones, int part, long right, long up)
    {
        var finished = RoomBuilder.Finish(new("runs[0]", [new NumberedFace(0, face)], Mm(12), null, Mm(3), Tape.Millimetres));
        if (finished.Faces.Count == 0) return null;
        var fields = zones.Count == 0 ? [] : ZoneCutter.Cut(finished.Faces[0], zones, "faces[0]", Mm(3), new(Tape.Millimetres));
        var field = fields.Count == 0 ? finished.Faces[0] : fields[part % fields.Count].Face;
        return field with { Unrolled = Length.FromSteps(right), Raised = Length.FromSteps(up) };
    }
}
