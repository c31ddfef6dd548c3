using System.Globalization;
using System.Text;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Pieces;

/// <summary>
/// Every bond on one awkward face, drawn plainly: thin outlines, a light fill for each product, cut pieces a little darker. The
/// face is behind the pieces in the colour of the joints, so that a gap or an overlap shows.
/// </summary>
internal static class BondsPicture
{
    private const int Across = 5;
    private const int Wide = 2000, High = 1960;
    private static readonly Length s_joint = Mm(6);
    private static readonly (string Whole, string Cut)[] s_fills = [("#fbf3ea", "#ecd5bf"), ("#e6eef6", "#c8d9ea"), ("#eaf3e6", "#cfe2c6"), ("#f7ecf3", "#e6cfdf")];

    public static string Svg()
    {
        var bonds = Shown().ToList();
        var face = Awkward();
        var rows = (bonds.Count + Across - 1) / Across;
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Across * Wide / 5}\" height=\"{rows * High / 5}\" viewBox=\"0 0 {Across * Wide} {rows * High}\" font-family=\"Inter, Helvetica, Arial, sans-serif\" font-size=\"76\">\n");
        svg.Append("<title>Every bond on one awkward face</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        for (var i = 0; i < bonds.Count; i++)
        {
            var (name, turn, given) = bonds[i];
            svg.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate({(i % Across * Wide) + 100} {(i / Across * High) + 1740})\">\n");
            Draw(svg, face, given, Angle.FromDegrees(turn));
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"900\" y=\"120\" text-anchor=\"middle\" fill=\"#2a2c30\">{name}</text>\n</g>\n");
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Draw(StringBuilder svg, FinishedFace face, BondCase given, Angle turn)
    {
        var rings = FieldRings.Of(face);
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{string.Concat(rings.All.Select(ring => Path(ring.Select(node => node.Point))))}\" fill=\"#9a9da3\" fill-rule=\"evenodd\"/>\n");
        var field = new TurnedField(rings, Heading.Of(turn));
        var bond = given.Bond;
        var numbers = given.Products.Select((product, i) => (product.Name, i)).ToDictionary(p => p.Name, p => p.i, StringComparer.Ordinal);
        foreach (var group in Cut(bond.Chips ?? bond).GroupBy(piece => (Product: numbers[piece.Product], Whole: piece.Kind == PieceKind.Full)).OrderBy(group => group.Key))
        {
            Draw(svg, group, group.Key.Whole ? s_fills[group.Key.Product].Whole : s_fills[group.Key.Product].Cut, "1.5");
        }

        // Over chips, the sheets.
        if (bond.Chips is not null) Draw(svg, Cut(bond), "none", "4");

        Sequence<Piece> Cut(Bond laid) => new PatternCutter(field, laid, given.Products, Tape.Millimetres).Cut(Mm(900).Steps, Mm(500).Steps, "A");
    }

    private static void Draw(StringBuilder svg, IEnumerable<Piece> pieces, string fill, string line)
    {
        svg.Append(CultureInfo.InvariantCulture, $"<g fill=\"{fill}\" fill-rule=\"evenodd\" stroke=\"#2a2c30\" stroke-width=\"{line}\" stroke-linejoin=\"round\">\n");
        foreach (var piece in pieces) svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{Path(piece.Outline.Points)}{string.Concat(piece.Inner.Select(hole => Path(hole.Points)))}\"/>\n");
        svg.Append("</g>\n");
    }

    private static string Path(IEnumerable<Point> points) =>
        $"M{string.Join('L', points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(p.X.Millimetres, 1):0.#} {Math.Round(-p.Y.Millimetres, 1):0.#}")))}Z";

    /// <summary>A gable over a wall with a nook in its foot, a window in it and a pipe through it.</summary>
    private static FinishedFace Awkward() => One(
        Given(
            "wall", [(0, 0), (1250, 0), (1250, 350), (1800, 300), (1800, 1050), (1000, 1700), (0, 900)],
            [.. Enumerable.Range(0, 7).Select(i => Stop($"side {i}"))]) with
        {
            Openings = [Window("window", 450, 620, 900, 1000)],
            Holes = [new("pipe", At(1400, 720), Mm(180))],
        });

    private static IEnumerable<(string Name, int Turn, BondCase Given)> Shown()
    {
        yield return Case("Grid", 0, new BondRequest.Grid(Lay.Level), (194, 194));
        yield return Case("Grid, turned 45°", 45, new BondRequest.Grid(Lay.Level), (194, 194));
        yield return Case("Running, a half", 0, new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay), (294, 144));
        yield return Case("Running, a third", 0, new BondRequest.Running(Lay.Level, 1, 3, Stepping.OneWay), (294, 94));
        yield return Case("Running, a quarter there and back, turned 20°", 20, new BondRequest.Running(Lay.Level, 1, 4, Stepping.BackAndForth), (294, 94));
        yield return Case("Herringbone", 0, new BondRequest.Herringbone(1), (294, 94));
        yield return Case("Herringbone, turned 45°", 45, new BondRequest.Herringbone(1), (294, 94));
        yield return Case("Herringbone, two abreast", 0, new BondRequest.Herringbone(2), (294, 69));
        yield return Case("Herringbone, three abreast, turned 45°", 45, new BondRequest.Herringbone(3), (344, 64));
        yield return Case("Herringbone, four abreast", 0, new BondRequest.Herringbone(4), (314, 49));
        yield return Case("Basketweave of two", 0, new BondRequest.Basketweave(), (194, 94));
        yield return Case("Basketweave of three", 0, new BondRequest.Basketweave(), (234, 74));
        yield return Case("Basketweave of four, turned 45°", 45, new BondRequest.Basketweave(), (234, 54));
        yield return Case("Pinwheel", 0, new BondRequest.Pinwheel(), (194, 194), (94, 94));
        yield return Case("Windmill", 0, new BondRequest.Windmill(), (194, 94), (94, 94));
        yield return Case("Hexagon, points up", 0, new BondRequest.Hexagon(true, null), (174, 201));
        yield return Case("Hexagon, flats up", 0, new BondRequest.Hexagon(false, null), (174, 201));
        yield return Case("Hexagon, long", 0, new BondRequest.Hexagon(true, Mm(60)), (120, 300));
        yield return Case("Octagon and square", 0, new BondRequest.Octagon(null), (194, 194), (64, 64));
        yield return Case("Chevron of 45°", 0, new BondRequest.Chevron(Angle.FromDegrees(45)), (344, 84));
        yield return Case("Chevron of 30°, two products", 0, new BondRequest.Chevron(Angle.FromDegrees(30)), (344, 84), (344, 84));
        yield return Case("Chevron of 60°, turned 90°", 90, new BondRequest.Chevron(Angle.FromDegrees(60)), (294, 74));
        yield return Case("Four sizes", 0, new BondRequest.Modular(), (294, 194), (194, 194), (194, 94), (94, 94));
        yield return Case("Planks of one length", 0, new BondRequest.Planks(Mm(150), "oak"), (600, 94));
        yield return Case("Planks of three lengths", 0, new BondRequest.Planks(Mm(70), "oak"), (600, 84), (450, 84), (300, 84));
        yield return Case("Planks, turned 30°", 30, new BondRequest.Planks(Mm(70), "ash"), (600, 84), (400, 84));
        yield return Case("Four sizes, turned 45°", 45, new BondRequest.Modular(), (294, 194), (194, 194), (194, 94), (94, 94));
        yield return Case("Sheets of chips", 0, new BondRequest.Mosaic(5, 5), (294, 294));
        yield return Case("Hexagon, turned 10°", 10, new BondRequest.Hexagon(true, null), (104, 120));
        yield return Case("Octagon, turned 45°", 45, new BondRequest.Octagon(null), (194, 194), (64, 64));
    }

    private static (string Name, int Turn, BondCase Given) Case(string name, int turn, BondRequest request, params (long Width, long Height)[] tiles) =>
        (name, turn, new(name, request, tiles.Select((t, i) => BondCase.Tile(Mm(t.Width), Mm(t.Height), i)).ToSequence(), s_joint));
}
