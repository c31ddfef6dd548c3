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
        for (var from = 0; from < chords.Length;)
        {
            var to = from;
            while (to + 1 < chords.Length && GoesOn(edges[to], edges[to + 1])) to++;
            if (to - from + 1 >= Fewest)
            {
                for (var i = from; i <= to; i++) chords[i] = Math.Max(Turned(edges, i, i == from ? i : i - 1), Turned(edges, i, i == to ? i : i + 1));
                // The arc runs on to its end as it does elsewhere.
                (chords[from], chords[to]) = (Math.Max(chords[from], chords[from + 1]), Math.Max(chords[to], chords[to - 1]));
            }

            from = to + 1;
        }

        return chords;
    }

    /// <summary>Half of what the arc turns from a chord to the one beside it, where the tile lies within it; else the most that counts.</summary>
    private static double Turned(Sequence<FieldEdge> edges, int chord, int beside)
    {
        if (chord == beside) return 0;
        var (one, next) = (edges[Math.Min(chord, beside)], edges[Math.Max(chord, beside)]);
        var turn = Segments.Cross(one.From, one.To, next.From, next.To);
        if (turn <= 0) return Rake.Sine;
        var sine = (double)turn / Math.Sqrt((double)Segments.Dot(one.From, one.To, one.From, one.To) * (double)Segments.Dot(next.From, next.To, next.From, next.To));
        // Chords come back to the grid, so that the crown may fall a hair beyond either.
        return Math.Min(Rake.Sine, (sine / 2) + Hair);
    }

    /// <summary>Whether a side runs on from one of the same name and bends by no more than an eighth of a turn: a jog is no arc.</summary>
    private static bool GoesOn(FieldEdge one, FieldEdge next) =>
        one.To == next.From && string.Equals(one.Name, next.Name, StringComparison.Ordinal)
        && Int128.Abs(Segments.Cross(one.From, one.To, next.From, next.To)) <= Segments.Dot(one.From, one.To, next.From, next.To);

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

    /// <summary>What is left of a tile beyond a stretch of a chord, square to a side of the tile.</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="stretch">Where it runs through the tile.</param>
    /// <param name="shape">The tile.</param>
    /// <param name="square">Into the tile, square to its side.</param>
    /// <param name="x">How far right of the motif's own place the tile lies.</param>
    /// <param name="y">How far above it.</param>
    public static double Left(in EdgeLine chord, in Chord stretch, TileShape shape, (double X, double Y) square, double x, double y)
    {
        var (start, climb) = ((chord.X * square.X) + (chord.Y * square.Y), (chord.AlongX * square.X) + (chord.AlongY * square.Y));
        var deepest = start + Math.Max(climb * stretch.From, climb * stretch.To);
        return shape.Reach(square.X, square.Y) + (x * square.X) + (y * square.Y) - deepest;
    }
}
