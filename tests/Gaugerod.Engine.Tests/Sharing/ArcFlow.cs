using Google.OrTools.LinearSolver;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>What a general solver says of the least number of lengths.</summary>
/// <param name="Lengths">The fewest it found; null where it found none in time.</param>
/// <param name="Bound">So many are needed, as it says.</param>
/// <param name="Proved">Whether it ended.</param>
internal sealed record ArcFlowAnswer(int? Lengths, int Bound, bool Proved);

/// <summary>
/// Source: SCIP, inside Google.OrTools, on the arc-flow model of J. M. Valerio de Carvalho, Annals of Operations Research 86,
/// 1999 (from memory): places along the length are nodes, a strip laid from one place to another is an arc, and every length
/// that is cut is a path from its start to its end. Along a path the longer strips come first, none more often than it is wanted, and
/// what is left over comes last, so that a set of strips is one path and not all their orders.
/// </summary>
internal static class ArcFlow
{
    public static ArcFlowAnswer Solve(StripSet set, TimeSpan limit)
    {
        using var solver = Solver.CreateSolver("SCIP");
        solver.SetTimeLimit((long)limit.TotalMilliseconds);
        var wanted = set.Strips.GroupBy(strip => strip).OrderByDescending(g => g.Key).Select(g => (Length: g.Key, Count: g.Count())).ToList();
        var arcs = Arcs(set.Tile, wanted);
        var taken = arcs.ConvertAll(arc => solver.MakeIntVar(0, arc.Strip < 0 ? set.Strips.Length : wanted[arc.Strip].Count, ""));
        var lengths = solver.MakeIntVar(0, set.Strips.Length, "");

        // As many paths come to a place as go on from it; all begin at the start and come to the end.
        var places = new Dictionary<long, Constraint>();
        for (var i = 0; i < arcs.Count; i++)
        {
            At(arcs[i].From).SetCoefficient(taken[i], -1);
            At(arcs[i].To).SetCoefficient(taken[i], 1);
        }

        At(0).SetCoefficient(lengths, 1);
        At(set.Tile).SetCoefficient(lengths, -1);
        var each = wanted.ConvertAll(strip => solver.MakeConstraint(strip.Count, double.PositiveInfinity));
        for (var i = 0; i < arcs.Count; i++)
        {
            if (arcs[i].Strip >= 0) each[arcs[i].Strip].SetCoefficient(taken[i], 1);
        }

        solver.Objective().SetCoefficient(lengths, 1);
        solver.Objective().SetMinimization();
        var status = solver.Solve();
        int? found = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE ? (int)Math.Round(solver.Objective().Value()) : null;

        // A bound is a whole number of lengths; SCIP reckons in floating numbers, to a millionth.
        return new(found, (int)Math.Ceiling(solver.Objective().BestBound() - 1e-6), status == Solver.ResultStatus.OPTIMAL);

        Constraint At(long place)
        {
            if (!places.TryGetValue(place, out var flow)) places[place] = flow = solver.MakeConstraint(0, 0);
            return flow;
        }
    }

    private static List<(long From, long To, int Strip)> Arcs(long tile, List<(long Length, int Count)> wanted)
    {
        var (arcs, reached) = (new List<(long, long, int)>(), new SortedSet<long> { 0 });
        for (var strip = 0; strip < wanted.Count; strip++)
        {
            var (length, count) = wanted[strip];
            var from = new SortedSet<long>();
            foreach (var place in reached)
            {
                for (var copy = 0; copy < count && place + ((copy + 1) * length) <= tile; copy++) from.Add(place + (copy * length));
            }

            foreach (var place in from)
            {
                arcs.Add((place, place + length, strip));
                reached.Add(place + length);
            }
        }

        arcs.AddRange(reached.Where(place => place > 0 && place < tile).Select(place => (place, tile, -1)));
        return arcs;
    }
}
