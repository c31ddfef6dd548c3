using Gaugerod.Plane;

namespace Gaugerod.Engine.Prices;

/// <summary>What the client's sheet says beside the figures, all in the setter's own words.</summary>
public sealed record QuoteTerms
{
    /// <summary>Who asks the price; empty, the default, where nothing is said.</summary>
    public string From { get; init; } = "";

    /// <summary>Who is asked. Default nothing.</summary>
    public string For { get; init; } = "";

    /// <summary>The day it is of, as year-month-day. Default nothing: there is no clock here.</summary>
    public string Date { get; init; } = "";

    /// <summary>The last day it holds, as year-month-day. Default nothing.</summary>
    public string ValidUntil { get; init; } = "";

    /// <summary>What is included. Default nothing.</summary>
    public Sequence<string> Included { get; init; } = [];

    /// <summary>What is not. Default nothing.</summary>
    public Sequence<string> Excluded { get; init; } = [];

    /// <summary>Terms. Default nothing.</summary>
    public string Terms { get; init; } = "";

    /// <summary>Whether the margin stands on a line of its own; else, the default, every line carries its share.</summary>
    public bool ShowsMargin { get; init; }

    /// <summary>Whether each line's amount is shown, the default; else only what each group comes to.</summary>
    public bool ShowsLines { get; init; } = true;

    /// <summary>Whether low and high are shown beside the likely total. Default not.</summary>
    public bool ShowsRange { get; init; }
}
