namespace Gaugerod.App.Stations.Measure;

/// <summary>What kinds of supplies are called, what a pack of each is measured in, and where it is used.</summary>
internal static class SupplyKindWords
{
    /// <summary>The kinds, as the job file names them.</summary>
    public static readonly IReadOnlyList<string> All = ["mortar", "grout", "sealant", "backer", "membrane", "band", "primer", "sealer", "filler", "spacers", "clips", "wedges", "screws", "tape", "batten", "masonry"];

    /// <summary>What they are called where not by that.</summary>
    public static readonly IReadOnlyDictionary<string, string> Said = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["backer"] = "cord behind sealant", ["membrane"] = "roll-on membrane", ["band"] = "band in the membrane", ["filler"] = "filler or leveller", ["screws"] = "screws", ["masonry"] = "blocks or mortar for curbs and benches", ["tape"] = "tape over board seams",
    };

    /// <summary>What its yield is called.</summary>
    public static string Yield(string kind) => kind switch
    {
        "backer" or "band" or "tape" => "Length in a pack",
        "batten" => "How long one is",
        "primer" or "sealer" => "A pack covers, one coat",
        "spacers" or "clips" or "wedges" or "screws" => "How many in a pack",
        _ => "A pack makes",
    };

    /// <summary>An example of it.</summary>
    public static string Example(string kind, bool inches) => kind switch
    {
        "backer" or "band" or "tape" => inches ? "50 ft" : "15 m",
        "batten" => inches ? "8 ft" : "2.4 m",
        "masonry" => inches ? "0.3 ft3" : "9 l",
        "primer" or "sealer" => inches ? "200 ft2" : "20 m2",
        "spacers" or "clips" or "wedges" or "screws" => "200",
        "sealant" => inches ? "10.1 fl oz" : "310 ml",
        "membrane" => inches ? "1 gal" : "7 l",
        _ => inches ? "0.66 ft3" : "14 l",
    };

    /// <summary>What a pack of it may be called.</summary>
    public static string Pack(string kind, bool inches) => kind switch
    {
        "backer" or "band" or "tape" => inches ? "50 ft roll" : "15 m roll",
        "batten" => "lath",
        "masonry" => "block",
        "sealant" => "tube",
        "primer" or "sealer" => "bottle",
        "membrane" => "pail",
        "spacers" or "clips" or "wedges" or "screws" => "bag of 200",
        _ => inches ? "50 lb bag" : "20 kg bag",
    };

    /// <summary>The holds that such a product says, as the order of work asks for them.</summary>
    public static IReadOnlyList<string> Holds(string kind) => kind switch
    {
        "mortar" => ["support", "walk", "grout"],
        "grout" => ["soft", "sealer", "water"],
        "sealant" or "sealer" => ["water"],
        "membrane" => ["coat", "test"],
        "primer" => ["primer"],
        "filler" => ["levelling"],
        _ => [],
    };

    /// <summary>Where one says what takes it.</summary>
    public static string Where(string kind) => kind switch
    {
        "primer" or "membrane" or "band" or "filler" => "Which wall or floor takes it is said there, under “Under the tile”.",
        "masonry" => "What is built of it is said below, under “Curbs and benches”.",
        "screws" => "Which board takes them is said below, under “Boards”; which run screws a batten with them, at Runs.",
        "tape" => "Which board takes it is said below, under “Boards”; how much, where boards are laid out on a wall or floor.",
        _ => "Which run takes it is said at Runs, under “Mortar, grout, sealant”.",
    };
}
