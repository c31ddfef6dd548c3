using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>A straight line across a face where its plane bends: tiles are cut along it.</summary>
/// <param name="From">A place on it.</param>
/// <param name="To">Another.</param>
public sealed record FoldLine(Point From, Point To);

/// <summary>Where a face bends, so that it falls.</summary>
/// <param name="Drain">The name of the hole that all of it falls to, a fold running from there to every corner at which two sides meet at an angle; null for none.</param>
/// <param name="Lines">Folds of its own, each from an edge, another fold or a hole to another.</param>
public sealed record Falls(string? Drain, Sequence<FoldLine> Lines)
{
    /// <summary>The bed that makes it fall; null where none is asked for.</summary>
    public BedRequest? Bed { get; init; }

    /// <summary>Whether tiles are cut along folds.</summary>
    internal bool HasFolds => Drain is not null || Lines is { Count: > 0 };
}

/// <summary>Which face a plane of a folded face is of.</summary>
/// <param name="Whole">The face, or the zone of one, before it was parted along its folds.</param>
public sealed record PlaneOf(FinishedFace Whole)
{
    /// <summary>The face's name.</summary>
    public string Face => Whole.Name;

    /// <summary>The box around the whole face's field.</summary>
    public Box Bounds => Whole.Field.Outer.Bounds;
}
