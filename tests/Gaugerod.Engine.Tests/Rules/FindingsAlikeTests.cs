using Gaugerod.Engine.Rules;

namespace Gaugerod.Engine.Tests.Rules;

public sealed class FindingsAlikeTests
{
    private static readonly Finding s_plumb = new(FindingLevel.Note, "plumb", "west", "Taken as plumb.", "", "", "common practice, no source");

    [Fact]
    public void What_every_wall_says_is_said_once_with_all_walls_named()
    {
        var one = Assert.Single(FindingsAlike.Together([s_plumb, s_plumb with { Where = "north" }, s_plumb with { Where = "east" }, s_plumb]));

        Assert.Equal(s_plumb with { Where = "west, north, east" }, one);
    }

    [Fact]
    public void Walls_that_differ_in_anything_but_their_name_keep_an_entry_each()
    {
        Finding[] each =
        [
            s_plumb with { Level = FindingLevel.Stop }, s_plumb with { Level = FindingLevel.Warn }, s_plumb,
            s_plumb with { Text = "Leans." }, s_plumb with { Limit = "3 mm" }, s_plumb with { Value = "4 mm" }, s_plumb with { Source = "its maker" },
        ];

        Assert.Equal(each, FindingsAlike.Together(each));
    }

    [Fact]
    public void The_gravest_stays_first_and_else_the_order_in_which_they_were_found()
    {
        var (sliver, bare, kept) = (s_plumb with { Level = FindingLevel.Warn, Text = "A sliver." }, s_plumb with { Level = FindingLevel.Warn, Text = "Bare." }, s_plumb);

        Assert.Equal(
            [sliver, bare with { Where = "west, east" }, kept with { Where = "west, north" }],
            FindingsAlike.Together([kept, sliver, bare, kept with { Where = "north" }, bare with { Where = "east" }]));
    }

    [Fact]
    public void A_hall_of_many_walls_does_not_make_an_entry_longer_than_a_sheet()
    {
        var walls = Enumerable.Range(1, 30).Select(i => $"wall {i}").ToList();
        var said = FindingsAlike.Together(walls.Select(wall => s_plumb with { Where = wall }));

        Assert.Equal(3, said.Count);
        Assert.Equal(walls, said.SelectMany(finding => finding.Where.Split(", ")));
    }

    [Fact]
    public void Nothing_found_stays_nothing() => Assert.Empty(FindingsAlike.Together([]));
}
