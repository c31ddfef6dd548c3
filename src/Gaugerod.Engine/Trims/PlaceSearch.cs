namespace Gaugerod.Engine.Trims;

/// <summary>Where the last joint looked for may begin, and what is still to be paid from there.</summary>
/// <param name="From">The lowest such place.</param>
/// <param name="To">The highest.</param>
/// <param name="Cost">What is still to be paid.</param>
internal readonly record struct Goal(long From, long To, TrimCost Cost);

/// <summary>Joints to be put along a line, one piece after another.</summary>
/// <param name="Stock">How long a whole piece is.</param>
/// <param name="Joint">The joint between two.</param>
/// <param name="LeastFirst">The shortest first piece.</param>
/// <param name="Least">The shortest piece after it.</param>
/// <param name="Allowed">Where a joint may begin.</param>
/// <param name="First">What the first piece costs, whole and trimmed.</param>
/// <param name="Next">What each piece after it costs.</param>
/// <param name="Goals">Where it may end.</param>
internal sealed record PlaceProblem(
    long Stock, long Joint, long LeastFirst, long Least, Ranges Allowed, (TrimCost Whole, TrimCost Trimmed) First, (TrimCost Whole, TrimCost Trimmed) Next, IReadOnlyList<Goal> Goals)
{
    /// <summary>Whether every piece after the first is a whole one.</summary>
    public bool WholeBetween { get; init; }
}

/// <summary>Where joints begin, in rising order, and what it costs.</summary>
internal sealed record PlacesFound(TrimCost Cost, IReadOnlyList<long> Places)
{
    /// <summary>How many ranges of open places were looked at.</summary>
    public long Looks { get; init; }
}

/// <summary>Finds the cheapest way to put joints along a line: ranges of places are settled from the cheapest up (docs/trims.md).</summary>
internal sealed class PlaceSearch
{
    private readonly PlaceProblem _problem;
    private readonly OpenPlaces _open;
    private readonly Dictionary<TrimCost, Ranges> _settled = [];
    private readonly SortedDictionary<TrimCost, Ranges> _waiting = [];

    private PlaceSearch(PlaceProblem problem) => (_problem, _open) = (problem, new(problem.Allowed, problem.Stock + problem.Joint));

    /// <summary>The cheapest way with one joint or more; null where there is none, or none that costs at most so much.</summary>
    public static PlacesFound? Find(PlaceProblem problem, TrimCost? most = null)
    {
        var search = new PlaceSearch(problem);
        return search.Reach(most) is { } total ? new(total, search.WayTo(total)) { Looks = search._open.Looks } : null;
    }

    /// <summary>Whether there is a way that costs at most so much.</summary>
    public static bool Exists(PlaceProblem problem, TrimCost? most = null) => new PlaceSearch(problem).Reach(most) is not null;

    private TrimCost? Reach(TrimCost? most)
    {
        TrimCost? best = null;
        Wait(_problem.First.Whole, Ranges.Of(Math.Max(_problem.Stock, _problem.LeastFirst), _problem.Stock));
        Wait(_problem.First.Trimmed, Ranges.Of(_problem.LeastFirst, _problem.Stock - 1));
        while (_waiting.Count > 0)
        {
            var (cost, reached) = _waiting.First();
            _waiting.Remove(cost);
            if (best <= cost || cost > most) break;
            var fresh = _open.Take(reached);
            if (fresh.IsEmpty) continue;
            _settled[cost] = fresh;
            foreach (var goal in _problem.Goals)
            {
                if (fresh.Lowest(goal.From, goal.To) is not null && !(best <= cost + goal.Cost)) best = cost + goal.Cost;
            }

            Wait(cost + _problem.Next.Whole, fresh.Carried(_problem.Stock + _problem.Joint, _problem.Stock + _problem.Joint));
            if (!_problem.WholeBetween) Wait(cost + _problem.Next.Trimmed, fresh.Carried(_problem.Least + _problem.Joint, _problem.Stock - 1 + _problem.Joint));
        }

        return best > most ? null : best;
    }

    private void Wait(TrimCost cost, Ranges places)
    {
        if (!places.IsEmpty) _waiting[cost] = _waiting.TryGetValue(cost, out var others) ? others.Or(places) : places;
    }

    /// <summary>Goes back from the end; of places that cost the same the lowest.</summary>
    private List<long> WayTo(TrimCost total)
    {
        var (place, cost) = _problem.Goals.Select(goal => (Place: Settled(total - goal.Cost, goal.From, goal.To), Cost: total - goal.Cost)).First(found => found.Place is not null);
        var places = new List<long> { place!.Value };
        while (Before(places[^1], cost) is var (before, paid))
        {
            places.Add(before);
            cost = paid;
        }

        places.Reverse();
        return places;
    }

    private (long Place, TrimCost Cost)? Before(long place, TrimCost cost)
    {
        if (cost == _problem.First.Whole && place == _problem.Stock) return null;
        if (cost == _problem.First.Trimmed && place < _problem.Stock && place >= _problem.LeastFirst) return null;
        var (whole, trimmed) = (cost - _problem.Next.Whole, cost - _problem.Next.Trimmed);
        var on = place - _problem.Joint;
        return Settled(whole, on - _problem.Stock, on - _problem.Stock) is { } one ? (one, whole) : (Settled(trimmed, on - _problem.Stock + 1, on - _problem.Least)!.Value, trimmed);
    }

    private long? Settled(TrimCost cost, long from, long to) => _settled.TryGetValue(cost, out var places) ? places.Lowest(from, to) : null;
}
