using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Microsoft.JSInterop;

namespace Gaugerod.App.Desk;

/// <summary>A job as the list of jobs shows it.</summary>
/// <param name="Id">Its key on this device.</param>
/// <param name="Name">Its name.</param>
/// <param name="Saved">When it was last saved, by this device's clock, in milliseconds since 1970.</param>
internal sealed record ShelfCard(string Id, string Name, double Saved);

/// <summary>A job as it is kept.</summary>
/// <param name="Text">The job file's text.</param>
/// <param name="Ticks">The pieces and tasks ticked off.</param>
internal sealed record ShelfJob(string Text, string[] Ticks);

/// <summary>An earlier state of a job.</summary>
/// <param name="Name">The job's name then.</param>
/// <param name="Saved">When it was saved, in milliseconds since 1970; it is also what names the version.</param>
internal sealed record ShelfVersion(string Name, double Saved);

/// <summary>A job for a copy of them all.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Saved">When it was last saved, in milliseconds since 1970.</param>
/// <param name="Text">The job file's text.</param>
internal sealed record ShelfCopy(string Name, double Saved, string Text);

/// <summary>How the saving stands.</summary>
/// <param name="State">In a word or two: "saved 14:05".</param>
/// <param name="Trouble">Why nothing can be saved; empty when it can.</param>
/// <param name="Safe">Whether the browser has promised not to clear what is kept; null when it does not say.</param>
internal sealed record ShelfNews(string State, string Trouble, bool? Safe);

/// <summary>How the records above are read. Written out while building, since trimming would take what is looked up while running.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(ShelfCard[]))]
[JsonSerializable(typeof(ShelfJob))]
[JsonSerializable(typeof(ShelfVersion[]))]
[JsonSerializable(typeof(ShelfCopy[]))]
[JsonSerializable(typeof(bool))]
[JsonSerializable(typeof(string))]
internal sealed partial class ShelfJson : JsonSerializerContext;

/// <summary>Where jobs are kept: on the device, by <c>js/shelf.js</c>. Everything given to it is saved within 400 ms, and when the page hides.</summary>
internal sealed class Shelf(IJSRuntime js) : IAsyncDisposable
{
    private readonly Script _script = new(js, "shelf");
    private DotNetObjectReference<Shelf>? _self;

    /// <summary>How the saving stands has changed.</summary>
    public event EventHandler? Said;

    /// <summary>Another tab took over the job <see cref="LostJob"/>.</summary>
    public event EventHandler? Lost;

    /// <summary>The job that another tab took over last; empty for none.</summary>
    public string LostJob { get; private set; } = "";

    /// <summary>How the saving stands.</summary>
    public ShelfNews News { get; private set; } = new("", "", null);

    /// <summary>How the saving stands, in words: "saved 14:05", "not saved".</summary>
    public string State => News.State;

    /// <summary>Every job on this device, the one saved last first.</summary>
    public Task<ShelfCard[]> ListAsync() => AskAsync(ShelfJson.Default.ShelfCardArray, "list");

    /// <summary>A job; null when it is not there.</summary>
    public Task<ShelfJob?> ReadAsync(string id) => AskAsync<ShelfJob?>(ShelfJson.Default.ShelfJob!, "read", id);

    /// <summary>Every job, whole.</summary>
    public Task<ShelfCopy[]> AllAsync() => AskAsync(ShelfJson.Default.ShelfCopyArray, "all");

    /// <summary>Gives a job to be saved; what was given last is what is kept.</summary>
    public Task HoldAsync(string id, string name, string text, string[] ticks) => TellAsync("hold", id, name, text, ticks);

    /// <summary>Saves at once all that waits to be saved.</summary>
    public Task FlushAsync() => TellAsync("flush");

    /// <summary>Takes a job off the device, with its earlier states.</summary>
    public Task RemoveAsync(string id) => TellAsync("remove", id);

    /// <summary>The earlier states of a job, the newest first: at most 50, and at most one a minute.</summary>
    public Task<ShelfVersion[]> VersionsAsync(string id) => AskAsync(ShelfJson.Default.ShelfVersionArray, "versions", id);

    /// <summary>Lays an earlier state in the place of the job as it stands, which itself becomes an earlier state.</summary>
    /// <param name="id">The job.</param>
    /// <param name="saved">When that state was saved, as <see cref="VersionsAsync"/> gives it.</param>
    /// <returns>The job as it now is; null when another tab writes it.</returns>
    public Task<ShelfJob?> RestoreAsync(string id, double saved) => AskAsync<ShelfJob?>(ShelfJson.Default.ShelfJob!, "restore", id, saved);

    /// <summary>Becomes the one writer of a job among the tabs, and lets go of every other job.</summary>
    /// <returns>False when another tab writes it.</returns>
    public Task<bool> LockAsync(string id) => AskAsync(ShelfJson.Default.Boolean, "lock", id);

    /// <summary>Takes a job over from the tab that writes it, which first saves what it holds.</summary>
    public Task<ShelfJob?> TakeOverAsync(string id) => AskAsync<ShelfJob?>(ShelfJson.Default.ShelfJob!, "takeOver", id);

    /// <summary>The job that lay on this tab's desk before it was loaded anew; null when there was none.</summary>
    public Task<string?> OpenedAsync() => AskAsync<string?>(ShelfJson.Default.String!, "opened");

    /// <summary>Lets the device's side tell how the saving stands.</summary>
    public Task WatchAsync() => TellAsync("watch", _self ??= DotNetObjectReference.Create(this));

    /// <summary>Called by the device's side.</summary>
    [JSInvokable]
    public void Say(string state, string trouble, bool? safe)
    {
        News = new(state, trouble, safe);
        Said?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Called by the device's side.</summary>
    [JSInvokable]
    public void Lose(string id)
    {
        LostJob = id;
        Lost?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Hands a file to the person.</summary>
    public Task SaveFileAsync(string name, string type, byte[] bytes) => TellAsync("saveFile", name, type, bytes);

    /// <inheritdoc />
    public ValueTask DisposeAsync()
    {
        _self?.Dispose();
        return _script.DisposeAsync();
    }

    private async Task<T> AskAsync<T>(JsonTypeInfo<T> kind, string verb, params object?[] words) =>
        JsonSerializer.Deserialize(await _script.AskAsync<string>("ask", verb, words) ?? "null", kind)!;

    private Task TellAsync(string verb, params object?[] words) => _script.TellAsync(verb, words);
}
