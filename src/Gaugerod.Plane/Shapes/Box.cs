using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Shapes;

/// <summary>An upright rectangle. <paramref name="Left"/> is never more than <paramref name="Right"/>, nor bottom than top.</summary>
/// <param name="Left">Where it begins from the left.</param>
/// <param name="Bottom">Where it begins from below.</param>
/// <param name="Right">Where it ends to the right.</param>
/// <param name="Top">Where it ends above.</param>
public readonly record struct Box(Length Left, Length Bottom, Length Right, Length Top)
{
    /// <summary>How wide it is.</summary>
    public Length Width => Right - Left;

    /// <summary>How high it is.</summary>
    public Length Height => Top - Bottom;

    /// <summary>The box around some points.</summary>
    /// <exception cref="ArgumentException">There are no points.</exception>
    public static Box Around(IEnumerable<Point> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        Box? box = null;
        foreach (var p in points)
        {
            box = box is { } b
                ? new(Length.Min(b.Left, p.X), Length.Min(b.Bottom, p.Y), Length.Max(b.Right, p.X), Length.Max(b.Top, p.Y))
                : new(p.X, p.Y, p.X, p.Y);
        }

        return box ?? throw new ArgumentException("No points, so no box.", nameof(points));
    }

    /// <summary>The box's four corners, counter-clockwise from the lower left.</summary>
    public Sequence<Point> Corners() => [new(Left, Bottom), new(Right, Bottom), new(Right, Top), new(Left, Top)];
}
