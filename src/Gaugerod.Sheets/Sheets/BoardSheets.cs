using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Boards: each face to scale with its studs, pieces and screws, what to cut each piece to, and out of which sheet.</summary>
internal static class BoardSheets
{
    private const int MostCorners = 12;

    public static void Add(SheetBook book)
    {
        foreach (var face in book.Plan.Boards.Faces) Add(book, face);
        foreach (var stock in book.Plan.Boards.Stocks) BoardCuts.Add(book, stock, book.Plan.Job.Boards.First(board => string.Equals(board.Name, stock.Product, StringComparison.Ordinal)));
    }

    private static void Add(SheetBook book, BoardedFace face)
    {
        var (figures, name, bounds) = (book.Figures, "Boards: " + face.Face, face.Outline.Bounds);
        var (tall, wide) = (ScaleOn(book.ContentOf(landscape: false), bounds), ScaleOn(book.ContentOf(landscape: true), bounds));
        var page = book.Page(name, landscape: wide < tall);
        page.Scale = Math.Min(tall, wide);
        var content = page.Content;
        var picture = new BoardPicture(face, figures);
        var top = content.Y + page.Pen.Paragraph(content.X, content.Y, content.Width, Words(face, figures), 9.5) + 4;
        var width = FaceMap.OnPaper(bounds.Width, page.Scale.Value) + BoardPicture.Left;
        var corner = new Spot(content.X + BoardPicture.Left + Math.Max(0, (content.Width - width) / 2) - FaceMap.OnPaper(bounds.Left, page.Scale.Value), top + FaceMap.OnPaper(bounds.Top, page.Scale.Value));
        picture.Draw(page.Pen, new(page.Scale.Value, corner));
        page.Description = $"The boards of {face.Face} at 1 to {Figures.Number(page.Scale.Value)}: {Figures.Count(face.Pieces.Count, "piece", "pieces")} in {Figures.Count(face.Pieces.Max(piece => piece.Row), "row", "rows")}, {Figures.Count(face.Screws, "screw", "screws")}. What each piece is cut to stands in the table.";
        var below = top + FaceMap.OnPaper(bounds.Height, page.Scale.Value) + BoardPicture.Under;
        Tables(book, face, book.FlowBelow(page, below, $"What the pieces of board on {face.Face} are cut to."), picture.Bare);
    }

    private static int ScaleOn(Frame content, Box bounds) => FaceMap.ScaleFor(bounds.Width, bounds.Height, content.Width - BoardPicture.Left - 2, (0.62 * content.Height) - BoardPicture.Under - 16, from: 8);

    private static string Words(BoardedFace face, Figures figures)
    {
        var (board, studs) = (face.Product, face.Request.Studs);
        var behind = studs is null ? "" : $" Dashed: the middles of {(studs.RunLevel ? "joists" : "studs")}, with how far they are from the face's {(studs.RunLevel ? "y" : "x")} = 0; every seam across the rows stands on one.";
        var screws = studs is null
            ? $"screws on a grid, no more than {figures.NearWithUnit(board.ScrewsApart)} apart, {figures.NearWithUnit(board.Inset)} from the edges"
            : $"screws, no more than {figures.NearWithUnit(board.ScrewsApart)} apart along every stud and every side that stands on one, {figures.NearWithUnit(board.Inset)} from the edges. Plates at foot and head, and noggings, have none here: screw there as the board's maker asks";
        return $"{board.Name}, {figures.Near(board.Width)} × {figures.NearWithUnit(board.Length)}. Seen from inside the room.{behind} Dots: {screws}. Gap between sheets {figures.NearWithUnit(board.Gap)}, over floor, bath or tray {figures.NearWithUnit(face.Request.Foot)}, at corners and ceiling {figures.NearWithUnit(face.Request.Edges)}. Sizes on pieces are what to cut: across × up, as they lie on the face. Start with row 1{(studs is { RunLevel: true } ? " at the left" : " at the foot")}.";
    }

