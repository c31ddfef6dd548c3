using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Rules.Published.LimitKeys;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>Joints, offsets, lippage and what tiles may differ by.</summary>
internal static class JointTable
{
    private const string Widen = "Take a wider joint, or tiles that differ less.", InRunningBond = "ANSI A108.02, 4.3.8.1", Lipped = "ANSI A108.02-2013, 4.3.7", Advice = "AS 3958.1, as a building adviser's page gives it", Press = "Lift and press while the mortar is soft, or take clips; leave out tiles that are bent.";

    public static IReadOnlyList<PublishedLimit> Rows { get; } =
    [
        new(JointLeast, Region.America, "any joint, on average", "ANSI A108.02-2017, 4.3.8", Known.Printed, Widen) { Least = new(1 / 16.0, "in") },
        new(JointVariation, Region.America, "joint by how far the tiles supplied differ in size", "ANSI A108.02-2017, 4.3.8", Known.Printed, Widen) { Least = new(3, "times") },
        new(JointOffsetRectified, Region.America, "joint of a running bond with a side over 15 in, rectified tile, beside the warp of the longest edge", InRunningBond, Known.Printed, Widen) { Least = new(1 / 8.0, "in") },
        new(JointOffset, Region.America, "joint of a running bond with a side over 15 in, other tile, beside the warp of the longest edge", InRunningBond, Known.Printed, Widen) { Least = new(3 / 16.0, "in") },
        new(JointFloor, Region.Britain, "joint on floors", "BS 5385-3", Known.FromMemory, Widen) { Least = new(3, "mm") },
        new(JointWall, Region.Britain, "joint on walls", "BS 5385-1", Known.FromMemory, Widen) { Least = new(2, "mm") },
        new(JointSmallTile, Region.Europe, "joint of dry-pressed tile, sides to 10 cm", "DIN 18157 and DIN 18352", Known.FromMemory, "Take a joint within it, or have another agreed.") { Least = new(1, "mm"), Most = new(3, "mm"), At = new(100, "mm"), By = "to sides of" },
        new(JointLeast, Region.Europe, "joint of dry-pressed tile, a side over 10 cm", "DIN 18157 and DIN 18352", Known.FromMemory, "Take a joint within it, or have another agreed.") { Least = new(2, "mm"), Most = new(8, "mm") },
        new(Offset, Region.America, "offset of a side over 15 in, unless the tile's maker says otherwise", "ANSI A108.02, 4.3.8.2 (clause from memory)", Known.Printed, "Lay a third or less, or have a laid sample approved.") { Most = new(33, "%") },
        new(Lippage, Region.America, "step between neighbours beside the tiles' own warp, joints under 1/4 in", Lipped, Known.Printed, Press) { Most = new(1 / 32.0, "in") },
        new(LippageWide, Region.America, "step between neighbours beside the tiles' own warp, wider joints", Lipped, Known.Printed, Press) { Most = new(1 / 16.0, "in"), At = new(1 / 4.0, "in"), By = "from joints of" },
        new(Lippage, Region.Britain, "step between neighbours, joints under 6 mm", "BS 5385", Known.FromMemory, Press) { Most = new(1, "mm") },
        new(LippageWide, Region.Britain, "step between neighbours, wider joints", "BS 5385", Known.FromMemory, Press) { Most = new(2, "mm"), At = new(6, "mm"), By = "from joints of" },
        new(Lippage, Region.Australia, "step between neighbours, joints to 3 mm", Advice, Known.Printed, Press) { Most = new(1, "mm"), At = new(3, "mm"), By = "to joints of" },
        new(LippageWide, Region.Australia, "step between neighbours, wider joints", Advice, Known.Printed, Press) { Most = new(2, "mm") },
        new(LippagePolished, Region.Australia, "step between neighbours, tile ground flat or polished, wider joints", Advice, Known.Printed, Press) { Most = new(1.5, "mm") },
        new(Caliber, Region.America, "side of rectified pressed floor tile off the average, either way", "ANSI A137.1, caliber range of rectified pressed floor tile", Known.Printed, "Look for boxes of another caliber.") { Most = new(0.25, "%") },
        new(CaliberCap, Region.America, "the same, of large sides", "ANSI A137.1, caliber range of rectified pressed floor tile", Known.Printed, "Look for boxes of another caliber.") { Most = new(0.03, "in") },
    ];
}
