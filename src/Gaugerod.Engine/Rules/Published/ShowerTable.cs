using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Rules.Published.LimitKeys;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>How showers fall, how large they are, how high water is kept from their walls, and how that is tried.</summary>
internal static class ShowerTable
{
    private const string Receptor = "IRC P2709 (showers; as printed in 2021). Local code comes first", Size = "IRC P2708.1, as a bath design page gives it. Local code comes first", Test = "IRC P2503.6 and IPC 417.5.2, as a plumbers' page gives them. Local code comes first", Slope = "NCC 2022 and AS 3740:2021";

    private const string Move = "Move the drain or make the edge follow; ask whoever answers for the code.", Larger = "Ask the building department before walls stand.", Wait = "Plug the drain, let water in, mark the level, come back; mend what leaks before tile goes on.";

    public static IReadOnlyList<PublishedLimit> Rows { get; } =
    [
        new(FallLeast, Region.America, "fall of a shower floor to its drain", Receptor, Known.Printed, Move) { Least = new(1 / 4.0, "in per ft"), As = "2 %" },
        new(FallMost, Region.America, "fall of a shower floor to its drain", Receptor, Known.Printed, Move) { Most = new(1 / 2.0, "in per ft"), As = "4 %" },
        new(FallLeast, Region.Australia, "fall of a floor to its waste", Slope, Known.FromMemory, Move) { Least = new(80, "1:"), As = "1:80" },
        new(FallMost, Region.Australia, "fall of a floor to its waste", Slope, Known.FromMemory, Move) { Most = new(50, "1:"), As = "1:50" },
        new(Curb, Region.America, "top of the curb over the top of the drain", Receptor, Known.Printed, "Build the curb higher or lower, or raise the drain.") { Least = new(2, "in"), Most = new(9, "in") },
        new(ShowerArea, Region.America, "floor of a shower inside its finished walls", Size, Known.Printed, Larger) { Least = new(900, "in²") },
        new(ShowerDisc, Region.America, "round that fits on the floor of a shower", Size, Known.Printed, Larger) { Least = new(30, "in") },
        new(WallFinish, Region.America, "wall that takes up no water, over the floor of a shower", "IRC R307.2, as a code writer reads it. Local code comes first", Known.Printed, "Carry membrane and tile higher.") { Least = new(72, "in") },
        new(Upturn, Region.America, "liner turned up over the finished threshold", "IRC P2709.2, as an inspectors' page gives it. Local code comes first", Known.Printed, "Turn the liner up higher, and no nail below that.") { Least = new(3, "in") },
        new(MembraneOut, Region.Australia, "membrane carried into the room beyond the hob", "AS 3740, as a project's specification gives it", Known.Printed, "Carry the membrane on.") { Least = new(50, "mm") },
        new(FloodDepth, Region.America, "water at the threshold when the pan is tried", Test, Known.Printed, Wait) { Least = new(2, "in") },
        new(FloodCode, Region.America, "time that the water stands, by the code", Test, Known.Printed, Wait) { Least = new(15, "min") },
        new(FloodCustom, Region.America, "time that the water stands, as many places and the trade have it", "a plumbers' page; ASTM D5957, 24 to 72 h, from memory", Known.Printed, Wait) { Least = new(24, "h") },
    ];
}
