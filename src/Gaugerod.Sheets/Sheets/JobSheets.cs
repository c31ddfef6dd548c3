using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A plan as the sheets that are taped to the wall.</summary>
public static class JobSheets
{
    /// <summary>
    /// The sheets on the job's paper, upright or across as best suits each: what is needed first, each face to scale, boards, flatness, beds, the
    /// cut list, shared tiles, trims, boxes, rods, proposals, findings and cautions.
    /// </summary>
    public static Sequence<Drawing> Pages(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var book = new SheetBook(plan);
        for (var i = 0; i < plan.Runs.Count; i++) FirstSheet.Add(book, plan.Runs[i], withOrder: i == 0);
        foreach (var wall in WallPlan.All(plan))
        {
            FaceSheet.Add(book, wall);
            foreach (var zone in FaceSheet.Nearer(book, wall)) FaceSheet.Add(book, zone);
        }

        BoardSheets.Add(book);
        foreach (var flat in plan.Flat) FlatSheets.Add(book, flat);
        foreach (var bed in plan.Beds) BedSheets.Add(book, bed);
        foreach (var again in plan.Again) AgainSheets.Add(book, again);
        Cutting(book);
        foreach (var run in plan.Runs) RodSheets.Add(book, run);
        foreach (var run in plan.Runs) ProposalSheets.Add(book, run);
        FindingSheets.Add(book);
        return book.Drawings();
    }

    private static void Cutting(SheetBook book)
    {
        var plan = book.Plan;
        var pieces = PieceOnFace.All(plan, book.Figures);
        foreach (var cutting in plan.Cutting) CutSheets.Add(book, cutting, pieces);
        foreach (var cutting in plan.Cutting)
        {
            var product = plan.Job.Products.FirstOrDefault(p => string.Equals(p.Name, cutting.Product, StringComparison.Ordinal));
            if (product is not null) SharedTileSheets.Add(book, cutting, product);
        }

        foreach (var trim in plan.Job.Trims) TrimSheets.Add(book, trim);
        foreach (var boxes in plan.Boxes) BoxSheets.Add(book, boxes);
    }
}
