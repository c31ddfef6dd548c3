using Gaugerod.Engine.Lines;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Patterns;

/// <summary>Finds the place of a pattern, a little work at a time, with its proof and other places beside it.</summary>
internal static class PatternFinder
{
    private const int MostAlternatives = 4;
    private const double Apart = 0.12;

    /// <summary>What is found so far, better or not, or nothing yet, whenever a little work is done; at the last all.</summary>
    public static IEnumerable<PatternFound?> Find(PatternProblem problem)
    {
        var model = new PatternModel(problem);
        var search = new PatternSearch(model);
        PatternFound? found = null;
        foreach (var _ in search.Improve())
        {
            if (found is null || !ReferenceEquals(found.Best, search.Best)) found = new(model, search.Best, new(ProofKind.None, default, model.Examined, "Still looking."), []);
            yield return found;
        }

        var tiles = new PatternTiles(model);
        var best = tiles.Counted(search.Best);
        yield return found;
        var alternatives = new List<PatternPlacing>();
        foreach (var other in Others(search, model))
        {
            alternatives.Add(tiles.Counted(other));
            yield return found;
        }

        var proof = PatternProposals.Prove(search, model);
        yield return new(model, best, proof, alternatives.ToSequence());
    }

    /// <summary>The next best places that are not near one another.</summary>
    private static IEnumerable<PatternPlacing> Others(PatternSearch search, PatternModel model)
    {
        var order = new ScoreOrder(model.Problem.Run.Order);
        var taken = new List<PatternPlacing> { search.Best };
        foreach (var place in search.Seen.OrderBy(place => place.Score, Comparer<Score>.Create((one, other) => order.Compare(one, other))).ThenBy(place => place.X).ThenBy(place => place.Y))
        {
            if (taken.Count > MostAlternatives) yield break;
            if (taken.Any(other => model.Domain.Distance(place.X - other.X, place.Y - other.Y) < Apart)) continue;
            taken.Add(place);
            yield return place;
        }
    }
}
