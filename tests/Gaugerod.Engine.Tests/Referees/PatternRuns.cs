using System.Globalization;
using CsCheck;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>A run of random faces with a bond of any kind on it, turned by any angle.</summary>
internal sealed record PatternRun(Sequence<FinishedFace> Faces, BondCase Given, Angle Turn)
{
    public PatternProblem Problem(Limits limits, params Want[] wants) => new(
        new(Faces, Given.Products[0], Given.Request with { Turn = Turn }, false, Engine.Bonds.JointRange.Only(Given.Joint), limits, wants.ToSequence(), ScoreOrder.Usual, Tape.Millimetres),
        Given.Products, Turn);

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Given} turned {Turn}\n{string.Join('\n', Faces.Select(face => $"{face.Name} at {face.Unrolled.Steps},{face.Raised.Steps}: {string.Join(' ', face.Edges.Select(e => $"{e.Name}:{e.From.X.Steps},{e.From.Y.Steps}>{e.To.X.Steps},{e.To.Y.Steps}"))}"))}");
}

/// <summary>Random runs for bonds of every kind.</summary>
internal static class PatternRuns
{
    /// <summary>One to three faces of half a metre to 1.4 m.</summary>
    public static Gen<PatternRun> Any { get; } =
        from scale in Gen.Frequency((1, Gen.Const(1)), (4, Gen.Const(2)), (2, Gen.Const(4)))
        from given in RandomBonds.Any(scale)
        from faces in Finished(500, 1400, 3)
        from turn in RandomFields.Turns
        select new PatternRun(faces, given, turn);

    /// <summary>One or two faces of some 20 to 60 tiles in all, square or leaning, the bond straight, at 45 degrees, or turned anyhow.</summary>
    public static Gen<PatternRun> Small { get; } =
        from given in RandomBonds.Any(1)
        from tiles in Gen.Int[20, 60]
        from count in Gen.Int[1, 2]
        from faces in Sized(given, tiles / count, count)
        from turn in Gen.Frequency((1, Gen.Const(0)), (1, Gen.Const(45_000)), (2, Gen.Int[-90_000, 90_000]))
        select new PatternRun(faces, given, Angle.FromThousandths(turn));

    /// <summary>A face with arched heads, rounded corners and a column, as wide as in <see cref="Any"/>.</summary>
    public static Gen<PatternRun> Round { get; } =
        from given in RandomBonds.Any(2)
        from face in RoundFaces.Any(500, 1200)
        from turn in RandomFields.Turns
        let faces = Finish([face])
        where faces.Count > 0
        select new PatternRun(faces, given, turn);

    private static Gen<Sequence<FinishedFace>> Sized(BondCase given, int tiles, int count)
    {
        var bond = given.Bond.Chips ?? given.Bond;
        var (a, b) = (bond.Lattice.First, bond.Lattice.Second);
        var each = Math.Abs(((double)a.Along.Steps * b.Across.Steps) - ((double)a.Across.Steps * b.Along.Steps)) / bond.Motif.Count;
        // A face's steps and leans take about a fifth of its box.
        var side = (int)(Math.Sqrt(each * tiles * 1.2) / 3200);
        return Finished(Math.Max(side * 4 / 5, 60), Math.Max(side * 5 / 4, 80), count);
    }

    private static Gen<Sequence<FinishedFace>> Finished(int least, int most, int count) =>
        Gen.Frequency((2, RandomFaces.Square(least, most)), (3, RandomFaces.Crooked(least, most)), (1, RandomFaces.Gable(least, most)))
            .Array[1, count].Select(Finish).Where(faces => faces.Count > 0);

    private static Sequence<FinishedFace> Finish(Face[] walls)
    {
        var named = walls.Select((wall, i) => new NumberedFace(i, wall with { Name = string.Create(CultureInfo.InvariantCulture, $"wall {i}") })).ToSequence();
        return RoomBuilder.Finish(new("runs[0]", named, Mm(12), null, Mm(3), Tape.Millimetres)).Faces;
    }
}
