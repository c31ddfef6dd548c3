namespace Gaugerod.Engine.Prices;

/// <summary>The words of prices, in files and on sheets.</summary>
public static class PriceWords
{
    private static readonly (WorkKind Kind, string Word)[] s_words =
    [
        (WorkKind.TiledArea, "tiled area"), (WorkKind.Pieces, "pieces"), (WorkKind.CutPieces, "cut pieces"), (WorkKind.Straight, "straight cuts"), (WorkKind.Corners, "corner pieces"),
        (WorkKind.Notches, "notches"), (WorkKind.Slots, "slots"), (WorkKind.Holes, "holes"), (WorkKind.Tapers, "tapers"), (WorkKind.Shapes, "shaped pieces"), (WorkKind.CutLength, "cut length"),
        (WorkKind.Joints, "joints"), (WorkKind.Trim, "trim"), (WorkKind.TrimPieces, "trim pieces"), (WorkKind.Mitres, "mitres"),
    ];

    /// <summary>All kinds with their words.</summary>
    public static IEnumerable<(WorkKind Kind, string Word)> All => s_words;

    /// <summary>The word for one.</summary>
    public static string Of(WorkKind kind) => s_words.First(one => one.Kind == kind).Word;

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
