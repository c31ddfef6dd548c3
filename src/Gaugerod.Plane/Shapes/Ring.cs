using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Shapes;

/// <summary>
/// A closed outline: its corners in order, the last joined to the first, no corner said twice. Counter-clockwise
/// where it bounds something, by custom of this project also where it bounds a hole.
/// </summary>
/// <param name="Points">The corners; at least three.</param>
public sealed record Ring(Sequence<Point> Points)
{
    /// <summary>Twice the area inside, in square steps: more than zero when the ring runs counter-clockwise.</summary>
    public Int128 DoubledArea
    {
        get
        {
            Int128 sum = 0;
            var points = Points.AsSpan();
            for (var i = 0; i < points.Length; i++)
            {
                var (a, b) = (points[i], points[i + 1 == points.Length ? 0 : i + 1]);
                sum += Math.BigMul(a.X.Steps, b.Y.Steps) - Math.BigMul(b.X.Steps, a.Y.Steps);
            }

            return sum;
        }
    }

    /// <summary>The box around the ring.</summary>
    public Box Bounds => Box.Around(Points.AsSpan());

    /// <summary>The ring of a box.</summary>
    public static Ring Of(Box box) => new(box.Corners());

    /// <summary>The same ring, run the other way round.</summary>
    public Ring Reversed() => new(Points.Reverse().ToSequence());

    /// <summary>The same ring, run counter-clockwise.</summary>
    public Ring CounterClockwise() => DoubledArea < 0 ? Reversed() : this;

    /// <summary>The ring moved.</summary>
    public Ring Moved(Length right, Length up) => new(Sequence.Make(Points.Count, (Points, right, up), static (from, i) => from.Points[i].Moved(from.right, from.up)));
}
