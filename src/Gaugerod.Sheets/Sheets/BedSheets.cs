using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A bed that falls: its floor with the height at each stake, a section through the drain, and the stakes as a list.</summary>
internal static class BedSheets
{
    private const double Section = 44, Margin = 14;

    public static void Add(SheetBook book, Bed bed)
    {
        if (WallPlan.All(book.Plan).FirstOrDefault(wall => string.Equals(wall.Name, bed.Face, StringComparison.Ordinal)) is not { } wall) return;
        var (figures, name) = (book.Figures, "Bed: " + bed.Face);
        var page = book.Page(name);
        var content = page.Content;
        var outline = wall.Parts[0].Face.Face.SetOut.Outline;
        var bounds = outline.Bounds;
        var top = page.Pen.Paragraph(content.X, content.Y, content.Width, Words(book, bed), 9.5) + 4;
        var room = content.Height - top - Section - (2 * Margin);
        page.Scale = FaceMap.ScaleFor(bounds.Width, bounds.Height, content.Width - (2 * Margin), room);
        page.Description = $"The bed of {bed.Face} at 1 to {Figures.Number(page.Scale.Value)} with {Figures.Count(bed.Stakes.Count, "height", "heights")}, and a section: {figures.NearWithUnit(bed.Least)} thick at {bed.Low}, {figures.NearWithUnit(bed.Greatest)} at the most.";
        var (width, height) = (FaceMap.OnPaper(bounds.Width, page.Scale.Value), FaceMap.OnPaper(bounds.Height, page.Scale.Value));
        var corner = new Spot(content.X + ((content.Width - width) / 2), content.Y + top + Margin + ((room - height) / 2));
        var map = new FaceMap(page.Scale.Value, new(corner.X - FaceMap.OnPaper(bounds.Left, page.Scale.Value), corner.Y + FaceMap.OnPaper(bounds.Top, page.Scale.Value)));
        BedPicture.Plan(page.Pen, bed, outline, wall.Parts.SelectMany(part => part.Face.Face.SetOut.Openings).Distinct().Select(opening => opening.Ring), map, figures);
        page.Pen.Text(content.X, content.Bottom - Section + 3.5, BedPicture.CutTitle(bed), 9.5, bold: true);
        BedPicture.Cut(page.Pen, bed, figures, new(content.X + Margin, content.Bottom - Section, content.Width - (2 * Margin), Section));
        Stakes(book, bed, name);
    }

    private static string Words(SheetBook book, Bed bed)
    {
        var (figures, takes) = (book.Figures, book.Plan.Findings.FirstOrDefault(finding => finding.Rule is "bed" && string.Equals(finding.Where, bed.Face, StringComparison.Ordinal) && finding.Text.StartsWith("The bed takes", StringComparison.Ordinal))?.Text);
        var edge = bed.Request.Perimeter == Perimeter.Level ? "Its edge is level all round." : "It falls alike everywhere, so its edge stands the higher, the farther it is.";
        return $"Figures on the floor are {figures.Units} that the bed stands over {bed.Low}, before any tile. {edge} The shares are how steeply it falls along the line. Thickness counts over a level base: where the base is out, keep the heights. {takes} The limits it is held to are among the findings.";
    }

    private static void Stakes(SheetBook book, Bed bed, string name)
    {
        var figures = book.Figures;
        var flow = book.Flow(name, $"The heights of the bed of {bed.Face} at its stakes.", 2);
        var (head, rows) = Table.Of(
            [new("On", 22, Bold: true), new("along", 10, Right: true), new($"over {bed.Low}", 12, Right: true), new("thick", 10, Right: true)],
            bed.Stakes.Select(stake => (IReadOnlyList<string>)[stake.On, figures.Near(stake.Along), figures.Near(stake.Over), figures.Near(stake.Thickness)]), flow.Width);
        flow.Add(Block.Together(Block.Heading("Heights at stakes", flow.Width), head), rows, Block.Together(Block.Heading("Heights at stakes, continued", flow.Width), head));
    }
}
