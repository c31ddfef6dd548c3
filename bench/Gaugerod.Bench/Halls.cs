using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Bench;

/// <summary>A hall's floor of so many tiles of a bond: five sides none of which is quite square, four pillars and a drain.</summary>
internal sealed class Hall
{
    private Hall(string name, Bond bond, Sequence<Product> products, Heading heading, FinishedFace face) =>
        (Name, Bond, Products, Heading, Face) = (name, bond, products, heading, face);

    public string Name { get; }

    public Bond Bond { get; }

    public Sequence<Product> Products { get; }

    public Heading Heading { get; }

    public FinishedFace Face { get; }

    /// <summary>Every bond, turned by an odd angle where it may be, with tiles that make it.</summary>
    public static IEnumerable<Hall> All(int tiles) =>
    [
        Of("grid", new BondRequest.Grid(Lay.Level), tiles, (300, 300)), Of("running", new BondRequest.Running(Lay.Level, 1, 3, Stepping.OneWay), tiles, (600, 150)),
        Of("herringbone", new BondRequest.Herringbone(2), tiles, (600, 100)), Of("basketweave", new BondRequest.Basketweave(), tiles, (306, 100)),
        Of("pinwheel", new BondRequest.Pinwheel(), tiles, (200, 200), (98, 98)), Of("windmill", new BondRequest.Windmill(), tiles, (203, 100), (100, 100)),
        Of("hexagon", new BondRequest.Hexagon(true, null), tiles, (200, 231)), Of("octagon", new BondRequest.Octagon(null), tiles, (200, 200), (82, 82)),
        Of("chevron", new BondRequest.Chevron(Angle.FromThousandths(45_000)), tiles, (600, 90)),
        Of("modular", new BondRequest.Modular(), tiles, (603, 401), (401, 401), (401, 199), (199, 199)),
        Of("planks", new BondRequest.Planks(Length.FromMillimetres(100), "hall"), tiles, (1200, 150)), Of("mosaic", new BondRequest.Mosaic(12, 12), tiles, (300, 300)),
    ];

    /// <summary>Placed, cut to the field and numbered.</summary>
    public Sequence<Piece> Pieces() => new PatternCutter(new TurnedField(FieldRings.Of(Face), Heading), Bond, Products, Tape.Millimetres).Cut(12_345, 54_321, "A");

    /// <summary>Only what a general overlay answers too: which tiles lie in the field whole, and what is left of those that are cut.</summary>
    public List<ClippedTile> Clipped() => [.. new TileClip(new TurnedField(FieldRings.Of(Face), Heading), Bond).Tiles(12_345, 54_321)];

    private static Hall Of(string name, BondRequest request, int tiles, params (long Width, long Height)[] sizes)
    {
        var products = sizes.Select((size, i) => new Product($"tile {i}", Length.FromMillimetres(size.Width), Length.FromMillimetres(size.Height), Length.FromMillimetres(9))).ToSequence();
        var joint = Length.FromMillimetres(3);
        var made = BondMaker.Make(request, new(products, JointRange.Only(joint), joint, Tape.Millimetres));
        var bond = made.Bond ?? throw new InvalidOperationException($"{name}: {made.Refusal}");
        var domain = new OffsetDomain(bond.Lattice);
        var each = Math.Abs(((double)domain.A.X * domain.B.Y) - ((double)domain.A.Y * domain.B.X)) / bond.Motif.Count;
        return new(name, bond, products, Heading.Of(Angle.FromThousandths(31_000)), Floor(Math.Sqrt(each * tiles)));
    }

    private static FinishedFace Floor(double side)
    {
        Point At(double x, double y) => Point.FromSteps((long)(x * side), (long)(y * side));
        var outer = new Ring([At(0, 0.003), At(1.25, 0), At(1.247, 0.6), At(1.1, 0.82), At(0.002, 0.83)]);
        var pillars = new[] { (0.3, 0.25), (0.8, 0.25), (0.3, 0.55), (0.8, 0.55) }
            .Select(at => new Ring([At(at.Item1, at.Item2), At(at.Item1 + 0.03, at.Item2), At(at.Item1 + 0.03, at.Item2 + 0.03), At(at.Item1, at.Item2 + 0.03)])).ToSequence();
        var edges = pillars.Select(hole => hole.Reversed()).Prepend(outer)
            .SelectMany(ring => ring.Points.Select((p, i) => new FieldEdge(p, ring.Points[(i + 1) % ring.Points.Count], "side", EdgeKind.Fixture)));
        var drain = new Hole("drain", At(0.55, 0.4), Length.FromMillimetres(60));
        return new("floor", outer, [], [drain], new(outer, pillars), edges.ToSequence(), default, default);
    }
}
