using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Patterns;

/// <summary>What the search for the place of a pattern is asked: a bond of any kind, at one turn and with one joint.</summary>
/// <param name="Run">The run.</param>
/// <param name="Products">The bond's products: the run's own, then those the bond names.</param>
/// <param name="Turn">How far the bond is turned on the faces.</param>
internal sealed record PatternProblem(RunProblem Run, Sequence<Product> Products, Angle Turn)
{
    /// <summary>How many turns the search tries; default 1.</summary>
    public int Turns { get; init; } = 1;

    /// <summary>The joint: a pattern is laid with the one wanted, since no joint of a pattern runs through to be brought to a line.</summary>
    public Length Joint => Run.Joint.Wanted;

    public BondMaking MakeBond() => BondMaker.Make(Run.Bond, new(Products, Run.Joint, Joint, Run.Tape));
}
