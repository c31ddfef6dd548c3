using System.Globalization;

namespace Gaugerod.App.Parts;

/// <summary>Says a place within what is asked of the order of work: <c>pace: setting</c>.</summary>
internal static class WorkPlaces
{
    /// <summary>The fields of paces in the trade's order, what they are called, and an example in feet and in metres.</summary>
    public static readonly IReadOnlyList<(string Field, string Label, string Feet, string Metres)> Paces =
    [
        ("protection", "Protection", "1 h", "1 h"), ("tearOut", "Tear-out", "30 ft2", "3 m2"), ("boards", "Boards", "40 ft2", "4 m2"), ("seams", "Seams of boards", "40 ft", "12 m"),
        ("levelling", "Levelling", "40 ft2", "4 m2"), ("bed", "Bed", "10 ft2", "1 m2"), ("primer", "Primer", "150 ft2", "15 m2"), ("membrane", "Membrane, each coat", "60 ft2", "6 m2"), ("floodTest", "Flood test", "1 h", "1 h"),
        ("lines", "Lines", "6 lines", "6 lines"), ("setting", "Setting", "12 ft2, or 20 pieces", "1.2 m2, or 20 pieces"), ("cutting", "Cutting, on top of setting", "12 cuts", "12 cuts"), ("returns", "Returns of niches and windows", "8 ft", "3 m"),
        ("floorCover", "Floor cover", "30 min", "30 min"), ("trims", "Trims", "8 pieces", "8 pieces"), ("grouting", "Grouting", "50 ft2", "5 m2"), ("softJoints", "Soft joints", "30 ft", "10 m"), ("sealer", "Sealer", "100 ft2", "10 m2"), ("handOver", "Hand-over", "1 h", "1 h"),
    ];

    /// <summary>The fields of holds, and what waits for what.</summary>
    public static readonly IReadOnlyList<(string Field, string Label)> Holds =
    [
        ("seams", "Seams of boards before what comes on them"), ("levelling", "Levelling before what comes on it"), ("bed", "Bed before what comes on it"), ("primer", "Primer before what comes on it"),
        ("coat", "Membrane before its next coat and tile"), ("test", "Membrane before its flood test"), ("support", "Mortar before what holds tile up comes off"), ("walk", "Mortar before a floor is walked on"),
        ("grout", "Mortar before it is grouted"), ("soft", "Grout before soft joints"), ("sealer", "Grout before sealer"), ("water", "Grout, sealant, sealer before water"),
    ];

    private static readonly Dictionary<string, string> s_fields = new(StringComparer.Ordinal)
    {
        ["start"] = "first day of work", ["day.from"] = "when the day begins", ["day.to"] = "when the day ends", ["day.break"] = "break of the day", ["clocks"] = "clock changes", ["hands"] = "how many work",
        ["floor"] = "when floors are tiled", ["coats"] = "coats of membrane", ["flood"] = "how long the test water stands",
    };

    private static readonly Dictionary<string, string> s_listed = new(StringComparer.Ordinal)
    {
        ["takes"] = "how long it takes", ["after"] = "what it comes after", ["before"] = "what waits for it", ["hands"] = "how many it takes", ["hold"] = "how long it holds up the next",
        ["lead"] = "how long it takes to come", ["faces"] = "walls and floors that wait", ["pieces"] = "pieces that wait",
    };

    public static string Place(string rest)
    {
        if (s_fields.TryGetValue(rest, out var field)) return field;
        var dot = rest.IndexOf('.', StringComparison.Ordinal);
        var (group, inner) = dot < 0 ? (rest, "") : (rest[..dot], rest[(dot + 1)..]);
        return group switch
        {
            "pace" when inner.Length > 0 => "pace: " + (Paces.FirstOrDefault(pace => string.Equals(pace.Field, inner, StringComparison.Ordinal)).Label ?? inner).ToLowerInvariant(),
            "holds" when inner.Length > 0 => "hold: " + (Holds.FirstOrDefault(hold => string.Equals(hold.Field, inner, StringComparison.Ordinal)).Label ?? inner).ToLowerInvariant(),
            "days" => "days of work",
            _ when group.StartsWith("off", StringComparison.Ordinal) => "days off",
            _ when group.StartsWith("floors", StringComparison.Ordinal) => "which are floors",
            _ when group.StartsWith("tasks[", StringComparison.Ordinal) => Listed(group, "own task", inner),
            _ when group.StartsWith("made[", StringComparison.Ordinal) => Listed(group, "made elsewhere", inner),
            _ => "order of work",
        };
    }

    // tasks[0] and takes: own task 1: how long it takes.
    private static string Listed(string place, string thing, string field)
    {
        var said = string.Create(CultureInfo.InvariantCulture, $"{thing} {int.Parse(place[(place.IndexOf('[', StringComparison.Ordinal) + 1)..place.IndexOf(']', StringComparison.Ordinal)], CultureInfo.InvariantCulture) + 1}");
        var name = field.Split('[')[0];
        return name.Length == 0 ? said : $"{said}: {(s_listed.TryGetValue(name, out var words) ? words : name)}";
    }
}
