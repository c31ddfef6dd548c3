using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tolerances;

/// <summary>How far off things are on a wall where all is done with care. Common practice, no source, but where one is named.</summary>
/// <param name="Reading">How far a reading of the wall may be off, one standard deviation. Default 1/16 in or 1.5 mm.</param>
/// <param name="SetOut">How far a snapped line may be off, one standard deviation. Default 1/16 in or 1.5 mm.</param>
/// <param name="Joint">How far a single joint may be off, at the most. Default 1/64 in or 0.5 mm: what a spacer gives.</param>
public sealed record SettingErrors(Length Reading, Length SetOut, Length Joint)
{
    /// <summary>The usual.</summary>
    public static SettingErrors Usual(LengthUnit unit) => unit == LengthUnit.Inch
        ? new(Length.FromInches(0, 1, 16), Length.FromInches(0, 1, 16), Length.FromInches(0, 1, 64))
        : new(Length.FromSteps(4800), Length.FromSteps(4800), Length.FromSteps(1600));

    /// <summary>
    /// The largest less the smallest tile: as measured; else of a rectified tile half a per cent of its longer side and at most 0.06 in
    /// (ANSI A137.1 lets each side differ by 0.25 % or 0.03 in from the average, whichever is less), of any other 1.5 mm (what a maker
    /// states for one box).
    /// </summary>
    public static Length Variation(Product product)
    {
        ArgumentNullException.ThrowIfNull(product);
        if (product.Variation is { } measured) return measured;
        if (product.Class != TileClass.Rectified) return Length.FromSteps(4800);
        var most = Length.FromSteps(Length.FromInches(3).Steps / 50);
        return Length.Min(most, Length.FromSteps(Length.Max(product.Width, product.Height).Steps / 200));
    }
}
