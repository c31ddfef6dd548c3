using System.Globalization;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Measure;

/// <summary>What was read and chosen: faces, tiles, runs, and the job itself, with the face drawn beside its fields.</summary>
public sealed partial class MeasureStation : ComponentBase, IAsyncDisposable
{
    private static readonly string[] s_parts = ["Faces", "Tiles", "Runs", "Job"];

    private ElementReference _root;
    private IJSObjectReference? _keys;
    private string _part = "Faces";
    private string? _goTo;
    private bool _pad = true;
    private int _first;
    private int _visit;

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    private string? Next => Array.IndexOf(s_parts, _part) is var at && at < 2 ? s_parts[at + 1] : null;

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _keys = await Js.InvokeAsync<IJSObjectReference>("import", "./js/keypad.js");
            await _keys.InvokeVoidAsync("start", _root);
            if (await _keys.InvokeAsync<bool>("isWanted") is var wanted && wanted != _pad)
            {
                _pad = wanted;
                StateHasChanged();
            }
        }

        if (_goTo is { } id && _keys is not null)
        {
            _goTo = null;
            await _keys.InvokeVoidAsync("goTo", id);
        }
    }

    private void Turn(string part) => (_part, _first, _visit) = (part, 0, _visit + 1);

    private static string PartOf(string path) =>
        path.StartsWith("faces", StringComparison.Ordinal) ? "Faces"
        : path.StartsWith("products", StringComparison.Ordinal) ? "Tiles"
        : path.StartsWith("runs", StringComparison.Ordinal) ? "Runs"
        : "Job";

    private int Bad(string part) => Desk.Faults.Count(f => string.Equals(PartOf(f.Path), part, StringComparison.Ordinal));

    private void GoFieldAsync(string id)
    {
        _goTo = id;
        StateHasChanged();
    }

    // A fault may stand at a whole group; the nearest field above it is then the place to go.
    private void GoFaultAsync(string path)
    {
        var part = PartOf(path);
        var open = path.IndexOf('[', StringComparison.Ordinal);
        var close = path.IndexOf(']', StringComparison.Ordinal);
        var first = part is not "Job" && open > 0 && close > open ? int.Parse(path[(open + 1)..close], CultureInfo.InvariantCulture) : 0;
        (_part, _first, _visit, _goTo) = (part, first, _visit + 1, FieldId.Of(path));
    }

    private async Task TurnPadAsync()
    {
        _pad = !_pad;
        if (_keys is not null) await _keys.InvokeVoidAsync("setWanted", _pad);
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        if (_keys is null) return;
        try
        {
            await _keys.InvokeVoidAsync("stop");
            await _keys.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and the keypad with it.
        }
    }
}
