using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Sheets;
using Gaugerod.Testing;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>What the client of an invented wet room is left with.</summary>
public sealed class HandOverTests
{
    [Fact]
    public void Its_words_are_the_accepted_ones()
    {
        Golden.Matches("sheets/hand-over-words.txt", Words(HandOverSamples.Noted));
        Golden.Matches("sheets/hand-over-bare-words.txt", Words(HandOverSamples.Bare));
    }

    [Fact]
    public void A_job_that_asks_for_no_hand_over_has_no_such_sheet()
    {
        Assert.Empty(HandOverSheets.Pages(Samples.GuestShower));
        Assert.Null(HandingOver.Of(Samples.GuestShower));
    }

    [Fact]
    public void A_corner_of_two_walls_is_one_soft_joint_and_as_long_as_the_tile_in_it()
    {
        var given = HandingOver.Of(HandOverSamples.Noted)!;
        var corner = Assert.Single(given.Soft, joint => joint.With.Count > 0);
        Assert.Equal(("back", "right", "left of side"), (corner.Face, corner.Edge, corner.With[0]));

        // By hand: 2100 less 4 at the ceiling and 4 at the floor.
        Assert.Equal(2092, corner.Long, 3);
        Assert.Equal(["back right", "back head", "side head", "floor door", "floor east", "floor north", "floor west"], given.Soft.Select(joint => $"{joint.Face} {joint.Edge}"));
    }

    [Fact]
    public void Spares_are_those_ordered_with_what_the_last_box_holds_more_and_what_did_not_break()
    {
        var plan = HandOverSamples.Noted;
        Assert.Equal(2, HandingOver.Of(plan)!.Left.Count);
        foreach (var left in HandingOver.Of(plan)!.Left)
        {
            var (line, product) = (plan.Order.Single(one => one.Item == left.Of), plan.Job.Products.Single(one => one.Name == left.Of));
            Assert.Equal((product.Spares, product.Breakage), (left.Spares, left.Breakage));
            Assert.Equal((line.Packs * product.PerBox) - plan.Cutting.Single(one => one.Product == left.Of).Bought, left.Spares + left.Breakage + left.Over);
        }
    }

    [Fact]
    public void Water_comes_when_the_grout_s_bag_says_and_what_no_bag_said_is_left_to_the_package()
    {
        var (plan, words) = (HandOverSamples.Noted, HandOverWords.FirstUse(HandOverSamples.Noted));
        var grouted = plan.Work!.Tasks.Where(task => task.Name.StartsWith("grout ", StringComparison.Ordinal)).Max(task => task.Ends)!.Value;
        Assert.StartsWith($"Water: not before {WorkWords.Day(grouted.AddDays(7))}", words[0], StringComparison.Ordinal);
        Assert.Contains("7 days after grout walls, grout ground (what light grout says)", words[0], StringComparison.Ordinal);
        Assert.Contains(words, word => word.StartsWith("No time was given for soft joints of ", StringComparison.Ordinal));
        Assert.Contains(words, word => word.Contains("24 h after set floor (the setter's own figure; the bag goes first)", StringComparison.Ordinal));
        Assert.NotEmpty(HandOverWords.FirstUse(Samples.GuestShower));
        Assert.All(HandOverWords.FirstUse(Samples.GuestShower), word => Assert.Contains("say", word, StringComparison.Ordinal));
    }

    [Fact]
    public void What_nobody_noted_has_a_line_to_write_on_and_what_is_worth_a_photograph_is_said()
    {
        var (noted, bare) = (Words(HandOverSamples.Noted), Words(HandOverSamples.Bare));
        Assert.Contains("flood test, planned for", bare, StringComparison.Ordinal);
        Assert.Contains("pipes, wires and studs of each face before boards go on", bare, StringComparison.Ordinal);
        Assert.Contains("the water of the flood test", bare, StringComparison.Ordinal);
        Assert.DoesNotContain("None was noted", noted, StringComparison.Ordinal);
        Assert.Contains("Due again: sealant by hand on Wed 1 Sep 2027; flood test on Thu 16 Mar 2028.", noted.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("common practice, no source", bare.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("after 5 years: the setter's own figure", noted.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void It_claims_nothing_and_says_what_can_hurt()
    {
        foreach (var words in new[] { Words(HandOverSamples.Noted), Words(HandOverSamples.Bare) })
        {
            Assert.Contains("claims nothing about tightness", words.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.Contains("licensed electrician", words.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.DoesNotContain("safe", words, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("complian", words, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void However_much_is_noted_no_line_runs_off_the_paper()
    {
        var care = string.Join(", ", Enumerable.Range(1, 150).Select(i => $"\"Line {i}: what is agreed on how this room is used and aired, whoever said it and whenever.\""));
        var pages = HandOverSheets.Pages(HandOverSamples.Plan($$"""{ "care": [{{care}}] }"""));
        Assert.InRange(pages.Count, 3, 8);
        Assert.All(pages, page => Assert.All(SheetLook.Texts(page), text => Assert.True(SheetLook.Box(text) is var box && box.X >= 0 && box.Right <= page.Width && box.Y >= 0 && box.Bottom <= page.Height, text.Words)));
    }

    private static string Words(Plan plan) => string.Join("\n\n", HandOverSheets.Pages(plan).Select(page => page.Title + "\n" + page.Description + "\n" + SheetLook.Words(page))) + "\n";
}
