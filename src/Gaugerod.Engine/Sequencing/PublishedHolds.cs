using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Sequencing;

/// <summary>A hold as it is printed.</summary>
/// <param name="Least">The shortest, in minutes.</param>
/// <param name="Most">The longest, in minutes.</param>
/// <param name="Source">Where.</param>
public sealed record PublishedHold(int Least, int Most, string Source);

/// <summary>What is printed of holds. A bag's own figure comes before any of it.</summary>
internal static class PublishedHolds
{
    private const int Hour = 60, Day = 24 * Hour;

    /// <summary>What is printed; null where no figure is known here.</summary>
    public static PublishedHold? Of(HoldKind kind) => kind switch
    {
        HoldKind.Grout => new(Day, 2 * Day, "a grout maker's guide for cement grout: 24 to 48 h, unless the mortar is rapid; an older bulletin of the trade: two days or more"),
        HoldKind.Walk => new(Day, Day, "the data sheet of a C2TE adhesive to EN 12004: foot traffic after about 24 h"),
        HoldKind.Support => new(16 * Hour, Day, "a mortar maker's guide: initial cure in 16 to 24 h"),
        HoldKind.Test => new(Day, 3 * Day, "from memory: water-based membranes, often 24 to 72 h; to be found in the product's data sheet"),
        HoldKind.Water => new(3 * Day, 7 * Day, "from memory: usually 72 h to 7 days after grouting; to be found in the product's data sheet"),
        _ => null,
    };
}
