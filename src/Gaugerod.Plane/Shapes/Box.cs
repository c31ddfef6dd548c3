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
        return Around((ReadOnlySpan<Point>)[.. points]);
    }

    /// <summary>The box around some points.</summary>
    /// <exception cref="ArgumentException">There are no points.</exception>
    public static Box Around(ReadOnlySpan<Point> points)
    {
        if (points.IsEmpty) throw new ArgumentException("No points, so no box.", nameof(points));
        var (left, bottom, right, top) = (points[0].X, points[0].Y, points[0].X, points[0].Y);
        foreach (var p in points[1..])
        {
            (left, bottom) = (Length.Min(left, p.X), Length.Min(bottom, p.Y));
            (right, top) = (Length.Max(right, p.X), Length.Max(top, p.Y));
        }

        return new(left, bottom, right, top);
    }

    /// <summary>The box's four corners, counter-clockwise from the lower left.</summary>
    public Sequence<Point> Corners() => [new(Left, Bottom), new(Right, Bottom), new(Right, Top), new(Left, Top)];
}
