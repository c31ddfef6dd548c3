using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>The sides of a field sorted into square parts of its area, so that a tile asks only those near it.</summary>
internal sealed class EdgesNear
{
    private const int Most = 64;
    private readonly List<int>?[] _parts;
    private readonly long _left, _bottom, _size;
    private readonly int _columns, _rows;

    /// <param name="edges">The sides.</param>
    /// <param name="around">The box around them.</param>
    /// <param name="tile">About the size of a tile, in steps.</param>
    public EdgesNear(EdgeLine[] edges, Box around, long tile)
    {
        (_left, _bottom) = (around.Left.Steps, around.Bottom.Steps);
        _size = Math.Max(tile, Math.Max(around.Width.Steps, around.Height.Steps) / Most) + 1;
        (_columns, _rows) = ((int)(around.Width.Steps / _size) + 1, (int)(around.Height.Steps / _size) + 1);
        _parts = new List<int>?[_columns * _rows];
        for (var e = 0; e < edges.Length; e++)
        {
            // From part to part along the side, half a part at a time, each with its neighbours.
            var steps = (int)(edges[e].Length * 2 / _size) + 1;
            for (var i = 0; i <= steps; i++)
            {
                var along = edges[e].Length * i / steps;
                Enter(e, edges[e].X + (edges[e].AlongX * along), edges[e].Y + (edges[e].AlongY * along));
            }
        }
    }

    /// <summary>Gathers the sides that may touch a box, each once; in no set order.</summary>
    public void Find(long left, long bottom, long right, long top, List<int> found)
    {
        found.Clear();
        var (c0, c1) = (Column(left), Column(right));
        var (r0, r1) = (Row(bottom), Row(top));
        for (var r = r0; r <= r1; r++)
        {
            for (var c = c0; c <= c1; c++)
            {
                if (_parts[(r * _columns) + c] is not { } part) continue;
                foreach (var edge in part)
                {
                    if (!found.Contains(edge)) found.Add(edge);
                }
            }
        }
    }

    private void Enter(int edge, double x, double y)
    {
        var (column, row) = (Column((long)x), Row((long)y));
        for (var r = Math.Max(row - 1, 0); r <= Math.Min(row + 1, _rows - 1); r++)
        {
            for (var c = Math.Max(column - 1, 0); c <= Math.Min(column + 1, _columns - 1); c++)
            {
                var part = _parts[(r * _columns) + c] ??= [];
                if (part.Count == 0 || part[^1] != edge) part.Add(edge);
            }
        }
    }

    private int Column(long x) => (int)Math.Clamp((x - _left) / _size, 0, _columns - 1);

    private int Row(long y) => (int)Math.Clamp((y - _bottom) / _size, 0, _rows - 1);
}
