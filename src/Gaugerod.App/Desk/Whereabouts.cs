using Microsoft.JSInterop;

namespace Gaugerod.App.Desk;

/// <summary>
/// Which station a person is at, and at what of it. It stands behind the # of the page's address, so that the device's own Back
/// leads to where one was, and a page loaded anew opens there.
/// </summary>
internal sealed class Whereabouts(IJSRuntime js, JobDesk desk) : IDisposable
{
    private readonly Script _script = new(js, "whereabouts");
    private DotNetObjectReference<Whereabouts>? _self;

    /// <summary>The person is somewhere else now.</summary>
    public event EventHandler? Moved;

    /// <summary>Where the person wants to be.</summary>
    public Station Station { get; private set; }

    /// <summary>Where the person is: a station that works on a job needs one on the desk.</summary>
    public Station Here => IsOpenTo(Station) ? Station : Station.Jobs;

    /// <summary>What of the station is looked at, such as a piece's number; empty for the station itself.</summary>
    public string Detail { get; private set; } = "";

    /// <summary>What of the station is in sight; it follows <see cref="Detail"/> once the key that was touched is seen to be pressed.</summary>
    public string Shown { get; private set; } = "";

    /// <summary>What was gone to is now shown.</summary>
    public void Show() => Shown = Detail;

    /// <summary>Whether one can go to a station as the desk is.</summary>
    public bool IsOpenTo(Station station) => desk.Id.Length > 0 || station is Station.Jobs or Station.Help;

    /// <summary>Reads where the page opened, and follows Back and Forward from then on.</summary>
    public async Task WatchAsync()
    {
        _self = DotNetObjectReference.Create(this);
        Read(await _script.AskAsync<string>("watch", _self) ?? "");
    }

    /// <summary>Goes to a station.</summary>
    /// <param name="station">The station.</param>
    /// <param name="detail">What of it.</param>
    /// <param name="instead">Whether Back shall pass over where one was, as when one leafs through pieces.</param>
    public void Go(Station station, string detail = "", bool instead = false)
    {
        if (station == Station && string.Equals(detail, Detail, StringComparison.Ordinal)) return;
        (Station, Detail) = (station, detail);
        _ = _script.TellAsync("go", $"#{station.ToString().ToLowerInvariant()}{(detail.Length > 0 ? "/" + Uri.EscapeDataString(detail) : "")}", instead);
        Moved?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Called by the page: Back or Forward led elsewhere.</summary>
    /// <param name="mark">What stands behind the address, with its #.</param>
    [JSInvokable]
    public void Follow(string mark)
    {
        Read(mark);
        Moved?.Invoke(this, EventArgs.Empty);
    }

    /// <inheritdoc />
    public void Dispose() => _self?.Dispose();

    private void Read(string mark)
    {
        var parts = mark.TrimStart('#').Split('/', 2);
        Station = Enum.TryParse<Station>(parts[0], ignoreCase: true, out var station) && Enum.IsDefined(station) ? station : Station.Jobs;
        Detail = parts.Length > 1 ? Uri.UnescapeDataString(parts[1]) : "";
    }
}
