using Gaugerod.Engine.Trims;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>Trims on the sheets of an invented wall.</summary>
public sealed class TrimSheetTests
{
    private static readonly Engine.Planning.Plan s_plan = Samples.TrimmedWall;
    private static readonly IReadOnlyList<Drawing> s_pages = JobSheets.Pages(s_plan);

    [Fact]
    public void Every_piece_of_trim_stands_once_beside_its_box_to_tick_on_its_trim_s_sheet()
    {
        Assert.Equal(["round", "frame", "pencil", "bar", "eased"], s_plan.Trims.Lines.Select(line => line.Product).Distinct().OrderBy(name => s_plan.Job.Trims.ToList().FindIndex(trim => trim.Name == name)));
        foreach (var trim in s_plan.Job.Trims)
        {
            var sheets = Sheets(trim.Name).ToList();
            var boxes = sheets.Select(page => page.Marks.OfType<Mark.Area>().Where(area => area.Edge == Stroke.TickBox).Select(area => Frame.Around(area.Rings[0])).ToList()).ToList();
            var ticked = sheets.SelectMany((page, i) => SheetLook.Texts(page).Where(text => boxes[i].Exists(box => Beside(box, SheetLook.Box(text))))).Select(text => text.Words).ToList();
            var lines = s_plan.Trims.Lines.Where(line => line.Product == trim.Name).ToList();
            var pieces = lines.SelectMany(line => line.Pieces).Select(piece => piece.Id).Concat(lines.SelectMany(line => line.CornerPieces).Select(piece => piece.Id).Distinct());
            Assert.Equal(pieces.Order(StringComparer.Ordinal), ticked.Order(StringComparer.Ordinal));
        }

        static bool Beside(Frame box, Frame words) => words.X > box.Right && words.X < box.Right + 3 && words.Middle.Y > box.Y && words.Middle.Y < box.Bottom;
    }

    [Fact]
    public void A_piece_to_cut_is_said_with_its_length_down_to_the_mark_and_both_its_ends()
    {
        foreach (var line in Lines())
        {
            var words = string.Join('\n', Sheets(line.Product).Select(SheetLook.Words));
            foreach (var piece in line.Pieces.Where(piece => piece.Begin != PieceEnd.Factory || piece.End != PieceEnd.Factory))
            {
                Assert.Contains($"\n{LengthText.DownBare(piece.Length, s_plan.Job.Tape)}\n{TrimWords.Ends(line, piece)}", words, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>With the finished side up and the field below, the top edge of a wall runs from right to left: its first piece is the rightmost.</summary>
    [Fact]
    public void Mitres_are_told_by_the_hand_at_which_they_stand_on_the_wall()
    {
        var top = Lines().Single(line => line.Edge == "top");
        Assert.True(top.Pieces[^1].Outline.Bounds.Left < top.Pieces[0].Outline.Bounds.Left);
        Assert.Equal("left mitre, right factory", TrimWords.Ends(top, top.Pieces[^1]));
        Assert.Equal("left factory, right mitre", TrimWords.Ends(Lines().Single(line => line.Edge == "left"), Lines().Single(line => line.Edge == "left").Pieces[0]));
    }

    [Fact]
    public void The_way_taken_stands_first_with_what_the_others_cost()
    {
        foreach (var line in Lines())
        {
            var words = Sheets(line.Product).SelectMany(SheetLook.Texts).Select(text => text.Words).ToList();
            Assert.All(line.Ways.Skip(1), way => Assert.Contains(TrimWords.Of(way.Joints), words));
            Assert.Contains(TrimWords.Of(line.Ways[0].Joints) + ": taken", words);
        }
    }

    /// <summary>The outline on the face, to the scale that the sheet states, is where the piece is drawn.</summary>
    [Fact]
    public void Every_piece_of_trim_is_drawn_where_it_sits()
    {
        var sheet = Assert.Single(s_pages, page => page.Title.Contains(": Face: wall,", StringComparison.Ordinal));
        var areas = sheet.Marks.OfType<Mark.Area>().ToList();
        var wall = Frame.Around(areas.First(area => area.Fill == Fill.Wall).Rings[0]);
        var scale = (double)s_plan.Runs[0].Faces[0].Face.Outline.Bounds.Width.Millimetres / wall.Width;
        foreach (var piece in Lines().SelectMany(line => line.Pieces))
        {
            var ring = Assert.Single(areas, area => area.Name == piece.Id).Rings[0];
            var there = piece.Outline.Points.Select(point => (X: wall.X + ((double)point.X.Millimetres / scale), Y: wall.Bottom - ((double)point.Y.Millimetres / scale)));
            Assert.All(ring.Zip(there), pair => Assert.Equal(0, Math.Abs(pair.First.X - pair.Second.X) + Math.Abs(pair.First.Y - pair.Second.Y), tolerance: 0.000001));
        }
    }

    /// <summary>Four round the niche: the frame of 15 mm has pieces that reach 20.</summary>
    [Fact]
    public void Every_corner_piece_is_drawn_where_it_sits_listed_and_bought()
    {
        var corners = Lines().SelectMany(line => line.CornerPieces).DistinctBy(corner => corner.Id).ToList();
        Assert.Equal(4, corners.Count);
        foreach (var title in (string[])[": Face: wall,", ": First"])
        {
            foreach (var sheet in s_pages.Where(page => page.Title.Contains(title, StringComparison.Ordinal)))
            {
                Assert.All(corners, corner => Assert.Single(sheet.Marks.OfType<Mark.Area>(), area => area.Name == corner.Id && area.Fill == Fill.Paper));
            }
        }

        var words = string.Join('\n', Sheets("frame").Select(SheetLook.Words));
        Assert.All(corners, corner => Assert.Contains(corner.Id, words, StringComparison.Ordinal));
        Assert.Contains("inside corner piece, reaches 20 mm", words, StringComparison.Ordinal);
        Assert.Equal(4, s_plan.Order.Single(line => line.Item == "frame, inside corner").Need);
    }

    [Fact]
    public void What_is_said_of_lots_is_said_of_tiles_and_not_of_trims()
    {
        var words = s_pages.SelectMany(SheetLook.Texts).Select(text => text.Words).ToList();
        Assert.Equal(2, words.Count(word => word.Contains("All of one lot and one caliber", StringComparison.Ordinal)));
        Assert.Contains(words, word => word.StartsWith("frame, inside corner: 4 pieces", StringComparison.Ordinal));
    }

    [Fact]
    public void An_edge_with_its_pieces_drawn_is_not_drawn_again_as_a_bare_strip()
    {
        var sheet = s_pages.Single(page => page.Title.Contains(": Face: wall,", StringComparison.Ordinal));
        Assert.DoesNotContain(sheet.Marks.OfType<Mark.Area>(), area => area.Name?.EndsWith(" trim", StringComparison.Ordinal) == true);
    }

    private static IEnumerable<PlannedTrim> Lines() => s_plan.Trims.Lines.Where(line => line.Product != "eased");

    private static IEnumerable<Drawing> Sheets(string trim) => s_pages.Where(page => page.Title.Contains($": Trims: {trim}, ", StringComparison.Ordinal));
}
