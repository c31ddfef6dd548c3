using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.App.Sheetmaking;

/// <summary>The books of sheets that can be asked for, by words that go through the page's scripts.</summary>
internal static class SheetKinds
{
    /// <summary>What is taped to the wall.</summary>
    public const string Job = "sheets";

    /// <summary>What the client gets.</summary>
    public const string Offer = "offer";

    /// <summary>How the price was reckoned.</summary>
    public const string Price = "price";

    /// <summary>What stays with the client.</summary>
    public const string HandOver = "hand-over";

    /// <summary>The sheets of a kind.</summary>
    public static Sequence<Drawing> Pages(Plan plan, string kind) => kind switch
    {
        Offer => QuoteSheets.Pages(plan),
        Price => EstimateSheets.Pages(plan),
        HandOver => HandOverSheets.Pages(plan),
        _ => JobSheets.Pages(plan),
    };
}
