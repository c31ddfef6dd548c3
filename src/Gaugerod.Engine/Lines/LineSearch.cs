using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>What the search has found so far.</summary>
/// <param name="Model">The run with the joint width of the placing.</param>
/// <param name="Best">The best placing so far.</param>
/// <param name="Proof">What is proved of it; nothing until the search is done.</param>
/// <param name="Alternatives">Other placings; none until the search is done.</param>
internal sealed record LinesFound(RunModel Model, RunPlacing Best, Proof Proof, Sequence<RunPlacing> Alternatives);

/// <summary>
/// Searches the placings of a run. It yields what it has found so far, better or not, or nothing yet, whenever it has done a
/// little work, and may be left at any of them.
/// </summary>
internal static class LineSearch
{
    /// <summary>All that the search finds.</summary>
    public static LinesFound Find(RunProblem problem) => Search(problem).Last()!;

    public static IEnumerable<LinesFound?> Search(RunProblem problem)
    {
        LinesFound? found = null;
        JointSearch? search = null;
        var examined = 0L;
        foreach (var joint in JointWidths.Of(problem))
        {
            // Another joint is taken only for what the setter asked for, never to win a hair on a cut.
            var other = new JointSearch(new(problem, joint));
            var promises = found is null;
            if (found is not null)
            {
                foreach (var better in other.Improve(AllElsePerfect(found.Best.Score)))
                {
                    promises = better is not null;
                    yield return found;
                    if (promises) break;
                }
            }

            if (!promises) continue;
            search = other;
            foreach (var better in search.Improve())
            {
                yield return found = better is null ? found : Better(found, search, better);
            }

            examined += search.Model.Examined;
        }

        if (search is null || found is null) throw new InvalidOperationException("A run without a placing.");
        if (found.Best.Score.Slivers > 0 && !search.Model.IsSquare)
        {
            // How many tiles are slivers hangs on every row by itself where a wall leans.
            var closer = new JointSearch(search.Model, everyRow: true);
            foreach (var better in closer.Improve(found.Best.Score)) yield return found = Better(found, search, better ?? found.Best);
            search = closer;
        }

        var narrowed = search.Model.IsSquare ? null : new Narrowing(search, found.Best);
        foreach (var better in narrowed?.Narrow() ?? []) yield return found = Better(found, search, better);

        var refiner = new Refiner(search, found.Best);
        foreach (var better in refiner.Refine()) yield return found = Better(found, search, better);

        Sequence<RunPlacing> alternatives = [];
        foreach (var chosen in Alternatives.Of(search, found.Best))
        {
            alternatives = chosen;
            yield return found;
        }

        var proof = ProofMaker.Prove(search, found.Best, narrowed, refiner.Complete, examined + search.Model.Examined);
        yield return found with { Proof = proof, Alternatives = alternatives };

        // Only a placing that meets more of what was asked for beats this.
        static Score AllElsePerfect(Score score) =>
            Score.Perfect with { MustsMissed = score.MustsMissed, WishesMissed = score.WishesMissed };
    }

    /// <summary>What was found, itself where nothing better came.</summary>
    private static LinesFound Better(LinesFound? found, JointSearch search, RunPlacing placing) =>
        found is not null && ReferenceEquals(found.Best, placing) && ReferenceEquals(found.Model, search.Model)
            ? found
            : new(search.Model, placing, new(ProofKind.None, Length.Zero, search.Model.Examined, "Still looking."), []);
}
