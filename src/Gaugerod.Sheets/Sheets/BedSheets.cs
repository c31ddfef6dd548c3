using System.Globalization;
using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A bed that falls: its floor with the height at each stake, a section through the drain, and the stakes as a list.</summary>
internal static class BedSheets
{
    private const double Section = 44, Margin = 14, Size = 8;

    // So far out along a way its fall may be said.
    private static readonly double[] s_shares = [0.5, 0.84, 0.42, 0.6, 0.75, 0.25];

    public static void Add(SheetBook book, Bed bed)
    {
        if (WallPlan.All(book.Plan).FirstOrDefault(wall => string.Equals(wall.Name, bed.Face, StringComparison.Ordinal)) is not { } wall) return;
        var (figures, name) = (book.Figures, "Bed: " + bed.Face);
        var page = book.Page(name);
        var content = page.Content;
        var outline = wall.Parts[0].Face.Face.SetOut.Outline;
        var bounds = outline.Bounds;
        var top = page.Pen.Paragraph(content.X, content.Y, content.Width, Words(bed, figures), 9.5) + 4;
        var room = content.Height - top - Section - (2 * Margin);
        page.Scale = FaceMap.ScaleFor(bounds.Width, bounds.Height, content.Width - (2 * Margin), room);
        page.Description = $"The bed of {bed.Face} at 1 to {Figures.Number(page.Scale.Value)} with {Figures.Count(bed.Stakes.Count, "height", "heights")}, and a section through its drain: {figures.NearWithUnit(bed.Least)} thick at the drain, {figures.NearWithUnit(bed.Greatest)} at the most.";
        var (width, height) = (FaceMap.OnPaper(bounds.Width, page.Scale.Value), FaceMap.OnPaper(bounds.Height, page.Scale.Value));
        var corner = new Spot(content.X + ((content.Width - width) / 2), content.Y + top + Margin + ((room - height) / 2));
        var map = new FaceMap(page.Scale.Value, new(corner.X - FaceMap.OnPaper(bounds.Left, page.Scale.Value), corner.Y + FaceMap.OnPaper(bounds.Top, page.Scale.Value)));
        Plan(page.Pen, bed, wall, outline, map, figures);
        Cut(page.Pen, bed, figures, new(content.X + Margin, content.Bottom - Section, content.Width - (2 * Margin), Section));
        Stakes(book, bed, name);
    }

    private static string Words(Bed bed, Figures figures)
    {
        var edge = bed.Request.Perimeter == Perimeter.Level ? "Its edge is level all round." : "It falls alike everywhere, so its edge stands the higher, the farther it is.";
        return $"Figures on the floor are {figures.Units} that the bed stands over its drain, before any tile. {edge} The shares are how steeply it falls along the line. Thickness counts over a level base: where the base is out, keep the heights. Volume, bags, weight and the limits are among the findings.";
    }

