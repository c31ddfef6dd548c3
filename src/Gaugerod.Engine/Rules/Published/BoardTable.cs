using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Rules.Published.LimitKeys;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>What makers of cement board print of it.</summary>
internal static class BoardTable
{
    // Read on pages of makers and sellers; the standard itself from memory.
    private const string Makers = "cement board makers' instructions as printed on their pages; ANSI A108.11 (from memory). The instructions of the board in hand go before";

    public static IReadOnlyList<PublishedLimit> Rows { get; } =
    [
        new(BoardWall, Region.America, "cement board on walls and ceilings, how thick", Makers, Known.Printed, "Take thicker board; thinner is for floors and counters.") { Least = new(0.5, "in") },
        new(BoardStuds, Region.America, "studs under cement board, from middle to middle", Makers, Known.Printed, "Add studs between.") { Most = new(16, "in") },
        new(BoardJoists, Region.America, "joists under fibre cement on floors, over a subfloor", Makers, Known.Printed, "Add joists, or ask the board's maker.") { Most = new(24, "in") },
        new(BoardScrews, Region.America, "screws through board, one to the next, on walls and floors", Makers, Known.Printed, "Set them nearer; on ceilings 6 in is printed.") { Most = new(8, "in") },
        new(BoardInset, Region.America, "outer screws from the sheet's edge; under the greater", Makers, Known.Printed, "Move the outer screws.") { Least = new(0.375, "in"), Most = new(0.625, "in") },
        new(BoardFoot, Region.America, "gap under board over baths and trays", "a board maker's page; the maker's instructions go before", Known.Printed, "Lift the board, or lower it, while it hangs on nothing yet.") { Least = new(0.125, "in"), Most = new(0.25, "in") },
    ];
}
