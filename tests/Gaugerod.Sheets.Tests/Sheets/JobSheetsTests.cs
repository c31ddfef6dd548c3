using Gaugerod.Engine;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

public sealed class JobSheetsTests
{
    public static TheoryData<string> Names => Samples.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void No_letters_are_too_small_to_read_or_off_the_paper(string name)
    {
        foreach (var page in JobSheets.Pages(Samples.Plans[name]))
        {
            foreach (var text in SheetLook.Texts(page))
            {
                Assert.True(text.Size >= 6.5, $"{page.Title}: {text.Words} at {text.Size} pt");
                Assert.True(new Frame(9, 6, page.Width - 18, page.Height - 12).Holds(SheetLook.Box(text)), $"{page.Title}: '{text.Words}' at {text.At} leaves the sheet");
            }
        }
    }

    [Fact]
    public void A_note_of_any_length_takes_one_line()
    {
        var plan = Samples.Plans["plain wall"];
        var note = string.Concat(Enumerable.Repeat("first\n\tsecond ", 100_000));
        var page = JobSheets.Pages(plan with { Job = plan.Job with { Note = note } })[0];
        var text = Assert.Single(SheetLook.Texts(page), t => t.Words.StartsWith("first second first", StringComparison.Ordinal));
        Assert.DoesNotContain('\n', text.Words);
        Assert.True(SheetLook.Box(text).Right <= page.Width - 11, "the note leaves the sheet");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_letters_run_into_others(string name)
    {
        foreach (var page in JobSheets.Pages(Samples.Plans[name]))
        {
            var texts = SheetLook.Texts(page).Select(t => (t.Words, Box: SheetLook.Box(t).Grown(-0.15))).ToArray();
            var clashes = from i in Enumerable.Range(0, texts.Length)
                          from j in Enumerable.Range(i + 1, texts.Length - i - 1)
                          where texts[i].Box.Meets(texts[j].Box)
                          select $"'{texts[i].Words}' and '{texts[j].Words}'";
            Assert.True(!clashes.Any(), page.Title + ": " + string.Join("; ", clashes));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_cut_piece_is_numbered_on_its_face_and_stands_in_the_cut_list(string name)
    {
        var plan = Samples.Plans[name];
        var pages = JobSheets.Pages(plan);
        foreach (var wall in WallPlan.All(plan))
        {
            var sheets = FaceSheet.Nearer(new(plan), wall).Prepend(wall).Select(one => Assert.Single(pages, p => p.Title.Contains(": Face: " + one.Name + ",", StringComparison.Ordinal)));
            var words = sheets.SelectMany(SheetLook.Texts).Select(t => t.Words).ToList();
            Assert.All(wall.Parts.SelectMany(part => part.Face.Pieces).Where(p => p.Kind != PieceKind.Full), p => Assert.Single(words, p.Id));
        }

        var list = pages.Where(p => p.Title.Contains(": Cut list", StringComparison.Ordinal)).SelectMany(SheetLook.Texts).Select(t => t.Words).ToHashSet();
        Assert.All(plan.Cutting.SelectMany(c => c.Settings.SelectMany(s => s.Pieces).Concat(c.ByHand)), id => Assert.Contains(id, list));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_face_is_drawn_at_the_scale_its_sheet_states(string name)
    {
        var plan = Samples.Plans[name];
        var pages = JobSheets.Pages(plan);
        foreach (var wall in WallPlan.All(plan).SelectMany(wall => FaceSheet.Nearer(new(plan), wall).Prepend(wall)))
        {
            var sheet = pages.Single(p => p.Title.Contains(": Face: " + wall.Name + ",", StringComparison.Ordinal));
            var stated = SheetLook.Texts(sheet).Single(t => t.Words.StartsWith("Scale 1:", StringComparison.Ordinal) && !t.Words.Contains('.', StringComparison.Ordinal)).Words[8..];
            var outline = sheet.Marks.OfType<Mark.Area>().First(a => a.Fill == Fill.Wall && a.Name == wall.Parts[0].Face.Face.Wall);
            var drawn = Frame.Around(outline.Rings[0]);
            var scale = int.Parse(stated, System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal((double)wall.Bounds.Width.Millimetres, drawn.Width * scale, tolerance: 0.000001);
            Assert.Equal((double)wall.Bounds.Height.Millimetres, drawn.Height * scale, tolerance: 0.000001);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_first_sheet_says_what_is_needed_first(string name)
    {
        var plan = Samples.Plans[name];
        var words = SheetLook.Words(JobSheets.Pages(plan)[0]);
        Assert.Contains(plan.Job.Name, words, StringComparison.Ordinal);
        Assert.Contains("First tile", words, StringComparison.Ordinal);
        Assert.Contains(plan.Order[0].Item, words, StringComparison.Ordinal);
        Assert.All(plan.Runs[0].Lines, l => Assert.Contains(LengthText.NearestBare(l.At, plan.Job.Tape), words, StringComparison.Ordinal));
        Assert.Contains(SheetLook.Plain(plan.Job.Note!), words, StringComparison.Ordinal);
    }

    /// <summary>Reckoned by hand from the sample's readings: north's line stands 48 1/8 in up, its first course 6 1/8 in, the one above the bench 24 5/16 in.</summary>
    [Fact]
    public void Lines_are_said_from_the_struck_level_line_too_since_the_floor_may_be_gone()
    {
        var first = SheetLook.Words(JobSheets.Pages(Samples.GuestShower)[0]);
        Assert.Contains("42 below the struck level line", first.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Contains("23 13/16 below the struck level line", first.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void A_course_above_a_cut_one_gets_a_batten_and_its_caution()
    {
        var words = BattenWords.Of(Samples.GuestShower.Job, Samples.GuestShower.Runs[0]);
        Assert.StartsWith("On west, north and east", words, StringComparison.Ordinal);
        Assert.Contains("No screw through a waterproofed face", words, StringComparison.Ordinal);
        Assert.Null(BattenWords.Of(Samples.GuestShower.Job, Samples.GuestShower.Runs[0] with { Lines = [] }));
    }

    // Flat floors too, whose courses are cut at their lower edge as a wall's are at its foot.
    [Fact]
    public void No_floor_gets_a_batten()
    {
        var floors = new[] { WorkSamples.Plan, Samples.PorchFloor }.SelectMany(plan => plan.Runs.Select(run => (plan.Job, Run: run))).Where(of => of.Run.Request.Name is not "walls").ToList();
        Assert.Contains(floors, of => of.Run.Faces.Any(face => of.Run.Lines.Any(line => line.Axis == Axis.Level && line.Face == face.Face.Name && face.Pieces.Any(piece => HangingCourse.Holds(of.Run, line, piece)))));
        Assert.All(floors, of => Assert.Null(BattenWords.Of(of.Job, of.Run)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_chain_of_dimensions_goes_from_tile_to_tile_with_a_joint_between(string name)
    {
        foreach (var run in Samples.Plans[name].Runs)
        {
            // A turned field has neither row nor stack.
            foreach (var pieces in run.Faces.Select(f => f.Pieces).Where(pieces => pieces.All(piece => piece.Frame is null)))
            {
                var (row, stack) = (TileChain.Longest(pieces, level: true), TileChain.Longest(pieces, level: false));
                Assert.All(row.Zip(row.Skip(1)), pair => Assert.Equal(run.Best.Placing.Joint, pair.Second.Cell.Left - pair.First.Cell.Right));
                Assert.All(stack.Zip(stack.Skip(1)), pair => Assert.Equal(run.Best.Placing.Joint, pair.Second.Cell.Bottom - pair.First.Cell.Top));
            }
        }
    }

    /// <summary>A spoilt job left a strip of one step of 1/3200 mm: nothing is that thin, but the sheets must not fall over it.</summary>
    [Fact]
    public void A_piece_thinner_than_anything_that_can_be_cut_has_its_chain_too()
    {
        var piece = Samples.GuestShower.Runs[0].Faces[0].Pieces[0];
        var thin = piece with { Outline = Gaugerod.Plane.Shapes.Ring.Of(new(Length.Zero, Length.Zero, Length.FromSteps(1), Length.FromSteps(1))) };
        Assert.Equal([thin], TileChain.Longest([thin], level: true));
        Assert.Equal([thin], TileChain.Longest([thin], level: false));
    }

    [Fact]
    public void Fences_are_rounded_down_and_lines_to_the_nearest()
    {
        var plan = HandPlan.Shower();
        var pages = JobSheets.Pages(plan);
        var list = string.Join('\n', pages.Where(p => p.Title.Contains("Cut list", StringComparison.Ordinal)).Select(SheetLook.Words));
        Assert.All(plan.Cutting[0].Settings, s => Assert.Contains(LengthText.DownBare(s.Fence, plan.Job.Tape), list, StringComparison.Ordinal));
        Assert.All(pages, p => Assert.Contains("Cut sizes are rounded down to the mark, everything else to the nearest.", SheetLook.Words(p), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Paper.A4, 210, 297)]
    [InlineData(Paper.Letter, 215.9, 279.4)]
    public void Every_sheet_has_the_job_s_paper_upright_or_across(Paper paper, double width, double height) =>
        Assert.All(JobSheets.Pages(HandPlan.Shower(paper)), p => Assert.True((p.Width, p.Height) == (width, height) || (p.Width, p.Height) == (height, width)));

    [Fact]
    public void A_stop_is_said_on_the_first_sheet_and_first_among_the_findings()
    {
        var pages = JobSheets.Pages(HandPlan.Shower());
        Assert.Contains("STOP, shower", SheetLook.Words(pages[0]), StringComparison.Ordinal);
        var words = SheetLook.Words(pages[^1]);
        Assert.True(words.IndexOf("STOP", StringComparison.Ordinal) < words.IndexOf("warn", StringComparison.Ordinal));
        Assert.True(words.IndexOf("warn", StringComparison.Ordinal) < words.IndexOf("note", StringComparison.Ordinal));
    }

    [Fact]
    public void A_long_list_says_its_head_again_on_every_sheet()
    {
        var plan = HandPlan.Shower();
        var many = Enumerable.Range(0, 90).Select(i => plan.Findings[1] with { Where = $"place {i}", Value = $"value {i}" });
        var pages = JobSheets.Pages(plan with { Findings = [.. many] }).Where(p => p.Title.Contains("Findings", StringComparison.Ordinal)).ToArray();
        Assert.True(pages.Length > 1);
        Assert.All(pages, p => Assert.Contains("Source", SheetLook.Words(p), StringComparison.Ordinal));
        var words = string.Join('\n', pages.Select(SheetLook.Words));
        for (var i = 0; i < 90; i++) Assert.Contains($"place {i}\n", words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_found_alike_on_every_wall_stands_once_with_the_walls_named()
    {
        var plan = HandPlan.Shower();
        string[] walls = ["west", "north", "east"];
        var alike = walls.Select(wall => plan.Findings[0] with { Level = FindingLevel.Stop, Where = wall, Text = "Twice." });
        var pages = JobSheets.Pages(plan with { Findings = [.. alike] });

        Assert.Contains("STOP, west, north, east: Twice.", SheetLook.Words(pages[0]), StringComparison.Ordinal);
        Assert.Equal(2, SheetLook.Words(pages[^1]).Split("Twice.").Length);
    }
}
