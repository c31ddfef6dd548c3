namespace Gaugerod.Engine.Planning;

/// <summary>Says names one after the other, as one speaks.</summary>
public static class NameList
{
    /// <summary><c>west, north and east</c>.</summary>
    /// <param name="names">One or more.</param>
    public static string Of(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        return names.Count == 1 ? names[0] : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";
    }
}
