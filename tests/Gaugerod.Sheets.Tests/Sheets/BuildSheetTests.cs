using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
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
            var lines = words.Split('\n');
            Assert.Contains(lines, line => line.Contains(where, StringComparison.Ordinal));
            Assert.Contains(along, lines);
            Assert.Contains(across, lines);
        }

        // 4 (300 + 406 + 90) mm.
        Assert.Contains("Joints of niches, taped too: 3184 mm.", words.Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Mixes_of_grout_have_no_tile_lifted()
    {
        var words = Words(s_plan, "Order of work");
        var (grout, rest) = (words[words.IndexOf("Mixes: grout walls", StringComparison.Ordinal)..], words.IndexOf("What to mind", StringComparison.Ordinal) - words.IndexOf("Mixes: grout walls", StringComparison.Ordinal));
        Assert.Contains("The same measure of water for every mix", grout[..rest], StringComparison.Ordinal);
        Assert.DoesNotContain("Lift a tile", grout[..rest], StringComparison.Ordinal);
        Assert.Contains("Lift a tile", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Pieces_that_wait_stand_behind_all_others_under_what_they_wait_for()
    {
        var cutting = s_plan.Cutting.Single(one => one.Product == "wall tile");
        var shared = cutting.Tiles.First(tile => tile.Pieces.Count > 1).Pieces[0].Id;
        var (sawn, hand) = (cutting.Settings[0].Pieces[0], cutting.ByHand[0]);
        var plan = Planned(s_text.Replace("\"after\": \"set right\"", $"\"after\": \"set right\", \"pieces\": [\"{sawn}\", \"{hand}\", \"{shared}\"]", StringComparison.Ordinal));
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
        Assert.Contains("for glass: lay that part by, and cut it last.", together, StringComparison.Ordinal);
        Assert.Contains(", cut last", together, StringComparison.Ordinal);
        Assert.DoesNotContain("cut last", Words(s_plan, "Shared tiles: wall tile"), StringComparison.Ordinal);
    }

    private static string Words(Plan plan, string title)
    {
        var pages = JobSheets.Pages(plan).Where(page => page.Title.Contains(title, StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(pages);
        return string.Join('\n', pages.Select(SheetLook.Words));
    }

    private static Plan Planned(string text) => Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "attic-shower.json")).Job);
}
