namespace Gaugerod.Engine.Lines;

/// <summary>
/// The search over all placings of a run with one joint width. For every start across that may be best it looks at every
/// move along that may be best, passing over what the quick bounds rule out. docs/lines.md argues why nothing better is
/// passed over.
/// </summary>
internal sealed partial class JointSearch
{
    /// <summary>
    /// So much is reckoned at the most before the search ends with the best so far; a shower takes a hundredth of it. What
    /// was not looked at then bounds what was not found.
    /// </summary>
    private const long MostWork = 12_000_000;

    /// <summary>So many moves are looked at before the caller may do something else.</summary>
    public const int AtOnce = 24;

    private readonly RunBounds _bounds;
    private readonly Candidates _candidates;
    private readonly FaceChoice _choice;
    private readonly Sawtooth _along;
    private readonly long[] _u;
    private readonly long[] _v;

    /// <param name="model">The run with its joint width.</param>
    /// <param name="everyRow">Whether each row of a leaning wall is looked at by itself.</param>
    public JointSearch(RunModel model, bool everyRow = false)
    {
        Model = model;
        Order = new(model.Problem.Order);
        _bounds = new(model, everyRow);
        _candidates = new(model);
        _choice = new(model, _bounds, _candidates, Order);
        _along = new(model.Courses.Length, model.Courses.Period, model.Frames.Length, model.Relax.Side, model.Off);
        _u = new long[model.Frames.Length];
        _v = new long[model.Frames.Length];
    }

    public RunModel Model { get; }

    public ScoreOrder Order { get; }

    /// <summary>Whether the search has reckoned as much as it may.</summary>
    public bool IsSpent => Model.Work > MostWork;

    /// <summary>The best that was promised by what was not looked at, the search being spent; null when all was.</summary>
    public Score? Passed { get; private set; }

    /// <summary>
    /// The best placing so far, after every start that was looked at; the last is the best there is, unless something was
    /// <see cref="Passed"/> over. Null, or nothing at all, where none beats the score.
    /// </summary>
    /// <param name="toBeat">A score to beat from the start; null for none.</param>
    public IEnumerable<RunPlacing?> Improve(Score? toBeat = null)
    {
        RunPlacing? best = null;
        foreach (var (promise, v) in ByPromise(Starts))
        {
            var beat = best?.Score ?? toBeat;
            if (beat is { } beaten && Order.Compare(promise, beaten) >= 0) break;
            if (beat is not null && IsSpent)
            {
                Passed = promise;
                break;
            }

            var before = best;
            foreach (var found in LookAt(v, beat))
            {
                best = found ?? before;
                yield return best;
            }

            yield return best;
        }
    }

    /// <summary>The best placing with a start across, when it beats a score; null when none does.</summary>
    /// <param name="v">The start, on the run.</param>
    /// <param name="toBeat">What to beat; null for anything.</param>
    /// <param name="allowed">Which moves along are allowed; null for all.</param>
    /// <param name="most">How many moves are scored at the most, where one serves all faces.</param>
    public RunPlacing? BestAt(long v, Score? toBeat, Func<long, bool>? allowed = null, int most = int.MaxValue) =>
        LookAt(v, toBeat, allowed, most).LastOrDefault();

    /// <summary>As <see cref="BestAt"/>, a little at a time: the best so far, of which the last counts; nothing at all where none beats the score. The search does nothing else meanwhile.</summary>
    /// <param name="v">The start, on the run.</param>
    /// <param name="toBeat">What to beat; null for anything.</param>
    /// <param name="allowed">Which moves along are allowed; null for all.</param>
    /// <param name="most">How many moves are scored at the most, where one serves all faces.</param>
    public IEnumerable<RunPlacing?> LookAt(long v, Score? toBeat, Func<long, bool>? allowed = null, int most = int.MaxValue)
    {
        Place(v);
        if (toBeat is { } beaten && Order.Compare(Promise(), beaten) >= 0) return [];
        return Model.Restart ? FaceByFace(toBeat, allowed) : Together(toBeat, allowed, most);
    }

