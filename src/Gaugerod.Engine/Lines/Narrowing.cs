using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// Where walls lean an optimum may stand between two neighbouring starts. This looks between them, the
/// widest stretch first: each is halved until nothing in it can be better than what is known, or nothing is left in it.
/// docs/lines.md has the argument for what a stretch can hold at most.
/// </summary>
internal sealed class Narrowing
{
    private const long Millionths = 1_000_000;

    /// <summary>Nothing is looked for that is better by no more than this, 1/400 mm.</summary>
    private const long Hair = 8;

    /// <summary>So much is reckoned at the most; see <see cref="JointSearch.IsSpent"/>.</summary>
    private const long MostWork = 4_000_000;

    /// <summary>How many stretches are halved at the most; what is left then bounds what was not found.</summary>
    private const int MostHalved = 96;

    private readonly JointSearch _search;
    private readonly RunProblem _problem;
    private readonly long _slope;
    private readonly long _own;
    private readonly long _hidden;
    private readonly long _passing;
    private readonly bool _hasRounds;
    private readonly Dictionary<int, JointSearch> _relaxed = [];
    private readonly PriorityQueue<Stretch, (long, long)> _open = new();
    private RunPlacing _best;
    private long _most;

    public Narrowing(JointSearch search, RunPlacing found)
    {
        (_search, _best) = (search, found);
        // Only what was asked for counts before the smallest cut here. How many tiles are slivers hangs on a hair.
        Criterion[] asked = found.Score.Slivers == 0 ? [Criterion.Musts, Criterion.Wishes, Criterion.Slivers] : [Criterion.Musts, Criterion.Wishes];
        var before = search.Model.Problem.Order.TakeWhile(criterion => criterion != Criterion.Smallest).Where(asked.Contains).ToList();
        _problem = search.Model.Problem with
        {
            Order = [.. before, Criterion.Smallest, .. ScoreOrder.Usual.Where(criterion => criterion != Criterion.Smallest && !before.Contains(criterion))],
        };
        var sides = Slope(search.Model.Frames.SelectMany(frame => frame.Sides).Select(edge => (edge.MostAlong - edge.LeastAlong, edge.B1 - edge.B0)));
        var levels = Slope(search.Model.Frames.SelectMany(frame => frame.Levels).Select(edge => (edge.MostAcross - edge.LeastAcross, edge.A1 - edge.A0)));
        _own = search.WidestOwnStep();
        _hasRounds = search.Model.Frames.Any(frame => frame.Rounds > 0);
        _slope = _own == 0 ? sides : Math.Max(sides, levels);
        // The end of an edge that is furthest out may also stand in a joint.
        _hidden = (search.Model.Joint.Steps * levels / Millionths) + 2;
        _passing = (search.Model.Courses.Period * levels / Millionths) + 2;
    }

    /// <summary>No placing that meets as much of what was asked has a smallest cut over this.</summary>
    public Length Bound { get; private set; }

    /// <summary>How many placings were scored besides the search's own.</summary>
    public long Examined => _relaxed.Values.Sum(search => search.Model.Examined);

    /// <summary>Looks between the starts.</summary>
    /// <returns>The best placing now known, after every stretch.</returns>
    public IEnumerable<RunPlacing> Narrow()
    {
        var starts = _search.Starts;
        for (var i = 0; i < starts.Length; i++)
        {
            Open(starts[i], i + 1 < starts.Length ? starts[i + 1] : starts[0] + _search.WholeOfStarts);
            yield return _best;
        }

        for (var halved = 0; _open.TryDequeue(out var stretch, out _);)
        {
            if (!ReferenceEquals(stretch.Known, _best))
            {
                // Something better is known by now.
                Open(stretch.From, stretch.To);
            }
            else if (halved < MostHalved)
            {
                halved++;
                var middle = stretch.From + ((stretch.To - stretch.From) / 2);
                _best = _search.BestAt(middle, _best.Score) ?? _best;
                Open(stretch.From, middle);
                Open(middle, stretch.To);
            }
            else
            {
                _most = Math.Max(_most, stretch.Most);
            }

            yield return _best;
        }

        // Where stretches were left over, a look about may still find some of what they hold: steps either way as long as
        // that helps, halved until they are one.
        var about = !IsSpent && _most > _best.Score.Judged.Steps + Hair;
        for (var step = about ? Math.Max(1, _search.WholeOfStarts / 64) : 0; step > 0; step /= 2)
        {
            foreach (var way in new[] { step, -step })
            {
                while (_search.BestAt(_search.StartOf(_best) + way, _best.Score) is { } better)
                {
                    _best = better;
                    yield return _best;
                }
            }

            yield return _best;
        }

        Bound = Length.FromSteps(Math.Max(_most, _best.Score.Judged.Steps));
        yield return _best;
    }

