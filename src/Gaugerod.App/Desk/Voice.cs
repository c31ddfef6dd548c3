using Microsoft.JSInterop;

namespace Gaugerod.App.Desk;

/// <summary>Reads aloud with the browser's own speech, so that hands stay where they are. Off until it is asked for; then so on this device.</summary>
internal sealed class Voice(IJSRuntime js)
{
    private readonly Script _script = new(js, "voice");
    private bool _asked;

    /// <summary>Whether the device can speak.</summary>
    public bool IsHere { get; private set; }

    /// <summary>Whether it does.</summary>
    public bool On { get; private set; }

    /// <summary>Finds out both, once.</summary>
    public async Task FindAsync()
    {
        if (_asked) return;
        _asked = true;
        (IsHere, On) = (await _script.AskAsync<bool>("isHere"), await _script.AskAsync<bool>("isOn"));
    }

    /// <summary>Turns it on or off.</summary>
    public Task TurnAsync(bool on)
    {
        On = on;
        return _script.TellAsync("turn", on);
    }

    /// <summary>Says something in place of what is being said, where it is on.</summary>
    public Task SayAsync(string words) => On ? _script.TellAsync("say", words) : Task.CompletedTask;

    /// <summary>Says no more of what is being said.</summary>
    public Task HushAsync() => On ? _script.TellAsync("hush") : Task.CompletedTask;
}
