namespace Gaugerod.Engine.Prices;

/// <summary>What became of a line of a price list.</summary>
public enum ListFate
{
    /// <summary>It prices something of the job.</summary>
    Used,

    /// <summary>It prices nothing that this job buys, or the job has a price of its own.</summary>
    NotUsed,

    /// <summary>It names something and no price.</summary>
    NoPrice,

    /// <summary>It prices what another line prices too.</summary>
    Doubled,

    /// <summary>It cannot be read.</summary>
    Unread,
}

/// <summary>A line of a price list.</summary>
/// <param name="File">The list's name, as it was given.</param>
/// <param name="First">Its line in the file, counted from 1.</param>
/// <param name="Last">The last of its lines, where a quoted field goes on over several.</param>
/// <param name="Item">What it names; empty where it names nothing.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Said">Why, in words; empty where there is nothing to say.</param>
public sealed record ListLine(string File, int First, int Last, string Item, ListFate Fate, string Said)
{
    /// <summary>The price it holds; null where it holds none that can be used.</summary>
    public ItemPrice? Price { get; init; }

    /// <summary>The currency that stands in it; empty for none.</summary>
    public string Currency { get; init; } = "";
}
