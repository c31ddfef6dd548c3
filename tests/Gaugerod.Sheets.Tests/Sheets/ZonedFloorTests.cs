using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>A floor with a frame, a field and a rug (samples/porch-floor.json, invented): what the setter has in the hand.</summary>
public sealed class ZonedFloorTests
{
    private static readonly Plan Porch = Samples.PorchFloor;
    private static readonly Figures Millimetres = new(Tape.Millimetres);

    [Fact]
    public void A_border_is_one_run_of_the_plan_as_it_is_of_the_job()
    {
        Assert.Equal(Porch.Job.Runs.Select(run => run.Name), Porch.Runs.Select(run => run.Request.Name));
        Assert.Equal([true, false, false], Porch.Runs.Select(run => run.IsBorder));
        var border = Porch.Runs[0];
        Assert.Equal(["frame south", "frame east", "frame step", "frame jog", "frame north", "frame west"], border.Faces.Select(strip => strip.Face.Name));
        Assert.Equal(border.Strips.Sum(strip => strip.Best.Score.Tiles), border.Best.Score.Tiles);
        Assert.Equal(border.Strips.Min(strip => strip.Best.Score.SmallestCut), border.Best.Score.SmallestCut);
        Assert.All(border.Strips, strip => Assert.True(strip.Proof.Bound >= border.Proof.Bound));
    }

    [Fact]
    public void All_that_is_laid_on_a_floor_is_on_one_sheet_and_what_is_small_there_has_another()
    {
        var pages = JobSheets.Pages(Porch).ToList();
        var faces = pages.Where(page => page.Title.Contains("Face: ", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, faces.Count);
        Assert.All(Porch.Runs.SelectMany(run => run.Faces).SelectMany(face => face.Pieces), piece =>
            Assert.Contains(faces[0].Marks.OfType<Mark.Area>(), area => string.Equals(area.Name, piece.Id, StringComparison.Ordinal)));
        Assert.Contains("Face: rug", faces[1].Title, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_strip_says_on_the_first_sheet_where_its_first_tile_stands()
    {
        var words = SheetLook.Words(JobSheets.Pages(Porch)[0]);
        Assert.All(Porch.Runs[0].Strips, strip =>
        {
            Assert.Contains(strip.Faces[0].Face.Name, words, StringComparison.Ordinal);
            Assert.Contains($"{Millimetres.Near(strip.Lines[0].At)} up", words, StringComparison.Ordinal);
        });
    }

    /// <summary>The frame is 100 mm and half its joint wide: its inner side is where a line can be snapped, its outer side a joint off the wall is not.</summary>
    [Fact]
    public void A_strips_line_along_it_lies_at_its_inner_side()
    {
        Assert.All(Porch.Runs[0].Strips, strip =>
        {
            var inner = strip.Faces[0].Face.Edges[2];
            if (inner.From.Y == inner.To.Y) Assert.Equal(inner.From.Y, strip.Lines.Single(line => line.Axis == Engine.Lines.Axis.Level).At);
            else if (inner.From.X == inner.To.X) Assert.Equal(inner.From.X, strip.Lines.Single(line => line.Axis == Engine.Lines.Axis.Plumb).At);
        });
    }

    /// <summary>A wall of Samples with a niche that may be moved: its four measures stand beside it on its face's sheet, and in bold on the first.</summary>
    [Fact]
    public void A_niche_that_may_be_moved_is_dimensioned_where_it_is_to_be_built()
    {
        var plan = Samples.Plans["banded wall"];
        var thing = Assert.Single(plan.ToBuild);
        var box = plan.Job.Faces[0].Openings[0].Ring.Bounds;
        var pages = JobSheets.Pages(plan).ToList();
        Assert.Contains(thing.Words, SheetLook.Words(pages[0]).Replace('\n', ' '), StringComparison.Ordinal);
        var face = pages.First(page => page.Title.Contains("Face: ", StringComparison.Ordinal)).Marks.OfType<Mark.Text>().Select(text => text.Words).ToList();
        Assert.All([box.Left, box.Bottom, box.Width, box.Height], length => Assert.Contains(Millimetres.Near(length), face));
    }

    /// <summary>The middle of the field is under the rug: no tile of it can be laid out from there.</summary>
    [Fact]
    public void The_first_tile_of_a_field_round_a_rug_lies_whole_on_the_field()
    {
        var field = Porch.Runs[1];
        var first = Assert.Single(FirstTile.All(field, Millimetres));
        Assert.Equal(PieceKind.Full, first.Piece!.Kind);
        var corner = new Point(field.Lines[1].At, field.Lines[0].At);
        Assert.Contains(first.Piece.Outline.Points, point => (point.X - corner.X).Abs() <= Length.FromSteps(2) && (point.Y - corner.Y).Abs() <= Length.FromSteps(2));
    }
}
