using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>What the sheets say of grain and boxes: what a setter reads before the first box is opened (common practice, no source).</summary>
public sealed class DirectionSheetTests
{
    private static readonly Plan s_blended = Planned(product => product with { Grain = Grain.AlongWidth, Blend = 3 });
    private static readonly Sequence<Drawing> s_pages = JobSheets.Pages(s_blended);

    [Fact]
    public void The_sheet_of_boxes_asks_for_lot_and_caliber_before_any_is_opened_and_lists_every_course()
    {
        var words = string.Join('\n', s_pages.Where(page => page.Title.Contains(": Boxes: wall tile, sheet", StringComparison.Ordinal)).Select(SheetLook.Words)).Replace('\n', ' ');
        Assert.Contains("read lot and caliber on every box", words, StringComparison.Ordinal);
        Assert.Contains("step back and look before you set", words, StringComparison.Ordinal);
        var boxes = Assert.Single(s_blended.Boxes);
        Assert.Contains("Open together: 1 to 3; then 4 to 6; then 7 to 9.", words, StringComparison.Ordinal);
        Assert.Contains($"{boxes.Left} tiles are left over", words, StringComparison.Ordinal);
        Assert.All(boxes.Courses, course => Assert.Contains(
            string.Join(" | ", course.Stretches.Select(stretch => string.Join(' ', stretch.Select(piece => piece.IsOffcut ? $"({piece.Box})" : $"{piece.Box}")))), words, StringComparison.Ordinal));
    }

    /// <summary>Source: the setting order that the first sheet says, north first.</summary>
    [Fact]
    public void The_first_boxes_are_opened_for_the_wall_that_is_set_first() =>
        Assert.Equal(["north", "west", "east"], s_blended.Boxes[0].Courses.Select(course => course.Face).Distinct());

    [Fact]
    public void Every_whole_tile_on_a_wall_has_an_arrow_with_two_heads_and_so_has_every_sketch()
    {
        var face = s_blended.Runs[0].Faces[0];
        var (with, without) = (FaceSheet.Alone(s_blended, WallPlan.All(s_blended)[0]), FaceSheet.Alone(Samples.GuestShower, WallPlan.All(Samples.GuestShower)[0]));
        var whole = face.Pieces.Count(piece => piece.Kind == Engine.Pieces.PieceKind.Full);
        Assert.Equal(2 * whole, Heads(with) - Heads(without));
        Assert.Contains("Short arrows: the grain, level.", SheetLook.Words(with).Replace('\n', ' '), StringComparison.Ordinal);
        var hand = s_blended.Cutting[0].ByHand[0];
        Assert.Equal(2, Heads(new PiecePictures(s_blended).Of(hand)) - Heads(new PiecePictures(Samples.GuestShower).Of(hand)));
    }

    [Fact]
    public void A_job_that_asks_for_neither_has_the_same_sheets_as_before_and_none_of_boxes()
    {
        Assert.DoesNotContain(JobSheets.Pages(Samples.GuestShower), page => page.Title.Contains("Boxes", StringComparison.Ordinal));
        Assert.DoesNotContain(JobSheets.Pages(Samples.GuestShower).Select(SheetLook.Words), words => words.Contains("grain", StringComparison.Ordinal));
    }

    private static int Heads(Drawing drawing) => drawing.Marks.OfType<Mark.Area>().Count(mark => mark is { Fill: Fill.Ink, Rings: [{ Count: 3 }] });

    private static Plan Planned(Func<Product, Product> changed)
    {
        var job = Samples.GuestShower.Job;
        return Planner.Plan(job with { Products = job.Products.Select(changed).ToSequence() });
    }
}
