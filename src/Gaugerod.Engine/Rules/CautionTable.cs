using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;

namespace Gaugerod.Engine.Rules;

/// <summary>A caution: what can hurt, what is done about it, and by what limit where one is published.</summary>
/// <param name="Rule">Its name in findings.</param>
/// <param name="Text">What it says.</param>
/// <param name="Limit">The American limit, in words; empty where there is none.</param>
/// <param name="Source">Where that comes from.</param>
internal sealed record Caution(string Rule, string Text, string Limit, string Source)
{
    /// <summary>Where the text comes from in a region whose figures are not held. Default common practice.</summary>
    public string Practice { get; init; } = Remarks.NoSource;
}

/// <summary>The cautions that hang on no product.</summary>
internal static class CautionTable
{
    public static IReadOnlyList<Caution> All { get; } =
    [
        new("caution-dust", "Cutting tile, board or mortar sets silica dust free. Cut wet with water on the blade as the saw's maker says, draw the air off indoors, do not sweep dry. Follow the local rules.",
            $"{Most(LimitKeys.Silica)} of air over 8 hours, action from {LimitTable.For(null, LimitKeys.SilicaAction).At}", LimitTable.For(null, LimitKeys.Silica).Source),
        new("caution-electricity", "A wet saw brings water to mains current. Feed it through a ground-fault breaker (GFCI, RCD), hang a drip loop in its cord, keep plugs off the floor. Leave wiring to a licensed electrician and follow the local rules.",
            "", "29 CFR 1926.404(b)(1)(ii) (United States); drip loop: common practice, no source"),
        new("caution-saw", "Keep the blade's guard on; wear eye and ear protection, nothing loose near the blade.", "", "29 CFR 1926.702(i) (United States) for the guard; the rest common practice, no source"),
        new("caution-cement", "Wet mortar and grout burn skin and eyes. Wear gloves, eye protection and knee pads, rinse at once, and follow the product's safety sheet.",
            $"pH over {LimitTable.For(null, LimitKeys.Alkali).At.Number.ToString(CultureInfo.InvariantCulture)}", LimitTable.For(null, LimitKeys.Alkali).Source) { Practice = LimitTable.For(null, LimitKeys.Alkali).Source },
        new("caution-old-work", "What is torn out may hold asbestos (old floors, their glue, plaster) or lead (paint, glaze). Do not sand, scrape or break it before it is tested; follow the local rules and leave its removal to licensed trades.",
            "", "40 CFR 745 for lead paint before 1978 (United States); asbestos: from memory, 40 CFR 61 subpart M"),
        new("caution-mask", "Which mask a tool asks for, where its dust is held down as the table says. Mixing powder is not in the table: open bags low, draw the dust off, and ask what mask it needs.",
            string.Join("; ", SilicaTask.All.Select(Mask)), "29 CFR 1926.1153, table 1 (United States); grinders and drills from memory"),
        new("caution-hidden", "Wires and pipes run behind walls and under floors. Find them, turn current and water off and try that they are, before you break, screw or drill. What you lay bare is for a licensed electrician or plumber.", "", Remarks.NoSource),
        new("caution-water", "Tile and grout do not keep water out: the membrane does, with its corners, holes and drain. Water that gets behind it rots the wall unseen. Keep the product's coats and drying times, try it before tile goes on, and ask the local code what it asks for.", "", Remarks.NoSource),
        new("caution-air", "What dries or cures gives off vapour. Air the room, keep flames away, wear what the product's safety sheet asks for.", "", "the product's safety sheet goes first; common practice, no source") { Practice = "the product's safety sheet goes first; common practice, no source" },
        new("caution-flood", "Water an inch deep weighs about 5 lb on a square foot (25 kg on a square metre at 25 mm). Ask whoever answers for the structure whether the floor bears it, and look at the ceiling below.", "", "reckoned from the weight of water") { Practice = "reckoned from the weight of water" },
        new("caution-glass", "Panes are heavy, and tempered glass cannot be cut: it bursts when its edge is struck. Carry it upright in twos with gloves and eye protection, never stand it on tile or concrete. What glass goes where is for the local code and who makes it.",
            "tempered within 60 in above a shower floor", "IRC R308.4.5 (United States), from memory; the rest common practice, no source"),
    ];

    /// <summary>The caution of a name; null for one that hangs on a product or a job.</summary>
    public static Caution? Of(string rule) => All.FirstOrDefault(caution => string.Equals(caution.Rule, rule, StringComparison.Ordinal));

    /// <summary>As it is said in a region. The figures are American: elsewhere none is said in place of those that are not held.</summary>
    public static Finding Said(Caution caution, Region? region)
    {
        if (region is null or Region.America) return new(FindingLevel.Note, caution.Rule, "the job", caution.Text, caution.Limit, "", caution.Source);
        var place = RegionWords.Long(region.Value);
        var isFigure = caution.Limit.Length > 0 && !string.Equals(caution.Practice, caution.Source, StringComparison.Ordinal);
        return new(FindingLevel.Note, caution.Rule, "the job", caution.Text, isFigure ? $"as the law of {place} has it; no figure is held here" : caution.Limit, "", caution.Practice);
    }

    private static string Most(string key) => LimitTable.For(null, key).Most.ToString();

    private static string Mask(SilicaTask task)
    {
        var air = task.Air switch { Air.Inside => ", indoors", Air.Outside => ", outside", _ => "" };
        return $"{task.Tool}{air}, {task.Control}: {(task.Short == task.Long ? Factor(task.Short) : string.Create(CultureInfo.InvariantCulture, $"{Factor(task.Short)} to {SilicaTask.Hours} h a day, {Factor(task.Long)} for longer"))}";
    }

    private static string Factor(int factor) => factor == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"APF {factor}");
}
