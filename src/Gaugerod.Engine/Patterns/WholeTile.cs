using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Patterns;

/// <summary>Whether a tile lies whole on a field, cut by no side and no drilled hole.</summary>
internal static class WholeTile
{
    /// <summary>Whether a convex tile, as the bond lies, is whole.</summary>
    public static bool Is(TurnedField field, Ring tile)
    {
        var middle = Point.FromSteps(tile.Points.Sum(point => point.X.Steps) / tile.Points.Count, tile.Points.Sum(point => point.Y.Steps) / tile.Points.Count);
        var around = field.Rings.Count(ring => RingChecks.Locate(new Ring(ring.Select(node => node.Point).ToSequence()), middle) == Whereabouts.Inside);
        return around == 1 && !Array.Exists(field.Edges, edge => Crosses(edge, tile));
    }

    /// <summary>Whether a side runs through a convex tile for more than a hair.</summary>
    private static bool Crosses(in EdgeLine edge, Ring tile)
    {
        var (from, to) = (0.0, edge.Length);
        for (var i = 0; i < tile.Points.Count && from < to; i++)
        {
            var (a, b) = (tile.Points[i], tile.Points[(i + 1) % tile.Points.Count]);
            var (alongX, alongY) = ((double)(b.X.Steps - a.X.Steps), (double)(b.Y.Steps - a.Y.Steps));
            // How far into the tile from this side the edge begins, and how that grows along the edge.
            var length = Math.Sqrt((alongX * alongX) + (alongY * alongY));
            var inside = ((alongX * (edge.Y - a.Y.Steps)) - (alongY * (edge.X - a.X.Steps))) / length - PointsOnLine.Tolerance;
            var grows = ((alongX * edge.AlongY) - (alongY * edge.AlongX)) / length;
            if (Math.Abs(grows) < 1e-12)
            {
                if (inside <= 0) return false;
            }
            else if (grows > 0)
            {
                from = Math.Max(from, -inside / grows);
            }
            else
            {
                to = Math.Min(to, -inside / grows);
            }
        }

        return to - from > PointsOnLine.Tolerance;
    }
}
