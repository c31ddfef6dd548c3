using System.Globalization;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Measure;

/// <summary>What was read and chosen: faces, tiles, runs, and the job itself, with the face drawn beside its fields.</summary>
public sealed partial class MeasureStation : ComponentBase, IAsyncDisposable
{
    private static readonly string[] s_parts = ["Walls", "Tiles", "Runs", "Job"];

    private ElementReference _root;
    private Script _keys = null!;
    private FacesPart? _walls;
    private string _part = "Walls";
    private string? _goTo;
    private bool _pad = true;
    private int _first;
    private int _firstTrim;
    private int _firstSupply;
    private int _firstBoard;
    private int _visit;
    private int _wall;

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    /// <summary>Called when all is measured and the lines are to be looked at.</summary>
    [Parameter]
    public EventCallback OnLines { get; set; }

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [Inject]
    internal Whereabouts Where { get; set; } = null!;

    [Inject]
    internal Turns Turns { get; set; } = null!;

    private IReadOnlyList<string> Walls => JobLists.Names(Desk.Root, "faces", "wall");

    // A job of floors alone has no walls to measure.
    private string Called(string part) => part is "Walls" && FaceWords.All(Desk.Root) is "Floors" ? "Floors" : part;

    private string Next => _part switch
    {
        "Walls" when _wall + 1 < Walls.Count => Walls[_wall + 1],
        "Walls" => "tiles",
        "Tiles" => "runs",
        _ => "lines",
    };

    /// <inheritdoc />
    protected override void OnInitialized()
    {
        _keys = new(Js, "keypad");
        Desk.Understood += Show;
        if (Where.Shown.Length > 0)
        {
            GoFault(Where.Shown);
            return;
        }

        // A new job begins with its first reading; one that was worked on is left to the person.
        var first = JobPath.Get(Desk.Root, "faces[0].survey") is null ? "faces[0].readings.width.foot" : "faces[0].survey.readings[0].is";
        if (!Desk.ReadOnly && Desk.Undoes is null && JobPath.Get(Desk.Root, first) is not null && FieldId.Text(Desk, first).Length == 0) _goTo = FieldId.Of(first);
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await _keys.TellAsync("start", _root);
            if (await _keys.AskAsync<bool>("isWanted") is var wanted && wanted != _pad)
            {
                _pad = wanted;
                StateHasChanged();
            }
        }

        if (_goTo is { } ids)
        {
            _goTo = null;
            await Turns.RestAsync();
            if (ids.Length == 0) await _keys.TellAsync("toTop", _root);
            else await _keys.TellAsync("goTo", ids);
        }
    }

    // A part opens at its top.
    private void Turn(string part) => (_part, _first, _firstTrim, _firstSupply, _firstBoard, _wall, _visit, _goTo) = (part, 0, 0, 0, 0, 0, _visit + 1, "");

    private Task NextAsync()
    {
        switch (_part)
        {
            case "Walls" when _wall + 1 < Walls.Count && _walls is not null:
                return _walls.NextAsync();
            case "Walls":
                Turn("Tiles");
                return Task.CompletedTask;
            case "Tiles":
                Turn("Runs");
                return Task.CompletedTask;
            default:
                return OnLines.InvokeAsync();
        }
    }

    private static string PartOf(string path) =>
        path.StartsWith("faces", StringComparison.Ordinal) ? "Walls"
        : path.StartsWith("products", StringComparison.Ordinal) || path.StartsWith("trims", StringComparison.Ordinal) || path.StartsWith("supplies", StringComparison.Ordinal) || path.StartsWith("boards", StringComparison.Ordinal) || path.StartsWith("fills", StringComparison.Ordinal) ? "Tiles"
        : path.StartsWith("runs", StringComparison.Ordinal) ? "Runs"
        : "Job";

    private int Wrong(string part) => Unread.Wrong(Desk).Count(f => string.Equals(PartOf(f.Path), part, StringComparison.Ordinal));

    private bool Missing(string part) => Unread.Missing(Desk).Any(f => string.Equals(PartOf(f.Path), part, StringComparison.Ordinal));

    private void GoField(string id)
    {
        _goTo = id;
        StateHasChanged();
    }

    // A fault may stand at a whole group; the place to go is then the nearest that has a field or a fold of its own.
    private void GoFault(string path)
    {
        if (FieldId.StationOf(path) != Station.Measure)
        {
            Where.Go(FieldId.StationOf(path), path);
            return;
        }

        var part = PartOf(path);
        var open = path.IndexOf('[', StringComparison.Ordinal);
        var close = path.IndexOf(']', StringComparison.Ordinal);
        var first = part is not "Job" && open > 0 && close > open ? int.Parse(path[(open + 1)..close], CultureInfo.InvariantCulture) : 0;
        var ids = new List<string>();
        for (var at = path; at.Length > 0; at = at[..Math.Max(0, at.LastIndexOfAny(['.', '[']))]) ids.Add(FieldId.Of(at));
        // Trims, supplies and boards stand below the tiles, in the same part.
        var (trim, supply, board) = (Of("trims"), Of("supplies"), Of("boards"));
        var thing = trim + supply + board > 0 ? 0 : first;
        (_part, _first, _firstTrim, _firstSupply, _firstBoard, _wall, _visit, _goTo) = (part, thing, trim, supply, board, thing, _visit + 1, string.Join(' ', ids));

        int Of(string list) => path.StartsWith(list, StringComparison.Ordinal) ? first : 0;
    }

    private async Task TurnPadAsync()
    {
        _pad = !_pad;
        await _keys.TellAsync("setWanted", _pad);
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync()
    {
        Desk.Understood -= Show;
        return _keys.EndAsync("stop");
    }

    private void Show(object? sender, EventArgs e) => StateHasChanged();
}
