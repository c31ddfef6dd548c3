namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Straight pieces cut from bars of one length, such as battens. What is longer than a bar takes whole bars end to end and a rest;
/// nothing else has a joint. No saw cut is reckoned: a batten that is short by one carries as well.
/// </summary>
internal static class Bars
{
    // A job's battens are few; so much looks far beyond what they need.
    private const long Work = 500_000;

    /// <summary>The pieces of one stretch: whole bars first, then the rest.</summary>
    /// <param name="bar">How long a bar is, in steps; more than zero.</param>
    /// <param name="stretch">How long it is; zero or more.</param>
    public static IEnumerable<long> Parts(long bar, long stretch)
    {
        for (; stretch >= bar; stretch -= bar) yield return bar;
        if (stretch > 0) yield return stretch;
    }

    /// <summary>How many bars some pieces take.</summary>
    /// <param name="bar">How long a bar is, in steps; more than zero.</param>
    /// <param name="pieces">The pieces, each no longer than a bar.</param>
    public static int Count(long bar, IReadOnlyList<long> pieces)
    {
        var (whole, parts) = (pieces.Count(piece => piece == bar), pieces.Where(piece => piece < bar).ToList());
        if (parts.Count == 0) return whole;
        var search = new SharingSearch(new(new(bar, 1, 0, Turns.Half), [.. parts.Select(part => new Blank(part, 1, Sides.Bottom | Sides.Top))]), Work);
        search.Run();
        return whole + search.Best.Fills.Count;
    }
}
