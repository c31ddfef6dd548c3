using System.Text;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>The order of work of a job file, and slips in it.</summary>
public sealed class WorkJobTests
{
    private static readonly Plan Planned = Planner.Plan(Job(WorkJob.Text));

    [Fact]
    public void The_order_goes_from_protection_to_the_first_use_by_the_trades_steps()
    {
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, WorkJob.Text));
        var names = Planned.Work!.Tasks.Select(task => task.Name).ToList();
        string[] order =
        [
            "protection", "tear-out", "pipes", "primer", "membrane, coat 1", "membrane, coat 2", "flood test", "lines of walls", "set wall", "set floor",
            "set wall, below the line", "grout walls", "soft joints of walls", "hand-over", "first use",
        ];
        Assert.Equal(order, names.Where(order.Contains));
        Assert.Contains("returns on wall", names);
        Assert.Contains("glass is in", names);
        Assert.All(Planned.Work.Tasks, task => Assert.NotNull(task.Begins));
    }

    [Fact]
    public void The_bags_own_hold_comes_first_then_the_jobs_then_what_is_printed_and_that_is_said()
    {
        Assert.Equal((24 * 60, HoldFrom.Product), Wait("grout walls", "set wall"));
        Assert.Equal((16 * 60, HoldFrom.Product), Wait("set floor", "set wall"));
        Assert.Equal((24 * 60, HoldFrom.Job), Wait("set wall, below the line", "set floor"));
        var bare = Planner.Plan(Job(WorkJob.Text.Replace("\"grout\": \"24 h\", ", "", StringComparison.Ordinal)));
        Assert.Equal((48 * 60, HoldFrom.Published), WorkJobTests.Wait(bare, "grout walls", "set wall"));
        Assert.Contains(bare.Findings, finding => finding is { Rule: "work-hold", Level: FindingLevel.Warn, Limit: "24 h to 48 h" });

        (int, HoldFrom) Wait(string task, string of) => WorkJobTests.Wait(Planned, task, of);
    }

    [Fact]
    public void How_long_tile_is_set_comes_from_its_area_and_its_cuts_at_the_users_pace()
    {
        var up = Planned.Work!.Tasks.First(task => task.Name == "set wall");
        var pieces = Planned.Runs[0].Faces[0].Pieces;
        var below = Planned.Work.Tasks.First(task => task.Name == "set wall, below the line").Pieces;
        var set = pieces.Where(piece => !below.Contains(piece.Id)).ToList();
        var area = set.Sum(piece => (double)piece.Outline.DoubledArea / 2 / 3200 / 3200 / 1e6);
        Assert.NotEmpty(below);
        Assert.Equal((int)Math.Ceiling((area / 1.2 * 60) + (set.Count(piece => piece.Cuts.Count > 0) * 5) - 1e-9), up.Minutes);
        Assert.Equal(set.Count, up.Batches.Sum(batch => batch.Pieces));
        Assert.All(up.Batches, batch => Assert.True((batch.Ends - batch.Begins).TotalMinutes <= 120));
        Assert.StartsWith("course", WorkWords.Covers(up.Batches[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_file_holds_the_order_and_keeps_its_schema()
    {
        var json = Encoding.UTF8.GetString(PlanWriter.Write(Planned));
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, json));
        Assert.Contains("\"begins\": \"2027-03-25T08:00\"", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Floors_are_covered_where_they_come_before_walls()
    {
        var names = Planner.Plan(Job(WorkJob.Text.Replace("after walls", "before walls", StringComparison.Ordinal))).Work!.Tasks.Select(task => task.Name).ToList();
        Assert.True(names.IndexOf("set floor") < names.IndexOf("floor cover") && names.IndexOf("floor cover") < names.IndexOf("set wall"));
    }

    [Fact]
    public void Pieces_that_wait_for_something_are_kept_apart()
    {
        var piece = Planned.Runs[0].Faces[0].Pieces[0].Id;
        var plan = Planner.Plan(Job(WorkJob.Text.Replace("\"before\": [\"hand-over\"]", $"\"pieces\": [\"{piece}\", \"Q99\"]", StringComparison.Ordinal)));
        var waiting = plan.Work!.Tasks.First(task => task.Name == "set wall, with glass");
        Assert.Equal([piece], waiting.Pieces);
        Assert.True(waiting.Begins >= plan.Work.Tasks.First(task => task.Name == "glass is in").Begins);
        Assert.Contains(plan.Findings, finding => finding.Rule == "work-order" && finding.Text.Contains("Q99", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"2027-03-25\"", "\"2027-02-30\"", "work.start", "\"2027-02-28\"")]
    [InlineData("\"2027-03-25\"", "\"25.3.2027\"", "work.start", null)]
    [InlineData("\"from\": \"08:00\"", "\"from\": \"8\"", "work.day.from", "\"08:00\"")]
    [InlineData("\"to\": \"16:30\"", "\"to\": \"07:30\"", "work.day.to", "\"16:30\"")]
    [InlineData("\"break\": \"30 min\"", "\"break\": \"9 h\"", "work.day.break", "\"30 min\"")]
    [InlineData("[\"mon\", \"tue\", \"wed\", \"thu\", \"fri\"]", "[]", "work.days", null)]
    [InlineData("\"tue\"", "\"tues\"", "work.days[1]", "\"tue\"")]
    [InlineData("\"to\": \"2027-04-02\"", "\"to\": \"2027-03-02\"", "work.off[1].to", "\"2027-04-01\"")]
    [InlineData("\"clocks\": \"EU\"", "\"clocks\": \"eu\"", "work.clocks", "\"EU\"")]
    [InlineData("\"hands\": 1,", "\"hands\": 6,", "work.hands", "4")]
    [InlineData("\"setting\": \"1.2 m2\"", "\"setting\": \"1.2 m\"", "work.pace.setting", null)]
    [InlineData("\"potLife\": \"2 h\"", "\"potLife\": 2", "supplies[0].potLife", "\"2 h\"")]
    [InlineData("\"walk\": \"24 h\"", "\"walk\": \"900 days\"", "work.holds.walk", "\"365 days\"")]
    [InlineData("\"after\": [\"tear-out\"], \"before\"", "\"after\": [\"tearout\"], \"before\"", "work.tasks[0].after[0]", "\"tear-out\"")]
    [InlineData("\"name\": \"pipes\"", "\"name\": \"setting\"", "work.tasks[0].name", "\"setting 2\"")]
    [InlineData("\"floors\": [\"floor\"]", "\"floors\": [\"flor\"]", "work.floors[0]", "\"floor\"")]
    [InlineData("\"lead\": \"10 days\", ", "", "work.made[0].lead", null)]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest)
    {
        var spoilt = WorkJob.Text.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(WorkJob.Text, spoilt);
        Assert.Contains((path, nearest), Samples.Faults(spoilt).Select(fault => (fault.Path, fault.Nearest)));
    }

    [Theory]
    [InlineData("\"before\": [\"primer\"]", "\"before\": [\"protection\"]", "work.tasks[0].before[0]", "a loop: \"protection\" before \"tear-out\" before \"pipes\" before \"protection\"")]
    [InlineData("\"potLife\": \"2 h\"", "\"potLife\": \"5 min\"", "supplies[0].potLife", "5 min, and one tile that is cut takes 10 min at the pace of setting")]
    [InlineData("\"openTime\": \"30 min\"", "\"openTime\": \"5 min\"", "supplies[0].openTime", "5 min, and one tile that is cut takes 10 min at the pace of setting")]
    [InlineData("\"2027-03-29\"", "{ \"from\": \"2027-01-01\", \"to\": \"2099-01-01\" }", "work.off", "no day to work on, from 2027-03-25 on, in ten years")]
    [InlineData("\"takes\": \"1 h\"", "\"takes\": \"1 h\", \"hands\": 3", "work.tasks[1].hands", "3 hands, of 1")]
    public void What_cannot_be_is_refused_before_it_is_planned(string old, string changed, string path, string found)
    {
        var fault = Assert.Single(JobCheck.Check(Job(WorkJob.Text.Replace(old, changed, StringComparison.Ordinal))));
        Assert.Equal((path, found), (fault.Path, fault.Found));
    }

    [Fact]
    public void Dates_that_never_come_are_said_and_nothing_hangs()
    {
        var plan = Planner.Plan(Job(WorkJob.Text.Replace("2027-03-25", "9999-12-28", StringComparison.Ordinal)));
        Assert.Contains(plan.Findings, finding => finding is { Rule: "work-never", Level: FindingLevel.Stop });
        Assert.Equal(Planned.Work!.Tasks.Count, plan.Work!.Tasks.Count);
    }

    private static (int Minutes, HoldFrom From) Wait(Plan plan, string task, string of)
    {
        var wait = plan.Work!.Tasks.First(one => one.Name == task).Waits.First(one => one.Task == of);
        return (wait.Minutes, wait.From);
    }

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job;
}
