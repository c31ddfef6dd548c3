using Gaugerod.Plane;
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
        var square = search.Model.IsSquare;
        if (square && complete && search.Order.TilesLast && search.Order.SmallestBeforeMirror)
        {
            return new(ProofKind.Exact, smallest, examined, "No better place exists for this tile and this joint.");
        }

        if (square)
        {
            return new(ProofKind.Bounded, smallest, examined, "No place has a larger smallest cut; among places that tie, fewer tiles are not ruled out.");
        }

        var (bound, looked) = Bound(search, best.Score);
        var tape = search.Model.Problem.Tape;
        var words = tape.Down(bound) == tape.Down(smallest)
            ? "The walls are out of square; no place that meets as many wants has a smallest cut that this tape would show to be larger."
            : $"The walls are out of square; no place that meets as many wants has a smallest cut over {LengthText.Nearest(bound, tape)}.";
        return new(ProofKind.Bounded, bound, examined + looked, words);
    }

    /// <summary>
    /// Between two neighbouring starts no course comes to an edge or leaves one, so a leg at a side changes by no more than
    /// the wall's slope times the way. A search that lets every limit out by as much, at the starts alone, is thus never
    /// behind a true placing between them by more than that. How many tiles are slivers may hang on the hair let out, so
    /// where there are any they are left out of account.
    /// </summary>
    private static (Length Bound, long Examined) Bound(JointSearch search, Score best)
    {
        var model = search.Model;
        // Rounded up: the slope of the edge that is furthest out, per step, in millionths.
        var slope = model.Frames
            .SelectMany(frame => frame.Sides.Select(edge => (Out: edge.MostAlong - edge.LeastAlong, Over: edge.B1 - edge.B0))
                .Concat(frame.Levels.Select(edge => (Out: edge.MostAcross - edge.LeastAcross, Over: edge.A1 - edge.A0))))
            .Select(edge => (edge.Out * Millionths / Math.Max(1, edge.Over)) + 1)
            .DefaultIfEmpty(0).Max();
        // The worst end of an edge may also stand in a joint.
        var relax = ((search.WidestStep() + model.Joint.Steps) * slope / Millionths) + 2;
        var problem = best.Slivers == 0 ? model.Problem : model.Problem with
        {
            Order = model.Problem.Order.Where(criterion => criterion != Criterion.Slivers).Append(Criterion.Slivers).ToSequence(),
        };
        var relaxed = new JointSearch(new(problem, model.Joint, relax));
        var found = relaxed.Improve().LastOrDefault();
        var most = found is not null && relaxed.Order.NoWorseBeforeSmallest(found.Score, best) ? found.Score.SmallestCut.Steps + relax : 0;
        return (Length.FromSteps(Math.Max(most, best.SmallestCut.Steps)), relaxed.Model.Examined);
    }

    private const long Millionths = 1_000_000;
}
