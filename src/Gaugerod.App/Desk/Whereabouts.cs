using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;

namespace Gaugerod.App.Desk;

/// <summary>
/// Which station a person is at, and at what of it. It stands behind the # of the page's address, so that the device's own Back
/// leads to where one was, and a page loaded anew opens there.
/// </summary>
internal sealed class Whereabouts : IDisposable
{
    private readonly NavigationManager _address;

    public Whereabouts(NavigationManager address)
    {
        _address = address;
        _address.LocationChanged += Follow;
        Read();
    }

    /// <summary>The person is somewhere else now.</summary>
    public event EventHandler? Moved;

    public Station Station { get; private set; }

    /// <summary>What of the station is looked at, such as a piece's number; empty for the station itself.</summary>
    public string Detail { get; private set; } = "";

    /// <summary>Goes to a station.</summary>
    /// <param name="station">The station.</param>
    /// <param name="detail">What of it.</param>
    /// <param name="instead">Whether Back shall pass over where one was, as when one leafs through pieces.</param>
    public void Go(Station station, string detail = "", bool instead = false) =>
        _address.NavigateTo($"{_address.BaseUri}#{station.ToString().ToLowerInvariant()}{(detail.Length > 0 ? "/" + Uri.EscapeDataString(detail) : "")}", replace: instead);

    /// <inheritdoc />
    public void Dispose() => _address.LocationChanged -= Follow;

    private void Follow(object? sender, LocationChangedEventArgs e)
    {
        Read();
        Moved?.Invoke(this, EventArgs.Empty);
    }

    private void Read()
    {
        var mark = _address.Uri.IndexOf('#', StringComparison.Ordinal);
        var parts = mark < 0 ? [] : _address.Uri[(mark + 1)..].Split('/', 2);
        Station = parts.Length > 0 && Enum.TryParse<Station>(parts[0], ignoreCase: true, out var station) ? station : Station.Jobs;
        Detail = parts.Length > 1 ? Uri.UnescapeDataString(parts[1]) : "";
    }
}
