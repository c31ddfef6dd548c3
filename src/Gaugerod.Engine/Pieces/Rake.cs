namespace Gaugerod.Engine.Pieces;

/// <summary>
/// How far an edge may be out and still count as level, as plumb, or as following a side of a tile: 1 in 8. What was meant level
/// or plumb and came out crooked reads a few in a hundred; gables, stairs and raking ceilings begin well above. In between, the
/// piece of a tile along the edge still has a width that says something; steeper, it runs out to nothing whatever the placing.
/// Common practice, no source.
/// </summary>
internal static class Rake
{
    /// <summary>One in so many.</summary>
    public const long OneIn = 8;

    /// <summary>The same as the sine of the angle between the two.</summary>
    public static double Sine { get; } = 1 / Math.Sqrt((OneIn * OneIn) + 1);

    /// <summary>The same as its cosine.</summary>
    public static double Cosine { get; } = OneIn / Math.Sqrt((OneIn * OneIn) + 1);
}
