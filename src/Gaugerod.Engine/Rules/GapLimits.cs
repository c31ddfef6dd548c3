using Gaugerod.Engine.Bases;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What a straightedge may show before tile is set, as the tape's unit has it.</summary>
internal static class GapLimits
{
    private const string Source = "ANSI A108.01 and A108.02, 4.1.4.3.1 (clause from memory)";

    /// <summary>The limits for a tile, the longest straightedge first.</summary>
    /// <param name="longest">The tile's longest edge.</param>
    /// <param name="isFloor">Whether it is set on a floor.</param>
    /// <param name="tape">The tape.</param>
    internal static Sequence<GapLimit> Of(Length longest, bool isFloor, Tape tape)
    {
        var flat = FlatnessLimits.Required(longest);
        if (tape.Unit == LengthUnit.Inch) return [new(flat.LongOver, flat.Long, Source), new(flat.ShortOver, flat.Short, Source)];
        var isLarge = longest >= LargeTile.Side;
        // The metric print rounds down: 6 or 3 mm in 3 m, 1.5 mm in 300 or 600 mm.
        return
        [
            new(Length.FromMillimetres(3000), Length.FromMillimetres(isLarge ? 3 : 6), Source + ", metric print"),
            new(Length.FromMillimetres(2000), Length.FromMillimetres(isFloor ? 6 : 7), isFloor ? "DIN 18202, table 3, row 3 (finished floors), 2 m" : "DIN 18202, table 3, row 6 (finished walls), 2 m"),
            new(Length.FromMillimetres(isLarge ? 600 : 300), Grid(3), Source + ", metric print"),
        ];

        static Length Grid(long twice) => Plane.Shapes.Grid.HalfDown(Length.FromMillimetres(twice));
    }
}
