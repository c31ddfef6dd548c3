using Microsoft.JSInterop;

namespace Gaugerod.App.Desk;

/// <summary>What <c>js/start.js</c> knows of the page itself: whether a newer version waits, and the light it is shown in.</summary>
internal sealed class Updates(IJSRuntime js) : IAsyncDisposable
{
    private readonly Script _script = new(js, "start");
    private DotNetObjectReference<Updates>? _self;

    /// <summary>A newer version is ready and waits to be asked for.</summary>
    public event EventHandler? Ready;

    /// <summary>Begins to listen for a newer version.</summary>
    public Task WatchAsync() => _script.TellAsync("watch", _self ??= DotNetObjectReference.Create(this));

    /// <summary>Called by the page's side.</summary>
    [JSInvokable]
    public void Waits() => Ready?.Invoke(this, EventArgs.Empty);

    /// <summary>Lets the newer version take over; the page then opens anew by itself.</summary>
    public Task TakeAsync() => _script.TellAsync("take");

    /// <summary>The light chosen earlier on this device; empty when none was.</summary>
    public async Task<string> LightAsync() => await _script.AskAsync<string>("lightNow") ?? "";

    /// <summary>Shows the page in another light, and keeps to it.</summary>
    public Task SetLightAsync(string light) => _script.TellAsync("setLight", light);

    /// <inheritdoc />
    public ValueTask DisposeAsync()
    {
        _self?.Dispose();
        return _script.DisposeAsync();
    }
}
