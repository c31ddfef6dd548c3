using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>What the search has found so far.</summary>
/// <param name="Model">The run with the joint width of the placing.</param>
/// <param name="Best">The best placing so far.</param>
/// <param name="Proof">What is proved of it; nothing until the search is done.</param>
/// <param name="Alternatives">Other placings; none until the search is done.</param>
internal sealed record LinesFound(RunModel Model, RunPlacing Best, Proof Proof, Sequence<RunPlacing> Alternatives)
{
    /// <summary>Whether the search is done.</summary>
    public bool Done => Alternatives.Count > 0 || Proof.Kind != ProofKind.None;
}

/// <summary>Searches the placings of a run. It yields ever better ones and may be left at any of them.</summary>
internal static class LineSearch
{
    public static IEnumerable<LinesFound> Search(RunProblem problem)
    {
        (JointSearch Search, RunPlacing Placing)? best = null;
        var examined = 0L;
        foreach (var joint in JointWidths.Of(problem))
        {
            // Another joint is taken only for what the setter asked for, never to win a hair on a cut.
            var search = new JointSearch(new(problem, joint));
            if (best is { } known && !search.Improve(AllElsePerfect(known.Placing.Score)).Any()) continue;
            foreach (var placing in search.Improve())
            {
                best = (search, placing);
                yield return new(search.Model, placing, NoProof(search.Model), []);
            }

            examined += search.Model.Examined;
        }

        if (best is not { } found) throw new InvalidOperationException("A run without a placing.");
        if (found.Placing.Score.Slivers > 0 && !found.Search.Model.IsSquare)
        {
            // How many tiles are slivers hangs on every row by itself where a wall leans.
            var closer = new JointSearch(found.Search.Model, everyRow: true);
            found = (closer, closer.Improve(found.Placing.Score).LastOrDefault() ?? found.Placing);
        }

        var narrowed = found.Search.Model.IsSquare ? null : new Narrowing(found.Search, found.Placing);
        if (narrowed is not null) found = (found.Search, narrowed.Narrow());

        var refiner = new Refiner(found.Search, found.Placing);
        var refined = refiner.Refine();
        yield return new(found.Search.Model, refined, NoProof(found.Search.Model), []);

        var alternatives = Alternatives.Of(found.Search, refined);
        var proof = ProofMaker.Prove(found.Search, refined, narrowed, refiner.Complete, examined + found.Search.Model.Examined);
        yield return new(found.Search.Model, refined, proof, alternatives);

        // Only a placing that meets more of what was asked for beats this.
        static Score AllElsePerfect(Score score) =>
            Score.Perfect with { MustsMissed = score.MustsMissed, WishesMissed = score.WishesMissed };

        static Proof NoProof(RunModel model) => new(ProofKind.None, Length.Zero, model.Examined, "Still looking.");
    }
}
