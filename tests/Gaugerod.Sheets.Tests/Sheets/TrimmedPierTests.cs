using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>An invented pier: a zone above a band of trim, a hatch whose head trim returns at both ends, narrow cuts, sizes that share a fence.</summary>
public sealed class TrimmedPierTests
{
    private static readonly Plan s_plan = Planner.Plan(Samples.Read("""
        { "format": "gaugerod-job/1", "name": "Trimmed pier", "note": "Invented.", "units": "mm", "edgeJoint": 3, "paper": "a4",
          "products": [{ "name": "white", "width": 197, "height": 97, "thickness": 8, "bondCoat": 3 }, { "name": "green", "width": 97, "height": 97, "thickness": 8, "bondCoat": 3 }],
          "trims": [{ "name": "round", "kind": "bullnose", "length": 197, "width": 30, "joint": 3, "least": 30, "kerf": 2, "thickness": 8 }, { "name": "pencil", "kind": "liner", "length": 200, "width": 20, "joint": 3 }],
          "faces": [{ "name": "pier", "outline": [[0, 0], [700, 0], [700, 2400], [0, 2400]],
            "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" },
              { "name": "top", "kind": "free", "trim": { "of": "round", "joints": "staggered", "left": { "return": 60 } } }, { "name": "left", "kind": "inside corner" }],
            "openings": [{ "name": "hatch", "left": 200, "bottom": 2000, "width": 280, "height": 200, "edges": { "top": { "kind": "free", "trim": { "of": "round", "joints": "centred", "left": { "return": 40 }, "right": { "return": 40 } } } } }],
            "zones": [{ "kind": "band", "name": "line", "from": 1700, "trim": { "of": "pencil", "joints": "staggered" } }, { "kind": "band", "name": "upper", "from": 1726 }] }],
          "runs": [{ "name": "field", "product": "white", "faces": ["pier"], "bond": { "kind": "running", "offset": "1/3" }, "joint": 3 },
            { "name": "upper", "product": "green", "faces": ["upper"], "bond": { "kind": "grid" }, "joint": 3 }],
          "cutting": { "fence": 3 } }
        """));

    private static readonly IReadOnlyList<Drawing> s_pages = JobSheets.Pages(s_plan);

    /// <summary>By hand: the field and its trim end a joint of 3 off the corner, and the return goes 60 on from there; those of the hatch go 40 on from its sides at 200 and 480. With the field below it the hatch's head is seen upside down: its left end is at the wall's right, all as high as the trim.</summary>
    [Fact]
    public void A_return_is_drawn_folded_out_from_the_end_that_it_goes_round()
    {
        var parts = WallTrims.Of(s_plan, "pier").Where(part => part.Return is not null).ToDictionary(part => (part.Line.Edge, part.Return!.AtLeft), part => part.Outline.Bounds);
        Assert.Equal(3, parts.Count);
        Assert.Equal((-57, 3, 30), Said(parts[("top", true)]));
        Assert.Equal((480, 520, 30), Said(parts[("hatch.top", true)]));
        Assert.Equal((160, 200, 30), Said(parts[("hatch.top", false)]));
        foreach (var part in WallTrims.Of(s_plan, "pier").Where(part => part.Return is not null))
        {
            foreach (var sheet in s_pages.Where(page => page.Title.Contains(": Face: ", StringComparison.Ordinal)).Append(s_pages.First(page => page.Title.Contains(": Trims: round", StringComparison.Ordinal))))
            {
                Assert.Equal(Stroke.Ghost, Assert.Single(sheet.Marks.OfType<Mark.Area>(), area => area.Name == part.Id).Edge);
            }
        }

        static (int Left, int Right, int High) Said(Plane.Shapes.Box box) => ((int)Math.Round(box.Left.Millimetres), (int)Math.Round(box.Right.Millimetres), (int)Math.Round(box.Height.Millimetres));
    }

    /// <summary>The zone stands above the band and below the top's trim; no other trim is on the pier.</summary>
    [Fact]
    public void The_sheet_of_a_zone_draws_the_trims_that_stand_at_its_sides_where_they_sit()
    {
        var sheet = s_pages.Single(page => page.Title.Contains(": Face: upper,", StringComparison.Ordinal));
        var areas = sheet.Marks.OfType<Mark.Area>().ToList();
        var tile = s_plan.Runs[1].Faces[0].Pieces.First(piece => piece.Kind == Engine.Pieces.PieceKind.Full);
        var drawn = Frame.Around(areas.Single(area => area.Name == tile.Id).Rings[0]);
        var scale = 97 / drawn.Width;
        foreach (var piece in s_plan.Trims.Lines.SelectMany(line => line.Pieces))
        {
            var there = Frame.Around(Assert.Single(areas, area => area.Name == piece.Id).Rings[0]);
            Assert.Equal((double)(piece.Outline.Bounds.Left - tile.Outline.Bounds.Left).Millimetres, (there.X - drawn.X) * scale, 3);
            Assert.Equal((double)(piece.Outline.Bounds.Top - tile.Outline.Bounds.Top).Millimetres, (drawn.Y - there.Y) * scale, 3);
        }

        // Nothing is written over the trim at its top.
        var top = s_plan.Trims.Lines.Single(line => line.Edge == "top").Pieces.Select(piece => Frame.Around(areas.Single(area => area.Name == piece.Id).Rings[0])).ToList();
        Assert.DoesNotContain(SheetLook.Texts(sheet), text => text.Words.Contains("from left", StringComparison.Ordinal) && top.Exists(SheetLook.Box(text).Meets));
    }