    private static void Plan(Pen pen, Bed bed, WallPlan wall, Ring outline, FaceMap map, Figures figures)
    {
        pen.Area(map.Ring(outline), Fill.Wall, Stroke.Outline, bed.Face);
        foreach (var opening in wall.Parts.SelectMany(part => part.Face.Face.SetOut.Openings).Distinct()) pen.Area(map.Ring(opening.Ring), Fill.Opening, Stroke.FixtureEdge, opening.Name);
        foreach (var way in bed.Ways) pen.Line(map.At(way.From), map.At(way.At), Stroke.Leader);
        foreach (var drain in bed.Drains)
        {
            if (drain.From != drain.To) pen.Line(map.At(drain.From), map.At(drain.To), Stroke.Bar);
            else pen.Area(Pen.Circle(map.At(drain.From), 2), Fill.Fixture, Stroke.FixtureEdge, "drain");
        }

        // Where figures would cover each other the list has them.
        var taken = new List<Frame>();
        var middle = Frame.Around(map.Ring(outline)).Middle;
        foreach (var stake in bed.Stakes.OrderBy(stake => stake.Along == default ? 0 : 1).DistinctBy(stake => stake.Place))
        {
            var at = map.At(stake.Place);
            pen.Area(Pen.Circle(at, 0.7), Fill.Ink);
            // Inwards of its stake, so that it stands on the floor.
            var (dx, dy) = (middle.X - at.X, middle.Y - at.Y);
            var far = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
            var spot = new Spot(at.X + (7 * dx / far), at.Y + (4.5 * dy / far));
            if (far < 3) spot = new(at.X, at.Y + 4);
            var box = Pen.BoxAround(spot, figures.Near(stake.Over), Size, bold: false, upright: false);
            if (taken.Exists(box.Meets)) continue;
            taken.Add(box);
            pen.TextAround(spot, figures.Near(stake.Over), Size, onPaper: true);
        }

        foreach (var way in bed.Ways)
        {
            // Half way, or where else no stake's height stands.
            var (from, to) = (map.At(way.From), map.At(way.At));
            var fall = string.Create(CultureInfo.InvariantCulture, $"{way.Fall * 100:0.0} %");
            foreach (var share in s_shares)
            {
                var spot = new Spot(from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)));
                var box = Pen.BoxAround(spot, fall, Size, bold: false, upright: false);
                if (taken.Exists(box.Meets)) continue;
                taken.Add(box);
                pen.TextAround(spot, fall, Size, ink: Ink.Quiet, onPaper: true);
                break;
            }
        }
    }

    /// <summary>The longest way to the drain, and on its other side the shortest, heights enlarged.</summary>
    private static void Cut(Pen pen, Bed bed, Figures figures, Frame frame)
    {
        const double Highest = 20;
        pen.Text(frame.X - Margin, frame.Y + 3.5, "Section along the shortest and the longest way to the drain, heights enlarged", 9.5, bold: true);
        var along = frame.Width / (double)(bed.Nearest + bed.Farthest).Millimetres;
        var up = Highest / Math.Max(1e-6, (double)bed.Greatest.Millimetres);
        var (foot, drain) = (frame.Bottom - 9, frame.X + (along * (double)bed.Nearest.Millimetres));
        var (near, least, most) = (up * (double)(bed.Least + bed.OverNearest).Millimetres, up * (double)bed.Least.Millimetres, up * (double)bed.Greatest.Millimetres);
        Spot[] ring = [new(frame.X, foot), new(frame.Right, foot), new(frame.Right, foot - most), new(drain, foot - least), new(frame.X, foot - near)];
        pen.Area(ring.ToSequence(), Fill.Wall, Stroke.Outline, "bed");
        pen.Line(drain, foot, drain, foot - Math.Max(least, 3), Stroke.Bar);
        Measures.Level(pen, frame.X, drain, foot + 5.5, figures.Near(bed.Nearest), Measures.Spill.Before);
        Measures.Level(pen, drain, frame.Right, foot + 5.5, figures.Near(bed.Farthest));
        Measures.Upright(pen, frame.X - 4, foot - near, foot, figures.Near(bed.Least + bed.OverNearest));
        Measures.Upright(pen, frame.Right + 6, foot - most, foot, figures.Near(bed.Greatest));
        pen.TextAround(new(drain, foot - Math.Max(least, 3) - 3), figures.Near(bed.Least), Size, onPaper: true);
    }

    private static void Stakes(SheetBook book, Bed bed, string name)
    {
        var figures = book.Figures;
        var flow = book.Flow(name, $"The heights of the bed of {bed.Face} at its stakes.", 2);
        var (head, rows) = Table.Of(
            [new("On", 22, Bold: true), new("along", 10, Right: true), new("over the drain", 12, Right: true), new("thick", 10, Right: true)],
            bed.Stakes.Select(stake => (IReadOnlyList<string>)[stake.On, figures.Near(stake.Along), figures.Near(stake.Over), figures.Near(stake.Thickness)]), flow.Width);
        flow.Add(Block.Together(Block.Heading("Heights at stakes", flow.Width), head), rows, Block.Together(Block.Heading("Heights at stakes, continued", flow.Width), head));
    }
}
