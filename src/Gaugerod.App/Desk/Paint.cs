using Microsoft.JSInterop;

namespace Gaugerod.App.Desk;

/// <summary>Waits for the page to be painted, so that a touch is answered before long work begins.</summary>
internal sealed class Paint(IJSRuntime js)
{
    private readonly Script _script = new(js, "paint");

    /// <summary>Done when the next picture is on the screen.</summary>
    public Task NextAsync() => _script.TellAsync("next");
}
