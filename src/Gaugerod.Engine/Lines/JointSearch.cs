using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// The search over all placings of a run with one joint width. For every v that may be best it looks at every u that may
/// be best, passing over what the quick bounds rule out. docs/lines.md argues why nothing better is passed over.
/// </summary>
internal sealed class JointSearch
{
    private readonly RunModel _model;
    private readonly RunBounds _bounds;
    private readonly ScoreOrder _order;
    private readonly Sawtooth _along;
    private readonly long[] _sizes;
    private readonly long[] _u;
    private readonly long[] _v;
    private readonly long[] _starts;

    public JointSearch(RunModel model)
    {
        _model = model;
        _bounds = new(model);
        _order = new(model.Problem.Order);
        _along = new(model.Courses.Length, model.Courses.Period);
        _sizes = [.. Sizes(model)];
        _u = new long[model.Frames.Length];
        _v = new long[model.Frames.Length];
        _starts = Starts();
    }

    public RunModel Model => _model;

    public ScoreOrder Order => _order;

    /// <summary>Every v that may be best, on the run.</summary>
    public ReadOnlySpan<long> AllStarts => _starts;

    /// <summary>Ever better placings; the last is the best there is.</summary>
    public IEnumerable<RunPlacing> Improve()
    {
        RunPlacing? best = null;
        foreach (var v in ByPromise(_starts))
        {
            Place(v);
            var promise = _bounds.AcrossOnly(_v, 0, _v.Length);
            if (best is not null && _order.Compare(promise, best.Score) >= 0) continue;
            if (BestAt(v, best) is not { } found) continue;
            best = found;
            yield return best;
        }
    }

    /// <summary>The best placing at v when it beats another; null when it does not.</summary>
    /// <param name="v">Where course 0 begins, on the run.</param>
    /// <param name="toBeat">What to beat; null for anything.</param>
    /// <param name="allowed">Which moves along are allowed; null for all.</param>
    public RunPlacing? BestAt(long v, RunPlacing? toBeat, Func<long, bool>? allowed = null)
    {
        Place(v);
        _bounds.AcrossOnly(_v, 0, _v.Length);
        return _model.Problem.Restart ? FaceByFace(toBeat, allowed) : AllFaces(toBeat, allowed);
    }

    /// <summary>The moves along that may be best at v, one u for all faces.</summary>
    public Sawtooth TeethAt(long v)
    {
        Place(v);
        _bounds.Along(_along, _v, 0, _v.Length, onRun: true);
        return _along;
    }

    /// <summary>Of some moves along at v, those that the quick bounds do not put behind a placing.</summary>
    public IReadOnlyList<long> MovesThatTie(long v, RunPlacing best, SortedSet<long> also)
    {
        Place(v);
        if (_order.Compare(_bounds.AcrossOnly(_v, 0, _v.Length), best.Score) > 0) return [];
        _bounds.Along(_along, _v, 0, _v.Length, onRun: true);
        also.UnionWith(_along.Moves(_sizes));
        KeepToLines(also, Wanted(0, _v.Length, onRun: true), _model.Courses.Period);
        var tie = new List<long>();
        foreach (var move in also)
        {
            Move(move, 0, _v.Length, onRun: true);
            if (_order.Compare(_bounds.Both(_along, move, _u, _v, 0, _v.Length), best.Score) <= 0) tie.Add(move);
        }

        return tie;
    }

    /// <summary>The teeth across.</summary>
    public Sawtooth TeethAcross() => _bounds.Across();

    /// <summary>Scores the placing with one u and one v for the whole run.</summary>
    public RunPlacing At(long u, long v)
    {
        Place(v);
        for (var f = 0; f < _u.Length; f++) _u[f] = u - _model.Frames[f].RunAlong;
        return Found(_model.Score(_u, _v));
    }

