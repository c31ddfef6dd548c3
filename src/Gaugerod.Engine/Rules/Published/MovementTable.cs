using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Rules.Published.LimitKeys;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>How far apart soft joints stand across a field, how wide and how deep they are.</summary>
internal static class MovementTable
{
    private const string Ej171 = "TCNA EJ171 and ANSI A108.02, 4.4, as the trade press gives them: inside 20 to 25 ft each way; in direct sun, heat or moisture 8 to 12 ft; outside 8 to 12 ft. Where they stand is for the designer to say";

    private const string Width = "trade press on movement joints (TCNA EJ171): glazed wall tile and mosaics 1/4 in preferred, 1/8 in at the least; quarry, paver and porcelain floors as the grout joint, 1/4 in at the least";

    private const string Shape = "an estimating handbook of the trade: no less than 1/8 in deep, no more than half as deep as wide, over a backer; width to depth 2 to 1, ASTM C1193, from memory";

    private const string Part = "Part the field with a soft joint on a joint of the bond; where is for the designer to say.", Zdb = "a leaflet of the German tile trade's association (ZDB) on movement joints";

    public static IReadOnlyList<PublishedLimit> Rows { get; } =
    [
        new(MovementInside, Region.America, "soft joints across a field, inside", Ej171, Known.Printed, Part) { Most = new(25, "ft") },
        new(MovementSun, Region.America, "soft joints across a field in direct sun, heat or moisture", Ej171, Known.Printed, Part) { Most = new(12, "ft") },
        new(MovementOutside, Region.America, "soft joints across a field, outside", Ej171, Known.Printed, Part) { Most = new(12, "ft") },
        new(MovementInside, Region.Britain, "soft joints across a floor, inside", "BS 5385-3, 8 to 10 m", Known.FromMemory, Part) { Most = new(10, "m") },
        new(MovementSun, Region.Britain, "soft joints across a heated floor", "BS 5385-3, under 40 m²", Known.FromMemory, Part) { Most = new(8, "m") },
        new(MovementOutside, Region.Britain, "soft joints across a floor, outside", "BS 5385-3:2024, 3 to 5 m, as the trade press gives it", Known.Printed, Part) { Most = new(5, "m") },
        new(MovementWall, Region.Britain, "soft joints across a wall", "BS 5385-1, 3 to 4.5 m", Known.FromMemory, Part) { Most = new(4.5, "m") },
        new(MovementPerimeter, Region.Britain, "floor from which its edges get a soft joint", "BS 5385-3, as a supplier of joints gives it", Known.Printed, "Leave the edges open to the base, and seal them.") { At = new(2, "m"), By = "from" },
        new(MovementInside, Region.Europe, "side of a floor field, 6.5 to 8 m", Zdb, Known.FromMemory, Part) { Most = new(8, "m") },
        new(MovementArea, Region.Europe, "field on a heated screed", Zdb, Known.FromMemory, Part) { Most = new(40, "m²") },
        new(MovementInside, Region.Australia, "soft joints across a field, about", "AS 3958.1", Known.FromMemory, Part) { Most = new(4.5, "m") },
        new(SoftWidth, Region.America, "soft joint of a wall", Width, Known.Printed, "Leave the joint wider.") { Least = new(1 / 8.0, "in") },
        new(SoftWidth, Region.Europe, "soft joint at the edges of a field", Zdb, Known.FromMemory, "Leave the joint wider.") { Least = new(5, "mm"), Most = new(10, "mm") },
        new(SoftDepth, Region.America, "depth of sealant", Shape, Known.Printed, "Press the cord in to that depth.") { Least = new(1 / 8.0, "in") },
        new(SoftShape, Region.America, "depth of sealant by its width", Shape, Known.Printed, "Press the cord in to that depth.") { Most = new(50, "%") },
    ];
}
