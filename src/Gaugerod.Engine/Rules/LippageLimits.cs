using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How far one tile's edge may stand above the next.</summary>
internal static class LippageLimits
{
    /// <summary>
    /// What the joint width allows on top of the tile's own warp: 1/32 in for joints under 1/4 in, 1/16 in from there on. The
    /// table begins at joints of 1/16 in; narrower ones are given no more.
    /// </summary>
    internal static Length Allowance(Length joint) => Of(joint, null).Most.Length;

    /// <summary>The lippage allowed: the allowance and the warp of the tiles supplied, not the warp their standard would allow.</summary>
    internal static Length Allowed(Length joint, Length warpage) => Allowance(joint) + warpage;

    /// <summary>The lippage allowed in a region, and where that comes from: the tiles' warp counts beside a North American figure only.</summary>
    internal static (Length Most, string Source) At(Length joint, Length warpage, Region? region)
    {
        var ruling = Of(joint, region);
        return (ruling.Limit.Region == Region.America ? ruling.Most.Length + warpage : ruling.Most.Length, ruling.Source);
    }

    /// <summary>The limit for a joint. That of North America counts beside the tile's warp, others do not name it.</summary>
    internal static Ruling Of(Length joint, Region? region)
    {
        var (narrow, wide) = (LimitTable.For(region, LimitKeys.Lippage), LimitTable.For(region, LimitKeys.LippageWide));
        // One says from which joint on the wider limit holds, the other up to which the narrower one does.
        return narrow.Limit.At is { } to ? joint <= to.Length ? narrow : wide : joint < wide.At.Length ? narrow : wide;
    }

    /// <summary>The limit for ground or polished tile; null where it is no other.</summary>
    internal static Ruling? Polished(Length joint, Region? region)
    {
        var usual = Of(joint, region);
        return LimitTable.Each(region, LimitKeys.LippagePolished).FirstOrDefault(polished => polished.Most.Length < usual.Most.Length);
    }
}
