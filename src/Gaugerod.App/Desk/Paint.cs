using Microsoft.JSInterop;

namespace Gaugerod.App.Desk;

/// <summary>Waits for the page to be painted, so that a touch is answered before long work begins.</summary>
internal sealed class Paint(IJSRuntime js)
{
    private IJSObjectReference? _module;

    /// <summary>Done when the next picture is on the screen.</summary>
    public async Task NextAsync()
    {
        _module ??= await js.InvokeAsync<IJSObjectReference>("import", "./js/paint.js");
        await _module.InvokeVoidAsync("next");
    }
}
