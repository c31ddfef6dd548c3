using Gaugerod.Engine.Lines;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Patterns;

/// <summary>Finds the place of a pattern, at every turn it may have, a little work at a time, with its proof and other places beside it.</summary>
internal static class PatternFinder
{
    private const int MostAlternatives = 4;
    private const double Apart = 0.12;

    /// <summary>What is found so far, better or not, or nothing yet, whenever a little work is done; at the last all.</summary>
    /// <param name="problem">What is asked, at the first turn.</param>
    public static IEnumerable<PatternFound?> Find(PatternProblem problem)
    {
        var order = new ScoreOrder(problem.Run.Order);
        var turns = problem.Run.Bond.Free?.Turns.ToList() ?? [problem.Turn];
        var (searches, choice) = (new List<PatternSearch>(), new PatternChoice(problem.Run));
        PatternFound? found = null;
        foreach (var turn in turns)
        {
            yield return found;
            var search = new PatternSearch(new(problem with { Turn = turn, Turns = turns.Count }), choice);
            foreach (var _ in search.Improve())
            {
                if (!ReferenceEquals(found?.Best, choice.Best!.Place))
                {
                    found = new(choice.Best.Model, choice.Best.Place, new(ProofKind.None, default, search.Model.Examined, "Still looking."), []);
                }

                yield return found;
            }

            searches.Add(search);
        }

        var (model, best) = (found!.Model, new PatternTiles(found.Model).Counted(found.Best));
        yield return found;
        var alternatives = new List<TurnedPlace>();
        foreach (var other in Others(choice, order))
        {
            alternatives.Add(other with { Place = new PatternTiles(other.Model).Counted(other.Place) });
            yield return found;
        }

        yield return new(model, best, PatternProposals.Prove(searches, found.Best), alternatives.ToSequence());
    }

    /// <summary>The next best places that are not near one another.</summary>
    private static IEnumerable<TurnedPlace> Others(PatternChoice choice, ScoreOrder order)
    {
        var taken = new List<TurnedPlace> { choice.Best! };
        var all = choice.Seen
            .OrderBy(other => other.Place.Score, Comparer<Score>.Create((one, other) => order.Compare(one, other)))
            .ThenBy(other => other.Model.Problem.Turn.Thousandths).ThenBy(other => other.Place.X).ThenBy(other => other.Place.Y);
        foreach (var (model, place) in all)
        {
            if (taken.Count > MostAlternatives) yield break;
            if (taken.Any(other => other.Model == model && model.Domain.Distance(place.X - other.Place.X, place.Y - other.Place.Y) < Apart)) continue;
            taken.Add(new(model, place));
            yield return taken[^1];
        }
    }
}
