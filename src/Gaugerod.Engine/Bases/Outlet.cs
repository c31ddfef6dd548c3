namespace Gaugerod.Engine.Bases;

/// <summary>
/// What the last straight stretch of the water's way runs to: a drain, the end of a channel, or a corner that the water goes
/// round. What runs straight to it lies between two ways from it.
/// </summary>
/// <param name="At">Where it is.</param>
/// <param name="Start">How far it is from there to the drain.</param>
/// <param name="From">The first of the ways that lead from it, as an angle.</param>
/// <param name="Sweep">How far the ways turn on from there, counter-clockwise.</param>
/// <param name="IsDrain">Whether the drain, or the end of a channel, is there.</param>
internal sealed record Outlet(Place At, double Start, double From, double Sweep, bool IsDrain);

/// <summary>A channel: what lies beside it runs straight into it.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
internal sealed record Channel(Place From, Place To)
{
    public double Length => From.To(To);

    public Place Way => (To - From).Unit;

    /// <summary>The place on it that is nearest to another.</summary>
    public Place Nearest(Place place) => From + (Way * Math.Clamp((place - From).Along(Way), 0, Length));

    /// <summary>Whether a place lies beside it, and not beyond its ends.</summary>
    public bool IsBeside(Place place) => (place - From).Along(Way) is var at && at >= 0 && at <= Length;
}
