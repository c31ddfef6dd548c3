using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;
using Gaugerod.Testing;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>What the sheets of the invented attic shower say of a niche's lining, of mixes of grout and of pieces that are cut last.</summary>
public sealed class BuildSheetTests
{
    private static readonly string s_text = File.ReadAllText(Path.Combine(Repo.Root, "samples", "attic-shower.json"));

    private static readonly Plan s_plan = Planned(s_text);

    [Fact]
    public void A_niche_has_its_five_pieces_with_where_they_go_and_what_to_cut_them_to()
    {
        var words = Words(s_plan, "Boards: back");
        Assert.Contains("Lining of niche", words, StringComparison.Ordinal);

        // By hand: 300 by 406 mm and twice a board of 13 for the back; 90 less 13 deep.
        foreach (var (where, along, across) in new[] { ("back, behind the sides", "432", "326"), ("bottom, under the ends of left and right", "326", "77"), ("left, between bottom and top", "406", "77") })
        {
            var row = Row(s_plan, "Boards: back", where);
            Assert.Equal((along, across), (row[2], row[3]));
        }

        // 4 (300 + 406 + 90) mm.
        Assert.Contains("Joints of niches, taped too: 3184 mm.", words.Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Mixes_of_grout_have_no_tile_lifted()
    {
        var words = Words(s_plan, "Order of work");
        var (set, grout) = (Between("Mixes: set back", "Mixes: set left"), Between("Mixes: grout walls", "What to mind"));
        Assert.Contains("Tile lifted", set, StringComparison.Ordinal);
        Assert.DoesNotContain("Tile lifted", grout, StringComparison.Ordinal);

        string Between(string from, string to) => words[words.IndexOf(from, StringComparison.Ordinal)..words.IndexOf(to, StringComparison.Ordinal)];
    }

    [Fact]
    public void What_is_minded_with_every_mix_is_said_once_above_the_mixes()
    {
        var words = Words(s_plan, "Order of work");
        foreach (var minded in new[] { "Lift a tile at the start and with every mix", "The same measure of water for every mix" })
        {
            Assert.Equal(words.IndexOf(minded, StringComparison.Ordinal), words.LastIndexOf(minded, StringComparison.Ordinal));
            Assert.InRange(words.IndexOf(minded, StringComparison.Ordinal), 0, words.IndexOf("Mixes: ", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Boxes_of_tile_are_lifted_where_tile_is_set_and_a_flooded_floor_s_weight_is_said_once()
    {
        var minded = WorkNotes.ByKind(s_plan).ToDictionary(kind => kind.Name, kind => string.Join('\n', kind.Words), StringComparer.Ordinal);
        Assert.All(minded, kind => Assert.Equal(kind.Key == "setting", kind.Value.Contains("box", StringComparison.OrdinalIgnoreCase)));
        foreach (var heavy in new[] { "tear-out", "boards", "seams", "bed" }) Assert.Single(minded[heavy].Split('\n'), line => line.Contains("lift", StringComparison.OrdinalIgnoreCase));
        Assert.Single(minded["flood test"].Split('\n'), line => line.Contains("weighs", StringComparison.Ordinal));
    }

    [Fact]
    public void What_may_run_beside_a_task_stands_by_it_and_long_lists_are_cut_short()
    {
        var words = Words(s_plan, "Order of work").Replace('\n', ' ');
        Assert.Contains("beside: lines of tray; returns on back", words, StringComparison.Ordinal);
        Assert.Matches("beside: returns on back; set left, below the line; set right, below the line; and [0-9] more", words);
        Assert.All(s_plan.Work!.Tasks.Where(task => task.Beside.Count == 0), task => Assert.Empty(WorkWords.Beside(task)));
    }

    [Fact]
    public void Glass_is_in_before_the_room_is_handed_over() =>
        Assert.True(s_plan.Work!.Tasks.Single(task => task.Name == "glass is in").Ends <= s_plan.Work.Tasks.Single(task => task.Name == "hand-over").Begins);

    [Fact]
    public void No_board_is_a_strip_that_nobody_hangs_and_its_outermost_corner_is_its_size()
    {
        var figures = new Figures(s_plan.Job.Tape);
        foreach (var piece in s_plan.Boards.Faces.SelectMany(face => face.Pieces.Select(piece => (face.Face, Piece: piece))))
        {
            var box = piece.Piece.Shape.Outer.Bounds;
            Assert.True(Length.Min(box.Width, box.Height) >= Length.FromMillimetres(100), piece.Piece.Id);
            var row = Row(s_plan, "Boards: " + piece.Face, piece.Piece.Id);
            var corners = Regex.Matches(string.Join(' ', row[6..]), @"\[(\d+),\s(\d+)\]");
            if (corners.Count < 4) continue;
            Assert.Equal((row[2], row[3]), (Most(1), Most(2)));
            Assert.Equal(row[2], figures.Cut(box.Width));

            string Most(int at) => corners.Max(corner => int.Parse(corner.Groups[at].Value, CultureInfo.InvariantCulture)).ToString(CultureInfo.InvariantCulture);
        }
    }

    [Fact]
    public void A_wall_with_a_membrane_has_its_batten_propped_and_a_floor_has_none()
    {
        var (walls, tray) = (s_plan.Runs.Single(run => run.Request.Name == "walls"), s_plan.Runs.Single(run => run.Request.Name == "tray"));
        Assert.StartsWith("On left, back and right the course below a level line is cut. Prop a straight batten from below", BattenWords.Of(s_plan.Job, walls), StringComparison.Ordinal);
        Assert.DoesNotContain("Screw a", BattenWords.Of(s_plan.Job, walls), StringComparison.Ordinal);
        Assert.Null(BattenWords.Of(s_plan.Job, tray));
        Assert.DoesNotContain("batten", Words(s_plan, "Run: tray"), StringComparison.Ordinal);

        // Without a membrane, and without a word of how it is held, it is screwed; one bare wall of three is told of by itself.
        var bare = Planned(s_text.Replace(", \"batten\": { \"of\": \"straight lath\" }", "", StringComparison.Ordinal).Replace("\"membrane\": { \"of\": \"roll-on\", \"to\": 2000, \"band\": \"corner band\" }", "", StringComparison.Ordinal).Replace("\"primer\": { \"of\": \"primer\" },  }", "\"primer\": { \"of\": \"primer\" } }", StringComparison.Ordinal));
        Assert.Contains("Screw a straight batten along the line, its top edge on it", BattenWords.Of(bare.Job, bare.Runs[0]), StringComparison.Ordinal);
        Assert.Null(BattenWords.Of(bare.Job, bare.Runs[1]));
    }

    [Fact]
    public void Pieces_that_wait_stand_behind_all_others_under_what_they_wait_for()
    {
        var cutting = s_plan.Cutting.Single(one => one.Product == "wall tile");
        var shared = cutting.Tiles.First(tile => tile.Pieces.Count > 1).Pieces[0].Id;
        var (sooner, later) = ("A9", "A23");
        var (sawn, hand) = (cutting.Settings[0].Pieces[0], cutting.ByHand[0]);
        var plan = Planned(s_text.Replace("\"after\": \"set right\"", $"\"after\": \"set right\", \"pieces\": [\"{sawn}\", \"{hand}\", \"{shared}\", \"{later}\", \"{sooner}\"]", StringComparison.Ordinal));
        var words = Words(plan, "Cut list: wall tile");
        var at = words.IndexOf("Cut last: waits for glass", StringComparison.Ordinal);
        Assert.True(at > words.IndexOf("Marked by hand", StringComparison.Ordinal), "It stands behind the rest.");
        foreach (var id in new[] { sawn, hand, shared })
        {
            Assert.DoesNotContain(id, words[..at].Split('\n'));
            Assert.Contains(id, words[at..].Split('\n'));
        }

        Assert.Contains("wait for glass and stand last.", words.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.Contains("Marked by hand, waits for glass", words[at..], StringComparison.Ordinal);
        var together = Words(plan, "Shared tiles: wall tile").Replace('\n', ' ');
        var waits = Regex.Match(together, "▲ Pieces ([^▲]*) wait for glass: cut the others of their tiles now, lay the parts they are in by, and cut them last.").Groups[1].Value;
        Assert.Contains(shared, waits, StringComparison.Ordinal);

        // As one counts: by letters alone 23 would come before 9.
        Assert.InRange(waits.IndexOf(sooner, StringComparison.Ordinal), 0, waits.IndexOf(later, StringComparison.Ordinal) - 1);
        Assert.Contains(", cut last", together, StringComparison.Ordinal);
        Assert.DoesNotContain("cut last", Words(s_plan, "Shared tiles: wall tile"), StringComparison.Ordinal);
    }

    private static string Words(Plan plan, string title) => string.Join('\n', Pages(plan, title).Select(SheetLook.Words));

    private static List<Drawing> Pages(Plan plan, string title)
    {
        var pages = JobSheets.Pages(plan).Where(page => page.Title.Contains(title, StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(pages);
        return pages;
    }

    /// <summary>What stands in the table's row that a text is in, from the left; the words of a cell that goes on over lines among it.</summary>
    private static List<string> Row(Plan plan, string title, string words)
    {
        var texts = Pages(plan, title).Select(page => SheetLook.Texts(page).ToList()).First(page => page.Exists(text => text.Words == words));
        var at = texts.Last(text => text.Words == words).At.Y;
        return [.. texts.Where(text => Math.Abs(text.At.Y - at) < 1).OrderBy(text => text.At.X).Select(text => SheetLook.Plain(text.Words))];
    }

    private static Plan Planned(string text) => Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "attic-shower.json")).Job);
}
