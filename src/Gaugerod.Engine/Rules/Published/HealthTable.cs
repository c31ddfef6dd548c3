using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Rules.Published.LimitKeys;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>What the person who does the work is exposed to. Of other regions no figure is held: their own law says it.</summary>
internal static class HealthTable
{
    private const string Dust = "29 CFR 1926.1153 (United States)", Lead = "40 CFR 745, houses before 1978 (United States); not for demolition, windows or prohibited practices";

    public static IReadOnlyList<PublishedLimit> Rows { get; } =
    [
        new(Silica, Region.America, "silica in the air, mean of 8 hours", Dust, Known.Printed, "Cut wet, draw the dust off, do not sweep dry.") { Most = new(50, "µg/m³") },
        new(SilicaAction, Region.America, "silica in the air from which something is to be done, mean of 8 hours", Dust, Known.Printed, "Cut wet, draw the dust off, do not sweep dry.") { At = new(25, "µg/m³"), By = "from" },
        new(LeadInside, Region.America, "painted face disturbed in a room as a minor repair", Lead, Known.Printed, "Have it tested; beyond that a certified firm does it.") { Most = new(6, "ft²") },
        new(LeadOutside, Region.America, "painted face disturbed outside as a minor repair", Lead, Known.Printed, "Have it tested; beyond that a certified firm does it.") { Most = new(20, "ft²") },
        new(LoadOfOne, Region.America, "lifted by one person in the best posture", "NIOSH lifting equation, load constant (from memory: NIOSH publication 94-110)", Known.FromMemory, "Lift in twos, use a barrow, or carry less at a time.") { Most = new(23, "kg") },
        new(Alkali, Region.America, "how caustic wet mortar and grout are", "cement suppliers' safety pages", Known.Printed, "Wear gloves, eye protection and knee pads; rinse at once.") { At = new(12, "pH") },
    ];
}
