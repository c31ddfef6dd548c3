using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>Random runs of one to three faces, finished by the engine's own room builder, with a tile and a bond.</summary>
internal static class RandomRooms
{
    private static readonly Gen<BondRequest> Bonds =
        from lay in Gen.Frequency((2, Gen.Const(Lay.Level)), (1, Gen.Const(Lay.Upright)))
        from running in Gen.Frequency((1, Gen.Const(false)), (2, Gen.Const(true)))
        from part in Pick((1, 2), (1, 3), (1, 4), (2, 5), (3, 7))
        from stepping in Pick(Stepping.OneWay, Stepping.BackAndForth)
        select running ? new BondRequest.Running(lay, part.Item1, part.Item2, stepping) : (BondRequest)new BondRequest.Grid(lay);

    /// <summary>Rooms whose sides are all plumb or level.</summary>
    public static Gen<RandomRun> Square { get; } = Runs(RandomFaces.Square(500, 1800), 3, 160, 600);

    /// <summary>Rooms of every kind.</summary>
    public static Gen<RandomRun> Any { get; } = Runs(
        Gen.Frequency((2, RandomFaces.Square(500, 1800)), (4, RandomFaces.Crooked(500, 1800)), (2, RandomFaces.Read)), 3, 160, 600);

    /// <summary>Rooms a few tiles across.</summary>
    public static Gen<RandomRun> Small(bool square, int faces, int size) =>
        Runs(square ? RandomFaces.Square(3 * size, 5 * size) : RandomFaces.Crooked(3 * size, 6 * size), faces, size, 2 * size);

    /// <summary>One of a few values.</summary>
    public static Gen<T> Pick<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<RandomRun> Runs(Gen<Face> faces, int most, int least, int largest) =>
        (from walls in faces.Array[1, most]
         from size in Gen.Select(Gen.Int[least, largest], Gen.Int[least, largest])
         from finer in Pick(0L, 0L, 1L, 635L)
         from joint in Gen.OneOf(Gen.Long[0, 5].Select(mm => Mm(mm)), Gen.Long[2, 6].Select(parts => In(0, parts, 32)))
         from bond in Bonds
         from restart in Gen.Frequency((2, Gen.Const(false)), (1, Gen.Const(true)))
         select Finish(
             walls, new("tile", Mm(size.Item1) + Length.FromSteps(finer), Mm(size.Item2), Mm(9)) { BondCoat = Mm(3), Kerf = Mm(2) },
             bond, restart, joint))
        .Where(run => run is not null).Select(run => run!);

    private static RandomRun? Finish(Face[] walls, Product tile, BondRequest bond, bool restart, Length joint)
    {
        var named = walls.Select((wall, i) => new NumberedFace(i, wall with { Name = $"wall {i}" })).ToSequence();
        var finished = RoomBuilder.Finish(new("runs[0]", named, tile.BuildUp, null, Mm(3), Tape.Millimetres));
        return finished.Faces.Count == 0 || finished.Faces.Any(NearARake) ? null : new(finished.Faces, tile, bond, restart, joint);
    }

    /// <summary>Whether an edge slopes so nearly 1 in 8 that a step of rounding decides how it counts: the referee rounds elsewhere.</summary>
    private static bool NearARake(FinishedFace face) => face.Edges.Any(edge =>
    {
        var (x, y) = ((edge.To.X - edge.From.X).Abs().Steps, (edge.To.Y - edge.From.Y).Abs().Steps);
        var (less, more) = (Math.Min(x, y) * 8.0, (double)Math.Max(x, y));
        return Math.Abs(less - more) < (0.02 * more) + 64;
    });
}
