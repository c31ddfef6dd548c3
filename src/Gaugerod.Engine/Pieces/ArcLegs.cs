using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>
/// The legs of tiles at arcs. An arc is many short sides, and square to a short side near a tile's corner there is little tile
/// whatever is left of it. So, as at the edges of a straight bond, only the chords count that lie within <see cref="Rake"/> of a side of the
/// tile, and what is left is measured square to that side: at a column's nearest point, the neck beside it; nothing where the
/// column goes past the side there. Of an arc that the tile
/// lies within, as under an arched head, only the chord at its crown counts: to both sides of it the piece runs out to nothing
/// wherever the bond lies, and is no thinner for it.
/// </summary>
internal static class ArcLegs
{
    private const int Fewest = 3;
    private const double Hair = 1e-3;

    /// <summary>
    /// Which of a face's edges are chords of an arc: of one name, one after another, three or more. For each by how much it may
    /// be out of line with a side that it follows, as a sine; zero for an edge that is no chord.
    /// </summary>
    public static double[] Chords(FinishedFace face)
    {
        var (edges, chords) = (face.Edges, new double[face.Edges.Count]);
        foreach (var (from, to) in Arcs(edges))
        {
            for (var i = from; i <= to; i++) chords[i] = Math.Max(Turned(edges, i, i == from ? i : i - 1), Turned(edges, i, i == to ? i : i + 1));
            // The arc runs on to its end as it does elsewhere.
            (chords[from], chords[to]) = (Math.Max(chords[from], chords[from + 1]), Math.Max(chords[to], chords[to - 1]));
        }

        return chords;
    }

    /// <summary>
    /// The rounds of a face that tile lies outside of, as at a column: for each edge which one it is a chord of, counted from 1; zero for none. Arcs that
    /// run on into one another are one round.
    /// </summary>
    public static int[] Rounds(FinishedFace face)
    {
        var (edges, rounds) = (face.Edges, new int[face.Edges.Count]);
        var arcs = Arcs(edges).Where(arc => Turn(edges[arc.From], edges[arc.From + 1]) <= 0).ToList();
        var numbers = Enumerable.Range(0, arcs.Count).ToArray();
        for (var i = 0; i < arcs.Count; i++)
        {
            for (var j = 0; j < arcs.Count; j++)
            {
                if (!Bends(edges[arcs[i].To], edges[arcs[j].From])) continue;
                var (kept, lost) = (Math.Min(numbers[i], numbers[j]), Math.Max(numbers[i], numbers[j]));
                for (var k = 0; k < numbers.Length; k++) numbers[k] = numbers[k] == lost ? kept : numbers[k];
            }
        }

        for (var i = 0; i < arcs.Count; i++) Array.Fill(rounds, numbers[i] + 1, arcs[i].From, arcs[i].To - arcs[i].From + 1);
        return rounds;
    }

    private static IEnumerable<(int From, int To)> Arcs(Sequence<FieldEdge> edges)
    {
        for (var from = 0; from < edges.Count;)
        {
            var to = from;
            while (to + 1 < edges.Count && GoesOn(edges[to], edges[to + 1])) to++;
            if (to - from + 1 >= Fewest) yield return (from, to);
            from = to + 1;
        }
    }

    /// <summary>Half of what the arc turns from a chord to the one beside it, where the tile lies within it; else the most that counts.</summary>
    private static double Turned(Sequence<FieldEdge> edges, int chord, int beside)
    {
        if (chord == beside) return 0;
        var (one, next) = (edges[Math.Min(chord, beside)], edges[Math.Max(chord, beside)]);
        var turn = Turn(one, next);
        if (turn <= 0) return Rake.Sine;
        var sine = (double)turn / Math.Sqrt((double)Segments.Dot(one.From, one.To, one.From, one.To) * (double)Segments.Dot(next.From, next.To, next.From, next.To));
        // Chords come back to the grid, so that the crown may fall a hair beyond either.
        return Math.Min(Rake.Sine, (sine / 2) + Hair);
    }

    private static Int128 Turn(FieldEdge one, FieldEdge next) => Segments.Cross(one.From, one.To, next.From, next.To);

    /// <summary>Whether a side runs on from one of the same name and bends by no more than an eighth of a turn: a jog is no arc.</summary>
    private static bool GoesOn(FieldEdge one, FieldEdge next) => string.Equals(one.Name, next.Name, StringComparison.Ordinal) && Bends(one, next);

    private static bool Bends(FieldEdge one, FieldEdge next) =>
        one.To == next.From && Int128.Abs(Turn(one, next)) <= Segments.Dot(one.From, one.To, next.From, next.To);

    /// <summary>Into the tile, square to the side of it that a chord follows; null where it follows none.</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="rake">By how much it may be out of line with the side, as a sine.</param>
    /// <param name="shape">The tile.</param>
    public static (double X, double Y)? Square(in EdgeLine chord, double rake, TileShape shape)
    {
        (double X, double Y)? square = null;
        var least = rake;
        for (var k = 0; k < shape.Sides; k++)
        {
            var (x, y) = shape.Outwards(k);
            var along = Math.Abs((x * chord.AlongX) + (y * chord.AlongY));
            if (along > least) continue;
            least = along;
            square = (y * chord.AlongX) - (x * chord.AlongY) > 0 ? (x, y) : (-x, -y);
        }

        return square;
    }

    /// <summary>How wide a tile is beyond a stretch of a chord, square to a side of the tile, least and most.</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="stretch">Where it runs through the tile.</param>
    /// <param name="shape">The tile.</param>
    /// <param name="square">Into the tile, square to its side.</param>
    /// <param name="x">How far right of the motif's own place the tile lies.</param>
    /// <param name="y">How far above it.</param>
    public static (double Least, double Most) Left(in EdgeLine chord, in Chord stretch, TileShape shape, (double X, double Y) square, double x, double y)
    {
        var (start, climb) = ((chord.X * square.X) + (chord.Y * square.Y), (chord.AlongX * square.X) + (chord.AlongY * square.Y));
        var side = shape.Reach(square.X, square.Y) + (x * square.X) + (y * square.Y);
        var (one, other) = (side - start - (climb * stretch.From), side - start - (climb * stretch.To));
        return (Math.Min(one, other), Math.Max(one, other));
    }

    /// <summary>A number for the way that a round's neck is measured: the same for all sides of a tile that look that way.</summary>
    public static int Way(TileShape shape, (double X, double Y) square)
    {
        for (var k = 0; k < shape.Sides; k++)
        {
            var (x, y) = shape.Outwards(k);
            if (Math.Abs((x * square.Y) - (y * square.X)) < Hair) return (2 * k) + ((x * square.X) + (y * square.Y) > 0 ? 0 : 1);
        }

        return 0;
    }
}
