using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>How a figure came to be known here.</summary>
public enum Known
{
    /// <summary>It was read on a printed page, of the standard itself or of one that gives it.</summary>
    Printed,

    /// <summary>It was not read anywhere: hold it against the document before you rely on it.</summary>
    FromMemory,
}

/// <summary>A limit that somebody publishes.</summary>
/// <param name="Key">What it is called here; the same in every region, for it is the same thing that is compared.</param>
/// <param name="Region">Where it holds.</param>
/// <param name="What">What is compared.</param>
/// <param name="Standard">The standard, its clause and edition, or who gives it.</param>
/// <param name="Known">Whether it was read, or is from memory.</param>
/// <param name="Do">What to do.</param>
public sealed record PublishedLimit(string Key, Region Region, string What, string Standard, Known Known, string Do)
{
    /// <summary>At the least so much; null for no such bound.</summary>
    public Figure? Least { get; init; }

    /// <summary>At the most so much; null for no such bound.</summary>
    public Figure? Most { get; init; }

    /// <summary>The length it is read over, or the size from which it holds; null where it holds anyway.</summary>
    public Figure? At { get; init; }

    /// <summary>How that is meant: <c>over</c> a length, <c>from</c> or <c>to</c> a size. Default over.</summary>
    public string By { get; init; } = "over";

    /// <summary>As it is printed where that is rounded; null where it is not.</summary>
    public string? As { get; init; }

    /// <summary>Where it comes from. One from memory says so.</summary>
    public string Source => Known == Known.FromMemory && !Standard.Contains("from memory", StringComparison.Ordinal) ? $"{Standard} (from memory)" : Standard;

    /// <summary>The limit in words: <c>at least 1/4 in per ft</c>, <c>2 to 9 in</c>, <c>at most 3 mm over 2 m</c>.</summary>
    public string Words => $"{(Least, Most) switch
    {
        ({ } least, { } most) => $"{least} to {most}",
        ({ } least, null) => $"at least {least}",
        (null, { } most) => $"at most {most}",
        _ => "",
    }}{(At is { } at ? $"{(Least is null && Most is null ? "" : " ")}{By} {at}" : "")}{(As is null || string.Equals(As, (Least ?? Most).ToString(), StringComparison.Ordinal) ? "" : $" (printed as {As})")}";
}
