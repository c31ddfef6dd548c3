using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What a straightedge may show before tile is set, as the job's region has it, or the tape's unit where it names none.</summary>
internal static class GapLimits
{
    /// <summary>The limits for a tile, the longest straightedge first.</summary>
    /// <param name="longest">The tile's longest edge.</param>
    /// <param name="isFloor">Whether it is set on a floor.</param>
    /// <param name="tape">The tape.</param>
    /// <param name="region">The job's region; null where it names none.</param>
    internal static Sequence<GapLimit> Of(Length longest, bool isFloor, Tape tape, Region? region = null)
    {
        if (FlatnessLimits.Own(region, isFloor) is { Count: > 0 } own) return [.. own.Select(Limit)];
        var (far, near) = FlatnessLimits.Rulings(longest, tape.Unit == LengthUnit.Millimetre, region);
        // A job in millimetres that names no region is held to DIN's straightedge of 2 m too.
        if (tape.Unit == LengthUnit.Inch || region is not null) return [Limit(far), Limit(near)];
        var two = LimitTable.Each(Region.Europe, isFloor ? LimitKeys.FlatFloor : LimitKeys.FlatWall).First(limit => limit.At.Length == Length.FromMillimetres(2000));
        return [Limit(far), new(two.At.Length, two.Most.Length, $"{two.Limit.Standard} (finished {(isFloor ? "floors" : "walls")}), 2 m"), Limit(near)];
    }

    private static GapLimit Limit(Ruling ruling) => new(ruling.At.Length, ruling.Most.Length, ruling.Source);
}
