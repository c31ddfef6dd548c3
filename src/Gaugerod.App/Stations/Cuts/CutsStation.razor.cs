using System.Globalization;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Sheets;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Cuts;

/// <summary>The pieces by saw setting, to be ticked off; or one at a time in figures that can be read from the saw.</summary>
public sealed partial class CutsStation : ComponentBase, IAsyncDisposable
{
    /// <summary>So many settings lie open when the list is opened: those to begin with. The others are a line each.</summary>
    private const int OpenAtFirst = 3;

    private Script? _script;
    private int _jumps;
    private Plan? _plan;
    private List<CutGroup> _groups = [];
    private Dictionary<string, string> _sources = [];
    private PiecePictures? _pictures;
    private ElementReference _saw;
    private bool _isLarge;

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    [Inject]
    internal Whereabouts Where { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>Who works by keys or by ear stands at the piece when it is opened.</summary>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        var opened = One is not null && !_isLarge;
        _isLarge = One is not null;
        if (opened) await _saw.FocusAsync(preventScroll: true);
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync() => _script?.DisposeAsync() ?? ValueTask.CompletedTask;

    private List<CutGroup> Groups
    {
        get
        {
            if (ReferenceEquals(_plan, Desk.Plan)) return _groups;
            (_plan, _pictures) = (Desk.Plan, null);
            _sources = _plan is null ? [] : CutGroup.Sources(_plan);
            return _groups = _plan is null ? [] : [.. CutGroup.Of(_plan)];
        }
    }

    /// <summary>The piece looked at; null for the list, as where the piece is no longer among them.</summary>
    private Piece? One => Where.Shown.Length == 0 ? null : All.FirstOrDefault(piece => string.Equals(piece.Id, Where.Shown, StringComparison.Ordinal));

    private IEnumerable<Piece> All => Groups.SelectMany(group => group.Pieces);

    private PiecePictures Pictures => _pictures ??= new(Desk.Plan!);

    // As it lies at the saw and in its picture, not as a turned bond lays it on the wall.
    private string Size(Piece piece) => $"{LengthText.DownBare(piece.Upright.Bounds.Width, Desk.Plan!.Job.Tape)} × {LengthText.Down(piece.Upright.Bounds.Height, Desk.Plan.Job.Tape)}";

    /// <summary>As the fence leaves it.</summary>
    private string Sawn(Piece piece)
    {
        var (width, height) = Pictures.Sawn(piece.Id);
        return $"{LengthText.DownBare(width, Desk.Plan!.Job.Tape)} × {LengthText.Down(height, Desk.Plan.Job.Tape)}";
    }

    private string Aloud(Piece piece)
    {
        var (width, height) = Pictures.Sawn(piece.Id);
        return Spoken.AtSaw(piece, width, height, SourceTile.Of(Desk.Plan!, piece), Desk.Plan!.Job.Tape);
    }

    /// <summary>What the fence is set to for a piece that has a tile to itself; of one that shares a tile the cuts are listed in order.</summary>
    private IEnumerable<string> Fences(Piece piece) =>
        from @group in Groups
        where @group.Setting is not null && @group.Pieces.Contains(piece)
        let comesOut = @group.ComesOut(Desk.Plan!, piece)
        select @group.Title + (comesOut.Length == 0 ? "" : "; " + comesOut);

    /// <summary>What is said of a piece in the list: its size, how it is cut, and which tile it comes from.</summary>
    private string Said(CutGroup group, Piece piece)
    {
        var comesOut = group.ComesOut(Desk.Plan!, piece);
        return Size(piece) + (piece.Kind == PieceKind.Straight ? "" : ", " + PieceWords.Of(piece.Kind)) + (comesOut.Length == 0 ? "" : ", " + comesOut);
    }

    /// <summary>The names of pieces ticked off that this plan does not have, or not of that size.</summary>
    private List<string> Gone
    {
        get
        {
            var there = All.Select(PieceTick.Of).Concat(TrimCuts.SelectMany(of => of.Pieces.Select(piece => piece.Tick))).ToHashSet(StringComparer.Ordinal);
            return Desk.Fresh ? [.. Desk.Ticks.Where(tick => !there.Contains(tick)).Select(PieceTick.Name)] : [];
        }
    }

    private static string Place(int number) => string.Create(CultureInfo.InvariantCulture, $"cuts.setting.{number}");

    private string Counted(CutGroup group) => group.Pieces.Count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{group.Pieces.Count(IsCut)} of {group.Pieces.Count} cut");

    /// <summary>Unfolds a setting and goes to it; the choice is then empty again, so that the same may be gone to twice.</summary>
    private async Task JumpAsync(ChangeEventArgs chosen)
    {
        if (!int.TryParse(chosen.Value?.ToString(), CultureInfo.InvariantCulture, out var number)) return;
        _jumps++;
        await (_script ??= new(Js, "keypad")).TellAsync("goToSoon", FieldId.Of(Place(number)));
    }

    private bool IsCut(Piece piece) => Desk.Ticks.Contains(PieceTick.Of(piece));

    private void Tick(Piece piece)
    {
        Desk.Tick(PieceTick.Of(piece));
        if (Where.Detail.Length > 0 && IsCut(piece)) Step(1);
    }

    private void Step(int by)
    {
        var all = All.ToList();
        if (all.Count == 0) return;
        var at = all.FindIndex(piece => string.Equals(piece.Id, Where.Detail, StringComparison.Ordinal));
        Where.Go(Station.Cuts, all[(Math.Max(0, at) + by + all.Count) % all.Count].Id, instead: true);
    }
}
