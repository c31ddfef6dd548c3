namespace Gaugerod.Lists;

/// <summary>Shows what stands in a list.</summary>
internal static class Shown
{
    private const int Longest = 60;

    /// <summary>It in quotes, on one line and not too long; in words where nothing stands there.</summary>
    public static string Of(string text) => text.Length == 0 ? "nothing" : $"\"{Plain(text)}\"";

    /// <summary>The same without quotes.</summary>
    public static string Plain(string text)
    {
        var plain = string.Concat(text.Take(Longest).Select(letter => char.IsControl(letter) ? ' ' : letter));
        return text.Length > Longest ? plain + "…" : plain;
    }
}