    private static void Tables(SheetBook book, BoardedFace face, Flow flow, int bare)
    {
        var figures = book.Figures;
        var (head, rows) = Table.Of(
            [new("Piece", 9, Bold: true), new("row", 7, Right: true), new("across", 13, Right: true), new("up", 13, Right: true), new("sheet", 9, Right: true), new("screws", 10, Right: true), new("to cut out, from its lower left corner", 75)],
            face.Pieces.Select(piece => (IReadOnlyList<string>)[piece.Id, Figures.Number(piece.Row), figures.Cut(piece.Shape.Outer.Bounds.Width), figures.Cut(piece.Shape.Outer.Bounds.Height), Figures.Number(piece.Sheet), Figures.Number(piece.Screws.Count), Cut(piece, face, figures)]), flow.Width);
        flow.Add(Block.Together(Block.Heading("Pieces", flow.Width), head), rows, Block.Together(Block.Heading("Pieces, continued", flow.Width), head));
        flow.Add(Block.Gap(3));
        foreach (var niche in face.Niches) Niche(flow, niche, face.Product, figures);
        var corners = face.Corners > Length.Zero ? $" Inside corners, taped too: {Long(face.Corners, figures)}; one that two boarded faces share is taped once." : "";
        flow.Add(Block.Words($"{Figures.Count(face.Screws, "screw", "screws")} in all. Seams to tape: {Long(face.SeamLength, figures)}.{(face.Niches.Count > 0 ? $" Joints of niches, taped too: {Long(face.NicheSeams, figures)}." : "")}{corners}{(bare > 0 ? " Pieces too small for their number in the picture have it in the table only." : "")} Mind the caution on the sheet \"Sheets of board\".", flow.Width, after: 2));
        foreach (var found in book.Plan.Findings.Where(finding => finding.Rule is "board" && finding.Level > Engine.FindingLevel.Note && string.Equals(finding.Where, face.Face, StringComparison.Ordinal)))
        {
            flow.Add(Block.Words($"▲ {found.Text} Limit: {found.Limit}; here {found.Value} ({found.Source}).", flow.Width, after: 2));
        }
    }

    private static void Niche(Flow flow, NicheBoards niche, BoardProduct board, Figures figures)
    {
        var (head, rows) = Table.Of(
            [new("Piece", 9, Bold: true), new("where", 60), new("long", 13, Right: true), new("wide", 13, Right: true), new("sheet", 9, Right: true), new("screws", 10, Right: true)],
            niche.Pieces.Select(piece => (IReadOnlyList<string>)[piece.Id, Where(piece.Part), figures.Cut(piece.Along), figures.Cut(piece.Across), Figures.Number(piece.Sheet), Figures.Number(piece.Screws)]), flow.Width);
        var words = $"{figures.Near(niche.Width)} wide, {figures.Near(niche.Height)} high, {figures.NearWithUnit(niche.Depth)} deep, board to board. The wall's board ends at the opening and covers the edges of the sides; the frame behind is larger by the board's thickness, {figures.NearWithUnit(board.Thickness)}, all round. The bottom falls to the front, so set it so before it is screwed.";
        var name = $"Lining of {niche.Opening}";
        flow.Add(Block.Together(Block.Heading(name, flow.Width), Block.Words(words, flow.Width, 9, after: 1.5), head), rows, Block.Together(Block.Heading(name + ", continued", flow.Width), head), whole: true);
        flow.Add(Block.Gap(3));
    }

    private static string Where(NichePart part) => part switch
    {
        NichePart.Back => "back, behind the sides",
        NichePart.Bottom => "bottom, under the ends of left and right",
        NichePart.Top => "top, over the ends of left and right",
        NichePart.Left => "left, between bottom and top",
        _ => "right, between bottom and top",
    };

    /// <summary>What is cut out of a piece: its corners where it is no rectangle, openings in it, pipes through it.</summary>
    private static string Cut(BoardPiece piece, BoardedFace face, Figures figures)
    {
        var (box, words) = (piece.Shape.Outer.Bounds, new List<string>());
        if (piece.Shape.Outer.Points.Count != 4 || Ring.Of(box).DoubledArea != piece.Shape.Outer.DoubledArea)
        {
            words.Add(piece.Shape.Outer.Points.Count > MostCorners ? "round: marked on site" : "corners " + string.Join(' ', FromLowest(piece.Shape.Outer, box).Select(at => Said(at, figures.Cut))));
        }

        foreach (var hole in piece.Shape.Inner)
        {
            var inner = hole.Bounds;
            words.Add($"{figures.Near(inner.Width)} × {figures.Near(inner.Height)} at {Said(new(inner.Left, inner.Bottom), figures.Near)}");
        }

        foreach (var hole in face.Holes.Where(hole => RingChecks.Locate(piece.Shape.Outer, hole.Centre) != Whereabouts.Outside))
        {
            words.Add($"{hole.Name}, {figures.Near(hole.Diameter)} round, at {Said(hole.Centre, figures.Near)}");
        }

        return words.Count > 0 ? string.Join("; ", words) : piece.IsWhole ? "a whole sheet" : "";

        // A corner is cut to, as a size is: the outermost says the same figure as the size does.
        string Said(Point at, Func<Length, string> figure) => $"[{figure(at.X - box.Left)},\u00A0{figure(at.Y - box.Bottom)}]";
    }

    /// <summary>The corners from the one nearest to the lower left of the box on.</summary>
    private static IEnumerable<Point> FromLowest(Ring ring, Box box)
    {
        var first = Enumerable.Range(0, ring.Points.Count).MinBy(i => (ring.Points[i].X - box.Left).Steps + (ring.Points[i].Y - box.Bottom).Steps);
        return Enumerable.Range(0, ring.Points.Count).Select(i => ring.Points[(first + i) % ring.Points.Count]);
    }

    private static string Long(Length length, Figures figures) => figures.Tape.Unit == LengthUnit.Inch ? LengthText.FeetNearest(length, figures.Tape) : figures.NearWithUnit(length);
}