    /// <summary>The largest smallest cut that a placing at v could have when it does no worse than another in all that counts before; null when none can.</summary>
    public long? SmallestAt(long v, in Score against)
    {
        Place(v);
        var across = _bounds.AcrossOnly(_v, 0, _v.Length);
        if (!_order.NoWorseBeforeSmallest(across, against)) return null;
        if (across.SmallestCut <= against.SmallestCut) return across.SmallestCut.Steps;
        long? most = null;
        var groups = _model.Problem.Restart ? _v.Length : 1;
        for (var g = 0; g < groups; g++)
        {
            var (from, to) = groups == 1 ? (0, _v.Length) : (g, g + 1);
            _bounds.Along(_along, _v, from, to, onRun: groups == 1);
            long least = 0;
            foreach (var move in _along.Moves([]))
            {
                Move(move, from, to, groups == 1);
                var both = _bounds.Both(_along, move, _u, _v, from, to);
                if (groups == 1 && !_order.NoWorseBeforeSmallest(both, against)) continue;
                least = Math.Max(least, both.SmallestCut.Steps);
            }

            most = Math.Min(most ?? long.MaxValue, least);
        }

        return most;
    }

    private RunPlacing? AllFaces(RunPlacing? toBeat, Func<long, bool>? allowed)
    {
        _bounds.Along(_along, _v, 0, _v.Length, onRun: true);
        RunPlacing? best = null;
        var moves = _along.Moves(_sizes);
        KeepToLines(moves, Wanted(0, _v.Length, onRun: true), _model.Courses.Period);
        foreach (var move in moves)
        {
            if (allowed is not null && !allowed(move)) continue;
            Move(move, 0, _v.Length, onRun: true);
            var beat = best ?? toBeat;
            if (beat is not null && _order.Compare(_bounds.Both(_along, move, _u, _v, 0, _v.Length), beat.Score) >= 0) continue;
            var score = _model.Score(_u, _v);
            if (beat is null || _order.Compare(score, beat.Score) < 0) best = Found(score);
        }

        return best;
    }

    /// <summary>
    /// Where each face has its own u, each takes what is best for itself at this v. Then each chooses once more: a cut larger
    /// than the run's smallest gains nothing, so a face may come down to that for the sake of what counts after it.
    /// </summary>
    private RunPlacing? FaceByFace(RunPlacing? toBeat, Func<long, bool>? allowed)
    {
        for (var f = 0; f < _v.Length; f++) _u[f] = BestForFace(f, allowed, null);
        var smallest = _model.Score(_u, _v).SmallestCut;
        for (var f = 0; f < _v.Length; f++) _u[f] = BestForFace(f, allowed, smallest);
        var whole = _model.Score(_u, _v);
        return toBeat is null || _order.Compare(whole, toBeat.Score) < 0 ? Found(whole) : null;
    }

    private long BestForFace(int f, Func<long, bool>? allowed, Length? enough)
    {
        _bounds.Along(_along, _v, f, f + 1, onRun: false);
        Score? best = null;
        var chosen = 0L;
        var moves = _along.Moves(enough is { } size ? [.. _sizes, size.Steps] : _sizes);
        moves.UnionWith(_along.EqualMoves());
        KeepToLines(moves, Wanted(f, f + 1, onRun: false), _model.Courses.Period);
        foreach (var move in moves)
        {
            if (allowed is not null && !allowed(move)) continue;
            _u[f] = move;
            if (best is { } beat && _order.Compare(Enough(_bounds.Both(_along, move, _u, _v, f, f + 1)), beat) >= 0) continue;
            var score = Enough(_model.ScoreFace(_u, _v, f));
            if (best is { } known && _order.Compare(score, known) >= 0) continue;
            (best, chosen) = (score, move);
        }

        return chosen;

        Score Enough(Score score) => enough is { } most && score.SmallestCut > most ? score with { SmallestCut = most } : score;
    }

    private RunPlacing Found(Score score) => new([.. _u], [.. _v], score);

    private void Place(long v)
    {
        for (var f = 0; f < _v.Length; f++) _v[f] = v - _model.Frames[f].RunAcross;
    }

