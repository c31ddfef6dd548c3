using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Rules.Published.LimitKeys;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>How flat a surface is to be.</summary>
internal static class FlatnessTable
{
    private const string Ansi = "ANSI A108.01 and A108.02, 4.1.4.3.1 (clause from memory)", Din = "DIN 18202, table 3, row ";

    private const string Mend = "Grind what stands out or fill what is low, before tile goes on.", Agree = "It holds where it was agreed: ask before you fill.";

    public static IReadOnlyList<PublishedLimit> Rows { get; } =
    [
        new(LargeSide, Region.America, "longest edge of the tile from which the limits for large tile hold", "ANSI A108.02; older editions had 18 in", Known.Printed, "Look up which limits the tile falls under.") { At = new(15, "in"), By = "from" },
        America(FlatSmall, "all edges under 15 in", new(1 / 4.0, "in"), new(10, "ft")),
        America(FlatSmallShort, "all edges under 15 in", new(1 / 16.0, "in"), new(12, "in")),
        America(FlatLarge, "an edge of 15 in or more", new(1 / 8.0, "in"), new(10, "ft")),
        America(FlatLargeShort, "an edge of 15 in or more", new(1 / 16.0, "in"), new(24, "in")),
        America(FlatSmallMetric, "all edges under 15 in", new(6, "mm"), new(3, "m")),
        America(FlatSmallShortMetric, "all edges under 15 in", new(1.5, "mm"), new(300, "mm")),
        America(FlatLargeMetric, "an edge of 15 in or more", new(3, "mm"), new(3, "m")),
        America(FlatLargeShortMetric, "an edge of 15 in or more", new(1.5, "mm"), new(600, "mm")),
        .. Europe(FlatFloor, "finished floors", 3, [(10, 4), (6, 2), (4, 1)], Mend),
        .. Europe(FlatFloorStrict, "finished floors of higher demand", 4, [(9, 4), (5, 2), (3, 1)], Agree),
        .. Europe(FlatWall, "finished walls", 6, [(10, 4), (7, 2), (5, 1)], Mend),
        .. Europe(FlatWallStrict, "finished walls of higher demand", 7, [(8, 4), (5, 2), (3, 1)], Agree),
        new(Flat, Region.Britain, "out of plane under a straightedge, class SR1", "BS 8204 and BS 5385", Known.FromMemory, Mend) { Most = new(3, "mm"), At = new(2, "m") },
        new(Flat, Region.Australia, "the finished tile out of plane, either way, under a straightedge; the base can be no worse", "AS 3958.1, as a building adviser's page gives it", Known.Printed, Mend) { Most = new(4, "mm"), At = new(2, "m") },
    ];

    private static PublishedLimit America(string key, string tile, Figure most, Figure over) =>
        new(key, Region.America, $"out of plane, tile with {tile}", key.EndsWith("metric", StringComparison.Ordinal) ? Ansi + ", metric print" : Ansi, Known.Printed, Mend) { Most = most, At = over };

    // The figure at 2 m stands between those at 1 and 4 m, as a page on the table has it.
    private static IEnumerable<PublishedLimit> Europe(string key, string what, int row, (int Most, int Over)[] figures, string advice) => figures.Select(figure =>
        new PublishedLimit(key, Region.Europe, $"gap under a straightedge, {what}", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Din}{row}"), Known.Printed, advice) { Most = new(figure.Most, "mm"), At = new(figure.Over, "m") });
}
