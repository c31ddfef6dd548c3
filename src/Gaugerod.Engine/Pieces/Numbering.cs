using Gaugerod.Engine.Layouts;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>What is cut out of a tile, before it is numbered.</summary>
/// <param name="Kind">How it is cut.</param>
/// <param name="Outline">Its outline, as the bond lies.</param>
/// <param name="Inner">Holes in it.</param>
/// <param name="Smallest">Its narrowest leg.</param>
/// <param name="Cuts">Its cuts.</param>
internal sealed record CutPart(PieceKind Kind, Ring Outline, Plane.Sequence<Ring> Inner, Plane.Measure.Length Smallest, Plane.Sequence<CutMark> Cuts);

/// <summary>A piece before it is numbered: small, so that a hall of them costs little, and made once its number is known.</summary>
/// <param name="Tile">Its tile.</param>
/// <param name="Part">What is cut out of it; null for a whole tile.</param>
internal readonly record struct Draft(PatternTile Tile, CutPart? Part)
{
    public bool IsWhole => Part is null or { Kind: PieceKind.Full };
}

/// <summary>In which order one reads the pieces of a face: from the top down, from the left. The tiles of a course are counted from its left.</summary>
/// <param name="drafts">The pieces, as the layout gives them.</param>
/// <param name="laid">The box around a piece's whole tile, on the face.</param>
/// <param name="outline">The box around the piece itself, on the face.</param>
internal sealed class Numbering(Lent<Draft> drafts, Func<Draft, Box> laid, Func<Draft, Box> outline) : IDisposable
{
    private readonly Lent<int> _order = Lent<int>.Of(drafts.Count), _places = Lent<int>.Of(drafts.Count), _columns = Lent<int>.Of(drafts.Count);
    private readonly Lent<long> _keys = Lent<long>.Of(drafts.Count);

    /// <summary>The pieces in order: which draft each is, and its place in its course, counted from 1.</summary>
    public (int Draft, int Column) this[int index] => (_order[index], _columns[_order[index]]);

    /// <summary>Puts them in order.</summary>
    public void Sort()
    {
        InCourses();
        for (var i = 0; i < _order.Count; i++) (_places[_order[i]], _keys[i]) = (i, -laid(drafts[_order[i]]).Bottom.Steps);
        Sort(_keys.Items, _order.Items, ByPlace);
        // Tiles whose feet differ by no more than rounding stand on one line.
        for (var from = 0; from < _order.Count;)
        {
            var to = from + 1;
            while (to < _order.Count && _keys[to] - _keys[to - 1] <= PatternCutter.Hair) to++;
            if (to - from > 1) InLine(_keys.Items[from..to], _order.Items[from..to]);
            from = to;
        }
    }

    public void Dispose()
    {
        _order.Dispose();
        _places.Dispose();
        _columns.Dispose();
        _keys.Dispose();
    }

    /// <summary>Course after course, the course that came first before the others.</summary>
    private void InCourses()
    {
        var courses = new Dictionary<int, int>();
        for (var i = 0; i < _keys.Count; i++)
        {
            var tile = drafts[i].Tile;
            if (!courses.TryGetValue(tile.Course, out var course)) courses.Add(tile.Course, course = courses.Count);
            (_order[i], _places[i], _keys[i]) = (i, i, ((long)course << 32) + tile.Column);
        }

        Sort(_keys.Items, _order.Items, (one, other) => outline(drafts[one]).Left.CompareTo(outline(drafts[other]).Left) is var left and not 0 ? left : ByPlace(one, other));
        for (var i = 0; i < _order.Count; i++)
        {
            var goesOn = i > 0 && drafts[_order[i]].Tile.Course == drafts[_order[i - 1]].Tile.Course;
            _columns[_order[i]] = goesOn ? _columns[_order[i - 1]] + 1 : 1;
        }
    }

    private void InLine(Span<long> keys, Span<int> line)
    {
        for (var i = 0; i < line.Length; i++) (_places[line[i]], keys[i]) = (i, laid(drafts[line[i]]).Left.Steps);
        Sort(keys, line, (one, other) =>
        {
            var (a, b) = (outline(drafts[one]), outline(drafts[other]));
            if (a.Bottom != b.Bottom) return b.Bottom.CompareTo(a.Bottom);
            return a.Left != b.Left ? a.Left.CompareTo(b.Left) : ByPlace(one, other);
        });
    }

    private int ByPlace(int one, int other) => _places[one].CompareTo(_places[other]);

    /// <summary>Sorts by plain numbers, which is quick, and then what is equal in them.</summary>
    private static void Sort(Span<long> keys, Span<int> order, Comparison<int> equals)
    {
        keys.Sort(order);
        for (var from = 0; from < keys.Length;)
        {
            var to = from + 1;
            while (to < keys.Length && keys[to] == keys[from]) to++;
            if (to - from > 1) order[from..to].Sort(equals);
            from = to;
        }
    }
}
