using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Jobs of one wall with trims round it, made without a file.</summary>
internal static class TrimmedWall
{
    private static readonly string[] s_sides = ["foot", "right", "head", "left"];

    /// <summary>A trim of tile, 297 mm long and 50 wide with 3 mm joints.</summary>
    public static TrimProduct Bullnose { get; } = new("trim", TrimKind.Bullnose, Mm(297), Mm(50), Mm(3), Mm(50)) { Kerf = Mm(2), Thickness = Mm(9) };

    /// <summary>Walls, tiles and trims at random; most have an opening with trims round it.</summary>
    public static Gen<Job> Any { get; } =
        from size in Gen.Select(Gen.Int[900, 2600], Gen.Int[700, 1800])
        from tile in Gen.Select(Gen.Int[90, 300], Gen.Int[90, 300], Gen.Int[1, 4])
        from bond in Gen.Int[0, 2]
        from trim in Gen.Select(Gen.Int[140, 320], Gen.Int[15, 60], Gen.Int[0, 4], Gen.Int[20, 60])
        from kind in Gen.Enum<TrimKind>().Where(kind => kind is not (TrimKind.MitredEdge or TrimKind.EasedEdge))
        from piece in Gen.Int[0, 3]
        from asked in Gen.Select(Gen.Enum<TrimJoints>(), Gen.Int[0, 60], Gen.Enum<TrimCorner>(), Gen.Bool).Array[8]
        from trimmed in Gen.Bool.Array[8]
        from opening in Gen.Select(Gen.Int[0, 3], Gen.Int[20, 50], Gen.Int[20, 50])
        let product = Bullnose with
        {
            Kind = kind, Stock = Mm(trim.Item1), Width = Mm(trim.Item2), Joint = Mm(trim.Item3), Least = Mm(trim.Item4), ByBar = kind == TrimKind.Profile,
            Outside = piece == 1 ? Mm(trim.Item2 + 10) : null, Inside = piece == 2 ? Mm(trim.Item2 + 10) : null, Stop = piece == 3 ? Mm(30) : null,
        }
        let edges = asked.Select((a, i) => trimmed[i] ? Trimmed(s_sides[i % 4], product, a.Item1, a.Item2 > 30 ? Mm(a.Item2) : null, a.Item4 ? a.Item3 : null) : new Edge(s_sides[i % 4], i % 3 == 0 ? EdgeKind.Free : EdgeKind.Fixture)).ToList()
        let hole = opening.Item1 == 0 ? null : new Opening(
            "niche", Ring.Of(new Box(Mm(size.Item1 * opening.Item2 / 100), Mm(size.Item2 * opening.Item3 / 100), Mm((size.Item1 * opening.Item2 / 100) + 300), Mm((size.Item2 * opening.Item3 / 100) + 280))), [.. edges.Skip(4)])
        select Job(
            Ring.Of(new Box(Length.Zero, Length.Zero, Mm(size.Item1), Mm(size.Item2))), [.. edges.Take(4)], hole is null ? [] : [hole], product,
            new("tile", Mm(tile.Item1), Mm(tile.Item2), Mm(9)) { Kerf = Mm(2), BondCoat = Mm(3) }, Mm(tile.Item3), bond switch { 0 => new BondRequest.Grid(Lay.Level), 1 => new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay), _ => new BondRequest.Grid(Lay.Upright) });

    public static Length Mm(long mm) => Length.FromMillimetres(mm);

    public static Edge Trimmed(string name, TrimProduct product, TrimJoints joints, Length? stagger = null, TrimCorner? corner = null) =>
        new(name, EdgeKind.Free) { Trim = product.Width, Trimmed = new(product.Name, joints) { Stagger = joints is TrimJoints.Staggered or TrimJoints.Repeating or TrimJoints.Centred ? stagger : null, Left = new(corner), Right = new(corner) } };

    public static Job Job(Ring outline, Sequence<Edge> edges, Sequence<Opening> openings, TrimProduct product, Product tile, Length joint, BondRequest bond)
    {
        var wall = new Face("wall", new FaceShape.Outline(outline, edges, Length.Zero), openings, []);
        var run = new RunRequest(
            "wall", "tile", ["wall"], bond, Corners.Wrap, new(joint, joint, joint), null, new(null, Mm(50), HalfTile: true), [],
            [Criterion.Musts, Criterion.Wishes, Criterion.Slivers, Criterion.Smallest, Criterion.Mirror, Criterion.Cuts, Criterion.Tiles]);
        return new("trims", null, Tape.Millimetres, Paper.A4, Mm(3), [tile], [wall], [run]) { Trims = [product] };
    }
}
