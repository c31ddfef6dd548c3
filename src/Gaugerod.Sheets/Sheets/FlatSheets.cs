using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>How flat a face is: a map of its highs and lows, what a straightedge shows, and what brings it in.</summary>
internal static class FlatSheets
{
    private const double Margin = 4, Legend = 12, Share = 0.62;

    public static void Add(SheetBook book, FlatFace flat)
    {
        if (WallPlan.All(book.Plan).FirstOrDefault(wall => string.Equals(wall.Name, flat.Face, StringComparison.Ordinal)) is not { } wall) return;
        var (figures, name) = (book.Figures, "Flat: " + flat.Face);
        var read = book.Plan.Job.Faces.First(face => string.Equals(face.Name, flat.Face, StringComparison.Ordinal)).Flatness;
        var face = wall.Parts[0].Face.Face.SetOut;
        var picture = new FlatPicture(flat, face.Outline, face.Openings.Select(opening => opening.Ring), read, figures);
        var page = book.Page(name);
        var content = page.Content;
        var bounds = face.Outline.Bounds;
        var top = page.Pen.Paragraph(content.X, content.Y, content.Width, Words(flat, read, picture, figures), 9.5) + 4;
        var room = (Share * content.Height) - top - (2 * Margin);
        page.Scale = FaceMap.ScaleFor(bounds.Width, bounds.Height, content.Width - (2 * Margin), room);
        var (width, height) = (FaceMap.OnPaper(bounds.Width, page.Scale.Value), FaceMap.OnPaper(bounds.Height, page.Scale.Value));
        var corner = new Spot(content.X + ((content.Width - width) / 2), content.Y + top + Margin);
        picture.Draw(page.Pen, new(page.Scale.Value, new(corner.X - FaceMap.OnPaper(bounds.Left, page.Scale.Value), corner.Y + FaceMap.OnPaper(bounds.Top, page.Scale.Value))));
        page.Description = $"The highs and lows of {flat.Face} at 1 to {Figures.Number(page.Scale.Value)}, with {Figures.Count(flat.Spots.Count, "reading", "readings")} and where {Figures.Count(flat.Gaps.Count, "straightedge is", "straightedges are")} worst. All figures stand in the tables.";
        var below = corner.Y + height + Margin;
        Key(page.Pen, flat, picture, figures, new(content.X, below));
        Tables(book, flat, book.FlowBelow(page, below + (flat.Spots.Count > 0 ? Legend : 2), $"What straightedges show on {flat.Face}, and what brings it in."));
        if (flat.Spots.Count > 0) Readings(book, flat, name);
    }

    private static string Words(FlatFace flat, FlatReadings? read, FlatPicture picture, Figures figures)
    {
        if (flat.Spots.Count == 0) return $"Figures are {figures.Units} of gap under a straightedge, laid where the thin lines are. Blue: where each length shows the most, on its two ringed rests.";
        var falling = flat.IsFalling ? " It falls: that shows here too, and nothing is judged." : "";
        return $"Figures are {figures.Units} off the plane that fits the readings best, plus towards you or up. That plane may slope: flat is not level.{falling} Blue: where each straightedge shows the most, on its two ringed rests.{(read?.Laid.Count > 0 ? " Thin lines with dots: one laid there, and the gaps under it." : "")}{(picture.Bare > 0 ? " Where figures would cover each other the list has them." : "")}";
    }

    private static void Key(Pen pen, FlatFace flat, FlatPicture picture, Figures figures, Spot at)
    {
        if (flat.Spots.Count == 0) return;
        var step = figures.FineWithUnit(picture.Step);
        (Fill Fill, Length Off, string Words)[] keys =
        [
            (Fill.High, picture.Step, $"high by {step} or more"), (Fill.Low, -picture.Step, $"low by {step} or more"), (Fill.Paper, Length.Zero, $"between; a line every {step}"),
        ];
        var x = at.X;
        foreach (var (fill, off, words) in keys)
        {
            pen.Area(new Frame(x, at.Y + 2, 9, 6), fill, Stroke.Dimension);
            picture.Mark(pen, new(x + 12.5, at.Y + 5), off);
            pen.Text(x + 16, at.Y + 6.2, words, 8);
            x += 18 + Lettering.Width(Fractions.Set(words), 8) + 5;
        }
    }

