namespace Gaugerod.Engine.Boards;

/// <summary>Where rows may lie: how high the lowest is decides it, for all between the lowest and the highest are whole.</summary>
internal static class RowHeights
{
    /// <summary>What rows are lowered by to bring their seams from under tile joints.</summary>
    public static readonly long Aside = Plane.Measure.Length.FromInches(0, 3, 4).Steps;

    /// <summary>Rows to be tried, each from the foot up; whole rows from the foot first.</summary>
    /// <param name="foot">Where board begins.</param>
    /// <param name="head">Where it ends.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="corners">How high the corners are that seams are brought just over, or just under; none where that is not looked for.</param>
    /// <param name="lowered">How much lower than that they are to lie.</param>
    public static IEnumerable<Band[]> Of(long foot, long head, SheetLies sheet, IEnumerable<long> corners, long lowered = 0)
    {
        var all = head - foot;
        if (all <= sheet.Up) return [[new(foot, head)]];
        var step = sheet.Up + sheet.Gap;
        var rest = ((all + sheet.Gap) % step) - sheet.Gap;
        var firsts = new List<long> { sheet.Up };
        if (rest > 0) firsts.AddRange([rest, (rest + sheet.Up) / 2]);
        foreach (var corner in corners.Distinct().Order())
        {
            foreach (var seam in new[] { corner + BoardLimits.FromCorner, corner - BoardLimits.FromCorner }) firsts.Add(Mod(seam - sheet.Before - foot, step));
        }

        var least = Math.Min(BoardLimits.Narrow, sheet.Up);
        return firsts.Select(first => first - lowered).Where(first => (first == rest && rest > 0) || (first >= least && first <= sheet.Up)).Distinct().Select(first => Rows(foot, head, first, sheet).ToArray());
    }

    private static IEnumerable<Band> Rows(long foot, long head, long first, SheetLies sheet)
    {
        var (bottom, height) = (foot, first);
        while (bottom < head)
        {
            yield return new(bottom, Math.Min(bottom + height, head));
            (bottom, height) = (bottom + height + sheet.Gap, sheet.Up);
        }
    }

    private static long Mod(long value, long by) => ((value % by) + by) % by;
}
