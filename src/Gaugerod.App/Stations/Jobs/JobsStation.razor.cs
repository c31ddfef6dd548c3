using System.Globalization;
using System.Text;
using Gaugerod.App.Desk;
using Gaugerod.Files.Jobs;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Gaugerod.App.Stations.Jobs;

/// <summary>The jobs on this device: open, begin, remove; files in and out.</summary>
public sealed partial class JobsStation : ComponentBase
{
    private const long LargestFile = 8 * 1024 * 1024;

    private ShelfCard[] _cards = [];
    private string _trouble = "";
    private string _asked = "";
    private ShelfVersion[]? _versions;

    // Handed down, not looked up: only so is the list drawn anew when the desk changes.
    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    [Inject]
    internal Shelf Shelf { get; set; } = null!;

    /// <summary>Called when a job was laid on the desk.</summary>
    [Parameter]
    public EventCallback Opened { get; set; }

    /// <inheritdoc />
    protected override async Task OnInitializedAsync() => await ListAsync();

    private static string When(double saved) =>
        "saved " + DateTimeOffset.FromUnixTimeMilliseconds((long)saved).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " UTC";

    private async Task ListAsync()
    {
        try
        {
            _cards = await Shelf.ListAsync();
        }
        catch (Microsoft.JSInterop.JSException refused)
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
        if (JobReader.Read(bytes.ToArray(), file.Name) is JobReading.Refused refused)
        {
            _trouble = "Nothing was opened or changed. " + refused.Faults[0].Say();
            return;
        }

        await NewAsync(Encoding.UTF8.GetString(bytes.ToArray()));
    }

    private Task SaveFileAsync() => Shelf.SaveFileAsync(JobFiles.NameOf(Desk.Name), JobFiles.Type, Encoding.UTF8.GetBytes(Desk.Text));

    private async Task SaveAllAsync() => await Shelf.SaveFileAsync("gaugerod-jobs.zip", "application/zip", JobFiles.Zip(await Shelf.AllAsync()));

    private async Task ShowVersionsAsync() => _versions = _versions is null ? await Shelf.VersionsAsync(Desk.Id) : null;

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
}
