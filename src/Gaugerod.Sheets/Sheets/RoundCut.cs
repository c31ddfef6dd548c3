using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>
/// Cuts of one piece that follow an arc, taken together: nobody marks twenty chords, but two ends, a place between and a
/// radius.
/// </summary>
/// <param name="Faces">The edge they meet.</param>
/// <param name="Corners">The corners between them, first and last the ends, as places from the tile's lower left corner.</param>
/// <param name="Cuts">The cuts.</param>
internal sealed record RoundCut(string Faces, Sequence<Point> Corners, Sequence<CutMark> Cuts)
{
    /// <summary>Fewer are marked one by one: a wall with a bend in it.</summary>
    private const int Fewest = 3;

    /// <summary>What is marked: both ends and the corner nearest to the middle.</summary>
    public IEnumerable<Point> Marked => [Corners[0], Corners[Corners.Count / 2], Corners[^1]];

    /// <summary>The radius of the cut, from corners that stand on the arc: its ends stand on the tile's sides, within a chord. Null where there are too few.</summary>
    public Length? Radius => Corners.Count > 4 && Arc.Of(Corners[1], Corners[Corners.Count / 2], Corners[^2]) is { } arc ? Grid.Nearest(arc.Radius) : null;

    /// <summary>The rounds of a piece.</summary>
    public static IReadOnlyList<RoundCut> Of(Piece piece)
    {
        var ways = piece.Cuts.Select(cut => (Cut: cut, Ends: Ends(cut, piece.Cell))).ToList();

        // The list begins anywhere on the outline: turned until no arc runs over its end.
        for (var turns = 0; turns < ways.Count && Meets(ways[^1], ways[0]); turns++) ways = [.. ways.Skip(1), ways[0]];
        var rounds = new List<RoundCut>();
        for (var from = 0; from < ways.Count;)
        {
            var to = from;
            while (to + 1 < ways.Count && Meets(ways[to], ways[to + 1])) to++;
            if (to - from + 1 >= Fewest) rounds.Add(Made(ways[from..(to + 1)]));
            from = to + 1;
        }

        return rounds;
    }

    /// <summary>Whether a cut is one of these.</summary>
    public bool Holds(CutMark cut) => Cuts.Contains(cut);

    private static RoundCut Made(List<(CutMark Cut, (Point Low, Point High) Ends)> chords)
    {
        var corners = new List<Point>();
        for (var i = 0; i + 1 < chords.Count; i++)
        {
            var (a, b) = (chords[i].Ends, chords[i + 1].Ends);
            var shared = a.High == b.Low || a.High == b.High ? a.High : a.Low;
            if (i == 0) corners.Add(shared == a.High ? a.Low : a.High);
            corners.Add(shared);
            if (i + 2 == chords.Count) corners.Add(shared == b.High ? b.Low : b.High);
        }

        return new(chords[0].Cut.Faces, corners.ToSequence(), chords.Select(chord => chord.Cut).ToSequence());
    }

    /// <summary>Whether the next cut goes on from one, of the same edge, and bends by no more than an eighth of a turn: a notch is no arc.</summary>
    private static bool Meets((CutMark Cut, (Point Low, Point High) Ends) one, (CutMark Cut, (Point Low, Point High) Ends) next)
    {
        if (!string.Equals(one.Cut.Faces, next.Cut.Faces, StringComparison.Ordinal) || one.Cut == next.Cut) return false;
        foreach (var (from, shared) in new[] { one.Ends, (one.Ends.High, one.Ends.Low) })
        {
            if (shared != next.Ends.Low && shared != next.Ends.High) continue;
            var to = shared == next.Ends.Low ? next.Ends.High : next.Ends.Low;
            if (Int128.Abs(Segments.Cross(from, shared, shared, to)) <= Segments.Dot(from, shared, shared, to)) return true;
        }

        return false;
    }

    private static (Point Low, Point High) Ends(CutMark cut, Box cell) => cut.Away switch
    {
        TileSide.Right => (new(cut.First, cut.From), new(cut.Last, cut.To)),
        TileSide.Left => (new(cell.Width - cut.First, cut.From), new(cell.Width - cut.Last, cut.To)),
        TileSide.Top => (new(cut.From, cut.First), new(cut.To, cut.Last)),
        _ => (new(cut.From, cell.Height - cut.First), new(cut.To, cell.Height - cut.Last)),
    };
}
