using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>The bed that an edge of a face stands on: what is set there follows it.</summary>
/// <param name="Side">The edge, by its name on the face; it must lie more level than plumb, with tile above it.</param>
/// <param name="Floor">The floor whose bed it is.</param>
/// <param name="Edge">The edge of that floor that the face stands along.</param>
public sealed record OnBed(string Side, string Floor, string Edge)
{
    /// <summary>Where on the face the floor's edge begins, from the left; null for where the side begins.</summary>
    public Length? From { get; init; }

    /// <summary>How high above the face's y = 0 the bed's lowest place stands; null for what is told of the side: a fixture's own height, else the bed's thickness there.</summary>
    public Length? Lowest { get; init; }
}

/// <summary>How high an edge really runs.</summary>
/// <param name="Side">The edge, by its name on the face.</param>
/// <param name="Line">Places on it, left to right, two or more; straight between them, level beyond the last.</param>
internal sealed record EdgeHeights(string Side, Sequence<Point> Line)
{
    /// <summary>Whether it says something of a stretch of the side: of more than half of it.</summary>
    public bool Covers(Length from, Length to) => (Length.Min(to, Line[^1].X) - Length.Max(from, Line[0].X)) * 2 > to - from;

    /// <summary>How high it runs at a place, in steps.</summary>
    public double At(double x)
    {
        if (x <= Line[0].X.Steps) return Line[0].Y.Steps;
        for (var i = 1; i < Line.Count; i++)
        {
            var (from, to) = (Line[i - 1], Line[i]);
            if (x <= to.X.Steps) return from.Y.Steps + ((x - from.X.Steps) / (to.X.Steps - from.X.Steps) * (to.Y.Steps - from.Y.Steps));
        }

        return Line[^1].Y.Steps;
    }
}
