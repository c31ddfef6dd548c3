using Microsoft.JSInterop;

namespace Gaugerod.App.Desk;

/// <summary>What <c>js/start.js</c> knows of the page itself: whether a newer version waits, and the light it is shown in.</summary>
internal sealed class Updates(IJSRuntime js) : IAsyncDisposable
{
    private IJSObjectReference? _module;
    private DotNetObjectReference<Updates>? _self;

    /// <summary>A newer version is ready and waits to be asked for.</summary>
    public event EventHandler? Ready;

    /// <summary>Begins to listen for a newer version.</summary>
    public async Task WatchAsync() => await (await ModuleAsync()).InvokeVoidAsync("watch", _self ??= DotNetObjectReference.Create(this));

    /// <summary>Called by the page's side.</summary>
    [JSInvokable]
    public void Waits() => Ready?.Invoke(this, EventArgs.Empty);

    /// <summary>Lets the newer version take over; the page then opens anew by itself.</summary>
    public async Task TakeAsync() => await (await ModuleAsync()).InvokeVoidAsync("take");

    /// <summary>The light chosen earlier on this device; empty when none was.</summary>
    public async Task<string> LightAsync() => await (await ModuleAsync()).InvokeAsync<string>("lightNow");

    /// <summary>Shows the page in another light, and keeps to it.</summary>
    public async Task SetLightAsync(string light) => await (await ModuleAsync()).InvokeVoidAsync("setLight", light);

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        _self?.Dispose();
        if (_module is not null) await _module.DisposeAsync();
    }

    private async Task<IJSObjectReference> ModuleAsync() => _module ??= await js.InvokeAsync<IJSObjectReference>("import", "./js/start.js");
}