    /// <summary>A zone's sheet shows no trim of another part of the wall: below the band there is only the field.</summary>
    [Fact]
    public void A_trim_that_does_not_touch_a_field_is_not_drawn_beside_it()
    {
        var field = s_plan.Runs[0].Faces[0].Face;
        var beside = WallTrims.Beside(s_plan.Job, WallTrims.Of(s_plan, "pier"), field).Select(part => part.Line.Product).Distinct();
        Assert.Equal(["pencil"], beside);
    }

    /// <summary>That many as the search counted, none of them wider than the limit; 50 mm: common practice, no source.</summary>
    [Fact]
    public void Slivers_are_named_with_the_edge_they_stand_at()
    {
        var found = s_plan.Findings.Where(finding => finding.Rule == "sliver").ToList();
        Assert.Equal(s_plan.Runs.Where(run => run.Best.Score.Slivers > 0).Select(run => run.Request.Name), found.Select(finding => finding.Where));
        foreach (var run in s_plan.Runs.Where(run => run.Best.Score.Slivers > 0))
        {
            var narrow = run.Faces.SelectMany(face => face.Pieces).Where(piece => piece.Smallest < Length.FromMillimetres(50)).Select(piece => piece.Id).ToList();
            Assert.Equal(run.Best.Score.Slivers, narrow.Count);
            Assert.All(narrow, id => Assert.Matches($@"\b{id}\b", found.Single(finding => finding.Where == run.Request.Name).Text));
            Assert.Contains(" side of ", found.Single(finding => finding.Where == run.Request.Name).Text, StringComparison.Ordinal);
            if (narrow.Count <= 6) Assert.Contains(narrow[0], FirstSheet.Score(s_plan, run, new(s_plan.Job.Tape)), StringComparison.Ordinal);
        }
    }

    /// <summary>The fence stands at the smaller of two sizes that share it: that is what comes from the saw, and the piece's own size is said beside.</summary>
    [Fact]
    public void The_size_of_a_piece_that_shares_a_fence_is_what_the_fence_leaves()
    {
        var pictures = new PiecePictures(s_plan);
        var shorts = 0;
        foreach (var cutting in s_plan.Cutting)
        {
            foreach (var piece in s_plan.Runs.SelectMany(run => run.Faces).SelectMany(face => face.Pieces).Where(piece => piece.Product == cutting.Product && piece.Kind == Engine.Pieces.PieceKind.Straight))
            {
                var fences = cutting.Settings.Where(setting => setting.Pieces.Contains(piece.Id)).Select(setting => setting.Fence).ToList();
                if (fences is not [var fence]) continue;
                var across = piece.Cuts[0].Away is Engine.Pieces.TileSide.Left or Engine.Pieces.TileSide.Right;
                var (sawn, own) = across ? (pictures.Sawn(piece.Id).Width, piece.Upright.Bounds.Width) : (pictures.Sawn(piece.Id).Height, piece.Upright.Bounds.Height);
                Assert.Equal(fence, s_plan.Job.Tape.Down(sawn));
                Assert.Equal(s_plan.Job.Tape.Down(own) == fence, pictures.Asked(piece.Id).Length == 0);
                if (s_plan.Job.Tape.Down(own) != fence) shorts++;
            }
        }

        Assert.NotEqual(0, shorts);
    }

    /// <summary>The app's picture of a shared tile is made by the sheet's own drawing: the same pieces, the same ringed numbers.</summary>
    [Fact]
    public void A_shared_tile_is_pictured_by_itself_as_on_its_sheet()
    {
        var pictures = new PiecePictures(s_plan);
        foreach (var tile in s_plan.Cutting.SelectMany(cutting => cutting.Tiles))
        {
            if (tile.Pieces.Count < 2)
            {
                Assert.Null(pictures.Shared(tile.Pieces[0].Id));
                continue;
            }

            var drawn = pictures.Shared(tile.Pieces[0].Id)!;
            Assert.Equal(drawn.Title, pictures.Shared(tile.Pieces[^1].Id)!.Title);
            var words = SheetLook.Texts(drawn).Select(text => text.Words).ToList();
            Assert.All(tile.Pieces, piece => Assert.Contains(piece.Id, words));
            Assert.All(Enumerable.Range(1, tile.Cuts.Count), number => Assert.Contains(Figures.Number(number), words));
            Assert.All(drawn.Marks.OfType<Mark.Area>().SelectMany(area => area.Rings[0]), spot => Assert.True(spot.X >= 0 && spot.X <= drawn.Width && spot.Y >= 0 && spot.Y <= drawn.Height));
        }
    }
}
