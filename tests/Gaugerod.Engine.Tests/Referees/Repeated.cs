using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>Where a bond lays its tiles, the plain way: the motif is set down at every repeat that could come near, and each tile's box is asked.</summary>
internal static class Repeated
{
    /// <summary>Every tile whose box comes into a box's inside: its place in the motif, and how far it is moved from there.</summary>
    public static IEnumerable<(int Tile, long X, long Y)> Around(Bond bond, long u, long v, Box around)
    {
        // Let out by the motif on every side; then the repeats of the corners are the outermost there can be.
        var motif = Box.Around(bond.Motif.SelectMany(tile => tile.Shape.Points));
        var (left, bottom) = (around.Left.Steps - u - motif.Right.Steps, around.Bottom.Steps - v - motif.Top.Steps);
        var (right, top) = (around.Right.Steps - u - motif.Left.Steps, around.Top.Steps - v - motif.Bottom.Steps);
        var (a, b) = (bond.Lattice.First, bond.Lattice.Second);
        var turn = ((double)a.Along.Steps * b.Across.Steps) - ((double)a.Across.Steps * b.Along.Steps);
        (long X, long Y)[] corners = [(left, bottom), (right, bottom), (right, top), (left, top)];
        var first = Array.ConvertAll(corners, c => (((double)c.X * b.Across.Steps) - ((double)c.Y * b.Along.Steps)) / turn);
        var second = Array.ConvertAll(corners, c => (((double)c.Y * a.Along.Steps) - ((double)c.X * a.Across.Steps)) / turn);
        for (var i = (long)Math.Floor(first.Min()); i <= first.Max() + 1; i++)
        {
            for (var j = (long)Math.Floor(second.Min()); j <= second.Max() + 1; j++)
            {
                var (x, y) = (u + (a.Along.Steps * i) + (b.Along.Steps * j), v + (a.Across.Steps * i) + (b.Across.Steps * j));
                for (var tile = 0; tile < bond.Motif.Count; tile++)
                {
                    if (ComesInto(bond.Motif[tile].Cell, x, y, around)) yield return (tile, x, y);
                }
            }
        }
    }

    /// <summary>A tile of the motif where it is laid.</summary>
    public static Ring Laid(Bond bond, int tile, long x, long y) => bond.Motif[tile].Shape.Moved(Length.FromSteps(x), Length.FromSteps(y));

    private static bool ComesInto(Box cell, long x, long y, Box around) =>
        cell.Left.Steps + x < around.Right.Steps && cell.Right.Steps + x > around.Left.Steps
        && cell.Bottom.Steps + y < around.Top.Steps && cell.Top.Steps + y > around.Bottom.Steps;
}
