using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>Says what is proved of a placing. docs/lines.md carries the argument.</summary>
internal static class ProofMaker
{
    /// <summary>The proof.</summary>
    /// <param name="search">The search, done.</param>
    /// <param name="best">The placing chosen.</param>
    /// <param name="narrowed">What was found between the starts; null where every face is square.</param>
    /// <param name="complete">Whether every tie had its tiles counted.</param>
    /// <param name="examined">How many placings were scored in full.</param>
    public static Proof Prove(JointSearch search, RunPlacing best, Narrowing? narrowed, bool complete, long examined)
    {
        var (smallest, cut) = (best.Score.Judged, best.Score.AtWorst is null ? "smallest cut" : "smallest cut at worst");
        var (square, whole) = (search.Model.IsSquare, Length.Min(search.Model.Problem.Product.Width, search.Model.Problem.Product.Height));
        if (square && !search.Order.SmallestIsProved)
        {
            return new(ProofKind.None, smallest, examined, "In this order of what counts nothing is proved; this is the best place found.");
        }

        if (search.Passed is { } passed)
        {
            var most = Length.Max(smallest, Length.Min(passed.Judged, whole));
            return new(ProofKind.Bounded, most, examined, "The run is so large that not every place was looked at; this is the best of those that promised most.");
        }

        if (square && complete && search.Order.TilesLast)
        {
            return new(ProofKind.Exact, smallest, examined, "No better place exists for this tile and this joint.");
        }

        if (square)
        {
            var open = search.IsSpent ? "a better one is" : "fewer tiles are";
            return new(ProofKind.Bounded, smallest, examined, $"No place has a larger {cut}; among places that tie, {open} not ruled out.");
        }

        var bound = narrowed!.Bound;
        var tape = search.Model.Problem.Tape;
        // A gable is as its maker meant it, not out of square: said is what is true of both.
        const string Edges = "Not all edges run level and plumb; ";
        var words = tape.Down(bound) == tape.Down(smallest)
            ? $"{Edges}no place that meets as many wants has a {cut} that this tape would show to be larger."
            : bound >= whole
                ? $"{Edges}this is the best place found. That another leaves a larger {cut} is not ruled out."
                : $"{Edges}no place that meets as many wants has a {cut} over {LengthText.Nearest(bound, tape)}.";
        return new(ProofKind.Bounded, bound, examined + narrowed.Examined, words);
    }
}
