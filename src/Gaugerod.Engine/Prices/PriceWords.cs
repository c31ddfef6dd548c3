namespace Gaugerod.Engine.Prices;

/// <summary>The words of prices, in files and on sheets.</summary>
public static class PriceWords
{
    private static readonly (LabourOf Kind, string Word)[] s_words =
    [
        (LabourOf.TiledArea, "tiled area"), (LabourOf.Pieces, "pieces"), (LabourOf.CutPieces, "cut pieces"), (LabourOf.Straight, "straight cuts"), (LabourOf.Corners, "corner pieces"),
        (LabourOf.Notches, "notches"), (LabourOf.Slots, "slots"), (LabourOf.Holes, "holes"), (LabourOf.Tapers, "tapers"), (LabourOf.Shapes, "shaped pieces"), (LabourOf.CutLength, "cut length"),
        (LabourOf.Joints, "joints"), (LabourOf.Trim, "trim"), (LabourOf.TrimPieces, "trim pieces"), (LabourOf.Mitres, "mitres"),
        (LabourOf.SoftJoints, "soft joints"), (LabourOf.BoardArea, "board area"),
    ];

    /// <summary>All kinds with their words.</summary>
    public static IEnumerable<(LabourOf Kind, string Word)> All => s_words;

    /// <summary>What names have in common that are held to be one: neither capitals count nor how many blanks part words.</summary>
    public static string Key(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToUpperInvariant();
    }

    /// <summary>The word for one.</summary>
    public static string Of(LabourOf kind) => s_words.First(one => one.Kind == kind).Word;

    /// <summary>The words for what a cost is gathered under.</summary>
    public static string Of(CostGroup group) => group switch
    {
        CostGroup.Materials => "materials",
        CostGroup.Labour => "labour",
        CostGroup.Travel => "travel",
        _ => "waste",
    };

    /// <summary>What became of a line of a price list, in a word or two.</summary>
    public static string Of(ListFate fate) => fate switch
    {
        ListFate.Used => "used",
        ListFate.NotUsed => "not used",
        ListFate.NoPrice => "no price",
        ListFate.Doubled => "doubled",
        _ => "not read",
    };
}
