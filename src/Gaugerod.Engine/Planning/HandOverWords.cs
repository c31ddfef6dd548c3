using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Says to the client what is handed over.</summary>
public static class HandOverWords
{
    /// <summary>All that is said of cleaning beside the setter's own lines.</summary>
    public const string Clean = "Clean tile, joints and trims as the makers of tile and grout say.";

    /// <summary>What the sheet does not say.</summary>
    public const string NotCovered =
        "This sheet says what was planned and what the setter noted. It claims nothing about tightness, strength or how long anything lasts, and takes the place of no test, no maker's instructions and no agreement. Tile, grout and soft joints do not keep water out of a wall or a floor; a membrane behind them is what is made for that.";

    /// <summary>What can hurt whoever drills, cuts or renews. Said without a limit: none is held here for it.</summary>
    public static Sequence<string> Cautions { get; } =
    [
        "Pipes and wires run behind tile and under floors. Find them before you drill, screw or cut; turn current and water off and try that they are. What is laid bare is for a licensed electrician or plumber.",
        "A hole through tile in a wet room may go through the membrane. Ask who set the tile before you make one; water that gets in behind rots the wall unseen.",
        "Drilling and cutting tile sets silica dust free. Do it wet or draw the dust off, wear eye protection, do not sweep dry.",
        "A soft joint is cut out with a sharp blade: wear gloves, cut away from you, and no deeper than the sealant, for a membrane may lie behind it. Air the room while it cures.",
        "Local code, the products' instructions and licensed trades come before anything on this sheet.",
    ];

    /// <summary>When to look at soft joints, and when to renew them.</summary>
    public static string Renew(int? years) => years switch
    {
        null => "Look at them once a year; renew them when they tear or come off (common practice, no source).",
        1 => "Renew them every year: the setter's own figure. Sooner when they tear or come off.",
        _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Look at them once a year; renew them after {years} years: the setter's own figure. Sooner when they tear or come off."),
    };

    /// <summary>From when the room may be used, a sentence each; what nobody gave is left to the products.</summary>
    public static Sequence<string> FirstUse(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var tasks = plan.Work?.Tasks ?? [];
        var words = new List<string>();
        var water = tasks.FirstOrDefault(task => task.Kind == WorkKind.FirstUse);
        if (water is null) words.Add("Water: as the bags of grout and sealant say.");
        else words.AddRange(Water(water));
        var walked = tasks.SelectMany(task => task.Waits).Where(wait => wait.Hold == HoldKind.Walk).Distinct().ToList();
        words.AddRange(walked.GroupBy(wait => (wait.Task, wait.Minutes, wait.From, wait.Product)).Select(wait => wait.First()).Select(wait => wait.From == HoldFrom.Nobody || wait.Until is not { } until
            ? $"Walking on it, after {wait.Task}: as the mortar's bag says; no time was given."
            : $"Walking on it: not before {Moment(until)}, {SpanText.Say(wait.Minutes)} after {wait.Task}{By(wait)}."));
        words.Add(walked.Count == 0 ? "Walking on it, and weight: as the mortar's bag says." : "Weight, such as a tub, a cupboard or a machine: as the mortar's bag says.");
        return words.ToSequence();
    }

    /// <summary>What a supply is, in a word.</summary>
    internal static string Of(SupplyKind kind) => kind switch
    {
        SupplyKind.Mix => "mix of the bed",
        _ => kind.ToString().ToLowerInvariant(),
    };

    /// <summary>Where a soft joint runs.</summary>
    public static string Where(EdgeKind kind) => kind switch
    {
        EdgeKind.InsideCorner => "in the corner",
        EdgeKind.OutsideCorner => "at the outer corner",
        EdgeKind.Floor => "at the floor",
        EdgeKind.Ceiling => "at the ceiling",
        EdgeKind.Threshold => "at the threshold",
        EdgeKind.Free => "at the open side",
        _ => "at a fixture or an opening",
    };

    /// <summary>Where a soft joint across a field stands.</summary>
    public static string Where(MovementJoint joint, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentNullException.ThrowIfNull(tape);
        return joint.IsPlumb ? $"upright, {LengthText.Nearest(joint.At, tape)} from the left" : $"level, {LengthText.Nearest(joint.At, tape)} up";
    }

    /// <summary>How long a soft joint is.</summary>
    public static string Long(double millimetres, Tape tape) => Amounts.Distance(millimetres, tape);

    private static IEnumerable<string> Water(WorkTask use)
    {
        var holds = use.Waits.Where(wait => wait.Hold == HoldKind.Water).ToList();
        var unknown = holds.Where(wait => wait.From == HoldFrom.Nobody).Select(wait => wait.Task).ToList();
        var known = holds.Where(wait => wait.From is not (HoldFrom.Nobody or HoldFrom.None)).ToList();
        if (use.Begins is { } begins && known.Count > 0)
        {
            var because = string.Join("; ", known.GroupBy(wait => (wait.Minutes, wait.From, wait.Product)).Select(same => $"{SpanText.Say(same.Key.Minutes)} after {string.Join(", ", same.Select(wait => wait.Task))}{By(same.First())}"));
            yield return $"Water: not before {Moment(begins)}. {because}.";
        }

        if (known.Count == 0 || use.Begins is null) yield return "Water: as the bags of grout and sealant say.";
        else if (unknown.Count > 0) yield return $"No time was given for {string.Join(", ", unknown)}: as its package says, where that is later.";
    }

    private static string Moment(DateTime at) => $"{WorkWords.Day(at)} {WorkWords.Clock(at)}";

    private static string By(WorkWait wait) => wait.From switch
    {
        HoldFrom.Product => $" (what {wait.Product} says)",
        HoldFrom.Published => $" (the longest that is printed: {wait.Published!.Source}; the bag goes first)",
        _ => " (the setter's own figure; the bag goes first)",
    };
}
