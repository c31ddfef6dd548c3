using CsCheck;
using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>A random place for the first tile: anywhere, or with a side of a tile on a corner of the field or a step beside it, which is where things go wrong.</summary>
internal sealed record Spot(int Mode, int OneCorner, int OtherCorner, int Aside, int Above, long X, long Y)
{
    public static Gen<Spot> Random { get; } =
        from mode in Gen.Int[0, 4]
        from corners in Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 1000])
        from off in Gen.Select(Gen.Int[-1, 1], Gen.Int[-1, 1])
        from any in Gen.Select(Gen.Long[-3_000_000, 3_000_000], Gen.Long[-3_000_000, 3_000_000])
        select new Spot(mode, corners.Item1, corners.Item2, off.Item1, off.Item2, any.Item1, any.Item2);

    public (long X, long Y) On(FinishedFace face, Product tile)
    {
        var (one, other) = (face.Edges[OneCorner % face.Edges.Count].From, face.Edges[OtherCorner % face.Edges.Count].From);
        var (x, y) = (one.X.Steps + Aside, other.Y.Steps + Above);
        return Mode switch
        {
            0 => (X, Y),
            1 => (x, Y),
            2 => (x, y),
            3 => (x - tile.Width.Steps, y),
            _ => (x, y - tile.Height.Steps),
        };
    }
}
