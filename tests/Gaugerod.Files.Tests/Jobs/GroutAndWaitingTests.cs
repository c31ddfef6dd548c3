using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Grout by the mix, pieces that are cut last, and tasks whose names or products are several, on an invented bathroom.</summary>
public sealed class GroutAndWaitingTests
{
    private const string Grout = "\"kind\": \"grout\", \"yield\": \"3 l\", ";

    private static readonly string s_mixed = Put(WorkJob.Text, Grout, Grout + "\"potLife\": \"30 min\", \"loss\": 10, ");

    [Fact]
    public void Grout_is_mixed_no_more_than_its_pot_life_lets_one_fill()
    {
        var plan = Planner.Plan(Job(s_mixed));
        var (line, bare) = (plan.Supplies.Single(one => one.Supply.Name == "light grout"), Planner.Plan(Job(WorkJob.Text)));
        Assert.DoesNotContain(bare.Work!.Tasks, task => task.Kind == WorkKind.Grouting && task.Batches.Count > 0);
        foreach (var run in plan.Runs)
        {
            var task = plan.Work!.Tasks.Single(one => one.Name == "grout " + run.Request.Name);

            // By hand: at 5 m² an hour half an hour fills 2.5 m², so a field takes as many mixes and, where courses are not parted, one more at the most.
            var field = run.Faces.Sum(face => (double)face.Face.Field.DoubledArea / 2 / 3200 / 3200 / 1e6);
            Assert.InRange(task.Batches.Count, (int)Math.Ceiling(field / 2.5), (int)Math.Ceiling(field / 2.5) + 1);
            Assert.All(task.Batches, mix => Assert.True((mix.Ends - mix.Begins).TotalMinutes <= 30 && mix.Packs <= 1));
            Assert.Equal(run.Faces.Sum(face => face.Pieces.Count), task.Batches.Sum(mix => mix.Pieces));
            Assert.Equal(1.1 * line.Uses.Single(use => use.Where == run.Request.Name).Amount, task.Batches.Sum(mix => mix.Litres), 1e-6);
            Assert.Null(task.Ahead);
            Assert.Equal(bare.Work!.Tasks.Single(one => one.Name == task.Name).Minutes, task.Minutes);
        }

        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(plan))));
    }

    [Fact]
    public void Where_a_run_goes_over_several_faces_a_mix_names_them()
    {
        var two = Put(Put(s_mixed, "\"faces\": [\"floor\"], \"bond\"", "\"faces\": [\"step\", \"floor\"], \"bond\""), "{ \"name\": \"floor\", \"outline\"", "{ \"name\": \"step\", \"outline\": [[0, 0], [900, 0], [900, 600], [0, 600]], \"edges\": [{ \"name\": \"a\", \"kind\": \"threshold\" }, { \"name\": \"b\", \"kind\": \"free\" }, { \"name\": \"c\", \"kind\": \"free\" }, { \"name\": \"d\", \"kind\": \"free\" }] }, { \"name\": \"floor\", \"outline\"");
        var plan = Planner.Plan(Job(two));
        var mixes = plan.Work!.Tasks.Single(task => task.Name == "grout ground").Batches;
        Assert.Equal(["floor", "step"], mixes.SelectMany(mix => mix.Courses).Select(course => course.Face).Distinct().Order());
        Assert.Matches("^(floor|step), courses? ", WorkWords.Covers(mixes[0]));
        Assert.Contains("\"face\": \"step\"", Encoding.UTF8.GetString(PlanWriter.Write(plan)), StringComparison.Ordinal);
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(plan))));
    }

    // By hand: a tile of 297 by 297 mm at 0.05 m² an hour is 106 minutes of grouting.
    [Fact]
    public void A_pot_life_shorter_than_the_joints_of_one_tile_is_refused()
    {
        var fault = Assert.Single(JobCheck.Check(Job(Put(s_mixed, "\"grouting\": \"5 m2\"", "\"grouting\": \"0.05 m2\""))));
        Assert.Equal(("supplies[1].potLife", "30 min, and the joints of one tile take 1 h 46 min at the pace of grouting"), (fault.Path, fault.Found));
    }

    [Fact]
    public void Pieces_that_wait_are_cut_last_and_stand_in_no_other_list()
    {
        var before = Planner.Plan(Job(WorkJob.Text));
        var cutting = before.Cutting.Single(one => one.Product == "white");
        var (sawn, hand) = (cutting.Settings[0].Pieces[0], cutting.ByHand[0]);
        var plan = Planner.Plan(Job(Put(WorkJob.Text, "\"before\": [\"hand-over\"]", $"\"pieces\": [\"{sawn}\", \"{hand}\"]")));
        var white = plan.Cutting.Single(one => one.Product == "white");
        var (now, later) = CutOrder.Of(plan.Job, white);
        var waits = Assert.Single(later);
        Assert.Equal("glass", waits.For);
        Assert.Equal([sawn, hand], waits.Pieces);
        Assert.Equal([hand], waits.ByHand);

        // What was listed is listed still, each as often under each fence, once now or once last.
        Assert.Equal(
            white.Settings.SelectMany(setting => setting.Pieces.Select(id => (setting.Fence, setting.Across, id))).Order(),
            now.Settings.Concat(waits.Settings).SelectMany(setting => setting.Pieces.Select(id => (setting.Fence, setting.Across, id))).Order());
        Assert.Equal(white.ByHand.Order(), now.ByHand.Concat(waits.ByHand).Order());
        Assert.DoesNotContain(sawn, now.Settings.SelectMany(setting => setting.Pieces));

        var json = Encoding.UTF8.GetString(PlanWriter.Write(plan));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, json));
        Assert.Equal("glass", (string)JsonNode.Parse(json)!["cutting"]!["products"]![0]!["later"]![0]!["for"]!);
        Assert.DoesNotContain("\"later\"", Encoding.UTF8.GetString(PlanWriter.Write(before)), StringComparison.Ordinal);
    }

    // All of a tile waits: it is parted when that is in, and at no fence before.
    [Fact]
    public void A_tile_of_which_all_waits_is_parted_last()
    {
        var before = Planner.Plan(Samples.Job("galley-splash"));
        var (product, tile) = before.Cutting.SelectMany(one => one.Tiles.Select(tile => (one, tile))).First(of => of.one.Settings.Any(setting => setting.Parts.Contains(of.tile.Number)));
        var ids = string.Join(", ", tile.Pieces.Select(piece => $"\"{piece.Id}\""));
        var text = Samples.Text("galley-splash").Replace("\"units\": \"mm\",", $"\"units\": \"mm\", \"work\": {{ \"start\": \"2027-03-25\", \"made\": [{{ \"name\": \"slab\", \"lead\": \"5 days\", \"pieces\": [{ids}] }}] }},", StringComparison.Ordinal);
        var plan = Planner.Plan(Job(text));
        var (now, later) = CutOrder.Of(plan.Job, plan.Cutting.Single(one => one.Product == product.Product));
        Assert.DoesNotContain(now.Settings, setting => setting.Parts.Contains(tile.Number));
        Assert.Contains(Assert.Single(later).Settings, setting => setting.Parts.Contains(tile.Number));
        Assert.Equal(product.Settings.Sum(setting => setting.Parts.Count), now.Settings.Concat(later[0].Settings).Sum(setting => setting.Parts.Count));
    }

    // A corner has tile of both runs: silicone on grout that is not dry lets go.
    [Fact]
    public void Soft_joints_wait_until_the_grout_of_all_runs_is_dry()
    {
        var plan = Planner.Plan(Job(WorkJob.Text)).Work!;
        var grouts = plan.Tasks.Where(task => task.Kind == WorkKind.Grouting).ToList();
        Assert.Equal(2, grouts.Count);
        Assert.All(plan.Tasks.Where(task => task.Kind == WorkKind.SoftJoints), soft => Assert.All(grouts, grout => Assert.True(soft.Begins >= grout.Ends!.Value.AddHours(24))));
    }

    [Fact]
    public void What_waits_for_one_of_two_things_does_not_wait_for_the_other_whose_name_ends_alike()
    {
        var plan = Planner.Plan(Job(WorkJob.Text));
        var piece = plan.Runs[0].Faces[0].Pieces[0].Id;
        var two = Planner.Plan(Job(Put(WorkJob.Text, "\"made\": [{ \"name\": \"glass\"", $"\"made\": [{{ \"name\": \"slab, with glass\", \"lead\": \"2 days\", \"pieces\": [\"{piece}\"] }}, {{ \"name\": \"glass\"")));
        var waiting = two.Work!.Tasks.Single(task => task.Awaits == "slab, with glass");
        Assert.Contains(waiting.Waits, wait => wait.Task == "slab, with glass is in");
        Assert.DoesNotContain(waiting.Waits, wait => wait.Task == "glass is in");
    }

    [Theory]
    [InlineData("\"name\": \"pipes\"", "\"name\": \"start\"", "work.tasks[0].name", "\"start 2\"")]
    [InlineData("\"name\": \"pipes\"", "\"name\": \"glass is in\"", "work.made[0].name", "\"glass 2\"")]
    public void What_the_plan_calls_a_moment_no_task_of_ones_own_is_called(string old, string changed, string path, string nearest) =>
        Assert.Contains((path, nearest), Samples.Faults(Put(WorkJob.Text, old, changed)).Select(fault => (fault.Path, fault.Nearest!)));

    // By hand: the one primer holds an hour, the other five; what comes next waits for the longer, and both are said. Of the membranes one is coated once, the other twice.
    [Fact]
    public void Of_several_primers_and_membranes_the_longest_hold_counts()
    {
        var bought = Put(WorkJob.Text, "\"supplies\": [", "\"supplies\": [{ \"name\": \"quick\", \"kind\": \"primer\", \"yield\": \"20 m2\", \"holds\": { \"primer\": \"1 h\" } }, { \"name\": \"slow\", \"kind\": \"primer\", \"yield\": \"20 m2\", \"holds\": { \"primer\": \"5 h\" } }, { \"name\": \"thin\", \"kind\": \"membrane\", \"yield\": \"7 l\", \"covers\": \"6 m2\", \"holds\": { \"coat\": \"9 h\", \"test\": \"50 h\" } }, { \"name\": \"thick\", \"kind\": \"membrane\", \"yield\": \"7 l\", \"covers\": \"6 m2\", \"holds\": { \"coat\": \"3 h\", \"test\": \"20 h\" } }, ");
        var under = Put(Put(Put(bought, "{ \"name\": \"wall\", \"outline\"", "{ \"name\": \"wall\", \"under\": { \"primer\": { \"of\": \"quick\" }, \"membrane\": { \"of\": \"thin\", \"coats\": 1 } }, \"outline\""), "{ \"name\": \"floor\", \"outline\"", "{ \"name\": \"floor\", \"under\": { \"primer\": { \"of\": \"slow\" }, \"membrane\": { \"of\": \"thick\", \"coats\": 2 } }, \"outline\""), "\"coats\": 2, \"flood\"", "\"flood\"");
        var tasks = Planner.Plan(Job(under)).Work!.Tasks.ToDictionary(task => task.Name, StringComparer.Ordinal);
        var coat = tasks["membrane, coat 1"];
        Assert.Equal([("slow", 300), ("quick", 60)], coat.Waits.Where(wait => wait.Task == "primer").Select(wait => (wait.Product!, wait.Minutes)));
        Assert.True(coat.Begins >= tasks["primer"].Ends!.Value.AddMinutes(300));
        Assert.Equal([("thin", 540), ("thick", 180)], tasks["membrane, coat 2"].Waits.Select(wait => (wait.Product!, wait.Minutes)));
        Assert.Equal([("thin", 3000), ("thick", 1200)], tasks["flood test"].Waits.Select(wait => (wait.Product!, wait.Minutes)));

        // The second coat goes on the floor alone: 2 by 1.5 m.
        Assert.Equal(3, tasks["membrane, coat 2"].Amounts[0].Amount, 1e-9);
    }

    private static string Put(string text, string old, string changed)
    {
        var put = text.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(text, put);
        return put;
    }

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job;
}
