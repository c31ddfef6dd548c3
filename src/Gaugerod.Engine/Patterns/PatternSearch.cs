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
/// lines that wants name; the part that promises most is halved, until no part promises a smallest cut so much larger that it
/// would be worth moving a bond for. docs/patterns.md carries the argument.
/// </summary>
internal sealed class PatternSearch
{
    /// <summary>So much is reckoned, in tiles near lines looked at; then the rest is left, and the bound says what it may hold.</summary>
    public const long MostWork = 16_000_000;

    private const int Slice = 24;
    private readonly PatternModel _model;
    private readonly ScoreOrder _order;
    private readonly double _worth;
    private readonly PatternChoice _choice;
    private readonly PriorityQueue<(Shifts Shifts, double Smallest), (Score Promise, long Place)> _open;

    // What was not looked into, and what it may hold.
    private readonly List<(Score Promise, double Smallest)> _left = [];
    private readonly long _most;
    private bool _isSpent;
    private long _parts, _entered;

    /// <param name="model">The run with its bond at one turn.</param>
    /// <param name="choice">Where the places scored go, with those of other turns: promises must beat them all.</param>
    public PatternSearch(PatternModel model, PatternChoice choice)
    {
        (_model, _choice, _most) = (model, choice, MostWork / Math.Max(1, model.Problem.Turns));
        _order = new(model.Problem.Run.Order);
        _worth = PatternChoice.Worth(model.Problem.Run.Tape).Steps;
        _open = new(Comparer<(Score Promise, long Place)>.Create(_order.ByPromise));
    }

    public PatternModel Model => _model;

    /// <summary>The largest smallest cut that a place not looked at may have while doing as well as a place in what counts before it.</summary>
    public double Bound(PatternPlacing best) =>
        _left.Where(part => _order.NoWorseBeforeSmallest(part.Promise, best.Score)).Select(part => part.Smallest).Append(best.Smallest).Max();

    /// <summary>Whether a place not looked at may do better in what counts before the smallest cut.</summary>
    public bool MayDoBetterBefore(PatternPlacing best) => _left.Exists(part =>
        _order.NoWorseBeforeSmallest(part.Promise, best.Score) && !_order.NoWorseBeforeSmallest(best.Score, part.Promise));

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
            if (!stretch.IsOne) Enter(stretch);
            if (++_parts % Slice == 0) yield return true;
        }

        while (_open.TryDequeue(out var part, out var promise))
        {
            if (!_choice.Beats(promise.Promise) || _model.Work > _most)
            {
                // The best promise left: all others promise no more.
                _isSpent = _choice.Beats(promise.Promise);
                _left.Add((promise.Promise, part.Smallest));
                foreach (var (rest, (left, _)) in _open.UnorderedItems) _left.Add((left, rest.Smallest));
                break;
            }

            foreach (var (x, y) in PatternStarts.Near(_model, part.Shifts)) Look(x, y);
            var (near, far) = part.Shifts.Halves();
            foreach (var half in new[] { near, far })
            {
                if (IsWithinSteps(half))
                {
                    LookAtAll(half);
                    continue;
                }

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
        var upTo = _order.UpToSmallest(promise with { SmallestCut = Length.FromSteps((long)Math.Max(smallest - _worth, 0)) });
        if (_choice.Beats(upTo)) _open.Enqueue((shifts, smallest), (upTo, _entered++));
        else _left.Add((upTo, smallest));
    }

    /// <summary>Whether a part is so small that only the whole steps in it or beside it are left to look at: a bond lies at whole steps.</summary>
    private static bool IsWithinSteps(in Shifts shifts) => Math.Max(shifts.Reach(1, 0), shifts.Reach(0, 1)) <= 0.5;

    private void LookAtAll(in Shifts shifts)
    {
        var (right, up) = (shifts.Reach(1, 0), shifts.Reach(0, 1));
        for (var x = Math.Floor(shifts.X - right); x <= Math.Ceiling(shifts.X + right); x++)
        {
            for (var y = Math.Floor(shifts.Y - up); y <= Math.Ceiling(shifts.Y + up); y++) Look(x, y);
        }
    }

    private void Look(double x, double y) => _choice.Add(_model, _model.At(Grid.Nearest(x).Steps, Grid.Nearest(y).Steps));
}
