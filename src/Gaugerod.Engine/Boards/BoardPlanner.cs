using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>A layout of a face's sheets, as studs run up.</summary>
/// <param name="Lay">Which way the sheets lie.</param>
/// <param name="Rows">The rows.</param>
/// <param name="At">Where seams may stand.</param>
/// <param name="Choice">Where they do.</param>
internal sealed record SheetLayout(BoardLay Lay, SheetRow[] Rows, long[] At, SeamChoice Choice);

/// <summary>
/// Lays out the sheets of a face: rows from the foot, each whole but for the lowest or the highest or both, and in each the seams on
/// studs. What is compared, and what is proved of it, stands in docs/boards.md.
/// </summary>
internal static class BoardPlanner
{
    /// <summary>So many layouts of either order are cut out of sheets to see which takes fewest.</summary>
    private const int CutOut = 2;

    /// <summary>The layout of a face, a little at a time: nothing until the last.</summary>
    /// <param name="task">The face; every stretch between two studs can be boarded.</param>
    /// <param name="joints">The joints between tiles where water runs.</param>
    public static IEnumerable<SheetLayout?> Steps(BoardTask task, JointBands joints)
    {
        var layouts = new List<SheetLayout>();
        foreach (var lay in task.Lays)
        {
            var (own, tried) = (new List<SheetLayout>(), new HashSet<long>());
            foreach (var bands in Rows(task, task.Sheet(lay), own))
            {
                if (!tried.Add(bands[0].Height)) continue;
                own.AddRange(Layouts(task, lay, task.Sheet(lay), bands, joints));
                yield return null;
            }

            layouts.AddRange(own);
        }

        SheetLayout? best = null;
        var least = default(SeamCost);
        foreach (var layout in layouts.GroupBy(layout => layout.Choice.ByShares).SelectMany(group => group.OrderBy(layout => layout.Choice.Cost, SeamCost.Order).Take(CutOut)))
        {
            var pieces = layout.Rows.Select((row, r) => Cells(layout, r).SelectMany(cell => Outlines(row.Rings(cell.From, cell.To)))).SelectMany(outline => outline);
            var sheets = SheetCutting.Count(task.Sheet(layout.Lay), [.. pieces.Select(outline => Box.Around(outline.Select(corner => corner.Point)))]);
            var cost = layout.Choice.Cost with { Shares = sheets * SeamCost.Sheet };
            if (best is null || cost.IsBetterThan(least)) (best, least) = (layout, cost);
            yield return null;
        }

        yield return best;
    }

    /// <summary>The rows to be tried; those that keep from corners, or from under joints, only where the ones before do not.</summary>
    /// <param name="task">The face.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="sofar">What has come of them so far.</param>
    private static IEnumerable<Band[]> Rows(BoardTask task, SheetLies sheet, List<SheetLayout> sofar)
    {
        var (foot, head, corners) = (task.Field.Bounds.Bottom.Steps, task.Field.Bounds.Top.Steps, task.Field.Corners.Select(corner => corner.Y.Steps).ToList());
        foreach (var bands in RowHeights.Of(foot, head, sheet, [])) yield return bands;
        if (!sofar.Exists(layout => layout.Choice.Cost is { AtCorners: 0, InLine: 0, Narrow: 0 }))
        {
            foreach (var bands in RowHeights.Of(foot, head, sheet, corners)) yield return bands;
        }

        for (var lower = 1; lower <= 2 && sofar.TrueForAll(layout => layout.Choice.Cost.Under > 0); lower++)
        {
            foreach (var bands in RowHeights.Of(foot, head, sheet, corners, lower * RowHeights.Aside)) yield return bands;
        }
    }

    /// <summary>The stretches of a row between its seams, each by the places it runs from and to.</summary>
    public static IEnumerable<(int From, int To)> Cells(SheetLayout layout, int row)
    {
        int[] all = [0, .. layout.Choice.Rows[row], layout.At.Length - 1];
        return Enumerable.Range(0, all.Length - 1).Select(i => (all[i], all[i + 1]));
    }

    public static IEnumerable<TaggedCorner[]> Outlines(IEnumerable<TaggedCorner[]> rings) => rings.Where(SheetRow.IsOutline);

    /// <summary>The level seam over a row.</summary>
    public static (long At, List<Stretch> Stretches) Above(BoardField field, Band[] bands, int row, SheetLies sheet)
    {
        var at = bands[row].Top + sheet.Before;
        return (at, row + 1 < bands.Length ? Chords.Of(field.Rings, plumb: false, at, long.MinValue, long.MaxValue) : []);
    }

    /// <summary>The best with fewest pieces, and the best with pieces that take least of sheets: which takes fewer sheets only cutting them out tells.</summary>
    private static IEnumerable<SheetLayout> Layouts(BoardTask task, BoardLay lay, SheetLies sheet, Band[] bands, JointBands joints)
    {
        var (at, judge) = (task.Places(sheet), new SeamJudge(task.Field.Corners, sheet, joints));
        SheetRow[] rows = [.. bands.Select(band => new SheetRow(task.Field, band, sheet, at))];
        var level = default(SeamCost);
        var seams = new RowSeams[rows.Length];
        for (var r = 0; r < rows.Length; r++)
        {
            var (height, above) = Above(task.Field, bands, r, sheet);
            level += judge.Cost(isPlumb: false, height, above);
            seams[r] = RowSeams.Of(rows[r], at, above, judge);
        }

        var stagger = task.Request.Studs is null ? BoardLimits.FloorStagger : 1;
        foreach (var byShares in new[] { false, true })
        {
            if (new SeamSearch(rows, seams, at, stagger, byShares).Find() is { } found) yield return new(lay, rows, at, found with { Cost = found.Cost + level });
        }
    }
}
