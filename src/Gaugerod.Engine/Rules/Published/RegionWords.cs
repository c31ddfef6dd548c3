using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>What regions are called.</summary>
public static class RegionWords
{
    /// <summary>As the job file has it: <c>US</c>, <c>UK</c>, <c>EU</c> or <c>AU</c>.</summary>
    public static string Short(Region region) => region switch { Region.America => "US", Region.Britain => "UK", Region.Europe => "EU", _ => "AU" };

    /// <summary>Behind the source of a figure that is North America's: that it is, on a job that lies elsewhere.</summary>
    internal static string Borrowed(Region? region) => region is null or Region.America ? "" : $"; a North American figure, for none is held here for {Long(region.Value)}";

    /// <summary>In words, after "for" or "of".</summary>
    public static string Long(Region region) => region switch
    {
        Region.America => "the United States and Canada",
        Region.Britain => "the United Kingdom",
        Region.Europe => "the European Union",
        _ => "Australia and New Zealand",
    };
}
