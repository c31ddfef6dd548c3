using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>Says what is proved of a placing. docs/lines.md carries the argument.</summary>
internal static class ProofMaker
{
    /// <summary>The proof.</summary>
    /// <param name="search">The search, done.</param>
    /// <param name="best">The placing chosen.</param>
    /// <param name="complete">Whether every tie had its tiles counted.</param>
    /// <param name="examined">How many placings were scored in full.</param>
    public static Proof Prove(JointSearch search, RunPlacing best, bool complete, long examined)
    {
        var smallest = best.Score.SmallestCut;
        var square = search.Model.Frames.All(frame => frame.IsSquare);
        if (square && complete && search.Order.TilesLast && search.Order.SmallestBeforeMirror)
        {
            return new(ProofKind.Exact, smallest, examined, "No better place exists for this tile and this joint.");
        }

        var bound = square ? smallest : Bound(search, best.Score);
        var gap = bound - smallest;
        var words = square
            ? "No place has a larger smallest cut; among places that tie, fewer tiles are not ruled out."
            : gap <= Length.FromSteps(Hair)
                ? "The walls are out of square. No place has a smallest cut more than 0.05 mm larger; that is less than any tape shows."
                : "The walls are out of square. No place has a smallest cut more than the stated bound.";
        return new(ProofKind.Bounded, bound, examined, words);
    }

    /// <summary>0.05 mm.</summary>
    private const long Hair = 160;

    /// <summary>
    /// At the starts looked at, the quick bound is a true one. Between two neighbouring starts no course comes to an edge or
    /// leaves one, so the legs at the sides change by no more than the wall's slope times the way.
    /// </summary>
    private static Length Bound(JointSearch search, Score best)
    {
        // Rounded up: the slope of the wall that is furthest out, per step, in millionths.
        var slope = search.Model.Frames
            .SelectMany(frame => frame.Sides)
            .Select(edge => (((edge.MostAlong - edge.LeastAlong) * Millionths) / Math.Max(1, edge.B1 - edge.B0)) + 1)
            .DefaultIfEmpty(0).Max();
        var starts = search.AllStarts.ToArray();
        Array.Sort(starts);
        var whole = Math.Min(search.Model.Courses.Length, search.Model.Courses.Depth);
        var most = best.SmallestCut.Steps;
        (long V, long? Smallest)? before = null;
        foreach (var v in starts)
        {
            var here = search.SmallestAt(v, best);
            if (here is { } at) most = Math.Max(most, at);
            if (before is { Smallest: { } low } left && here is { } high)
            {
                var slack = ((v - left.V) * slope / Millionths) + 2;
                most = Math.Max(most, Math.Min(Math.Max(low, high) + slack, whole));
            }

            before = (v, here);
        }

        return Length.FromSteps(most);
    }

    private const long Millionths = 1_000_000;
}
