using System.Text;
using Gaugerod.App.Desk;
using Gaugerod.App.Sheetmaking;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Prices;
using Gaugerod.Files.Plans;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.WebAssembly.Services;
using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Sheets;

/// <summary>What to print and save.</summary>
public sealed partial class SheetsStation : ComponentBase, IDisposable
{
    private const string SvgType = "image/svg+xml";

    private ElementReference _key;
    private Plan? _drawn;
    private string _lost = "";
    private List<Picture> _pictures = [];

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    [Inject]
    internal Shelf Shelf { get; set; } = null!;

    [Inject]
    internal LazyAssemblyLoader Parts { get; set; } = null!;

    [Inject]
    internal SheetMaker Maker { get; set; } = null!;

    /// <summary>Sheets of a job that is still being changed or planned would be of another than the one in sight.</summary>
    private bool CanMake => Desk.Fresh && !Maker.Busy;

    private bool AsItStands => string.Equals(Maker.Text, Desk.Text, StringComparison.Ordinal);

    /// <summary>How far the sheets of this job are: what came of another's is no news here.</summary>
    private MakingStage Stage => Maker.Busy || string.Equals(Maker.Job, Desk.Id, StringComparison.Ordinal) ? Maker.Stage : MakingStage.Rest;

    private string? Panel => Stage switch
    {
        MakingStage.Rest => null,
        MakingStage.Failed => "notice bad at-work",
        _ => "notice at-work",
    };

    /// <inheritdoc />
    protected override void OnInitialized() => Maker.Changed += Say;

    /// <inheritdoc />
    protected override async Task OnParametersSetAsync()
    {
        if (Desk.Plan is not { } plan || ReferenceEquals(plan, _drawn)) return;
        _drawn = plan;
        // The keys are shown first, and the pictures one by one: each takes long enough to be felt on a slow phone.
        var pictures = new List<Picture>();
        foreach (var run in plan.Runs)
        {
            if (await Breath.ThroughAsync(RunDrawings.Steps(plan, run), () => ReferenceEquals(plan, _drawn)) is not { } drawn) return;
            if (await Breath.ThroughAsync(SvgWriter.Steps(drawn.Drawing), () => ReferenceEquals(plan, _drawn)) is not { } svg) return;
            pictures.Add(new(drawn.Run, svg));
            _pictures = [.. pictures];
            StateHasChanged();
        }
    }

    /// <inheritdoc />
    public void Dispose()
    {
        _drawn = null;
        Maker.Changed -= Say;
    }

    private static string FileName(string run) => "run-" + new string([.. run.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-')]) + ".svg";

    private async Task MakeAsync(string kind)
    {
        if (CanMake && Desk.Plan is { } plan) await Maker.MakeAsync(Desk.Id, Desk.Text, plan, kind);
    }

    private async Task StopAsync()
    {
        await Maker.StopAsync();
        await _key.FocusAsync();
    }

    private Task PlanFileAsync() => Shelf.SaveFileAsync("plan.json", JobFiles.Type, PlanWriter.Write(Desk.Plan!));

    private Task PriceFileAsync(Estimate price) => Shelf.SaveFileAsync("price.csv", "text/csv", CsvWriter.Write(PriceTable.Of(price)));

    // What writes it is fetched when it is first asked for; without a network it may not be there.
    private async Task CalendarAsync()
    {
        try
        {
            _lost = "";
            await Shelf.SaveFileAsync("work.ics", "text/calendar", await CalendarParts.WriteAsync(Parts, Desk.Plan!));
        }
        catch (Exception trouble) when (trouble is IOException or InvalidOperationException or HttpRequestException or JSException)
        {
            _lost = trouble.Message;
        }
    }

    private Task SaveAsync(string name, string type, string text) => Shelf.SaveFileAsync(name, type, Encoding.UTF8.GetBytes(text));

    private void Say(object? sender, EventArgs e) => StateHasChanged();

    private sealed record Picture(string Run, string Svg);
}
