using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>What carries the first whole course, and what curbs and benches are built of, on invented jobs.</summary>
public sealed class BuildJobTests
{
    private const string Bought = "\"supplies\": [{ \"name\": \"wall mortar\"";

    private const string Lath = "\"supplies\": [{ \"name\": \"lath\", \"kind\": \"batten\", \"pack\": \"lath\", \"yield\": \"1.2 m\" }, { \"name\": \"lath screws\", \"kind\": \"screws\", \"yield\": 100 }, { \"name\": \"block\", \"kind\": \"masonry\", \"pack\": \"block\", \"yield\": \"9 l\", \"loss\": 10 }, { \"name\": \"wall mortar\"";

    private const string Walls = "\"must\": true }], \"setting\": { ";

    private static readonly string s_held = Put(Put(WorkJob.Text, Bought, Lath), Walls, Walls + "\"batten\": { \"of\": \"lath\", \"screws\": \"lath screws\", \"every\": 400 }, ");

    // By hand: 2000 mm of wall less a joint of 3 mm in each corner; a lath of 1200 and one cut to 794; four screws no more than 400 mm apart on the one, three on the other.
    [Fact]
    public void A_batten_goes_along_the_wall_under_its_first_whole_course_and_takes_screws_at_its_ends_and_between()
    {
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, s_held));
        var plan = Planner.Plan(Job(s_held));
        var (lath, screws) = (Of(plan, "lath"), Of(plan, "lath screws"));
        Assert.Equal(1.994, lath.Amount, 1e-9);
        Assert.Equal((2, 2, "under the first whole course, 1.99 m on wall"), (lath.Packs, lath.Lengths!.Value, Assert.Single(lath.Uses).How));
        Assert.Equal(7, screws.Amount);
        Assert.StartsWith("A lath is 1.20 m long, no joint where one reaches. walls: under", SupplyWords.Basis(lath, plan.Job.Tape), StringComparison.Ordinal);
        var json = Encoding.UTF8.GetString(PlanWriter.Write(plan));
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, json));
        Assert.Contains("\"kind\": \"batten\"", json, StringComparison.Ordinal);
    }

    // By hand: the hatch takes 500 mm and a joint of 3 mm on either side: 1194 mm at its left, 294 at its right.
    [Fact]
    public void An_opening_parts_it()
    {
        var plan = Planner.Plan(Job(Put(s_held, "\"openings\": [", "\"openings\": [{ \"name\": \"hatch\", \"left\": 1200, \"bottom\": 40, \"width\": 500, \"height\": 600 }, ")));
        Assert.Equal([1194, 294], Of(plan, "lath").Uses[0].Pieces.Select(piece => (int)piece.Millimetres));
        Assert.Equal("under the first whole course, 1.19 m and 0.29 m on wall", Of(plan, "lath").Uses[0].How);
    }

    [Fact]
    public void A_wall_that_starts_with_a_whole_course_and_a_floor_take_none()
    {
        var plan = Planner.Plan(Job(Put(s_held, "\"want\": \"joint\", \"face\": \"wall\", \"edge\": \"niche.bottom\"", "\"want\": \"full course\", \"face\": \"wall\", \"edge\": \"tub\"")));
        Assert.DoesNotContain(plan.Work!.Tasks, task => task.Name == "set wall, below the line");
        Assert.DoesNotContain(plan.Supplies, line => line.Supply.Kind == SupplyKind.Batten);
    }

    [Fact]
    public void Screws_through_a_membrane_are_warned_of()
    {
        var wet = Put(Put(s_held, "{ \"name\": \"wall mortar\"", "{ \"name\": \"roll-on\", \"kind\": \"membrane\", \"yield\": \"7 l\", \"covers\": \"6 m2\" }, { \"name\": \"wall mortar\""), "{ \"name\": \"wall\", \"outline\"", "{ \"name\": \"wall\", \"under\": { \"membrane\": { \"of\": \"roll-on\" } }, \"outline\"");
        Assert.Contains(Planner.Plan(Job(wet)).Findings, finding => finding is { Rule: "batten", Where: "walls" });
        Assert.DoesNotContain(Planner.Plan(Job(s_held)).Findings, finding => finding.Rule == "batten");
        Assert.DoesNotContain(Planner.Plan(Job(Put(wet, ", \"screws\": \"lath screws\", \"every\": 400", ""))).Findings, finding => finding.Rule == "batten");
    }

    // By hand: 1200 by 110 by 100 mm are 13.2 l, 900 by 350 by 400 mm are 126 l; a tenth is lost, 153.12 l, so 18 blocks of 9 l.
    [Fact]
    public void A_curb_and_a_bench_take_blocks_by_their_volume()
    {
        var text = Put(s_held, "\"faces\": [\n", "\"fills\": [{ \"name\": \"curb\", \"of\": \"block\", \"length\": 1200, \"width\": 110, \"height\": 100 }, { \"name\": \"bench\", \"of\": \"block\", \"length\": 900, \"width\": 350, \"height\": 400 }], \"faces\": [\n");
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, text));
        var block = Of(Planner.Plan(Job(text)), "block");
        Assert.Equal([13.2, 126], block.Uses.Select(use => Math.Round(use.Amount, 9)));
        Assert.Equal((153.12, 18), (Math.Round(block.Amount, 9), block.Packs));
        Assert.Equal("1200 mm by 110 mm by 100 mm", block.Uses[0].How);
        Assert.Contains(("fills[0].of", null), Samples.Faults(Put(text, "\"curb\", \"of\": \"block\"", "\"curb\", \"of\": \"lath\"")).Select(fault => (fault.Path, fault.Nearest)));
        Assert.Contains(("fills[0].width", "10 mm"), Samples.Faults(Put(text, "\"width\": 110", "\"width\": 0")).Select(fault => (fault.Path, fault.Nearest)));
        Assert.Contains(("fills[1].name", "\"curb 2\""), Samples.Faults(Put(text, "\"name\": \"bench\"", "\"name\": \"curb\"")).Select(fault => (fault.Path, fault.Nearest)));
    }

    [Theory]
    [InlineData(", \"every\": 400", "", "runs[0].setting.batten.screws", "\"every\": 460")]
    [InlineData("\"screws\": \"lath screws\", ", "", "runs[0].setting.batten.every", "\"screws\": \"..\"")]
    [InlineData("\"of\": \"lath\"", "\"of\": \"laths\"", "runs[0].setting.batten.of", "\"lath\"")]
    [InlineData("\"every\": 400", "\"every\": 0", "runs[0].setting.batten.every", "10 mm")]
    [InlineData("\"yield\": \"1.2 m\"", "\"yield\": \"0 m\"", "supplies[0].yield", null)]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest) =>
        Assert.Contains((path, nearest), Samples.Faults(Put(s_held, old, changed)).Select(fault => (fault.Path, fault.Nearest)));

    private static SupplyLine Of(Plan plan, string name) => plan.Supplies.Single(line => line.Supply.Name == name);

    private static string Put(string text, string old, string changed)
    {
        var put = text.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(text, put);
        return put;
    }

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job;
}
