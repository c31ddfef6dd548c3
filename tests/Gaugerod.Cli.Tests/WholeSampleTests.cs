using System.Text;
using System.Text.Json;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Sheets.Sheets;
using Gaugerod.Testing;

namespace Gaugerod.Cli.Tests;

/// <summary>The sample that shows all of it, from bare studs to the hand-over: every part is in its plan and on its sheets.</summary>
public sealed class WholeSampleTests
{
    private static readonly Plan Planned = Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(File.ReadAllBytes(Path.Combine(Repo.Root, "samples", "attic-shower.json")), "attic-shower.json")).Job);

    [Fact]
    public void Every_supply_it_names_is_used_and_every_price_it_states_is_used()
    {
        Assert.Equal(Planned.Job.Supplies.Select(supply => supply.Name), Planned.Supplies.Where(line => line.Supply.Kind != Engine.Takeoffs.SupplyKind.Mix).Select(line => line.Supply.Name));
        Assert.Equal(Planned.Beds[0].Bags, Planned.Supplies.Single(line => line.Supply.Kind == Engine.Takeoffs.SupplyKind.Mix).Packs);
        Assert.Empty(Planned.Price!.Lacking);
        Assert.Equal(Planned.Price.Lines.Count, Planned.Price.Lines.Select(line => (line.Group, line.What)).Distinct().Count());
        Assert.DoesNotContain(Planned.Findings, finding => finding.Level == Engine.FindingLevel.Stop);
    }

    [Fact]
    public void Its_order_of_work_has_a_day_for_every_task_and_a_mix_for_every_tile()
    {
        var work = Planned.Work!;
        Assert.All(work.Tasks, task => Assert.NotNull(task.Begins));
        Assert.Equal(
            Planned.Runs.SelectMany(run => run.Faces).Sum(face => face.Pieces.Count),
            work.Tasks.Where(task => task.Kind == Engine.Sequencing.WorkKind.Setting).Sum(task => task.Batches.Sum(batch => batch.Pieces)));
        // Boards hang on three walls, the membrane goes on them and on the tray: neither is timed by the other's area.
        Assert.Equal(Planned.Boards.Faces.Sum(face => face.Area) / 1e6, Area("boards"), 1e-9);
        Assert.True(Area("membrane, coat 1") > Area("boards"));
        Assert.Contains(WorkNotes.Cautions(Planned.Job, Engine.Sequencing.WorkKind.Membrane), words => words.Contains("water", StringComparison.OrdinalIgnoreCase));

        double Area(string task) => work.Tasks.Single(one => one.Name == task).Amounts.Single(amount => amount.Unit == Engine.Sequencing.PaceUnit.SquareMetres).Amount;
    }

    [Fact]
    public void What_is_built_before_tile_and_what_carries_it_meanwhile_are_in_it()
    {
        // The membrane keeps the lath's screws off: it is propped, and hangs under every wall whose lowest course is cut.
        Assert.Contains(Planned.Work!.Tasks, task => task.Name == "set back, below the line");
        Assert.DoesNotContain(Planned.Findings, finding => finding.Rule == "batten");
        Assert.Equal(5, Assert.Single(Planned.Boards.Faces.SelectMany(face => face.Niches)).Pieces.Count);
        Assert.DoesNotContain(Planned.Findings, finding => finding.Text.StartsWith("With its lining", StringComparison.Ordinal));
        Assert.All(Planned.Work.Tasks.Where(task => task.Kind == Engine.Sequencing.WorkKind.Grouting), task => Assert.NotEmpty(task.Batches));

        // By hand: 1204 by 100 by 120 mm are 14.448 l, three blocks of 6.
        Assert.Equal((14.448, 3), (Math.Round(Planned.Supplies.Single(line => line.Supply.Name == "curb block").Amount, 6), Planned.Supplies.Single(line => line.Supply.Name == "curb block").Packs));

        // Priced and timed by one count.
        var trims = Planned.Work.Tasks.Single(task => task.Name == "trims of walls").Amounts.Single(amount => amount.Unit == Engine.Sequencing.PaceUnit.Pieces).Amount;
        Assert.Equal((decimal)trims, Engine.Planning.JobPricing.Priced(Planned with { Job = Planned.Job with { Prices = Planned.Job.Prices! with { Labour = [new("trims", Engine.Prices.PriceUnit.Each, Engine.Prices.Spread.Of(1)) { Of = Engine.Prices.LabourOf.TrimPieces }] } } }).Price!.Lines.Single(line => line.What == "trims").Quantity.Likely);
    }

    [Fact]
    public void Its_plan_file_has_every_section_and_its_sheets_every_part()
    {
        using var json = JsonDocument.Parse(Encoding.UTF8.GetString(PlanWriter.Write(Planned)));
        foreach (var section in (string[])["supplies", "price", "sequence", "handover", "takeoff", "trim"]) Assert.True(json.RootElement.TryGetProperty(section, out _), section);
        Assert.True(json.RootElement.GetProperty("prep").TryGetProperty("boards", out _));
        var titles = JobSheets.Pages(Planned).Select(sheet => sheet.Title).ToList();
        foreach (var part in (string[])["Boards", "Sheets of board", "Bed", "Order of work", "Trims"]) Assert.Contains(titles, title => title.StartsWith("Attic shower: " + part, StringComparison.Ordinal));
    }
}
