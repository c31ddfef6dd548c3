using System.Globalization;
using System.Text;
using Gaugerod.App.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Jobs;

/// <summary>The jobs on this device: open, begin, remove; files in and out.</summary>
public sealed partial class JobsStation : ComponentBase, IAsyncDisposable
{
    private const long LargestFile = 8 * 1024 * 1024;

    private ShelfCard[] _cards = [];
    private string _trouble = "";
    private string _asked = "";
    private ShelfVersion[]? _versions;
    private bool _new;
    private Script _clock = null!;
    private readonly Dictionary<double, string> _times = [];

    // Handed down, not looked up: only so is the list drawn anew when the desk changes.
    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    [Inject]
    internal Shelf Shelf { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>Called when a job was laid on the desk.</summary>
    [Parameter]
    public EventCallback Opened { get; set; }

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        _clock = new(Js, "clock");
        await ListAsync();
    }

    private string When(double saved) => _times.TryGetValue(saved, out var time) ? "saved " + time : "";

    // The runtime here knows no time zones; the page does.
    private async Task TellTimesAsync(IEnumerable<double> moments)
    {
        double[] all = [.. moments.Distinct()];
        var said = await _clock.AskAsync<string>("times", string.Join(',', all.Select(moment => moment.ToString("R", CultureInfo.InvariantCulture))));
        foreach (var (moment, time) in all.Zip((said ?? "").Split(','))) _times[moment] = time;
    }

    private async Task ListAsync()
    {
        try
        {
            var cards = await Shelf.ListAsync();
            await TellTimesAsync(cards.Select(card => card.Saved));
            _cards = cards;
        }
        catch (JSException refused)
        {
            _trouble = $"The jobs of this device cannot be read ({refused.Message}).";
        }
    }

    private async Task OpenAsync(string id)
    {
        if (await Shelf.ReadAsync(id) is not { } job)
        {
            _trouble = "That job is no longer there.";
            await ListAsync();
            return;
        }

        Desk.Open(id, job.Text, job.Ticks, readOnly: !await Shelf.LockAsync(id));
        await Opened.InvokeAsync();
    }

    private async Task NewAsync(string text)
    {
        var id = Guid.NewGuid().ToString("N");
        await Shelf.LockAsync(id);
        Desk.Open(id, text, [], readOnly: false);
        await Opened.InvokeAsync();
    }

    private async Task OpenFileAsync(InputFileChangeEventArgs chosen)
    {
        _trouble = "";
        var file = chosen.File;
        if (file.Size > LargestFile)
        {
            _trouble = string.Create(CultureInfo.InvariantCulture, $"{file.Name} is {file.Size / (1024 * 1024)} MB; a job file has at most 8 MB. Nothing was changed.");
            return;
        }

        using var bytes = new MemoryStream();
        await file.OpenReadStream(LargestFile).CopyToAsync(bytes);
        var (text, refusal) = JobOpening.Open(bytes.ToArray(), file.Name);
        if (refusal.Length > 0) _trouble = "Nothing was opened or changed. " + refusal;
        else await NewAsync(text);
    }

    private Task SaveFileAsync() => Shelf.SaveFileAsync(JobFiles.NameOf(Desk.Name), JobFiles.Type, Encoding.UTF8.GetBytes(Desk.Text));

    private async Task SaveAllAsync() => await Shelf.SaveFileAsync("gaugerod-jobs.zip", "application/zip", JobFiles.Zip(await Shelf.AllAsync()));

    private async Task ShowVersionsAsync()
    {
        if (_versions is not null)
        {
            _versions = null;
            return;
        }

        var versions = await Shelf.VersionsAsync(Desk.Id);
        await TellTimesAsync(versions.Select(version => version.Saved));
        _versions = versions;
    }

    private async Task RestoreAsync(ShelfVersion version)
    {
        _versions = null;
        if (await Shelf.RestoreAsync(Desk.Id, version.Saved) is not { } job)
        {
            _trouble = "Another tab writes this job. Nothing was changed.";
            return;
        }

        Desk.Open(Desk.Id, job.Text, job.Ticks, readOnly: false);
        await ListAsync();
    }

    private bool Asked(ShelfCard card) => string.Equals(_asked, card.Id, StringComparison.Ordinal);

    private async Task RemoveAsync(ShelfCard card)
    {
        if (!Asked(card))
        {
            _asked = card.Id;
            return;
        }

        _asked = "";
        await Shelf.RemoveAsync(card.Id);
        if (string.Equals(card.Id, Desk.Id, StringComparison.Ordinal)) Desk.Close();
        await ListAsync();
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync() => _clock.DisposeAsync();
}
