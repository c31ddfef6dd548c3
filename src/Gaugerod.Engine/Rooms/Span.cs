using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>What a measure may be where it is not settled yet.</summary>
/// <param name="Least">No less than this.</param>
/// <param name="Most">No more than this; no less than the least.</param>
public sealed record Span(Length Least, Length Most)
{
    /// <summary>Whether a measure is allowed.</summary>
    public bool Holds(Length length) => length >= Least && length <= Most;
}

/// <summary>How an opening may be moved and resized so that its edges meet joints; null for what is settled.</summary>
/// <param name="Left">Where its left edge may stand.</param>
/// <param name="Bottom">How high its foot may be.</param>
/// <param name="Width">How wide it may be.</param>
/// <param name="Height">How high it may be.</param>
public sealed record OpeningRange(Span? Left, Span? Bottom, Span? Width, Span? Height);
