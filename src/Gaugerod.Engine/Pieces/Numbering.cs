using System.Globalization;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Pieces;

/// <summary>
/// Numbers the pieces of a face as one reads it: from the top down, from the left. Cut pieces come first, whole tiles
/// after them. The tiles of a course are counted from its left.
/// </summary>
internal static class Numbering
{
    /// <summary>The pieces in order, numbered.</summary>
    /// <param name="pieces">The pieces, as the layout gives them.</param>
    /// <param name="letter">What their numbers begin with.</param>
    public static Sequence<Piece> Of(List<Piece> pieces, string letter)
    {
        var (order, columns) = InCourses(pieces);
        InLines(pieces, order);
        var (cut, whole) = (0, 0);
        foreach (var piece in pieces)
        {
            if (piece.Kind != PieceKind.Full) whole++;
        }

        return Sequence.Make(order.Length, order, (from, i) =>
        {
            var piece = pieces[from[i]];
            var number = piece.Kind == PieceKind.Full ? ++whole : ++cut;
            return piece with { Id = letter + number.ToString(CultureInfo.InvariantCulture), Column = columns[from[i]] };
        });
    }

    /// <summary>The pieces course after course, the course that came first before the others; and each piece's place in its course.</summary>
    private static (int[] Order, int[] Columns) InCourses(List<Piece> pieces)
    {
        var (order, columns, keys) = (new int[pieces.Count], new int[pieces.Count], new long[pieces.Count]);
        var courses = new Dictionary<int, int>();
        for (var i = 0; i < keys.Length; i++)
        {
            if (!courses.TryGetValue(pieces[i].Course, out var course)) courses.Add(pieces[i].Course, course = courses.Count);
            (order[i], keys[i]) = (i, ((long)course << 32) + pieces[i].Column);
        }

        Sort(keys, order, (one, other) => Bounds(pieces, one).Left.CompareTo(Bounds(pieces, other).Left) is var left and not 0 ? left : one.CompareTo(other));
        var (now, column) = (-1, 0);
        foreach (var i in order)
        {
            if (courses[pieces[i].Course] is var course && course != now) (now, column) = (course, 0);
            columns[i] = ++column;
        }

        return (order, columns);
    }

    /// <summary>Brings them into the lines in which one reads the face: tiles whose feet differ by no more than rounding stand on one.</summary>
    private static void InLines(List<Piece> pieces, int[] order)
    {
        var (keys, places) = (new long[order.Length], new int[order.Length]);
        for (var i = 0; i < order.Length; i++) (places[order[i]], keys[i]) = (i, -pieces[order[i]].Laid.Bounds.Bottom.Steps);
        Sort(keys, order, (one, other) => places[one].CompareTo(places[other]));
        for (var from = 0; from < order.Length;)
        {
            var to = from + 1;
            while (to < order.Length && keys[to] - keys[to - 1] <= PatternCutter.Hair) to++;
            if (to - from > 1) InLine(pieces, order.AsSpan(from, to - from), places);
            from = to;
        }
    }

    private static void InLine(List<Piece> pieces, Span<int> line, int[] places)
    {
        var keys = new long[line.Length];
        for (var i = 0; i < line.Length; i++) (places[line[i]], keys[i]) = (i, pieces[line[i]].Laid.Bounds.Left.Steps);
        Sort(keys, line, (one, other) =>
        {
            var (a, b) = (Bounds(pieces, one), Bounds(pieces, other));
            if (a.Bottom != b.Bottom) return b.Bottom.CompareTo(a.Bottom);
            return a.Left != b.Left ? a.Left.CompareTo(b.Left) : places[one].CompareTo(places[other]);
        });
    }

    private static Plane.Shapes.Box Bounds(List<Piece> pieces, int piece) => pieces[piece].Outline.Bounds;

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
