using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>What the rules say of a run. The limits themselves are checked beside their sources.</summary>
public class RunRulesTests
{
    // A plank that keeps every limit: what is left to say is what to check while setting.
    private static readonly Product Plank = new("plank", In("24"), In("12"), In("3/8"))
    {
        Class = TileClass.Rectified, Variation = In("1/32"), Warpage = In("1/32"), PerBox = 8,
    };

    private static readonly RunFacts Kept = new(
        "shower", Plank, new BondRequest.Running(Lay.Level, 1, 3, Stepping.OneWay), In("3/16"),
        new(In("1"), In("2"), HalfTile: true), Tape.Sixteenths, Cuts: 12, SmallestCut: In("6 1/32"), Slivers: 0, HalfTileMissed: false, Wants: []);

    [Fact]
    public void A_run_that_keeps_the_limits_is_told_only_what_to_check_while_setting()
    {
        Assert.Equal(["lippage", "flatness"], RunRules.Findings(Kept).Select(f => f.Rule));
        Assert.All(RunRules.Findings(Kept), f => Assert.Equal(FindingLevel.Note, f.Level));
        Assert.Equal("at most 1/16 in", One(Kept, "lippage").Limit);
        Assert.Equal("out of plane by at most 1/8 in over 10' 0\" and 1/16 in over 24 in", One(Kept, "flatness").Limit);
    }

    [Fact]
    public void A_joint_too_narrow_for_the_tiles_differences_is_warned_of()
    {
        var finding = One(Kept with { Joint = In("1/8"), Product = Plank with { Variation = In("1/16") } }, "joint-variation");
        Assert.Equal(
            new Finding(FindingLevel.Warn, "joint-variation", "shower",
                "The joint is narrower than three times the 1/16 in by which the tiles differ in size.",
                "at least 3/16 in", "1/8 in", "ANSI A108.02-2017, 4.3.8"),
            finding);
    }

    [Fact]
    public void A_joint_too_narrow_for_any_tile_is_warned_of_even_unmeasured()
    {
        var rules = RunRules.Findings(Kept with { Joint = In("1/32"), Product = Plank with { Variation = null } }).Where(f => f.Rule == "joint-variation").ToList();
        Assert.Equal([FindingLevel.Warn, FindingLevel.Note], rules.Select(f => f.Level));
        Assert.Equal(("at least 1/16 in", "1/32 in"), (rules[0].Limit, rules[0].Value));
        Assert.Equal("not measured", rules[1].Value);
    }

    [Fact]
    public void A_running_bond_of_long_tile_asks_for_its_joint_and_the_warp()
    {
        var finding = One(Kept with { Joint = In("1/8") }, "joint-offset");
        Assert.Equal((FindingLevel.Warn, "at least 5/32 in", "1/8 in"), (finding.Level, finding.Limit, finding.Value));
        Assert.Contains("(1/8 in and the warp, 1/32 in)", finding.Text, StringComparison.Ordinal);
        None(Kept with { Joint = In("5/32") }, "joint-offset");
        None(Kept with { Joint = In("1/8"), Bond = new BondRequest.Grid(Lay.Level) }, "joint-offset");
    }

    [Fact]
    public void What_is_not_known_of_the_tile_is_asked_for()
    {
        var facts = Kept with { Product = Plank with { Class = null, Variation = null, Warpage = null } };
        Assert.Equal(["joint-variation", "tile-class", "warpage", "flatness"], RunRules.Findings(facts).Select(f => f.Rule));
        Assert.All(RunRules.Findings(facts).Take(3), f => Assert.Equal("plank", f.Where));
    }

