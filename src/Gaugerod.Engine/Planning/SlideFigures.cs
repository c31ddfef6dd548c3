using Gaugerod.Engine.Lines;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>The narrowest cut along one named edge.</summary>
/// <param name="Face">The face's name.</param>
/// <param name="Edge">The edge's name on it, as wants call it.</param>
/// <param name="Words">The edge as one says it.</param>
/// <param name="Least">The narrowest cut; null where no tile is cut there, or only along a slope.</param>
public sealed record EdgeCut(string Face, string Edge, string Words, Length? Least)
{
    /// <summary>Whether tiles are cut there along a slope, which leaves no leg to measure: each runs out to nothing somewhere.</summary>
    public bool Slopes { get; init; }
}

/// <summary>What a run comes to with its rods in one place.</summary>
/// <param name="Score">How it does; tiles to buy are not counted and stand at zero.</param>
/// <param name="Edges">The narrowest cut at every edge of every face, in the run's order.</param>
/// <param name="Wants">How each want comes out.</param>
public sealed record SlideFigures(Score Score, Sequence<EdgeCut> Edges, Sequence<WantOutcome> Wants);
