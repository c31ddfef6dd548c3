using Gaugerod.Plane;

namespace Gaugerod.Engine.Lines;

/// <summary>Other placings that a setter might prefer for a reason of their own: the best of other parts of the repeat.</summary>
internal static class Alternatives
{
    private const int Most = 5;
    private const int Parts = 8;

    /// <summary>An alternative need not be the very best of its part: so many are scored of those that promise most.</summary>
    private const int MostScored = 128;

    /// <summary>Placings nearer to each other than this share of a repeat, both ways, are one proposal.</summary>
    private const double Apart = 0.08;

    /// <summary>
    /// None while they are looked for; at the last the alternatives, the better first, at least four wherever the bond leaves
    /// that many.
    /// </summary>
    public static IEnumerable<Sequence<RunPlacing>> Of(JointSearch search, RunPlacing best)
    {
        var courses = search.Model.Courses;
        var candidates = new List<RunPlacing>();
        var whole = courses.Rise * courses.Repeat;
        var starts = search.Starts;
        for (var part = 0; part < Parts; part++)
        {
            var (from, to) = (whole * part / Parts, whole * (part + 1) / Parts);
            if (search.MostPromising(starts.Where(v => v >= from && v < to)) is { } v)
            {
                RunPlacing? inPart = null;
                foreach (var sofar in search.LookAt(v, null, null, MostScored))
                {
                    inPart = sofar;
                    yield return [];
                }

                if (inPart is not null) candidates.Add(inPart);
            }

            yield return [];
        }

        var start = search.StartOf(best);
        for (var part = 0; part < Parts; part++)
        {
            var (from, to) = (courses.Period * part / Parts, courses.Period * (part + 1) / Parts);
            RunPlacing? found = null;
            foreach (var sofar in search.LookAt(start, null, move => move >= from && move < to, MostScored))
            {
                found = sofar;
                yield return [];
            }

            if (found is not null) candidates.Add(found);
        }

        candidates.Sort((one, other) => search.Order.Compare(one.Score, other.Score));
        var chosen = new List<RunPlacing>();
        var tiles = new TileCounter(search.Model);
        foreach (var candidate in candidates)
        {
            if (chosen.Count == Most) break;
            if (candidate.Distance(best, courses) < Apart || chosen.Any(known => candidate.Distance(known, courses) < Apart)) continue;
            var counted = 0;
            foreach (var sofar in tiles.TilesFaceByFace(candidate))
            {
                counted = sofar;
                yield return [];
            }

            chosen.Add(candidate with { Score = candidate.Score with { Tiles = counted } });
        }

        yield return chosen.ToSequence();
    }
}
