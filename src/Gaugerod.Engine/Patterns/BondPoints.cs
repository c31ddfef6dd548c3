using Gaugerod.Engine.Bonds;

namespace Gaugerod.Engine.Patterns;

/// <summary>The points of one repeat of a bond that people bring to lines.</summary>
internal static class BondPoints
{
    /// <summary>The middles of the tiles.</summary>
    public static IEnumerable<(double X, double Y)> Middles(Bond bond) =>
        bond.Motif.Select(tile => (tile.Shape.Points.Average(p => (double)p.X.Steps), tile.Shape.Points.Average(p => (double)p.Y.Steps)));

    /// <summary>The tiles' corners.</summary>
    public static IEnumerable<(double X, double Y)> Corners(Bond bond) =>
        bond.Motif.SelectMany(tile => tile.Shape.Points).Select(p => ((double)p.X.Steps, (double)p.Y.Steps));

    /// <summary>Where joints meet: the corners of the tiles let out by half a joint, which lie in the middle of the joints.</summary>
    public static IEnumerable<(double X, double Y)> Crossings(Bond bond, double joint)
    {
        foreach (var tile in bond.Motif)
        {
            var points = tile.Shape.Points;
            for (var k = 0; k < points.Count; k++)
            {
                var (before, here, after) = (points[(k + points.Count - 1) % points.Count], points[k], points[(k + 1) % points.Count]);
                var (inX, inY) = Unit(here.X.Steps - before.X.Steps, here.Y.Steps - before.Y.Steps);
                var (onX, onY) = Unit(after.X.Steps - here.X.Steps, after.Y.Steps - here.Y.Steps);
                // Half a joint off both sides: on along the first side and back along the second, by as much over the sine between them.
                var off = joint / 2 / ((inX * onY) - (inY * onX));
                yield return (here.X.Steps + ((inX - onX) * off), here.Y.Steps + ((inY - onY) * off));
            }
        }
    }

    private static (double X, double Y) Unit(double x, double y)
    {
        var length = Math.Sqrt((x * x) + (y * y));
        return (x / length, y / length);
    }
}
