using System.Globalization;
using System.Text;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>What a person asked who set tile by the sheets, and what the sheets now say without being asked.</summary>
public sealed class SettersWordsTests
{
    private static readonly Plan Shower = Samples.GuestShower;
    private static readonly Figures Inches = new(Tape.Sixteenths);

    /// <summary>The bench's top is read 18 1/8 in high at its left end and 18 1/4 in at its right: 1/8 in out.</summary>
    [Fact]
    public void A_full_course_that_is_held_on_a_bench_says_which_tiles_are_cut_where_the_bench_is_out()
    {
        var run = Shower.Runs[0];
        var bench = run.Best.Wants.Single(w => w.Want is Want.FullCourse { Edge.Edge: "bench" });
        var cut = run.Faces[1].Pieces.Where(p => p.Cuts.Any(c => c.Faces == "bench" && c.Away == TileSide.Bottom)).Select(p => p.Id).ToArray();
        Assert.NotEmpty(cut);
        Assert.Equal($" The bench is 1/8 in out of level: {string.Join(" and ", cut)} are cut along it.", HeldJoint.Words(bench, run, Inches));
        Assert.All(cut, id => Assert.Equal("cut at the foot because the bench is out of level", HeldJoint.Of(Piece(run, id), run, Inches)));
        Assert.Equal("", HeldJoint.Words(bench with { Held = false }, run, Inches));
        Assert.Contains(JobSheets.Pages(Shower), p => SheetLook.Words(p).Contains("cut at the foot because the\nbench is out of level", StringComparison.Ordinal));
    }

    /// <summary>The app and the sheets must not say a cut in two ways: at the saw one would be taken for another.</summary>
    [Fact]
    public void What_the_app_says_of_a_cut_stands_so_in_the_printed_cut_list()
    {
        // Lines are broken on paper where they must be, and a fraction stands close to its inches.
        static string Close(string words) => string.Concat(words.Where(c => !char.IsWhiteSpace(c)));
        var printed = Close(string.Join('\n', JobSheets.Pages(Shower).Select(SheetLook.Words)));
        var words = new PiecePictures(Shower);
        var marked = Shower.Cutting.SelectMany(product => product.ByHand).ToList();
        Assert.NotEmpty(marked);
        Assert.All(marked, id => Assert.All(words.Words(id).Split('\n'), line => Assert.Contains(Close(line), printed, StringComparison.Ordinal)));
    }

    /// <summary>
    /// A tile of 300 x 300 mm that loses 40 x 2 mm at its lower left corner. Up to 3 mm is nipped or ground: common practice,
    /// no source.
    /// </summary>
    [Theory]
    [InlineData(40, 2, "a small nip at the lower left corner: 40 wide, 2 high; nip it or grind it")]
    [InlineData(3, 50, "a small nip at the lower left corner: 3 wide, 50 high; nip it or grind it")]
    [InlineData(40, 20, null)]
    public void A_corner_too_shallow_to_saw_is_said_by_what_goes(long wide, long high, string? words)
    {
        var (tile, none) = (Mm(300), Length.Zero);
        CutMark foot = new(TileSide.Bottom, tile - Mm(high), tile - Mm(high), none, Mm(wide), "sill");
        CutMark left = new(TileSide.Left, tile - Mm(wide), tile - Mm(wide), none, Mm(high), "jamb");
        var piece = Shower.Runs[0].Faces[0].Pieces[0] with { Cell = new(none, none, tile, tile), Cuts = [left, foot] };
        var nip = Nip.Of(piece, new(Tape.Millimetres));
        Assert.Equal(words is null ? [] : [words], nip.Select(n => n.Words));
        Assert.All(nip, n => Assert.True(n.Says(foot) && n.Says(left)));
    }

