using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Rooms;
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

    /// <summary>Rooms with arched heads, rounded corners and columns.</summary>
    public static Gen<RandomRun> Round { get; } = Runs(RoundFaces.Any(500, 1500), 2, 100, 500);

    /// <summary>Rooms whose foot or head has a bend of less than 1 in 8.</summary>
    public static Gen<RandomRun> Shallow { get; } = Runs(RoundFaces.Shallow(500, 1500), 2, 100, 400);

    /// <summary>A column on a wall of square tile that is within a few millimetres as wide as the column, its middle about on a tile's.</summary>
    public static Gen<(RandomRun Run, Spot At)> Columns { get; } =
        from radius in Gen.Long[40, 150]
        from more in Pick(-20_000L, -8000, -3300, -3200, -3100, -640, -1, 0, 1, 640, 1280, 3200, 9600)
        from off in Gen.Select(Pick(0L, 0, 1, 320, 3200, -3300), Pick(0L, 0, -1, 640, -3200))
        from bond in Bonds
        from joint in Gen.Long[0, 3]
        let face = new Face("wall", new FaceShape.Outline(RingMm((0, 0), (1000, 0), (1000, 900), (0, 900)), Walls.Stops(4), default), [RoundFaces.Column("column", 500, 430, radius, Walls.Stop("side"))], [])
        let tile = new Product("tile", Length.FromSteps((2 * radius * 3200) + more), Length.FromSteps((2 * radius * 3200) + more), Mm(9)) { BondCoat = Mm(3), Kerf = Mm(2) }
        let run = Finish([face], tile, bond, false, Mm(joint))
        where run is not null
        select (run, new Spot(0, 0, 0, 0, 0, Mm(500).Steps - (tile.Width.Steps / 2) + off.Item1, Mm(430).Steps - (tile.Height.Steps / 2) + off.Item2));

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