    [Fact]
    public void Half_an_offset_of_a_long_side_is_warned_of_and_a_third_is_not()
    {
        var half = Kept with { Bond = new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay) };
        var finding = One(half, "offset");
        Assert.Equal((FindingLevel.Warn, "1/2, 12 in"), (finding.Level, finding.Value));
        Assert.Equal("33 % of the side, 7 59/64 in; a third is accepted", finding.Limit);
        None(Kept, "offset");
        // laid the other way, the side that is set off is 12 in
        None(half with { Product = Plank with { Width = Plank.Height, Height = Plank.Width } }, "offset");
    }

    [Fact]
    public void Rectified_tile_of_two_calibers_is_warned_of()
    {
        var finding = One(Kept with { Product = Plank with { Variation = In("5/64") } }, "caliber");
        Assert.Equal((FindingLevel.Warn, "5/64 in"), (finding.Level, finding.Value));
        None(Kept with { Product = Plank with { Variation = In("0.06") } }, "caliber");
        None(Kept with { Product = Plank with { Variation = In("5/64"), Class = TileClass.Calibrated } }, "caliber");
    }

    [Fact]
    public void Cuts_are_held_against_the_job_s_limits_and_shown_rounded_down()
    {
        var facts = Kept with { SmallestCut = In("31/32"), Slivers = 2, HalfTileMissed = true };
        var findings = RunRules.Findings(facts).Where(f => f.Value == "15/16 in").ToList();
        Assert.Equal([("smallest-cut", FindingLevel.Stop), ("sliver", FindingLevel.Warn), ("half-tile", FindingLevel.Note)], findings.Select(f => (f.Rule, f.Level)));
        Assert.Equal(["at least 1 in", "at least 2 in", "half a tile"], findings.Select(f => f.Limit));
        Assert.StartsWith("2 tiles are cut", findings[1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cut_at_the_limit_keeps_it() => None(Kept with { SmallestCut = In("1") }, "smallest-cut");

    [Fact]
    public void Where_nothing_is_cut_no_cut_is_too_small() =>
        None(Kept with { Cuts = 0, SmallestCut = In("1/2") }, "smallest-cut");

    [Fact]
    public void A_missed_must_stops_and_a_missed_wish_is_noted()
    {
        var edge = new EdgeRef("back", "top");
        var facts = Kept with
        {
            Wants =
            [
                new(new Want.JointOnEdge(edge, Must: false, Weight: 3), Held: false, "A full course at the top of back: missed by 1/2 in."),
                new(new Want.JointOnEdge(edge, Must: true, Weight: 1), Held: false, "A full course at the top of back: missed by 1/2 in."),
                new(new Want.JointOnEdge(edge, Must: true, Weight: 1), Held: true, "A full course at the top of back: held."),
            ],
        };
        var wants = RunRules.Findings(facts).Where(f => f.Rule == "want").Select(f => (f.Level, f.Limit));
        Assert.Equal([(FindingLevel.Stop, "a must"), (FindingLevel.Note, "a wish of weight 3")], wants);
    }

    [Fact]
    public void The_gravest_comes_first()
    {
        var facts = Kept with { Joint = In("1/32"), SmallestCut = In("1/2"), Slivers = 1, HalfTileMissed = true, Product = Plank with { Warpage = null } };
        var levels = RunRules.Findings(facts).Select(f => f.Level).ToList();
        Assert.Equal(levels.OrderDescending(), levels);
        Assert.Equal(3, levels.Distinct().Count());
    }

    [Fact]
    public void A_metric_job_reads_its_findings_in_millimetres()
    {
        var facts = Kept with { Tape = Tape.Millimetres, Joint = Length.FromMillimetres(3), SmallestCut = Length.FromSteps(61 * 1600), Slivers = 1 };
        Assert.Equal("at most 1.6 mm", One(facts, "lippage").Limit);
        Assert.Equal("at least 4.0 mm", One(facts, "joint-offset").Limit);
        Assert.Equal("30 mm", One(facts, "sliver").Value);
        Assert.Equal("out of plane by at most 3 mm in 3 m and 1.5 mm in 600 mm", One(facts, "flatness").Limit);
        Assert.All(RunRules.Findings(facts), f => Assert.DoesNotMatch("[0-9] in\\b", f.Value + f.Limit));
    }

    [Fact]
    public void No_finding_calls_anything_safe_or_compliant()
    {
        var facts = Kept with { Joint = In("1/32"), SmallestCut = In("1/2"), Slivers = 1, HalfTileMissed = true, Product = Plank with { Class = null, Variation = null, Warpage = null } };
        Assert.All(RunRules.Findings(facts).Concat(Cautions.Findings(new(null, Tape.Sixteenths, [Plank]))), f =>
        {
            Assert.DoesNotMatch("(?i)\\b(is|are) (safe|compliant)\\b|complies", f.Text + f.Limit);
            Assert.NotEmpty(f.Source);
        });
    }

    private static Finding One(RunFacts facts, string rule) => Assert.Single(RunRules.Findings(facts), f => f.Rule == rule);

    private static void None(RunFacts facts, string rule) => Assert.DoesNotContain(RunRules.Findings(facts), f => f.Rule == rule);

    private static Length In(string text) => Assert.IsType<LengthReading.Understood>(LengthText.Read(text, LengthUnit.Inch)).Value;
}