    private void Move(long move, int from, int to, bool onRun)
    {
        for (var f = from; f < to; f++) _u[f] = move - (onRun ? _model.Frames[f].RunAlong : 0);
    }

    /// <summary>The few of some starts whose promise is best.</summary>
    public IEnumerable<long> MostPromising(IEnumerable<long> starts, int few) => ByPromise(starts).Take(few);

    /// <summary>Where course 0 of a placing begins across, on the run.</summary>
    public long StartOf(RunPlacing placing) => placing.V[0] + _model.Frames[0].RunAcross;

    private IEnumerable<long> ByPromise(IEnumerable<long> starts) => starts
        .Select(v =>
        {
            Place(v);
            return (V: v, Promise: _bounds.AcrossOnly(_v, 0, _v.Length));
        })
        .ToList()
        .Order(Comparer<(long V, Score Promise)>.Create((one, other) =>
        {
            var by = _order.Compare(one.Promise, other.Promise);
            return by != 0 ? by : one.V.CompareTo(other.V);
        }))
        .Select(start => start.V);

    private long[] Starts()
    {
        var (rise, repeat) = (_model.Courses.Rise, _model.Courses.Repeat);
        var teeth = _bounds.Across();
        var starts = teeth.Moves(_sizes);
        foreach (var frame in _model.Frames)
        {
            // A row comes to an edge, or leaves it, where a row's side passes the edge's end.
            foreach (var edge in frame.Sides.Concat(frame.Raking))
            {
                foreach (var end in new[] { edge.B0, edge.B1 })
                {
                    for (var off = -1; off <= 1; off++)
                    {
                        starts.Add(Grid.Mod(end + frame.RunAcross + off, rise));
                        starts.Add(Grid.Mod(end + frame.RunAcross - _model.Courses.Depth + off, rise));
                    }
                }
            }
        }

        KeepToLines(starts, WantedAcross(), rise);
        return [.. Enumerable.Range(0, repeat).SelectMany(i => starts.Select(start => start + (i * rise)))];
    }

    /// <summary>Where course 0 may begin across, on the run, so that a want is held to the step.</summary>
    public HashSet<long> WantedAcross() =>
        [.. _model.Checks.OfType<Check.Stands>().Where(check => check.Axis == CheckAxis.Across)
            .SelectMany(check => check.Targets.Select(target => Grid.Mod(target + _model.Frames[check.Face].RunAcross, _model.Courses.Rise)))];

    /// <summary>The same along.</summary>
    private HashSet<long> Wanted(int first, int end, bool onRun) =>
        [.. _model.Checks.OfType<Check.Stands>()
            .Where(check => check.Axis == CheckAxis.Along && check.Face >= first && check.Face < end)
            .SelectMany(check => check.Targets.SelectMany(target => _model.Offsets.Select(offset =>
                Grid.Mod(target - offset + (onRun ? _model.Frames[check.Face].RunAlong : 0), _model.Courses.Period))))];

    /// <summary>
    /// Adds the wanted lines to some moves, and takes out what stands within a hair of one: a want would count as held there,
    /// and the hair would be spent on another cut, so that tiles asked to be whole were trimmed by it.
    /// </summary>
    public static void KeepToLines(SortedSet<long> moves, HashSet<long> lines, long period)
    {
        if (lines.Count == 0) return;
        moves.RemoveWhere(move => lines.Any(line =>
        {
            var off = Grid.Mod(move - line, period);
            return off <= Check.Tolerance || period - off <= Check.Tolerance;
        }));
        moves.UnionWith(lines);
    }

    private static IEnumerable<long> Sizes(RunModel model)
    {
        yield return model.Problem.Limits.Sliver.Steps;
        foreach (var check in model.Checks.OfType<Check.AtLeast>())
        {
            yield return check.SideSize;
            yield return check.LevelSize;
        }

        // Between a side of the field and an opening's the leg is what stands between them, and stays so while both cut one tile.
        foreach (var gap in model.Frames.SelectMany(frame => frame.Gaps(model.Courses)).Distinct()) yield return gap;
    }
}
