using Gaugerod.Engine.Lines;
using Gaugerod.Plane.Measure;
using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Lines;

/// <summary>The rods under the hand: what the page asks for while they slide.</summary>
public sealed partial class LinesStation
{
    /// <summary>Called by the page: a rod is taken hold of.</summary>
    [JSInvokable]
    public void Grab()
    {
        _inHand = true;
        _bench?.Grab();
    }

    /// <summary>Called by the page at most once a frame: a rod was moved from where it was taken hold of.</summary>
    /// <param name="rod">0 the rod along the bottom, 1 the one along the left.</param>
    /// <param name="steps">How far, right or up, in steps of a length.</param>
    /// <param name="reach">How near it clicks onto something, in steps.</param>
    [JSInvokable]
    public string?[] Slide(int rod, double steps, double reach)
    {
        if (_bench is not { } bench || Fixed) return [];
        bench.SlideBy(Rod(rod), Length.FromSteps((long)steps), Length.FromSteps((long)reach));
        _figures?.Show();
        return bench.Frame();
    }

    /// <summary>Called by the page: where a touch on a curve would bring the rod, as steps to move.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="part">The part of the curve, from its left or its foot.</param>
    [JSInvokable]
    public double Way(int rod, double part)
    {
        if (_bench is not { } bench) return 0;
        var curve = bench.Curve(Rod(rod));
        return (long)(part * curve.Repeat.Steps) - curve.At(bench.Place, bench.Face).Steps;
    }

    /// <summary>Called by the page: an arrow key on a rod.</summary>
    [JSInvokable]
    public string?[] Nudge(int rod, int marks) => _bench is { } bench && !Fixed ? Stepped(Rod(rod), bench.Tape.Mark * marks) : [];

    /// <summary>Called by the page: a key that goes to the next peak.</summary>
    [JSInvokable]
    public string?[] Peak(int rod, bool on) =>
        _bench is { } bench && !Fixed ? Stepped(Rod(rod), bench.Curve(Rod(rod)).ToPeak(bench.Curve(Rod(rod)).At(bench.Place, bench.Face), on)) : [];

    /// <summary>Called by the page when a rod comes to rest: its place is kept in the job.</summary>
    [JSInvokable]
    public void Rest()
    {
        _inHand = false;
        if (_bench is not { IsPlanned: false } bench)
        {
            Take();
            StateHasChanged();
            return;
        }

        var kept = bench.Kept(bench.Place);
        Desk.Set(FormattableString.Invariant($"runs[{bench.Index}].place"), kept, $"rods of {bench.Run.Request.Name}");
        _ = CurvesAsync(bench);
        StateHasChanged();
    }

    private static Axis Rod(int rod) => rod == 0 ? Axis.Level : Axis.Plumb;

    private string?[] Stepped(Axis rod, Length by)
    {
        if (_bench is not { } bench) return [];
        if (!_inHand) Grab();
        bench.Stand(bench.Slide.Moved(bench.Place, rod, by, bench.Face));
        _figures?.Show();
        return bench.Frame();
    }
}
