using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Rules;

/// <summary>How far soft joints stand apart across a field, by what it is exposed to.</summary>
internal static class MovementLimits
{
    /// <summary>The furthest that is published for a region; the North American one, which says so, where none is held.</summary>
    /// <param name="region">The job's region; null where it names none.</param>
    /// <param name="exposure">What the field is exposed to.</param>
    /// <param name="isFloor">Whether it lies on a floor.</param>
    public static Ruling Of(Region? region, Exposure exposure, bool isFloor)
    {
        var key = exposure switch { Exposure.Inside => LimitKeys.MovementInside, Exposure.Sun => LimitKeys.MovementSun, _ => LimitKeys.MovementOutside };
        return region switch
        {
            // The British figures part floors from walls; of walls one is held for all of them.
            Region.Britain when !isFloor => LimitTable.For(region, LimitKeys.MovementWall),
            // The German one speaks of floors.
            Region.Europe when !isFloor => new(LimitTable.For(null, key).Limit, region),
            // The Australian one is for all fields.
            Region.Australia => LimitTable.For(region, LimitKeys.MovementInside),
            _ => LimitTable.For(region, key),
        };
    }
}
