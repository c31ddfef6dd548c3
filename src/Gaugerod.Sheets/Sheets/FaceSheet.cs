using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>One sheet for one face: its pieces numbered, its dimensions, its lines, a key, and bars to check the print by.</summary>
internal static class FaceSheet
{
    private const double Top = 11.5, Dims = 20, Key = 26.5;

    public static void Add(SheetBook book, WallPlan wall)
    {
        var box = wall.Bounds;
        var (tall, wide) = (ScaleOn(book.ContentOf(landscape: false), wall), ScaleOn(book.ContentOf(landscape: true), wall));
        var page = book.Page("Face: " + wall.Name, landscape: wide < tall);
        page.Scale = Math.Min(tall, wide);
        page.Description = Describe(wall, page.Scale.Value, book.Figures) + TrimPicture.Describe(wall.Trims);
        var content = page.Content;
        var (left, right) = Beside(wall);
        var (width, height) = (FaceMap.OnPaper(box.Width, page.Scale.Value), FaceMap.OnPaper(box.Height, page.Scale.Value));
        var corner = new Spot(
            content.X + left + ((content.Width - left - right - width) / 2),
            content.Y + Top + ((content.Height - Top - Dims - Key - height) / 2));
        Picture(page.Pen, book, wall, Placed(box, page.Scale.Value, corner), content with { Height = content.Height - Key });
        Foot(page.Pen, wall, page.Scale.Value, content, book.Figures);
    }

    /// <summary>The wall's picture alone, as large as on its sheet.</summary>
    public static Drawing Alone(Plan plan, WallPlan wall)
    {
        var book = new SheetBook(plan);
        var figures = book.Figures;
        var box = wall.Bounds;
        var (scale, (left, right)) = (ScaleOf(book, wall), Beside(wall));
        var (width, height) = (FaceMap.OnPaper(box.Width, scale) + left + right, FaceMap.OnPaper(box.Height, scale) + Top + Dims + Key);
        width = Math.Max(width, 192);
        var pen = new Pen();
        var across = FaceMap.OnPaper(box.Width, scale);
        var room = new Frame(2, 0, width - 4, height - Key);
        Picture(pen, book, wall, Placed(box, scale, new(left + ((width - left - right - across) / 2), Top)), room);
        Foot(pen, wall, scale, new(2, 0, width - 4, height - 2), figures);
        return new(width, height, $"{plan.Job.Name}: {wall.Name}, 1:{Figures.Number(scale)}", Describe(wall, scale, figures) + TrimPicture.Describe(wall.Trims), pen.Marks);
    }

    /// <summary>The zones of a wall that have a sheet of their own, being so much larger there.</summary>
    public static IReadOnlyList<WallPlan> Nearer(SheetBook book, WallPlan wall) => [.. wall.Zones(book.Plan.Job).Where(zone => 3 * ScaleOf(book, zone) <= 2 * ScaleOf(book, wall))];

    private static int ScaleOf(SheetBook book, WallPlan wall) => Math.Min(ScaleOn(book.ContentOf(landscape: false), wall), ScaleOn(book.ContentOf(landscape: true), wall));

    private static int ScaleOn(Frame content, WallPlan wall)
    {
        var (left, right) = Beside(wall);
        return FaceMap.ScaleFor(wall.Bounds.Width, wall.Bounds.Height, content.Width - left - right, content.Height - Top - Dims - Key);
    }

    /// <summary>The room kept for figures to the left and to the right of the picture.</summary>
    private static (double Left, double Right) Beside(WallPlan wall) => wall.Parts.Count > 1 ? (WholeWallSheet.Beside, WholeWallSheet.Beside) : (FaceDimensions.Left, FaceDimensions.Right);

    private static FaceMap Placed(Box box, int scale, Spot upperLeft) =>
        new(scale, new(upperLeft.X - FaceMap.OnPaper(box.Left, scale), upperLeft.Y + FaceMap.OnPaper(box.Top, scale)));

    private static void Picture(Pen pen, SheetBook book, WallPlan wall, FaceMap map, Frame room)
    {
        var figures = book.Figures;
        if (wall.Parts.Count > 1)
        {
            WholeWallSheet.Draw(pen, book.Plan, wall, map, room, figures, Nearer(book, wall).Select(zone => zone.Name).ToHashSet(StringComparer.Ordinal));
            return;
        }

        var (run, face) = (wall.Parts[0].Run, wall.Parts[0].Face);
        var picture = new FacePicture(face, map, pen) { Around = wall.Bounds };
        var trims = new TrimPicture(map, pen, wall.Trims);
        FacePicture.DrawTogether([picture], [], trims);
        picture.Lines(run.Lines, 2.5);
        picture.Lines(run.Turned);
        var numbers = new PieceNumbers(picture, pen, room, figures);
        foreach (var line in run.Lines.Where(l => string.Equals(l.Face, face.Face.Name, StringComparison.Ordinal)))
        {
            var (from, to) = picture.Ends(line, 2.5);
            numbers.KeepLine(from, to);
        }

        new FaceDimensions(picture, pen, numbers, figures).Draw(run);
        BuiltThings.Dimension(pen, picture, book.Plan, numbers, figures);
        foreach (var opening in face.Face.Openings) numbers.Keep(Pen.BoxAround(Frame.Around(map.Ring(opening.Ring)).Middle, opening.Name, 8, bold: false, upright: false));
        trims.Number(numbers);
        numbers.Draw(face.Pieces);
    }

