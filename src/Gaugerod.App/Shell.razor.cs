using Gaugerod.App.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace Gaugerod.App;

/// <summary>The page round the stations: which is open, what can be undone, how the saving stands.</summary>
public sealed partial class Shell : ComponentBase, IDisposable
{
    private static readonly string[] s_lights = ["as the device", "light", "dark", "strong"];
    private int _light;

    [Inject]
    internal JobDesk Desk { get; set; } = null!;

    [Inject]
    internal Shelf Shelf { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private static IReadOnlyList<Station> Stations { get; } = Enum.GetValues<Station>();

    private Station Here { get; set; }

    private ErrorBoundary? Boundary { get; set; }

    private string Light => s_lights[_light];

    private string Undo => Desk.Undoes is { } what ? $"Undo: {what}" : "Nothing to undo";

    private string Redo => Desk.Redoes is { } what ? $"Redo: {what}" : "Nothing to redo";

    private string State => Shelf.State;

    /// <inheritdoc />
    protected override void OnInitialized()
    {
        Desk.Changed += Saved;
        Shelf.Said += Say;
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        await Shelf.WatchAsync();
        await Js.InvokeVoidAsync("document.body.setAttribute", "data-ready", "yes");
    }

    private static bool NeedsJob(Station station) => station is not (Station.Jobs or Station.Help);

    private async Task GoAsync(Station station)
    {
        Here = station;
        Boundary?.Recover();
        StateHasChanged();
        await Task.Yield();
        await Js.InvokeVoidAsync("scrollTo", 0, 0);
    }

    private Task OpenedAsync() => GoAsync(Station.Measure);

    private async Task FocusStationAsync() => await Js.InvokeVoidAsync("document.getElementById('station').focus");

    private async Task NextLightAsync()
    {
        _light = (_light + 1) % s_lights.Length;
        await Js.InvokeVoidAsync("document.documentElement.setAttribute", "data-light", Light);
    }

    private void Saved(object? sender, EventArgs e)
    {
        if (Desk.Id.Length > 0 && !Desk.ReadOnly) _ = Shelf.HoldAsync(Desk.Id, Desk.Name, Desk.Text, [.. Desk.Ticks]);
        StateHasChanged();
    }

    private void Say(object? sender, EventArgs e) => StateHasChanged();

    /// <inheritdoc />
    public void Dispose()
    {
        Desk.Changed -= Saved;
        Shelf.Said -= Say;
    }
}
