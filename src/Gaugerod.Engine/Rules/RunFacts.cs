using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What the rules look at in a run.</summary>
/// <param name="Run">The run's name.</param>
/// <param name="Product">Its tile.</param>
/// <param name="Bond">Its bond.</param>
/// <param name="Joint">The joint width laid.</param>
/// <param name="Limits">What the setter allows.</param>
/// <param name="Tape">The job's tape, for the words.</param>
/// <param name="Cuts">How many tiles are cut; with none, the smallest cut says nothing.</param>
/// <param name="SmallestCut">The narrowest leg of any cut tile.</param>
/// <param name="Slivers">How many tiles are left with a leg under the sliver limit.</param>
/// <param name="HalfTileMissed">Whether any tile is cut to less than half of its width or of its height.</param>
/// <param name="Wants">How the wants came out.</param>
internal sealed record RunFacts(
    string Run, Product Product, BondRequest Bond, Length Joint, Limits Limits, Tape Tape,
    int Cuts, Length SmallestCut, int Slivers, bool HalfTileMissed, Sequence<WantOutcome> Wants)
{
    /// <summary>The job's region; null, the default, where it names none.</summary>
    internal Region? Region { get; init; }

    /// <summary>Whether it is laid on a floor, as far as its faces tell.</summary>
    internal bool IsFloor { get; init; }

    /// <summary>Whether it is laid on a floor with folds.</summary>
    internal bool Folded { get; init; }

    /// <summary>The pieces that are slivers, as far as they can be named.</summary>
    internal Sequence<Piece> Narrow { get; init; } = [];

    /// <summary>The tile's longer side.</summary>
    internal Length Longest => Length.Max(Product.Width, Product.Height);
}