    /// <summary>All placings with a start across that are no worse than a score; for runs with one move for all faces.</summary>
    /// <param name="v">The start, on the run.</param>
    /// <param name="score">The score.</param>
    /// <param name="more">Whether to look also where tiles could be saved.</param>
    public List<RunPlacing> AsGood(long v, Score score, bool more)
    {
        Place(v);
        if (Order.Compare(_bounds.AcrossOnly(_v, 0, _v.Length), score) > 0) return [];
        _bounds.Along(_along, _v, 0, _v.Length, onRun: true);
        var found = new List<RunPlacing>();
        var moves = _candidates.Moves(_along, 0, _v.Length, onRun: true, score.Judged.Steps, list =>
        {
            _candidates.Mirrored(_along, list);
            if (more) _along.PairMoves(Model.Problem.Product.Kerf.Steps, list);
        });
        foreach (var move in moves)
        {
            Move(move, 0, _v.Length, onRun: true);
            if (Order.Compare(_bounds.Both(_along, move, _u, _v, 0, _v.Length), score) > 0) continue;
            var own = Model.Score(_u, _v);
            if (Order.Compare(own, score) <= 0) found.Add(Found(own));
        }

        return found;
    }

    /// <summary>At least the narrowest leg at an edge that lies along courses, wherever the move; in steps.</summary>
    public long LevelLeast(long start)
    {
        Place(start);
        return Math.Min(Model.Courses.Period, Promise().Judged.Steps);
    }

    /// <summary>Whether with a start a row's side passes along a level edge that is out of line, between its ends.</summary>
    public bool PassesLevel(long start)
    {
        Place(start);
        return _moveIsShared || _bounds.PassesLevel(_v);
    }

    private IEnumerable<RunPlacing?> Together(Score? toBeat, Func<long, bool>? allowed, int most)
    {
        _bounds.Along(_along, _v, 0, _v.Length, onRun: true);
        var (promising, looked) = (new List<(Score Promise, long Move)>(), 0);
        foreach (var move in _candidates.Moves(_along, 0, _v.Length, onRun: true))
        {
            if (allowed is not null && !allowed(move)) continue;
            Move(move, 0, _v.Length, onRun: true);
            var promise = _bounds.Both(_along, move, _u, _v, 0, _v.Length);
            if (toBeat is null || Order.Compare(promise, toBeat.Value) < 0) promising.Add((promise, move));
            if (++looked % AtOnce == 0) yield return null;
        }

        // The most promising first: what they reach rules most of the others out.
        promising.Sort(Order.ByPromise);
        RunPlacing? best = null;
        foreach (var (promise, move) in promising.Take(most))
        {
            if (best is not null && Order.Compare(promise, best.Score) >= 0) break;
            Move(move, 0, _v.Length, onRun: true);
            var score = Model.Score(_u, _v);
            var beat = best?.Score ?? toBeat;
            if (beat is null || Order.Compare(score, beat.Value) < 0) best = Found(score);
            if (++looked % AtOnce == 0) yield return best;
        }

        yield return best;
    }

    private IEnumerable<RunPlacing?> FaceByFace(Score? toBeat, Func<long, bool>? allowed)
    {
        var chosen = false;
        foreach (var sofar in _choice.Choose(_u, _v, toBeat, allowed))
        {
            chosen = sofar;
            yield return null;
        }

        if (!chosen) yield break;
        var whole = Model.Score(_u, _v);
        if (toBeat is null || Order.Compare(whole, toBeat.Value) < 0) yield return Found(whole);
    }

    private RunPlacing Found(Score score) => new([.. _u], [.. _v], score);

    private void Place(long start)
    {
        if (_moveIsShared) Move(start, 0, _u.Length, onRun: true);
        else for (var f = 0; f < _v.Length; f++) _v[f] = start - Model.Frames[f].RunAcross;
    }

    /// <summary>The best that the start alone promises; where the move is shared it promises nothing.</summary>
    private Score Promise() => _moveIsShared ? Score.Perfect : _bounds.AcrossOnly(_v, 0, _v.Length);

    private void Move(long move, int from, int to, bool onRun)
    {
        for (var f = from; f < to; f++) _u[f] = move - (onRun ? Model.Frames[f].RunAlong : 0);
    }
}
