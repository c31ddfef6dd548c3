using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Layouts;

/// <summary>A tile where a bond of any kind would lay it whole, as the bond lies: not turned.</summary>
/// <param name="Course">Its row: rows follow the lattice's first step and are counted along its second; 0 is the placing's.</param>
/// <param name="Column">Its place in the row.</param>
/// <param name="Tile">Its place in the motif.</param>
/// <param name="X">How far right of the motif's own place it lies, in steps.</param>
/// <param name="Y">How far above it.</param>
internal readonly record struct PatternTile(int Course, int Column, int Tile, long X, long Y);

/// <summary>Puts a bond of any kind on an area.</summary>
internal static class PatternLayout
{
    /// <summary>Every tile whose box touches a box's inside, row after row.</summary>
    /// <param name="bond">The bond.</param>
    /// <param name="u">Where the motif's origin lies, along.</param>
    /// <param name="v">Where it lies, across.</param>
    /// <param name="around">The box, as the bond lies.</param>
    public static IEnumerable<PatternTile> Tiles(Bond bond, long u, long v, Box around)
    {
        var repeats = new Repeats(bond.Lattice, bond.Motif);
        var (left, bottom, right, top) = (around.Left.Steps - u, around.Bottom.Steps - v, around.Right.Steps - u, around.Top.Steps - v);
        foreach (var (i, j) in repeats.Touching(left, bottom, right, top))
        {
            var (x, y) = repeats.At(i, j);
            for (var tile = 0; tile < bond.Motif.Count; tile++)
            {
                var (cell, row) = (bond.Motif[tile].Cell, bond.Motif[tile].Row);
                if (cell.Left.Steps + x >= right || cell.Right.Steps + x <= left || cell.Bottom.Steps + y >= top || cell.Top.Steps + y <= bottom) continue;
                yield return new((int)((j * bond.Rows) + row), (int)((i * bond.Motif.Count) + tile), tile, x + u, y + v);
            }
        }
    }
}
