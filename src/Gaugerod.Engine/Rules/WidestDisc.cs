using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rules;

/// <summary>The widest round that fits on a floor.</summary>
internal static class WidestDisc
{
    /// <summary>Half a millimetre: finer than any shower is measured.</summary>
    private const double Fine = 0.5;

    /// <summary>Its diameter in millimetres, at the most half a millimetre too small.</summary>
    /// <param name="ring">The floor.</param>
    internal static double On(Ring ring)
    {
        var corners = ring.Points.Select(corner => ((double)corner.X.Millimetres, (double)corner.Y.Millimetres)).ToArray();
        var (left, right, foot, head) = (corners.Min(c => c.Item1), corners.Max(c => c.Item1), corners.Min(c => c.Item2), corners.Max(c => c.Item2));
        var squares = new PriorityQueue<(double X, double Y, double Half), double>();
        var widest = 0.0;
        var half = Math.Max(right - left, head - foot) / 2;
        Look((left + right) / 2, (foot + head) / 2, half);
        // The square that may hold the most is looked at first; one that cannot hold more than is found is let go.
        while (squares.TryDequeue(out var square, out var bound) && -bound > widest + (Fine / 2))
        {
            var quarter = square.Half / 2;
            Look(square.X - quarter, square.Y - quarter, quarter);
            Look(square.X + quarter, square.Y - quarter, quarter);
            Look(square.X - quarter, square.Y + quarter, quarter);
            Look(square.X + quarter, square.Y + quarter, quarter);
        }

        return widest * 2;

        void Look(double x, double y, double size)
        {
            var room = Room(corners, x, y);
            widest = Math.Max(widest, room);
            var most = room + (size * Math.Sqrt(2));
            if (most > widest + (Fine / 2)) squares.Enqueue((x, y, size), -most);
        }
    }

    /// <summary>How far a place is from the nearest side; less than zero outside.</summary>
    private static double Room((double X, double Y)[] corners, double x, double y)
    {
        var (nearest, isInside) = (double.PositiveInfinity, false);
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            if (a.Y > y != b.Y > y && x < a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X))) isInside = !isInside;
            var (dx, dy) = (b.X - a.X, b.Y - a.Y);
            var along = Math.Clamp((((x - a.X) * dx) + ((y - a.Y) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
            nearest = Math.Min(nearest, Math.Sqrt(Square(x - a.X - (along * dx)) + Square(y - a.Y - (along * dy))));
        }

        return isInside ? nearest : -nearest;
    }

    private static double Square(double value) => value * value;
}
