using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.Engine;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Lines;

/// <summary>The run unrolled with its two rods: slide them and every cut follows; where they rest is written to the job.</summary>
public sealed partial class LinesStation : ComponentBase, IAsyncDisposable
{
    /// <summary>Long enough for what was shown to be on the screen.</summary>
    private static readonly TimeSpan Shown = TimeSpan.FromMilliseconds(40);

    private static readonly Axis[] Rods = [Axis.Plumb, Axis.Level];

    private ElementReference _root;
    private DotNetObjectReference<LinesStation>? _self;
    private Script _script = null!;
    private Script _keys = null!;
    private Bench? _bench;
    private Plan? _plan;
    private Figures? _figures;
    private string _edge = "";
    private bool _inHand;
    private bool _stale;
    private bool _reveal;
    private int _turn;
    private int _round;

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [Inject]
    internal Paint Paint { get; set; } = null!;

    [Inject]
    internal Turns Turns { get; set; } = null!;

    /// <inheritdoc />
    protected override void OnInitialized() => (_script, _keys) = (new(Js, "lines"), new(Js, "keypad"));

    /// <inheritdoc />
    protected override void OnParametersSet() => Take();

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _self = DotNetObjectReference.Create(this);
            await _script.TellAsync("attach", _root, _self);
            await _keys.TellAsync("start", _root);
        }

        if (_reveal)
        {
            _reveal = false;
            await _script.TellAsync("reveal", _root);
        }

        if (!_stale || _bench is null) return;
        _stale = false;
        // The page moves what is drawn, so all of it has to be there.
        await Turns.RestAsync();
        await ShowAsync(anew: true);
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        _round++;
        await _script.EndAsync("detach", _root);
        await _keys.EndAsync("stop");
        _self?.Dispose();
    }

    /// <summary>Whether the rods and the bond cannot be moved by hand.</summary>
    private bool Fixed => Desk.ReadOnly || _bench?.Run.IsBorder == true;

    /// <summary>What must not be built as it stands, of the plan in sight; everything that was found stands at Order.</summary>
    private IEnumerable<Finding> Stops => _bench?.IsPlanned == true && _plan is { } plan ? plan.Findings.Where(finding => finding.Level == FindingLevel.Stop) : [];

    /// <summary>Takes the plan as it now is; a plan that comes while a rod is in the hand waits until it rests.</summary>
    private void Take()
    {
        if (_inHand || Desk.Plan is not { } plan || ReferenceEquals(plan, _plan)) return;
        _ = PutAsync(plan, Math.Min(_bench?.Index ?? 0, plan.Runs.Count - 1), keep: true);
    }

    private async Task PutAsync(Plan plan, int run, bool keep)
    {
        var round = ++_round;
        var old = keep ? _bench : null;
        var face = old is { } was && was.Face < plan.Runs[run].Faces.Count ? was.Face : 0;
        _plan = plan;
        var made = await Bench.MakeAsync(plan, run, face);
        if (round != _round) return;
        if (_inHand)
        {
            // Taken hold of meanwhile; it is made anew when the rod rests.
            _plan = null;
            return;
        }

        if (keep && _bench is { } now && now.Face < plan.Runs[run].Faces.Count) made.Face = face = now.Face;
        _bench = made;
        _picking = new(plan, _bench);
        foreach (var rod in Rods)
        {
            if (old is not null) made.Curve(rod).Begin(old.Curve(rod));
        }

        if (old is not null && old.Place.Equals(_bench.Place)) _bench.Before = old.Before;
        var there = _bench.Slide.Faces[face];
        if (!there.Edges.Select(edge => edge.Name).Concat(there.Holes.Select(hole => hole.Name)).Contains(_edge, StringComparer.Ordinal)) _edge = "";
        _stale = true;
        StateHasChanged();
        _ = CurvesAsync(_bench);
    }

    private void ShowRun(int run)
    {
        _edge = "";
        if (_plan is { } plan) _ = PutAsync(plan, run, keep: false);
    }

    private async Task CurvesAsync(Bench bench)
    {
        foreach (var rod in Rods)
        {
            if (!await bench.Curve(rod).WorkOutAsync(bench.Place, bench.Run.Best.Faces, bench.Face)) return;
            _turn++;
            StateHasChanged();
        }

        // The first tap on a piece should not wait for what has never run yet.
        await Task.Delay(Shown);
        if (bench == _bench && !_inHand) _picking?.Ready();
    }

    private async Task ShowAsync(bool anew = false)
    {
        if (_bench is not { } bench) return;
        await _script.TellAsync("show", _root, bench.Frame(), !bench.IsPlanned, anew);
    }

    private async Task ShowFaceAsync(int face)
    {
        await TouchAsync(face);
        await _script.TellAsync("face", _root, face);
    }

    private async Task TouchAsync(int face)
    {
        if (_bench is not { } bench || bench.Face == face) return;
        bench.Face = face;
        _edge = "";
        await Paint.NextAsync();
        if (bench != _bench || bench.Face != face) return;
        await ShowAsync();
        if (bench.Slide.Restart) await CurvesAsync(bench);
    }

    private async Task TapEdgeAsync(int face, string edge)
    {
        await TouchAsync(face);
        _edge = edge;
        _reveal = true;
        StateHasChanged();
    }

    private async Task TakeAsync(Proposal? proposal, bool best)
    {
        if (_bench is not { } bench) return;
        if (proposal is not null && proposal.Placing.Turn != bench.Run.Best.Placing.Turn)
        {
            Turned(proposal.Placing.Turn);
            return;
        }

        bench.Grab();
        if (proposal is not null && proposal.Placing.Joint == bench.Run.Best.Placing.Joint) bench.Stand(proposal.Faces);
        await ShowAsync();
        // The rods are seen to have moved before the job is written and planned anew.
        await Task.Delay(Shown);
        if (bench != _bench) return;
        var path = FormattableString.Invariant($"runs[{bench.Index}].place");
        if (best) Desk.Set(path, null, "back to the best");
        else Desk.Set(path, bench.Kept(proposal!.Faces), $"another place for {bench.Run.Request.Name}");
        await CurvesAsync(bench);
    }
}
