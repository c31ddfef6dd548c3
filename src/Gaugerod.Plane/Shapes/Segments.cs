namespace Gaugerod.Plane.Shapes;

/// <summary>Exact answers about straight lines between two points.</summary>
public static class Segments
{
    /// <summary>Which way one turns at <paramref name="b"/> when going from <paramref name="a"/> to <paramref name="c"/>: 1 left, -1 right, 0 straight on or back.</summary>
    public static int Turn(Point a, Point b, Point c) => Int128.Sign(Cross(a, b, a, c));

    /// <summary>Whether a point lies on the line from <paramref name="a"/> to <paramref name="b"/>, its ends included.</summary>
    public static bool Holds(Point a, Point b, Point point) =>
        Turn(a, b, point) == 0
        && Within(a.X.Steps, b.X.Steps, point.X.Steps)
        && Within(a.Y.Steps, b.Y.Steps, point.Y.Steps);

    /// <summary>Whether the lines from <paramref name="a"/> to <paramref name="b"/> and from <paramref name="c"/> to <paramref name="d"/> share a point, their ends included.</summary>
    public static bool Meet(Point a, Point b, Point c, Point d)
    {
        if (Turn(a, b, c) * Turn(a, b, d) < 0 && Turn(c, d, a) * Turn(c, d, b) < 0) return true;
        return Holds(a, b, c) || Holds(a, b, d) || Holds(c, d, a) || Holds(c, d, b);
    }

    /// <summary>
    /// Where two such lines cross, rounded to the grid as <see cref="Grid.NearestStep"/> does; null when they share no
    /// point, or run along one straight line.
    /// </summary>
    public static Point? Crossing(Point a, Point b, Point c, Point d)
    {
        var across = Cross(a, b, c, d);
        if (across == 0 || !Meet(a, b, c, d)) return null;
        var along = Cross(a, c, c, d);
        return new(
            a.X + Grid.Nearest(along * (b.X - a.X).Steps, across),
            a.Y + Grid.Nearest(along * (b.Y - a.Y).Steps, across));
    }

    /// <summary>The cross product of the way from <paramref name="a"/> to <paramref name="b"/> and the way from <paramref name="c"/> to <paramref name="d"/>, in square steps.</summary>
    public static Int128 Cross(Point a, Point b, Point c, Point d) =>
        ((Int128)(b.X - a.X).Steps * (d.Y - c.Y).Steps) - ((Int128)(b.Y - a.Y).Steps * (d.X - c.X).Steps);

    /// <summary>The dot product of the same two ways, in square steps: more than zero when they go much the same way.</summary>
    public static Int128 Dot(Point a, Point b, Point c, Point d) =>
        ((Int128)(b.X - a.X).Steps * (d.X - c.X).Steps) + ((Int128)(b.Y - a.Y).Steps * (d.Y - c.Y).Steps);

    private static bool Within(long one, long other, long value) => value >= Math.Min(one, other) && value <= Math.Max(one, other);
}
