using Gaugerod.Plane;

namespace Gaugerod.Engine.Rules;

/// <summary>Says once what was found alike in several places. What every wall repeats is not read, and hides what stands between.</summary>
public static class FindingsAlike
{
    // An entry is never parted over two sheets, so it must not outgrow one.
    private const int MostPlaces = 12;

    /// <summary>
    /// One finding for all that are alike in level, text, limit, value and source, with all their places named: "west, north,
    /// east". The gravest first, else in the order of the first of each; more than twelve places go on in a further one.
    /// </summary>
    public static Sequence<Finding> Together(IEnumerable<Finding> findings) => findings
        .GroupBy(finding => finding with { Where = "", Rule = "" })
        .SelectMany(alike => alike.DistinctBy(finding => finding.Where, StringComparer.Ordinal).Chunk(MostPlaces))
        .Select(alike => alike[0] with { Where = string.Join(", ", alike.Select(finding => finding.Where)) })
        .OrderByDescending(finding => finding.Level)
        .ToSequence();
}
