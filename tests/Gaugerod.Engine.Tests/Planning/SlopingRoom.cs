using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>A wall with a bench whose top slopes, a niche and a right side that leans, and a joint wanted on one edge. Invented; lengths in tenths of a mm.</summary>
/// <param name="Wall">Width and height.</param>
/// <param name="Tile">Across and up.</param>
/// <param name="Bond">The bond.</param>
/// <param name="Bench">Where its front is, and how high it is at its left and right end.</param>
/// <param name="Niche">Its left, bottom, width and height.</param>
/// <param name="Lean">How far the right side leans in.</param>
/// <param name="Edge">The edge on which a joint is wanted.</param>
/// <param name="Hand">Where the tile is held by hand; null where the search finds a place.</param>
internal sealed record SlopingRoom(
    (int Width, int Height) Wall, (int Across, int Up) Tile, BondRequest Bond, (int To, int Left, int Right) Bench, (int Left, int Bottom, int Width, int Height) Niche, int Lean, string Edge, (int X, int Y)? Hand)
{
    private static readonly BondRequest[] s_bonds =
    [
        new BondRequest.Grid(Lay.Level), new BondRequest.Grid(Lay.Upright), new BondRequest.Grid(Lay.Level) { Turn = Angle.FromDegrees(90) },
        new BondRequest.Grid(Lay.Level) { Turn = Angle.FromDegrees(180) }, new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay), new BondRequest.Running(Lay.Upright, 1, 3, Stepping.OneWay),
        new BondRequest.Running(Lay.Level, 1, 3, Stepping.BackAndForth) { Turn = Angle.FromDegrees(90) },
    ];

    private static readonly string[] s_edges = ["bench", "bench", "bench", "bench.right", "niche.left", "niche.right", "niche.bottom", "niche.top", "foot", "head", "left", "right"];

    public static Gen<SlopingRoom> Any { get; } =
        from wall in Gen.Select(Gen.Int[9000, 16000], Gen.Int[10000, 17000])
        from tile in Gen.Select(Gen.Int[1400, 3200], Gen.Int[900, 2600])
        from bond in Gen.Int[0, s_bonds.Length - 1].Select(i => s_bonds[i])
        from to in Gen.Double[0.3, 0.9]
        from left in Gen.Int[1500, 3500]
        from slope in Gen.OneOf(Gen.Const(0), Gen.Int[-8, 8], Gen.Int[-60, 60], Gen.Int[-1100, 1100])
        from niche in Gen.Select(Gen.Double[0.2, 0.4], Gen.Double[0.45, 0.55], Gen.Double[0.15, 0.3], Gen.Double[0.05, 0.25])
        from lean in Gen.OneOf(Gen.Const(0), Gen.Int[-8, 8], Gen.Int[-300, 300])
        from edge in Gen.Int[0, s_edges.Length - 1].Select(i => s_edges[i])
        from hand in Gen.OneOf(Gen.Const(((int, int)?)null), Gen.Const(((int, int)?)null), Gen.Select(Gen.Int[0, 3200], Gen.Int[0, 3200]).Select(at => ((int, int)?)at))
        let w = wall.Item1
        let h = wall.Item2
        select new SlopingRoom(wall, tile, bond, ((int)(w * to), left, left + slope), ((int)(w * niche.Item1), (int)(h * niche.Item2), (int)(w * niche.Item3), (int)(h * niche.Item4)), lean, edge, hand);

    public Job Job(bool must = false)
    {
        static Edge Side(string name, EdgeKind kind = EdgeKind.Fixture) => new(name, kind);
        var (n, b) = (Niche, Bench);
        var niche = new Opening("niche", Ring.Of(new(Mm(n.Left), Mm(n.Bottom), Mm(n.Left + n.Width), Mm(n.Bottom + n.Height))), [Side("bottom"), Side("right"), Side("top"), Side("left")]);
        var bench = new Fixture("bench", AtHead: false, Length.Zero, Mm(b.To), Mm(b.Left), Mm(b.Right), Side("bench"), Side("bench"));
        var job = OneWall.Job(
            Mm(Wall.Width), Mm(Wall.Height), Mm(30), Mm(Tile.Across), JointRange.Only(Mm(30)), Tape.Millimetres, [new Want.JointOnEdge(new("wall", Edge), must, 1)],
            new(null, Mm(400), HalfTile: true), [niche], Bond, Mm(Tile.Up));
        var read = (FaceShape.Read)job.Faces[0].Shape;
        var face = job.Faces[0] with { Shape = read with { Fixtures = [bench], Readings = read.Readings with { Lean = new(Length.Zero, Mm(Lean)) } } };
        return job with { Faces = [face], Runs = [job.Runs[0] with { Place = Hand is { } hand ? new([Mm(hand.X)], Mm(hand.Y), null) : null }] };
    }

    private static Length Mm(int tenths) => Length.FromSteps(tenths * 320L);
}
