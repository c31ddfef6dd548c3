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

/// <summary>Where jobs are kept: on the device, by <c>js/shelf.js</c>. Everything given to it is saved within 400 ms, and when the page hides.</summary>
internal sealed class Shelf(IJSRuntime js) : IAsyncDisposable
{
    private IJSObjectReference? _module;
    private DotNetObjectReference<Shelf>? _self;

    /// <summary>How the saving stands has changed.</summary>
    public event EventHandler? Said;

    /// <summary>How the saving stands, in words: "saved 14:05", "not saved: ...".</summary>
    public string State { get; private set; } = "";

    /// <summary>Every job on this device, the one saved last first.</summary>
    public async Task<ShelfCard[]> ListAsync() => await (await ModuleAsync()).InvokeAsync<ShelfCard[]>("list");

    /// <summary>A job; null when it is not there.</summary>
    public async Task<ShelfJob?> ReadAsync(string id) => await (await ModuleAsync()).InvokeAsync<ShelfJob?>("read", id);

    /// <summary>Gives a job to be saved; what was given last is what is kept.</summary>
    public async Task HoldAsync(string id, string name, string text, string[] ticks) =>
        await (await ModuleAsync()).InvokeVoidAsync("hold", id, name, text, ticks);

    /// <summary>Takes a job off the device.</summary>
    public async Task RemoveAsync(string id) => await (await ModuleAsync()).InvokeVoidAsync("remove", id);

    /// <summary>Becomes the one writer of a job among the tabs.</summary>
    /// <returns>False when another tab writes it.</returns>
    public async Task<bool> LockAsync(string id) => await (await ModuleAsync()).InvokeAsync<bool>("lock", id);

    /// <summary>Lets the device's side tell how the saving stands.</summary>
    public async Task WatchAsync()
    {
        _self ??= DotNetObjectReference.Create(this);
        await (await ModuleAsync()).InvokeVoidAsync("watch", _self);
    }

    /// <summary>Called by the device's side.</summary>
    [JSInvokable]
    public void Say(string state)
    {
        State = state;
        Said?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Hands a file to the person.</summary>
    public async Task SaveFileAsync(string name, string type, byte[] bytes) =>
        await (await ModuleAsync()).InvokeVoidAsync("saveFile", name, type, bytes);

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        _self?.Dispose();
        if (_module is not null) await _module.DisposeAsync();
    }

    private async Task<IJSObjectReference> ModuleAsync() => _module ??= await js.InvokeAsync<IJSObjectReference>("import", "./js/shelf.js");
}