    private static void Tables(SheetBook book, FlatFace flat, Flow flow)
    {
        var figures = book.Figures;
        var (head, rows) = Table.Of(
            [new("", 6, Bold: true), new("straightedge", 22), new("hollow", 12, Right: true), new("hump", 12, Right: true), new("asked, at most", 16, Right: true), new("", 12, Bold: true), new("source", 60)],
            flat.Gaps.Select((gap, i) => (IReadOnlyList<string>)[Figures.Number(i + 1), Over(gap.Over, figures), figures.Fine(gap.Hollow), figures.Fine(gap.Hump), gap.Limit is { } limit ? figures.Fine(limit.Most) : "", Judged(gap), gap.Limit?.Source ?? "told only"]), flow.Width);
        flow.Add(Block.Together(Block.Heading("Under a straightedge", flow.Width), Block.Words("Hollow: the widest gap under it between its two rests. Hump: how far a place stands out over a string between two low ones, where a straightedge would rock. The worse of the two is judged.", flow.Width, ink: Ink.Quiet, after: 1.5), head), rows, head);
        flow.Add(Block.Gap(5));
        FlatSections.Add(flow, flat, figures);
        Said(book, flow, flat);
    }

    // Two metres are asked in inches too, and are no round number of them.
    private static string Over(Length over, Figures figures) => over == Length.FromMillimetres(2000) && figures.Unit is "in" ? $"2 m, {figures.NearWithUnit(over)}" : figures.NearWithUnit(over);

    private static string Judged(WorstGap gap) => gap.Limit is null ? "" : gap.IsWithin ? "in" : "▲ out";

    /// <summary>What else the checks say of it, and the caution on dust where grinding is told.</summary>
    private static void Said(SheetBook book, Flow flow, FlatFace flat)
    {
        var said = book.Plan.Findings.Where(finding => finding.Rule is "flatness" && finding.Limit.Length == 0 && string.Equals(finding.Where, flat.Face, StringComparison.Ordinal)).ToList();
        var told = said.Select(finding => Block.Words($"{finding.Text} ({finding.Source}.)", flow.Width, after: 2)).ToList();
        told.Add(Block.Words("Between readings the face is taken as straight; of what lies beyond them, nearer to walls, nothing is known. A lump smaller than they are apart is not seen. Lay the straightedge there before tile is set.", flow.Width, after: 3));
        // A heading does not stand alone at the foot of a sheet.
        flow.Add(Block.Together(Block.Heading("What brings it in, and what the readings cannot tell", flow.Width), told[0]));
        foreach (var words in told.Skip(1)) flow.Add(words);
        if (flat.ToLimit is { Grind: var grind } && grind > Length.Zero && book.Plan.Findings.FirstOrDefault(finding => finding.Rule is "caution-dust") is { } dust)
        {
            flow.Add(Block.Together(
                Block.Words("▲ Caution, dust", flow.Width, bold: true),
                Block.Words($"Grinding concrete, mortar or filler sets silica dust free, which harms the lungs for good. Draw it off at the grinder as its maker says, wear the mask that the local rules ask for, do not sweep dry. Limit: {dust.Limit} ({dust.Source}). Old floors and their glue may hold asbestos: nothing is ground before it is tested.", flow.Width, after: 4)));
        }
    }

    private static void Readings(SheetBook book, FlatFace flat, string name)
    {
        var figures = book.Figures;
        var flow = book.Flow(name, $"The readings of {flat.Face}, each with how far it is off the plane that fits best.", 3);
        var isFilled = flat.Fills.Count > 0;
        var (head, rows) = Table.Of(
            [new("from left", 14, Right: true), new("up", 12, Right: true), new("read", 12, Right: true), new("off", 12, Right: true, Bold: true), .. isFilled ? [new Column("fill", 11, Right: true)] : Array.Empty<Column>()],
            flat.Spots.Select((spot, i) => (IReadOnlyList<string>)[figures.Near(spot.At.X), figures.Near(spot.At.Y), figures.Signed(spot.Out), figures.Signed(spot.Off), .. isFilled ? [figures.Fine(flat.Fills[i])] : Array.Empty<string>()]), flow.Width);
        if (isFilled) flow.Add(Block.Words("Fill: so much at each place, and no straightedge is out.", flow.Width, ink: Ink.Quiet));
        flow.Add(Block.Together(Block.Heading("Readings", flow.Width), head), rows, Block.Together(Block.Heading("Readings, continued", flow.Width), head));
    }
}
