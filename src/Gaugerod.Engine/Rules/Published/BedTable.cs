using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Rules.Published.LimitKeys;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>How thick beds of mortar are.</summary>
internal static class BedTable
{
    private const string Consensus = "trade press: consensus of setters, and a consultant's reading of ANSI A108.1A", Raise = "Raise the bed at the drain, or bond it.";

    public static IReadOnlyList<PublishedLimit> Rows { get; } =
    [
        new(OverLiner, Region.America, "bed at the drain over a liner", Consensus, Known.Printed, Raise) { Least = new(1.25, "in") },
        new(OverLinerStrict, Region.America, "the same, as a consultant reads A108.1A", Consensus, Known.Printed, Raise) { Least = new(1.5, "in") },
        new(BedThick, Region.America, "bed at its thickest, unless who specifies it agrees", "TCNA Handbook, method F103B, as the trade press gives it (2021)", Known.Printed, "Ask whoever specifies it, or raise the base.") { Least = new(1.25, "in"), Most = new(2, "in") },
        new(BedReinforced, Region.America, "bed without reinforcing", "trade press: a consultant's reading of ANSI A108.1A", Known.Printed, "Lay mesh into the bed.") { Most = new(65, "ft²") },
    ];
}