    private static void Foot(Pen pen, WallPlan wall, int scale, Frame content, Figures figures)
    {
        var pieces = wall.Parts.SelectMany(part => part.Face.Pieces).ToList();
        var y = content.Bottom - 15;
        var x = content.X;
        pen.Paragraph(x, content.Bottom - 26.3, content.Width,
            "Seen from inside the room. Up: from the foot of the left corner. From the left: from the left corner or end of the bare wall."
            + (wall.Parts.Count > 1 ? " " + WholeWallSheet.Words(wall)
                : pieces.Exists(p => p.Frame is not null) ? ""
                : " Dimensions are of the longest row, named beside them, and of the longest stack of tiles; sizes on pieces are what to cut.") + Grain(pieces), 7.5, ink: Ink.Quiet);
        foreach (var kind in pieces.Select(p => p.Kind).Distinct().Order())
        {
            pen.Area(new Frame(x, y - 3.2, 7, 4), FacePicture.FillOf(kind), kind == PieceKind.Full ? Stroke.TileEdge : Stroke.CutEdge);
            pen.Text(x + 8.2, y, PieceWords.Of(kind), 8);
            x += 8.2 + Lettering.Width(PieceWords.Of(kind), 8) + 3.6;
        }

        if (wall.Trims.Count > 0 || wall.Parts.Any(part => part.Face.Face.Edges.Any(e => e.Trim > Length.Zero))) x = TrimKey(pen, x, y, wall.Trims);

        if (wall.Runs.Count == 1)
        {
            pen.Line(x, y - 1.2, x + 7, y - 1.2, Stroke.SnapLine);
            pen.Area(new[] { new Spot(x + 2.5, y - 1.2), new(x, y - 2.4), new(x, y) }.ToSequence(), Fill.Ink);
            pen.Text(x + 8.2, y, "line to snap", 8);
        }

        Measures.CheckBar(pen, content.X, content.Bottom - 8, 100, "100 mm on paper");
        Measures.CheckBar(pen, content.X, content.Bottom - 2.6, 101.6, "4 in on paper");
        ScaleBar(pen, content, scale, figures);
    }

    /// <summary>Trim in the key: by the piece where its pieces are planned. Gives where the key goes on.</summary>
    private static double TrimKey(Pen pen, double x, double y, IReadOnlyList<TrimPart> parts)
    {
        var keys = new List<(string Words, Fill Fill, Stroke Edge)>();
        if (parts.Count == 0 || parts.Any(part => part.Piece is not null && !part.IsCut)) keys.Add(("trim", Fill.Fixture, Stroke.FixtureEdge));
        if (parts.Any(part => part.Piece is not null && part.IsCut)) keys.Add(("trim, cut", Fill.Straight, Stroke.CutEdge));
        if (parts.FirstOrDefault(part => part.Corner is not null) is { } corner) keys.Add(("corner piece or stop", TrimPicture.FillOf(corner), TrimPicture.EdgeOf(corner)));
        if (parts.FirstOrDefault(part => part.Return is not null) is { } turned) keys.Add(("return, folded out", TrimPicture.FillOf(turned), TrimPicture.EdgeOf(turned)));
        foreach (var (words, fill, edge) in keys)
        {
            pen.Area(new Frame(x, y - 3.2, 7, 4), fill, edge);
            pen.Text(x + 8.2, y, words, 8);
            x += 8.2 + Lettering.Width(words, 8) + 3.6;
        }

        return x;
    }

    private static string Grain(List<Piece> pieces)
    {
        var ways = pieces.Select(p => p.GrainOnFace).OfType<Angle>().OrderBy(way => way.Thousandths).Select(GrainWords.Of).Distinct(StringComparer.Ordinal).ToList();
        return ways.Count == 0 ? "" : $" Short arrows: the grain, {NameList.Of(ways)}.";
    }

    /// <summary>Two parts, each of the roundest length that keeps the bar short.</summary>
    private static void ScaleBar(Pen pen, Frame content, int scale, Figures figures)
    {
        int[] ladder = figures.Tape.Unit == LengthUnit.Inch ? [96, 48, 36, 24, 12, 6, 3, 1] : [5000, 2000, 1000, 500, 250, 200, 100, 50, 20];
        var part = ladder.FirstOrDefault(p => FaceMap.OnPaper(Part(p), scale) <= 22, ladder[^1]);
        var size = FaceMap.OnPaper(Part(part), scale);
        var (x, y) = (content.Right - (2 * size) - 6, content.Bottom - 3);
        Measures.ScaleBar(pen, x, y, size, 2, i => Figures.Number(i * part) + (i == 2 ? " " + figures.Unit : ""));
        pen.Text(content.Right, content.Bottom - 11, $"Scale 1:{Figures.Number(scale)}", 10, bold: true, Anchor.End);

        Length Part(int parts) => figures.Tape.Unit == LengthUnit.Inch ? Length.FromInches(parts) : Length.FromMillimetres(parts);
    }

    private static string Describe(WallPlan wall, int scale, Figures figures)
    {
        if (wall.Parts.Count > 1) return WholeWallSheet.Describe(wall, scale);
        var (run, face) = (wall.Parts[0].Run, wall.Parts[0].Face);
        var kinds = face.Pieces.GroupBy(p => p.Kind).OrderBy(g => g.Key).Select(g => $"{Figures.Number(g.Count())} {PieceWords.Of(g.Key)}");
        var lines = run.Lines.Where(l => string.Equals(l.Face, face.Face.Name, StringComparison.Ordinal))
            .Select(l => $"{(l.Axis == Engine.Lines.Axis.Level ? "level line" : "plumb line")} at {figures.NearWithUnit(l.At)}");
        return $"Face {face.Face.Name} at 1 to {Figures.Number(scale)}. Pieces: {string.Join(", ", kinds)}. Lines to snap: {string.Join(", ", lines)}.";
    }
}
