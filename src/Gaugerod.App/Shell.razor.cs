using System.Text;
using Gaugerod.App.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace Gaugerod.App;

/// <summary>The page round the stations: which is open, what can be undone, how the saving stands.</summary>
public sealed partial class Shell : ComponentBase, IDisposable
{
    private Station _shown;
    private bool _newer;
    private string _trouble = "";
    private bool _taking;
    private (string Id, string Text, string Ticks) _held;

    private ElementReference _station;

    [Inject]
    internal JobDesk Desk { get; set; } = null!;

    [Inject]
    internal Shelf Shelf { get; set; } = null!;

    [Inject]
    internal Updates Updates { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>The app's own version, for a person who reports something.</summary>
    internal static string Version { get; } = typeof(Shell).Assembly.GetName().Version?.ToString(3) ?? "";

    [Inject]
    internal Whereabouts Where { get; set; } = null!;

    [Inject]
    internal Paint Paint { get; set; } = null!;

    private ErrorBoundary? Boundary { get; set; }

    /// <inheritdoc />
    protected override void OnInitialized()
    {
        Desk.Changed += Changed;
        Desk.Ticked += Hold;
        Shelf.Said += Say;
        Shelf.Lost += Yield;
        Updates.Ready += Offer;
        Where.Moved += Arrive;
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        await Shelf.WatchAsync();
        await Where.WatchAsync();
        await ReopenAsync();
        await Updates.WatchAsync();
        _shown = Where.Here;
        Where.Show();
        StateHasChanged();
        await Js.InvokeVoidAsync("document.documentElement.setAttribute", "data-version", Version);
        await Js.InvokeVoidAsync("document.body.setAttribute", "data-ready", "yes");
    }

    /// <summary>Shows where the person now is, once the key that was touched is seen to be pressed.</summary>
    private async void Arrive(object? sender, EventArgs e)
    {
        await Paint.NextAsync();
        Boundary?.Recover();
        _shown = Where.Here;
        Where.Show();
        StateHasChanged();
        await Js.InvokeVoidAsync("scrollTo", 0, 0);
    }

    private async Task FocusStationAsync() => await _station.FocusAsync();

    /// <summary>A page loaded anew takes up the job that lay on its desk.</summary>
    private async Task ReopenAsync()
    {
        try
        {
            if (await Shelf.OpenedAsync() is not { } id || await Shelf.ReadAsync(id) is not { } job) return;
            Desk.Open(id, job.Text, job.Ticks, readOnly: !await Shelf.LockAsync(id));
        }
        catch (JSException)
        {
            // Nothing is kept here; the notice of it stands already.
        }
    }

    private void Changed(object? sender, EventArgs e)
    {
        Hold(sender, e);
        _shown = Where.Here;
        Where.Show();
        StateHasChanged();
    }

    private void Hold(object? sender, EventArgs e)
    {
        // Planning says much; only what a person changed is worth handing over.
        var now = (Desk.Id, Desk.Text, string.Join(' ', Desk.Ticks));
        if (Desk.Id.Length > 0 && !Desk.ReadOnly && now != _held)
        {
            _held = now;
            _ = Shelf.HoldAsync(Desk.Id, Desk.Name, Desk.Text, [.. Desk.Ticks]);
        }
    }

    private Task SaveFileAsync() => Shelf.SaveFileAsync(JobFiles.NameOf(Desk.Name), JobFiles.Type, Encoding.UTF8.GetBytes(Desk.Text));

    private async Task TakeNewerAsync()
    {
        _newer = false;
        await Shelf.FlushAsync();
        await Updates.TakeAsync();
    }

    private async Task TakeOverAsync()
    {
        _taking = true;
        var id = Desk.Id;
        var job = await Shelf.TakeOverAsync(id);
        _taking = false;
        if (job is not null) Desk.Open(id, job.Text, job.Ticks, readOnly: false);
    }

    private void Yield(object? sender, EventArgs e)
    {
        if (string.Equals(Shelf.LostJob, Desk.Id, StringComparison.Ordinal)) Desk.Open(Desk.Id, Desk.Text, [.. Desk.Ticks], readOnly: true);
    }

    private void Offer(object? sender, EventArgs e)
    {
        _newer = true;
        StateHasChanged();
    }

    private void Later() => _newer = false;

    // The bar says how the saving stands; here only a trouble is shown.
    private void Say(object? sender, EventArgs e)
    {
        if (string.Equals(_trouble, Shelf.News.Trouble, StringComparison.Ordinal)) return;
        _trouble = Shelf.News.Trouble;
        StateHasChanged();
    }

    /// <inheritdoc />
    public void Dispose()
    {
        Desk.Changed -= Changed;
        Desk.Ticked -= Hold;
        Shelf.Said -= Say;
        Shelf.Lost -= Yield;
        Updates.Ready -= Offer;
        Where.Moved -= Arrive;
    }
}
