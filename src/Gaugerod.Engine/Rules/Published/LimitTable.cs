using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>The published limits that are compared or shown, but those of how long things dry and cure (PublishedHolds), which stand there.</summary>
public static class LimitTable
{
    /// <summary>All of them, subject by subject.</summary>
    public static Sequence<PublishedLimit> All { get; } =
        [.. FlatnessTable.Rows, .. JointTable.Rows, .. MovementTable.Rows, .. MortarTable.Rows, .. ShowerTable.Rows, .. BedTable.Rows, .. BoardTable.Rows, .. HealthTable.Rows];

    /// <summary>The limit for a region by the first of the keys that it has; the North American one by the first that there is, where it has none.</summary>
    internal static Ruling For(Region? region, params ReadOnlySpan<string> keys)
    {
        foreach (var key in keys)
        {
            if (Find(key, region ?? Region.America) is { } own) return new(own, region);
        }

        foreach (var key in keys)
        {
            if (Find(key, Region.America) is { } borrowed) return new(borrowed, region);
        }

        throw new ArgumentException($"No limit is called {string.Join(" or ", keys.ToArray())}.", nameof(keys));
    }

    /// <summary>All limits of one key in a region, such as those of several straightedges. None is borrowed.</summary>
    internal static IEnumerable<Ruling> Each(Region? region, string key) =>
        All.Where(limit => limit.Region == (region ?? Region.America) && string.Equals(limit.Key, key, StringComparison.Ordinal)).Select(limit => new Ruling(limit, region));

    private static PublishedLimit? Find(string key, Region region) => All.FirstOrDefault(limit => limit.Region == region && string.Equals(limit.Key, key, StringComparison.Ordinal));
}
