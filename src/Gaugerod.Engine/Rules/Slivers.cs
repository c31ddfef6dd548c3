using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Which pieces a run's slivers are. How many there are is what the search counted; this finds them among the pieces, so that a setter knows where to look.</summary>
public static class Slivers
{
    /// <summary>The slivers, the narrowest first; none for mosaic, where chips are judged and sheets are numbered.</summary>
    /// <param name="pieces">The run's pieces.</param>
    /// <param name="bond">Its bond.</param>
    /// <param name="limit">What is narrower is one.</param>
    /// <param name="count">How many the search counted.</param>
    public static Sequence<Piece> Of(IEnumerable<Piece> pieces, BondRequest bond, Length limit, int count)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        if (count == 0 || bond is BondRequest.Mosaic) return [];

        // A piece without a leg bears its tile's shorter side. Of those as near to the limit as a rounding, only so many are named as were counted.
        return pieces.Where(piece => piece.Kind != PieceKind.Full && piece.Smallest < limit && piece.Smallest < Length.Min(piece.Cell.Width, piece.Cell.Height))
            .OrderBy(piece => piece.Smallest).Take(count).ToSequence();
    }

    /// <summary>Their numbers and the edges they stand at: <c>A4, A9 (the left side of north); B2 (the head of east)</c>. Empty for none.</summary>
    /// <param name="slivers">The slivers.</param>
    public static string Words(IReadOnlyCollection<Piece> slivers) => string.Join("; ", slivers.GroupBy(Place, StringComparer.Ordinal).Select(at => $"{PieceNames.Of([.. at])} ({at.Key})"));

    /// <summary>The edge that makes a piece so narrow: the one whose cut leaves nearest to its narrowest leg.</summary>
    private static string Place(Piece piece) => piece.Cuts.Count == 0 ? piece.Face : EdgeWords.Of(piece.Face, piece.Cuts.MinBy(cut => (cut.Least - piece.Smallest).Abs()).Faces);
}
