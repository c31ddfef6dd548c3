namespace Gaugerod.Files.Tests.Refusals;

/// <summary>Invented jobs that can be planned, one for each bond and one for each kind of zone, arc, hole and range; with ' for ".</summary>
internal static class GoodJobs
{
    private const string Joint = "3";

    public static readonly string Grid = Bonded("200, 200", "{ 'kind': 'grid' }");
    public static readonly string Running = Bonded("300, 100", "{ 'kind': 'running', 'offset': '1/3' }");
    public static readonly string Herringbone = Bonded("300, 97", "{ 'kind': 'herringbone', 'abreast': 2 }");
    public static readonly string Basketweave = Bonded("306, 100", "{ 'kind': 'basketweave' }");
    public static readonly string Pinwheel = Bonded("200, 200; 100, 100", "{ 'kind': 'pinwheel', 'small': 'b' }");
    public static readonly string Windmill = Bonded("203, 100; 100, 100", "{ 'kind': 'windmill', 'square': 'b' }");
    public static readonly string Hexagon = Bonded("200, 230.94", "{ 'kind': 'hexagon' }");
    public static readonly string LongHexagon = Bonded("200, 300", "{ 'kind': 'hexagon', 'point': 60 }");
    public static readonly string Octagon = Bonded("200, 200; 70, 70", "{ 'kind': 'octagon', 'square': 'b' }");
    public static readonly string CornerOctagon = Bonded("200, 200; 70, 70", "{ 'kind': 'octagon', 'square': 'b', 'corner': 51 }");
    public static readonly string Chevron = Bonded("600, 90; 600, 90", "{ 'kind': 'chevron', 'slope': 45, 'down': 'b' }");
    public static readonly string Modular = Bonded("597, 397; 397, 397; 397, 197; 197, 197", "{ 'kind': 'modular', 'with': ['b', 'c', 'd'] }");
    public static readonly string Planks = Bonded("900, 150; 600, 150", "{ 'kind': 'planks', 'stagger': 120, 'start': 'hall', 'with': ['b'] }");
    public static readonly string LikePlanks = Bonded("900, 150", "{ 'kind': 'planks', 'stagger': 120, 'start': 'hall' }");
    public static readonly string Mosaic = Bonded("297, 297", "{ 'kind': 'mosaic', 'across': 12, 'high': 12 }");
    public static readonly string Turned = Bonded("200, 200", "{ 'kind': 'grid', 'turned': { 'from': 0, 'to': 45, 'step': 15 } }");

    /// <summary>A floor of 2,400 by 1,800 mm with 3 mm joints; zones, holes and openings as they are given.</summary>
    public static string Floor(string more) => Job("200, 200", "{ 'kind': 'grid' }", $"{{ 'name': 'floor', 'outline': [[0, 0], [2400, 0], [2400, 1800], [0, 1800]], 'edges': [{Edges}]{(more.Length > 0 ? ", " + more : "")} }}");

    /// <summary>As <see cref="Floor"/>, with what is asked of the cutting, and more of its tile.</summary>
    public static string Cut(string cutting, string tile = "") => Floor("").Replace("'edgeJoint': 3,", $"'edgeJoint': 3, 'cutting': {{ {cutting} }},", StringComparison.Ordinal)
        .Replace("'height': 200 }", $"'height': 200{(tile.Length > 0 ? ", " + tile : "")} }}", StringComparison.Ordinal);

    /// <summary>As <see cref="Floor"/>, with a gable and no upright edge at the right.</summary>
    public static string Gable(string more) => Job("200, 200", "{ 'kind': 'grid' }", $"{{ 'name': 'floor', 'outline': [[0, 0], [2400, 0], [1900, 1800], [0, 2300]], 'edges': [{Edges}], {more} }}");

    /// <summary>A wall as it was read, its level line at 1,200 mm.</summary>
    public static string Wall(string more) => Job(
        "200, 200", "{ 'kind': 'grid' }", $"{{ 'name': 'floor', 'readings': {{ 'width': {{ 'foot': 2400 }}, 'height': {{ 'left': 2300 }}, 'levelLine': {{ 'left': 1200, 'right': 1200 }} }}, {more} }}");

    private const string Edges = "{ 'name': 'south', 'kind': 'inside corner' }, { 'name': 'east', 'kind': 'inside corner' }, { 'name': 'north', 'kind': 'inside corner' }, { 'name': 'west', 'kind': 'inside corner' }";

    private static string Bonded(string sizes, string bond) => Job(sizes, bond, $"{{ 'name': 'floor', 'outline': [[0, 0], [2400, 0], [2400, 1800], [0, 1800]], 'edges': [{Edges}] }}");

    private static string Job(string sizes, string bond, string face)
    {
        var products = sizes.Split("; ").Select((size, i) => $"{{ 'name': '{(char)('a' + i)}', 'width': {size.Split(", ")[0]}, 'height': {size.Split(", ")[1]} }}");
        return $"{{ 'format': 'gaugerod-job/1', 'name': 'invented', 'units': 'mm', 'edgeJoint': 3, 'products': [{string.Join(", ", products)}], 'faces': [{face}], "
            + $"'runs': [{{ 'name': 'run', 'product': 'a', 'faces': ['floor'], 'bond': {bond}, 'joint': {Joint} }}] }}";
    }
}
