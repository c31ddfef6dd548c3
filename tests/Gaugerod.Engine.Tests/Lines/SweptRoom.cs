using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Lines;

/// <summary>A room that was searched, and is swept for the best there is but for the tiles to buy, the last criterion.</summary>
internal sealed class SweptRoom
{
    /// <summary>Of the places that tie, so many at the most have their tiles counted, evenly from all in order of place.</summary>
    private const int MostCounted = 64;

    private static readonly Sequence<Criterion> Order =
        [Criterion.Musts, Criterion.Wishes, Criterion.Slivers, Criterion.Smallest, Criterion.Mirror, Criterion.Cuts, Criterion.Tiles];

    private readonly RandomRun _run;
    private readonly Limits _limits;
    private readonly Sweep _sweep;

    /// <param name="run">The run.</param>
    /// <param name="limits">What is allowed.</param>
    /// <param name="off">By how much cuts at an edge may come out smaller, by its place on its face; null where they are compared as planned.</param>
    public SweptRoom(RandomRun run, Limits limits, Func<int, Length>? off = null)
    {
        (_run, _limits) = (run, limits);
        var problem = run.Problem(limits, Order);
        Found = LineSearch.Find(off is null ? problem : problem with { Off = problem.Faces.Select(face => face.Edges.Select((_, edge) => off(edge)).ToSequence()).ToSequence() });
        _sweep = new(new(Found.Model.Problem, run.Joint));
    }

    public LinesFound Found { get; }

    /// <summary>The best that was swept up so far.</summary>
    public Score Sweep => _sweep.Best!.Value;

    public long Placings => _sweep.Placings;

    public void SweepGrid(long step)
    {
        var courses = _run.Laid.Courses!;
        _sweep.Over(Grid(courses.Period, step), Grid(courses.Rise * _run.Repeat, step));
    }

    public void SweepCriticalOffsets()
    {
        // Once for what the limits ask, once more for the smallest cut so found, which other cuts may then come down to.
        var critical = Critical.Of(_run, gaps: false, [.. Sizes()]);
        _sweep.Over(critical.Along, critical.Across);
        var offs = Found.Model.Problem.Off is [] ? [Length.Zero] : Found.Model.Problem.Off.SelectMany(face => face).Distinct();
        var smallest = Critical.Of(_run, gaps: true, [.. offs.Select(off => (Sweep.Judged + off).Steps).Where(size => size > 0)]);
        _sweep.Over(smallest.Along, smallest.Across);
    }

    /// <summary>
    /// Adds to the places that tie those at which two pieces just fill a tile. Moving one way alone may reach one, or first
    /// the one way and then the other.
    /// </summary>
    public void SweepWherePiecesShare()
    {
        var shared = Critical.Shared(_run);
        _sweep.Over(shared.Along, new SortedSet<long>(_sweep.Ties.Select(tie => tie.Across)));
        _sweep.Over(new SortedSet<long>(_sweep.Ties.Select(tie => tie.Along)), shared.Across);
        _sweep.Over(shared.Along, new SortedSet<long>(_sweep.Ties.Select(tie => tie.Across).Intersect(shared.Across)));
    }

    /// <summary>The tiles of the places that tie with the best; CutPlanPropertyTests holds the counting itself to a referee.</summary>
    public List<int> TilesOfTies()
    {
        var ties = _sweep.Ties.Distinct().Order().ToList();
        Assert.NotEmpty(ties);
        var counter = new TileCounter(Found.Model);
        var few = Math.Min(ties.Count, MostCounted);
        return [.. Enumerable.Range(0, few).Select(i => counter.Tiles(_sweep.Placing(ties[i * ties.Count / few])))];
    }

    /// <summary>Less than zero where the search does better than the sweep.</summary>
    public int AgainstSweep() => Compare(Found.Best.Score, Sweep);

    /// <summary>The same in the whole order, whatever is proved.</summary>
    public int AgainstSweepInAll() => Compare(Found.Best.Score, Sweep);

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"search {Found.Best.Score} at {string.Join(' ', Found.Best.U)} / {string.Join(' ', Found.Best.V)}\nsweep {Sweep}\nbound {Found.Proof.Bound.Steps} {Found.Proof.Kind}\nplaces along,across {string.Join(' ', _sweep.Ties.Distinct().Order().Take(6).Select(tie => $"{tie.Along},{tie.Across}"))}");

    private IEnumerable<long> Sizes()
    {
        yield return _limits.Sliver.Steps;
        if (_limits.Smallest is { } smallest) yield return smallest.Steps;
        if (!_limits.HalfTile) yield break;
        yield return (_run.Product.Width.Steps + 1) / 2;
        yield return (_run.Product.Height.Steps + 1) / 2;
    }

    private static List<long> Grid(long whole, long step)
    {
        var places = new List<long>();
        for (var at = 0L; at < whole; at += step) places.Add(at);
        return places;
    }

    private static int Compare(Score one, Score other) => new ScoreOrder(Order).Compare(one with { Tiles = 0 }, other with { Tiles = 0 });
}