    private bool IsSpent => _search.IsSpent || _relaxed.Values.Sum(search => search.Model.Work) > MostWork;

    private void Open(long from, long to)
    {
        if (IsSpent)
        {
            _most = Math.Max(_most, Math.Max(_search.LevelLeast(from), _search.LevelLeast(to)) + _hidden);
            return;
        }

        if (to - from <= 1 || Holds(from, to) is not { } most) return;
        if (most <= _best.Score.Judged.Steps + Hair) _most = Math.Max(_most, most);
        else _open.Enqueue(new(from, to, most, _best), (from - to, from));
    }

    /// <summary>What the smallest cut could be between two starts; null when nothing there can be better than what is known.</summary>
    private long? Holds(long from, long to)
    {
        var level = Math.Max(_search.LevelLeast(from), _search.LevelLeast(to)) + _hidden;
        var width = 64 - (int)long.LeadingZeroCount(to - from);
        var change = ((((1L << width) + _own) * _slope) / Millionths) + 2;
        // A leg at a level edge changes by the way at the most.
        Relax relax = _own == 0 ? new(change, Math.Min(_hidden, 1L << width)) : new(change + _hidden, change + _hidden);
        if (!_relaxed.TryGetValue(width, out var relaxed)) _relaxed[width] = relaxed = new(new(_problem, _search.Model.Joint, relax));
        var known = _best.Score.JudgedAs(Length.FromSteps(_best.Score.Judged.Steps - relax.Most)) with { Mirror = default, Cuts = 0, Tiles = 0, WantsMissed = 0 };
        var one = relaxed.BestAt(from, known);
        if ((relaxed.BestAt(to, one?.Score ?? known) ?? one)?.Score is not { } score) return InPassing(from, level);
        // Where no level edge can be what is smallest, a side is, and that changes with the walls' slope alone. Of rounds that is not known.
        var sides = _own == 0 && !_hasRounds && score.Judged.Steps < Math.Min(_search.LevelLeast(from), _search.LevelLeast(to)) - _hidden;
        var most = Math.Min(score.Judged.Steps + (sides ? change : relax.Most), level);
        return most > _best.Score.Judged.Steps || !relaxed.Order.NoWorseBeforeSmallest(_best.Score, score) ? most : InPassing(from, level);
    }

    /// <summary>
    /// While a row's side passes along a level edge that is out of line, the tile it has just come to is cut by little: no
    /// more than the edge rises over a tile and its joint. What the ends of the stretch say does not hold for it.
    /// </summary>
    private long? InPassing(long from, long level)
    {
        var most = Math.Min(level, _passing);
        return most > _best.Score.Judged.Steps && _search.PassesLevel(from + 1) ? most : null;
    }

    /// <summary>The most that some edges are out of line or of square for each step of their length, in millionths, rounded up.</summary>
    private static long Slope(IEnumerable<(long Out, long Over)> edges) =>
        edges.Select(edge => edge.Out == 0 ? 0 : (edge.Out * Millionths / Math.Max(1, edge.Over)) + 1).DefaultIfEmpty(0).Max();

    /// <summary>The starts between two, without them.</summary>
    /// <param name="From">The one.</param>
    /// <param name="To">The other.</param>
    /// <param name="Most">The smallest cut is no larger inside.</param>
    /// <param name="Known">What was known when that was reckoned.</param>
    private readonly record struct Stretch(long From, long To, long Most, RunPlacing Known);
}
