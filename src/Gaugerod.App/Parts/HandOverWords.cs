using System.Globalization;

namespace Gaugerod.App.Parts;

/// <summary>Says a place within what is noted for the hand-over: <c>lot 2: colour</c>.</summary>
internal static class HandOverWords
{
    public static string Place(string rest)
    {
        if (rest is "kept") return "where the spares are kept";
        if (rest is "renew") return "years until soft joints are renewed";
        if (rest.StartsWith("care", StringComparison.Ordinal)) return "care";
        var (open, close) = (rest.IndexOf('[', StringComparison.Ordinal), rest.IndexOf(']', StringComparison.Ordinal));
        if (open < 0 || close < open) return "hand-over";
        var thing = string.Create(CultureInfo.InvariantCulture, $"{rest[..open].TrimEnd('s')} {int.Parse(rest[(open + 1)..close], CultureInfo.InvariantCulture) + 1}");
        var field = rest[(close + 1)..].TrimStart('.') switch
        {
            "" => "",
            "of" => rest[0] is 'l' ? "thing" : "place",
            "what" => rest[0] is 't' ? "name" : "what is seen",
            "where" => "where it is kept",
            "on" => "day",
            "by" => "by whom",
            "again" => "when it is due again",
            var other => other,
        };
        return field.Length == 0 ? thing : $"{thing}: {field}";
    }
}