    [Theory]
    [InlineData("guest shower")]
    [InlineData("cloakroom")]
    [InlineData("plain wall")]
    public void The_row_that_is_dimensioned_is_named_beside_its_dimensions(string name)
    {
        var plan = Samples.Plans[name];
        foreach (var face in plan.Runs.SelectMany(r => r.Faces))
        {
            var row = TileChain.Longest(face.Pieces, level: true);
            var ids = row.Where(p => p.Kind != PieceKind.Full).Select(p => p.Id).ToArray();
            var sheet = JobSheets.Pages(plan).Single(p => p.Title.Contains($": Face: {face.Face.Name},", StringComparison.Ordinal));
            Assert.Contains($"the row {ids[0]} to {ids[^1]},\n{LengthText.NearestBare(row.Min(p => p.Outline.Bounds.Bottom), plan.Job.Tape)} up", SheetLook.Words(sheet), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_wall_whose_tile_runs_into_the_corners_is_set_first_and_the_batten_comes_off_when_the_adhesive_has_set()
    {
        var words = SheetLook.Words(JobSheets.Pages(Shower)[0]).Replace('\n', ' ');
        Assert.Contains("Order of the walls: north first, its tile runs into the corners; then west and east", words, StringComparison.Ordinal);
        Assert.Contains("Take it off when the adhesive has set as its instructions say, usually the next day", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Going_outward_from_the_wall_that_runs_through_each_is_set_after_the_one_it_is_cut_to()
    {
        var run = Shower.Runs[0] with { Request = Shower.Runs[0].Request with { Through = "east" } };
        Assert.Contains("east first, its tile runs into the corners; then north and west", SettingOrder.Words(Shower.Job, run), StringComparison.Ordinal);
        Assert.Null(SettingOrder.Words(Samples.Plans["cloakroom"].Job, Samples.Plans["cloakroom"].Runs[0]));
    }

    /// <summary>A lap that the job states itself is not told by the run: nobody is sent to the wrong wall first.</summary>
    [Fact]
    public void Where_the_job_says_itself_which_wall_laps_no_wall_is_named_first()
    {
        var north = Shower.Job.Faces[1];
        var stated = north with { Shape = (FaceShape.Read)north.Shape with { Left = ((FaceShape.Read)north.Shape).Left with { Lap = Lap.Laps } } };
        var job = Shower.Job with { Faces = [Shower.Job.Faces[0], stated, Shower.Job.Faces[2]] };
        Assert.StartsWith("Order of the walls: at every corner", SettingOrder.Words(job, Shower.Runs[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_is_neither_drawn_nor_snapped_across_a_bench_or_a_window()
    {
        var (run, north) = (Shower.Runs[0], Shower.Runs[0].Faces[1].Face);
        var lines = run.Lines.Where(l => l.Face == "north").ToArray();
        Assert.Equal("It stops at the bench.", LineReach.Words(lines[0], north));
        Assert.Equal("", LineReach.Words(lines[1], north));
        Assert.Equal("Not across the window: mark it above and below.", LineReach.Words(lines[2], north));
        var (from, to) = Assert.Single(LineReach.On(north, Axis.Level, lines[0].At));
        Assert.Equal(Length.FromInches(45), to);
        Assert.True(from < Length.FromInches(1));
    }

    /// <summary>A bath in the middle of a wall 2400 mm wide, from 600 to 1800 mm and 500 mm high.</summary>
    [Fact]
    public void A_line_that_a_bath_breaks_is_marked_on_the_wall_on_both_sides()
    {
        var plan = Planned("plain-wall", job => job["faces"]![0]!["fixtures"] = System.Text.Json.Nodes.JsonNode.Parse("""[{ "name": "bath", "from": 600, "to": 1800, "height": 500 }]"""));
        var face = plan.Runs[0].Faces[0].Face;
        Assert.Equal("Not across the bath: mark it on the wall on both sides.", LineReach.Words(new(Axis.Level, "wall", Mm(300), ""), face));
        Assert.Equal([(Mm(0), Mm(600)), (Mm(1800), Mm(2400))], LineReach.On(face, Axis.Level, Mm(300)));
        Assert.Equal("", LineReach.Words(new(Axis.Level, "wall", Mm(700), ""), face));
    }

    /// <summary>
    /// Two true walls 2000 mm wide, tile 300 x 300 mm, whole tiles at the left: six of them and their joints take 1818 of 1994 mm
    /// and leave 176, so that after the soft joint of 3 the next wall begins with the tile's other 121.
    /// </summary>
    [Fact]
    public void A_course_that_goes_round_the_corner_names_the_piece_on_the_next_wall_and_the_tile()
    {
        var plan = Planned("plain-wall", job =>
        {
            job["faces"]![0]!["readings"]!["width"]!["foot"] = 2000;
            var next = job["faces"]![0]!.DeepClone();
            next["name"] = "next";
            job["faces"]!.AsArray().Add(next);
            job["runs"]![0]!["faces"]!.AsArray().Add("next");
            job["runs"]![0]!["wants"] = System.Text.Json.Nodes.JsonNode.Parse("""[{ "want": "full course", "face": "wall", "edge": "left", "must": true }]""");
        });
        var (run, cutting) = (plan.Runs[0], plan.Cutting[0]);
        var corners = RoundCorners.Of(cutting, plan.Runs);
        Assert.Equal(run.Faces[0].Pieces.Select(p => p.Course).Distinct(), corners.Select(c => c.From.Course));
        Assert.All(corners, c =>
        {
            Assert.Equal((c.From.Course, "wall", "next"), (c.To.Course, c.From.Face, c.To.Face));
            Assert.Equal((Mm(176), Mm(121)), (c.From.Outline.Bounds.Width, c.To.Outline.Bounds.Width));
            Assert.DoesNotContain(run.Faces[0].Pieces, p => p.Course == c.From.Course && p.Outline.Bounds.Left > c.From.Outline.Bounds.Left);
            Assert.DoesNotContain(run.Faces[1].Pieces, p => p.Course == c.To.Course && p.Outline.Bounds.Right < c.To.Outline.Bounds.Right);
            Assert.Equal((TileOf(c.From), TileOf(c.To)), (c.FromTile, c.ToTile));
        });
        var words = string.Join('\n', JobSheets.Pages(plan).Select(SheetLook.Words));
        Assert.All(corners, c => Assert.Contains($"{c.From.Id} goes on as {c.To.Id}: ", words, StringComparison.Ordinal));

        // Where the cut plan takes both from one tile, that tile is named.
        var (from, to) = (corners[1].From, corners[1].To);
        var one = cutting with { Tiles = [new(7, [new(from.Id, from.Outline, 0), new(to.Id, to.Outline, 0)])] };
        Assert.Equal($"{from.Id} goes on as {to.Id}: both from tile 7", RoundCorners.Words(Assert.Single(RoundCorners.Of(one, plan.Runs))));
        Assert.Empty(RoundCorners.Of(Shower.Cutting[0], Shower.Runs));

        int TileOf(Piece piece) => cutting.Tiles.Single(t => t.Pieces.Any(p => p.Id == piece.Id)).Number;
    }

    /// <summary>What stands beside the score and what stands on the cut list are the same pieces, counted in the plan.</summary>
    [Theory]
    [InlineData("guest shower")]
    [InlineData("cloakroom")]
    [InlineData("plain wall")]
    public void Tiles_cut_at_an_edge_and_tiles_only_drilled_add_up_to_the_cut_list(string name)
    {
        var plan = Samples.Plans[name];
        var listed = plan.Cutting.SelectMany(c => c.Settings.SelectMany(s => s.Pieces).Concat(c.ByHand)).Distinct(StringComparer.Ordinal).Count();
        var drilled = plan.Runs.SelectMany(r => r.Faces).SelectMany(f => f.Pieces).Count(piece => piece.IsOnlyDrilled);
        var cuts = plan.Runs.Sum(r => r.Best.Score.Cuts);
        Assert.Equal(listed, cuts + drilled);
        var pages = JobSheets.Pages(plan);
        var first = SheetLook.Words(pages[0]).Replace('\n', ' ');
        Assert.Contains(Text($"{cuts} tiles are cut at an edge{(drilled > 0 ? Text($" and {drilled} only drilled") : "")};"), first, StringComparison.Ordinal);
        var list = SheetLook.Words(pages.First(p => p.Title.Contains("Cut list", StringComparison.Ordinal)));
        Assert.Contains(drilled > 0 ? Text($"{listed} pieces to cut: {cuts} at an edge, {drilled} only drilled.") : Text($"{listed} pieces to cut."), list, StringComparison.Ordinal);
    }

    /// <summary>In grey the chalk blue is as dark as a tile's side: lines to snap lie on white and end in solid triangles.</summary>
    [Fact]
    public void Lines_to_snap_are_told_from_the_tiles_sides_without_colour()
    {
        var sheet = FaceDrawings.Of(Shower).Single(f => f.Face == "east").Drawing;
        var lines = sheet.Marks.Index().Where(m => m.Item is Mark.Line { Stroke: Stroke.SnapLine }).ToArray();
        var snapped = Shower.Runs[0].Lines.Count(l => l.Face == "east");
        Assert.Equal(snapped + 1, lines.Length);
        Assert.All(lines[..^1], l => Assert.True(sheet.Marks[l.Index - 1] is Mark.Area { Fill: Fill.Paper }));
        Assert.Equal((2 * snapped) + 1, sheet.Marks.OfType<Mark.Area>().Count(a => a.Fill == Fill.Ink && a.Rings[0].Count == 3));
    }

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    private static Piece Piece(RunPlan run, string id) => run.Faces.SelectMany(f => f.Pieces).Single(p => p.Id == id);

    private static Plan Planned(string sample, Action<System.Text.Json.Nodes.JsonNode> change)
    {
        var job = System.Text.Json.Nodes.JsonNode.Parse(File.ReadAllText(Path.Combine(Gaugerod.Testing.Repo.Root, "samples", sample + ".json")))!;
        change(job);
        return Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job.ToJsonString()), sample)).Job);
    }
}
