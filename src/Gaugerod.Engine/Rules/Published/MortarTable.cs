using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Rules.Published.LimitKeys;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>How thick mortar lies, how much of a tile it holds and how well.</summary>
internal static class MortarTable
{
    private const string Thickness = "trade press on thin-set and medium beds: embedded, 3/32 in to 1/4 in; mortar for large and heavy tile to 1/2 in. The bag's own limits come first";

    private const string Contact = "ANSI A108.5, 3.3.2, as the trade press gives it; natural stone: 95 % and more, by source";

    private const string Lift = "Lift a tile and look; take a deeper notch or butter the backs.", Adhesive = "EN 12004, dry, after water, heat and frost, as a paper on adhesives gives it", Bag = "Look for the class on the bag.";

    public static IReadOnlyList<PublishedLimit> Rows { get; } =
    [
        new(MortarBed, Region.America, "thickness of thin-set, tile pressed in", Thickness, Known.Printed, "Take another notch, or bring the base in first.") { Least = new(3 / 32.0, "in"), Most = new(1 / 4.0, "in") },
        new(MortarHeavy, Region.America, "thickness of mortar for large and heavy tile", Thickness, Known.Printed, "Bring the base in first, and take a shallower notch.") { Most = new(1 / 2.0, "in") },
        new(ContactDry, Region.America, "part of the tile's back that mortar holds, dry", Contact, Known.Printed, Lift) { Least = new(80, "%") },
        new(ContactWet, Region.America, "part of the tile's back that mortar holds, showers and outside", Contact, Known.Printed, Lift) { Least = new(95, "%") },
        new(ContactDry, Region.Australia, "part of the tile's back that adhesive holds, dry, in a dwelling", "AS 3958.1", Known.FromMemory, Lift) { Least = new(80, "%") },
        new(ContactWet, Region.Australia, "part of the tile's back that adhesive holds, wet, outside, commercial", "AS 3958.1", Known.FromMemory, Lift) { Least = new(90, "%") },
        new(AdhesiveC1, Region.Europe, "pull-off strength of cement adhesive, class C1", Adhesive, Known.Printed, Bag) { Least = new(0.5, "N/mm²") },
        new(AdhesiveC2, Region.Europe, "pull-off strength of cement adhesive, class C2", Adhesive, Known.Printed, Bag) { Least = new(1, "N/mm²") },
    ];
}
