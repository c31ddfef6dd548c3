using Gaugerod.Plane;

namespace Gaugerod.Engine.Bases;

/// <summary>
/// Finds how much each reading must be raised so that no straightedge, however long, is out anywhere along the profiles. A straightedge
/// is within its limit where, of any three readings that it reaches over, the middle one is no further from the line between the others.
/// Raising all to the highest place's plane does; what is not needed of it is found from below and from above.
/// </summary>
internal sealed class Filler
{
    // Less than what is asked by this, so that heights rounded to steps still keep it; and what is as good as reached, in millimetres.
    private const double Spare = 0.003, Reached = 0.001;
    private const int MostTriples = 60_000, MostSweeps = 600;

    private readonly List<(int From, int At, int To, double Share, double Most)> _triples = [];
    private readonly double[] _read;
    private readonly double _high;

    private Filler(double[] read) => (_read, _high) = (read, read.Max());

    /// <summary>The raise of each reading; null where there is no limit, or there are too many to look at.</summary>
    /// <param name="places">Where the readings are.</param>
    /// <param name="off">How far each is off the plane that fits best, in millimetres.</param>
    /// <param name="profiles">The lines along which straightedges are laid.</param>
    /// <param name="limits">What is asked.</param>
    public static double[]? Raises(IReadOnlyList<Place> places, double[] off, IEnumerable<Profile> profiles, Sequence<GapLimit> limits)
    {
        var filler = new Filler(off);
        var numbers = new Dictionary<Place, int>();
        for (var i = 0; i < places.Count; i++) numbers[places[i]] = i;
        // Of two readings of one place nobody knows which holds.
        if (numbers.Count < places.Count) return null;
        foreach (var profile in profiles)
        {
            if (!filler.Add(profile, numbers, limits)) return null;
        }

        return filler._triples.Count == 0 ? null : filler.Solve();
    }

    private bool Add(Profile profile, Dictionary<Place, int> numbers, Sequence<GapLimit> limits)
    {
        var along = profile.Along;
        for (var from = 0; from + 2 < along.Length; from++)
        {
            for (var to = from + 2; to < along.Length; to++)
            {
                var reached = limits.Where(limit => along[to] - along[from] <= (double)limit.Over.Millimetres + Straightedge.Reach).Select(limit => (double)limit.Most.Millimetres).DefaultIfEmpty(-1).Min();
                if (reached < 0) break;
                for (var at = from + 1; at < to; at++)
                {
                    _triples.Add((numbers[profile.Places[from]], numbers[profile.Places[at]], numbers[profile.Places[to]], (along[at] - along[from]) / (along[to] - along[from]), Math.Max(0, reached - Spare)));
                }
            }
        }

        return _triples.Count <= MostTriples;
    }

    private double[] Solve()
    {
        var heights = (double[])_read.Clone();
        // What is not reached in so many rounds all heights within one limit of the highest reach at once.
        if (!Raise(heights))
        {
            var least = _high - _triples.Min(triple => triple.Most);
            for (var i = 0; i < heights.Length; i++) heights[i] = Math.Max(_read[i], least);
        }

        Lower(heights);
        return [.. heights.Select((height, i) => height - _read[i])];
    }

    /// <summary>Raises what is low until nothing is out; what two ends must be raised by is parted between them so that it is least.</summary>
    private bool Raise(double[] heights)
    {
        for (var sweep = 0; sweep < MostSweeps; sweep++)
        {
            var isQuiet = true;
            foreach (var (from, at, to, share, most) in _triples)
            {
                var over = heights[from] + (share * (heights[to] - heights[from])) - heights[at];
                if (over > most + Reached)
                {
                    (heights[at], isQuiet) = (heights[at] + over - most, false);
                }
                else if (-over > most + Reached)
                {
                    isQuiet = false;
                    var (near, lift) = (1 - share, -over - most);
                    var whole = (near * near) + (share * share);
                    var left = Math.Min(_high, heights[from] + (lift * near / whole));
                    var right = Math.Min(_high, heights[to] + (lift * share / whole));
                    // Neither goes over the highest place: what one cannot take the other does.
                    var lacking = lift - (near * (left - heights[from])) - (share * (right - heights[to]));
                    if (lacking > 0 && left < _high) left = Math.Min(_high, left + (lacking / near));
                    else if (lacking > 0) right = Math.Min(_high, right + (lacking / share));
                    (heights[from], heights[to]) = (left, right);
                }
            }

            if (isQuiet) return true;
        }

        return false;
    }

    /// <summary>Lowers each, one after another, as far as all others allow.</summary>
    private void Lower(double[] heights)
    {
        var touched = new List<int>[heights.Length];
        for (var i = 0; i < heights.Length; i++) touched[i] = [];
        for (var t = 0; t < _triples.Count; t++)
        {
            touched[_triples[t].From].Add(t);
            touched[_triples[t].At].Add(t);
            touched[_triples[t].To].Add(t);
        }

        for (var (round, isMoved) = (0, true); isMoved && round < MostSweeps; round++)
        {
            isMoved = false;
            foreach (var place in Enumerable.Range(0, heights.Length).OrderByDescending(i => heights[i] - _read[i]).ToList())
            {
                var least = _read[place];
                foreach (var t in touched[place])
                {
                    var (from, at, to, share, most) = _triples[t];
                    // As the middle it may not lie deep; as an end it may not leave the middle standing out.
                    least = Math.Max(least, place == at ? heights[from] + (share * (heights[to] - heights[from])) - most
                        : place == from ? (heights[at] - most - (share * heights[to])) / (1 - share)
                        : (heights[at] - most - ((1 - share) * heights[from])) / share);
                }

                if (least > heights[place] - Reached) continue;
                (heights[place], isMoved) = (least, true);
            }
        }
    }
}
