using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The pieces that a straight line across a face meets, for its dimensions; whichever way the courses run.</summary>
internal static class TileChain
{
    /// <summary>The pieces in the order they are met on the longest line that no opening breaks; of equals the lowest, or the leftmost.</summary>
    public static IReadOnlyList<Piece> Longest(IReadOnlyCollection<Piece> pieces, bool level)
    {
        IReadOnlyList<Piece> best = [];
        var bestBare = Length.Zero;
        var all = pieces.Count == 0 ? Length.Zero : pieces.Max(p => Along(p.Outline.Bounds, level).To) - pieces.Min(p => Along(p.Outline.Bounds, level).From);
        foreach (var at in pieces.Select(p => Middle(p, level)).Distinct().Order())
        {
            // Half open, so that a piece of a single step lies on the line through its own middle.
            var chain = pieces.Where(p => Across(p.Outline.Bounds, level).From <= at && at < Across(p.Outline.Bounds, level).To)
                .OrderBy(p => Along(p.Outline.Bounds, level).From).ToList();

            // What the line leaves bare: at its ends, and where an opening breaks it, more than a joint.
            var widest = chain.Zip(chain.Skip(1), (one, next) => Along(next.Outline.Bounds, level).From - Along(one.Outline.Bounds, level).To).Aggregate(Length.Zero, Length.Max);
            var bare = all - (Along(chain[^1].Outline.Bounds, level).To - Along(chain[0].Outline.Bounds, level).From) + widest;
            if (best.Count > 0 && bare >= bestBare) continue;
            (best, bestBare) = (chain, bare);
        }

        return best;
    }

    private static Length Middle(Piece piece, bool level)
    {
        var (from, to) = Across(piece.Outline.Bounds, level);
        return from + Grid.HalfDown(to - from);
    }

    private static (Length From, Length To) Across(Box box, bool level) => level ? (box.Bottom, box.Top) : (box.Left, box.Right);

    private static (Length From, Length To) Along(Box box, bool level) => level ? (box.Left, box.Right) : (box.Bottom, box.Top);
}
