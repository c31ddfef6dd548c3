using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>The limit that a check goes by, and for which region it was asked.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Asked">The job's region; null where it names none.</param>
internal sealed record Ruling(PublishedLimit Limit, Region? Asked)
{
    public Figure Least => Limit.Least!.Value;

    public Figure Most => Limit.Most!.Value;

    public Figure At => Limit.At!.Value;

    /// <summary>Whether it is another region's, for want of one.</summary>
    public bool IsBorrowed => Asked is { } region && region != Limit.Region;

    /// <summary>Where it comes from, and that it is borrowed where it is.</summary>
    public string Source => IsBorrowed ? $"{Limit.Source}; a North American figure, for none is held here for {RegionWords.Long(Asked!.Value)}" : Limit.Source;

    /// <summary>What to do, behind a sentence; only where the job names its region, so that other plans stay as they were.</summary>
    public string Do => Asked is null ? "" : " " + Limit.Do;
}
