namespace Gaugerod.Engine.Pieces;

/// <summary>
/// The sides of a field sorted into square parts of its area, so that a tile asks only those near it. A part without a side
/// lies in the field as a whole, or outside as a whole, and so do all that hang together.
/// </summary>
internal sealed class EdgesNear
{
    private const int Most = 96;

    // By how much a side is taken to reach further than it does: its ends are whole steps, what lies between them is rounded.
    private const double Off = 2;

    private readonly int[] _starts, _sides;
    private readonly bool[] _inside;
    private readonly long _left, _bottom, _size;
    private readonly int _columns, _rows;

    /// <param name="field">The field.</param>
    /// <param name="tile">About the size of a tile, in steps.</param>
    public EdgesNear(TurnedField field, long tile)
    {
        var around = field.Bounds;
        (_left, _bottom) = (around.Left.Steps, around.Bottom.Steps);
        _size = Math.Max(tile, Math.Max(around.Width.Steps, around.Height.Steps) / Most) + 1;
        (_columns, _rows) = ((int)(around.Width.Steps / _size) + 1, (int)(around.Height.Steps / _size) + 1);
        (_starts, _sides, _inside) = (new int[(_columns * _rows) + 1], [], new bool[_columns * _rows]);
        foreach (var edge in field.Edges) Count(edge);
        for (var part = 1; part < _starts.Length; part++) _starts[part] += _starts[part - 1];
        _sides = new int[_starts[^1]];
        for (var e = field.Edges.Length - 1; e >= 0; e--) Enter(field.Edges[e], e);
        Locate(field);
    }

    /// <summary>
    /// Gathers the sides that may touch a box, each once; in no set order. Where there is none it says whether the box lies in
    /// the field; null where there are some.
    /// </summary>
    public bool? Find(long left, long bottom, long right, long top, List<int> found)
    {
        found.Clear();
        var (c0, c1) = (Column(left), Column(right));
        var (r0, r1) = (Row(bottom), Row(top));
        for (var r = r0; r <= r1; r++)
        {
            for (var part = (r * _columns) + c0; part <= (r * _columns) + c1; part++)
            {
                for (var i = _starts[part]; i < _starts[part + 1]; i++)
                {
                    if (!found.Contains(_sides[i])) found.Add(_sides[i]);
                }
            }
        }

        return found.Count == 0 ? _inside[(r0 * _columns) + c0] : null;
    }

    private void Count(in EdgeLine edge)
    {
        var (low, high) = Rows(edge);
        for (var row = low; row <= high; row++)
        {
            var (first, last) = Columns(edge, row);
            for (var column = first; column <= last; column++) _starts[(row * _columns) + column]++;
        }
    }

    /// <summary>Counted, a part's start stands at its end; each side that is entered moves it down by one.</summary>
    private void Enter(in EdgeLine edge, int side)
    {
        var (low, high) = Rows(edge);
        for (var row = low; row <= high; row++)
        {
            var (first, last) = Columns(edge, row);
            for (var column = first; column <= last; column++) _sides[--_starts[(row * _columns) + column]] = side;
        }
    }

    private (int Low, int High) Rows(in EdgeLine edge)
    {
        var end = edge.Y + (edge.AlongY * edge.Length);
        return (Row((long)(Math.Min(edge.Y, end) - Off)), Row((long)(Math.Max(edge.Y, end) + Off)));
    }

    /// <summary>The columns through which a side runs in a row.</summary>
    private (int First, int Last) Columns(in EdgeLine edge, int row)
    {
        var (from, to) = (0.0, edge.Length);
        // The first and the last row have no end; a side that climbs by less than a step lies in its rows with all its length.
        var low = row == 0 ? double.NegativeInfinity : _bottom + (row * _size) - edge.Y - Off;
        var high = row == _rows - 1 ? double.PositiveInfinity : _bottom + ((row + 1) * _size) - edge.Y + Off;
        if (Math.Abs(edge.AlongY * edge.Length) > 1)
        {
            var (one, other) = (low / edge.AlongY, high / edge.AlongY);
            (from, to) = (Math.Clamp(Math.Min(one, other), 0, edge.Length), Math.Clamp(Math.Max(one, other), 0, edge.Length));
        }

        var (start, end) = (edge.X + (edge.AlongX * from), edge.X + (edge.AlongX * to));
        return (Column((long)(Math.Min(start, end) - Off)), Column((long)(Math.Max(start, end) + Off)));
    }

    private void Locate(TurnedField field)
    {
        for (var part = 0; part < _inside.Length; part++)
        {
            if (!IsBare(part)) continue;
            var (row, column) = Math.DivRem(part, _columns);
            _inside[part] = column > 0 && IsBare(part - 1) ? _inside[part - 1]
                : row > 0 && IsBare(part - _columns) ? _inside[part - _columns]
                : FieldRings.Contains(field.Rings, _left + (column * _size) + (_size / 2), _bottom + (row * _size) + (_size / 2));
        }
    }

    private bool IsBare(int part) => _starts[part] == _starts[part + 1];

    private int Column(long x) => (int)Math.Clamp((x - _left) / _size, 0, _columns - 1);

    private int Row(long y) => (int)Math.Clamp((y - _bottom) / _size, 0, _rows - 1);
}
