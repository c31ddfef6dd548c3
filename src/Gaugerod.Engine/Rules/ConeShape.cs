using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Rules;

/// <summary>The surface of a floor that rises evenly from its drain to a level rim: flat under every chord of the rim.</summary>
/// <param name="Cone">Where it falls.</param>
/// <param name="Height">How high the rim is over the drain, in steps.</param>
internal sealed record ConeShape(Cone Cone, double Height)
{
    private readonly (double X, double Y)[] _edge =
        [.. Cone.Edge.Select(point => ((double)(point.X - Cone.Middle.X).Steps, (double)(point.Y - Cone.Middle.Y).Steps))];

    /// <summary>Ways from the drain to the middles of the rim's chords, each with how far the rim is.</summary>
    public IReadOnlyList<(double X, double Y, double Edge)> Ways(int most)
    {
        var (ways, step) = (new List<(double X, double Y, double Edge)>(), Math.Max(1, (_edge.Length - 1) / most));
        for (var i = 0; i + 1 < _edge.Length; i += step)
        {
            var (x, y) = ((_edge[i].X + _edge[i + 1].X) / 2, (_edge[i].Y + _edge[i + 1].Y) / 2);
            var length = Math.Sqrt((x * x) + (y * y));
            ways.Add((x / length, y / length, length));
        }

        return ways;
    }

    /// <summary>How far the middle of a straight line across a way lies off the surface, its ends on it.</summary>
    public double Hollow((double X, double Y, double Edge) way, double at, double across)
    {
        var (x, y, half) = (way.X * at, way.Y * at, across / 2);
        var ends = Rise(x - (way.Y * half), y + (way.X * half)) + Rise(x + (way.Y * half), y - (way.X * half));
        return Math.Abs((ends / 2) - Rise(x, y));
    }

    private double Rise(double x, double y)
    {
        if (x == 0 && y == 0) return 0;
        // Beyond the folds at its ends the surface is thought on: no tile lies there.
        for (var i = 0; i + 1 < _edge.Length; i++)
        {
            var (a, b) = (_edge[i], _edge[i + 1]);
            if ((a.X * y) - (a.Y * x) < 0 || (x * b.Y) - (y * b.X) < 0 || ((a.X + b.X) * x) + ((a.Y + b.Y) * y) <= 0) continue;
            return Under(i);
        }

        var ((firstX, firstY), (lastX, lastY)) = (_edge[0], _edge[^1]);
        var first = ((firstX * x) + (firstY * y)) / Math.Sqrt((firstX * firstX) + (firstY * firstY));
        var last = ((lastX * x) + (lastY * y)) / Math.Sqrt((lastX * lastX) + (lastY * lastY));
        return Under(last > first ? _edge.Length - 2 : 0);

        double Under(int i)
        {
            var (a, b) = (_edge[i], _edge[i + 1]);
            var (dx, dy) = (b.X - a.X, b.Y - a.Y);
            return Height * ((x * dy) - (y * dx)) / ((a.X * dy) - (a.Y * dx));
        }
    }
}
