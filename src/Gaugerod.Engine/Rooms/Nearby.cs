using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>How near places lie to straight lines, in steps.</summary>
internal static class Nearby
{
    /// <summary>The place on the line between two points that is nearest to another.</summary>
    public static (double X, double Y) On((double X, double Y) a, (double X, double Y) b, (double X, double Y) to)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var square = (dx * dx) + (dy * dy);
        var part = square == 0 ? 0 : Math.Clamp((((to.X - a.X) * dx) + ((to.Y - a.Y) * dy)) / square, 0, 1);
        return (a.X + (part * dx), a.Y + (part * dy));
    }

    /// <summary>How far a place lies from the line between two points.</summary>
    public static double Off(Point a, Point b, Point place) => Distance(On(Of(a), Of(b), Of(place)), Of(place));

    /// <summary>How far a place lies from a ring, and which of its sides is the nearest.</summary>
    public static (double Distance, int Side) Off(Ring ring, Point place) =>
        Enumerable.Range(0, ring.Points.Count).Select(i => (Off(ring.Points[i], ring.Points[(i + 1) % ring.Points.Count], place), i)).Min();

    public static double Distance((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    public static (double X, double Y) Of(Point point) => (point.X.Steps, point.Y.Steps);

    public static Point Of((double X, double Y) place) => new(Grid.Nearest(place.X), Grid.Nearest(place.Y));
}
