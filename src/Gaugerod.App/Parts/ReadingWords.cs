using System.Text.Json.Nodes;

namespace Gaugerod.App.Parts;

/// <summary>Says a reading of a survey as it stands in the job: short enough for a field's label and a table.</summary>
internal static class ReadingWords
{
    /// <summary>Such as <c>A to C</c>, <c>3-4-5 at B</c>, <c>drain off A–B</c>, <c>A–C from A to where B–D crosses</c>.</summary>
    public static string Of(JsonNode? reading)
    {
        if (reading is not JsonObject group) return "reading";
        if (group["corner"] is { } corner) return $"3-4-5 at {Spot(corner)}";
        if (group["side"] is { } side) return $"{Spot(group["to"])} off {Line(side)}";
        if (group["strings"] is { } strings) return strings is JsonArray { Count: 2 } two ? $"{Line(two[0])} from {(two[0] is JsonArray { Count: 2 } along ? Spot(along[0]) : "?")} to where {Line(two[1])} crosses" : "strings";
        return $"{Spot(group["from"])} to {Spot(group["to"])}{(group["held"]?.ToString() is { Length: > 0 } held ? ", " + held : "")}";
    }

    /// <summary>Two corners: <c>A–B</c>.</summary>
    public static string Line(JsonNode? two) => two is JsonArray { Count: 2 } pair ? $"{Spot(pair[0])}–{Spot(pair[1])}" : "?";

    /// <summary>A place of a survey, by a path that goes on behind <c>survey</c>.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="path">Such as <c>readings[3].is</c>; empty for the survey itself.</param>
    public static string Place(JsonObject? survey, string path)
    {
        if (survey is null || path.Length == 0) return "readings";
        var (list, field) = (path.Split('.', '[')[0], path.Contains('.', StringComparison.Ordinal) ? path[(path.LastIndexOf('.') + 1)..] : "is");
        var close = path.IndexOf(']', StringComparison.Ordinal);
        var one = close < 0 ? null : Desk.JobPath.Get(survey, path[..(close + 1)]);
        return (list, one) switch
        {
            ("readings", not null) => field is "is" ? Of(one) : $"{Field(field)} of {Of(one)}",
            ("corners", not null) => $"corner {Name(one)}",
            ("spots", not null) => $"spot {one}",
            ("comesOff", not null) => $"what comes off {Line(one["side"])}",
            ("same", not null) => $"{Line(one["side"])} read on {(one["face"]?.ToString() is { Length: > 0 } other ? other : "another face")} too",
            ("accuracy", _) when path.Contains('.', StringComparison.Ordinal) => $"how far the {field} may be off",
            ("same", _) => "sides read on another face too",
            _ => list,
        };
    }

    /// <summary>What a corner is called.</summary>
    public static string Name(JsonNode? corner) => (corner is JsonObject group ? group["name"] : corner)?.ToString() ?? "";

    private static string Field(string field) => field.Split('[')[0] switch
    {
        "from" => "beginning", "to" => "end", "within" => "how far off", "by" => "instrument", "at" => "mark", var other => other,
    };

    private static string Spot(JsonNode? spot) => spot switch
    {
        JsonObject mark => $"mark {Spot(mark["at"])} on {Spot(mark["from"])}–{Spot(mark["towards"])}",
        null => "?",
        _ => spot.ToString() is { Length: > 0 } name ? name : "?",
    };
}
