using Gaugerod.Engine.Lines;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Patterns;

/// <summary>What the search for the place of a pattern has found so far.</summary>
/// <param name="Model">The run with its bond, turned as in the place found.</param>
/// <param name="Best">The best place so far.</param>
/// <param name="Proof">What is proved of it; nothing until the search is done.</param>
/// <param name="Alternatives">Other places; none until the search is done.</param>
internal sealed record PatternFound(PatternModel Model, PatternPlacing Best, Proof Proof, Sequence<TurnedPlace> Alternatives);

/// <summary>A place of a bond at the turn of a model.</summary>
internal sealed record TurnedPlace(PatternModel Model, PatternPlacing Place);

/// <summary>
/// Searches the places of a pattern by branch and bound: all places at first, and those that bring points of the bond to
/// lines that wants name; the part that promises most is halved, until no part promises a smallest cut that is larger by more
/// than nobody would move a bond for. docs/patterns.md carries the argument.
/// </summary>
internal sealed class PatternSearch
{
    /// <summary>So much is reckoned, in tiles near lines looked at; then the rest is left, and the bound says what it may hold.</summary>
    public const long MostWork = 24_000_000;

    private const int Slice = 24;
    private readonly PatternModel _model;
    private readonly ScoreOrder _order;
    private readonly double _gap;
    private readonly List<PatternPlacing> _seen = [];
    private readonly PriorityQueue<(Shifts Shifts, double Smallest), (Score Promise, long Place)> _open;

    // What was not looked into, and what it may hold.
    private readonly List<(Score Promise, double Smallest)> _left = [];
    // The best reached in what comes up to the smallest cut, to the step and not to the tape's mark: what promises must beat.
    private Score _reached;
    private bool _isReached;
    private readonly long _most;
    private PatternPlacing? _best;
    private bool _isSpent;
    private long _parts, _entered;

    /// <param name="model">The run with its bond at one turn.</param>
    /// <param name="before">The best place found at another turn, which promises must beat too; null for none.</param>
    public PatternSearch(PatternModel model, PatternSearch? before)
    {
        _model = model;
        (_reached, _isReached, _most) = (before?._reached ?? default, before is not null, MostWork / Math.Max(1, model.Problem.Turns));
        _order = new(model.Problem.Run.Order);
        _gap = Gap(model.Problem.Run.Tape).Steps;
        _open = new(Comparer<(Score Promise, long Place)>.Create(_order.ByPromise));
    }

    /// <summary>What nobody would move a bond for: 1/32 in, or 1 mm; never more than the tape's mark.</summary>
    public static Length Gap(Tape tape) => Length.Min(tape.Mark, tape.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 32) : Length.FromMillimetres(1));

    public PatternModel Model => _model;

    public PatternPlacing Best => _best!;

    /// <summary>The places scored, each once, in the order met.</summary>
    public IReadOnlyList<PatternPlacing> Seen => _seen;

    /// <summary>The largest smallest cut that a place not looked at may have while doing as well as a place in what counts before it.</summary>
    public double Bound(PatternPlacing best) =>
        _left.Where(part => _order.NoWorseBeforeSmallest(part.Promise, best.Score)).Select(part => part.Smallest).Append(best.Smallest).Max();

    /// <summary>Whether the search ended for want of nothing, not of time.</summary>
    public bool IsComplete => !_isSpent;

    /// <summary>Searches; yields whenever a little work is done.</summary>
    public IEnumerable<bool> Improve()
    {
        foreach (var (x, y) in PatternStarts.Of(_model))
        {
            Look(x, y);
            yield return true;
        }

        Enter(_model.Domain.All);
        foreach (var stretch in PatternStarts.Stretches(_model))
        {
            Look(stretch.X, stretch.Y);
            Enter(stretch);
        }

        while (_open.TryDequeue(out var part, out var promise))
        {
            if (!Beats(promise.Promise) || _model.Work > _most)
            {
                // The best promise left: all others promise no more.
                _isSpent = Beats(promise.Promise);
                _left.Add((promise.Promise, part.Smallest));
                foreach (var (rest, (left, _)) in _open.UnorderedItems) _left.Add((left, rest.Smallest));
                break;
            }

            var (near, far) = part.Shifts.Halves();
            foreach (var half in new[] { near, far })
            {
                Look(half.X, half.Y);
                Enter(half);
            }

            if (++_parts % Slice == 0) yield return true;
        }

        yield return true;
    }

    private void Enter(in Shifts shifts)
    {
        var (promise, smallest) = _model.Promise(shifts);
        // A place that is better by less than the gap is not worth moving for.
        var upTo = _order.UpToSmallest(promise with { SmallestCut = Length.FromSteps((long)Math.Max(smallest - _gap, 0)) });
        if (Beats(upTo)) _open.Enqueue((shifts, smallest), (upTo, _entered++));
        else _left.Add((upTo, smallest));
    }

    private bool Beats(Score promise) => _order.Compare(promise, _reached) < 0;

    private void Look(double x, double y)
    {
        var place = _model.At(Grid.Nearest(x).Steps, Grid.Nearest(y).Steps);
        _seen.Add(place);
        if (_best is null || _order.Compare(place.Score, _best.Score) < 0) _best = place;
        var exact = _order.UpToSmallest(place.Score with { SmallestCut = Length.FromSteps((long)place.Smallest) });
        if (!_isReached || _order.Compare(exact, _reached) < 0) (_reached, _isReached) = (exact, true);
    }
}
