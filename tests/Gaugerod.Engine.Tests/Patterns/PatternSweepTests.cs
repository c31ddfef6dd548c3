using CsCheck;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Patterns;

/// <summary>
/// Branch and bound against the plain way: every place on a grid of about a millimetre over one step of the lattice each way,
/// coarser where that would be more than some thousands. Faces of some 20 to 60 tiles, every bond, turned and not.
/// </summary>
public sealed class PatternSweepTests(ITestOutputHelper output)
{
    private const int MostPlaces = 9_000;

    /// <summary>What a setter can use: 1 mm, or 1/32 in.</summary>
    private static double AllowedGap(Tape tape) => tape.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 32).Steps : Length.FromMillimetres(1).Steps;

    private static readonly Gen<(PatternRun Run, int Sliver, int Least, int Wants, Tape Tape)> Cases =
        from run in PatternRuns.Small
        from sliver in Gen.Int[2, 30]
        from least in Gen.Frequency((2, Gen.Const(0)), (1, Gen.Int[2, 15]))
        from wants in Gen.Frequency((1, Gen.Const(-1)), (1, Gen.Int[0, 10_000]))
        from tape in Gen.OneOf(Gen.Const(Tape.Millimetres), Gen.Const(Tape.Sixteenths), Gen.Const(new Tape(LengthUnit.Inch, Length.FromInches(0, 1, 64))))
        select (run, sliver, least, wants, tape);

    private readonly Lock _lock = new();
    private readonly List<Outcome> _outcomes = [];

    /// <summary>How one case came out.</summary>
    /// <param name="Kind">The bond.</param>
    /// <param name="Stopped">Whether the search was stopped at its limit of work.</param>
    /// <param name="Places">How many places were swept.</param>
    /// <param name="Gap">By how much the bound lies over what was found, in mm.</param>
    /// <param name="Ahead">By how much the best swept place is ahead of what was found, in mm; below zero behind.</param>
    /// <param name="Told">What the case is.</param>
    private sealed record Outcome(string Kind, bool Stopped, int Places, double Gap, double Ahead, string Told);

    [Fact]
    public void No_swept_place_beats_the_bound_or_does_better_in_what_counts_before_the_smallest_cut()
    {
        Cases.EachDear(Check, Testing.Cases.IsLong ? 400 : 120);
        foreach (var kind in _outcomes.GroupBy(outcome => outcome.Kind).OrderBy(kind => kind.Key, StringComparer.Ordinal).Append(_outcomes.GroupBy(_ => "all").Single()))
        {
            output.WriteLine(
                $"{kind.Key}: {kind.Count()} runs, {kind.Sum(o => o.Places)} places swept, {kind.Count(o => o.Stopped)} stopped at the limit of work; gap at most {kind.Max(o => o.Gap):0.000} mm"
                + $" ({kind.Where(o => !o.Stopped).Select(o => o.Gap).DefaultIfEmpty().Max():0.000} where not stopped); a swept place ahead by at most {kind.Max(o => o.Ahead):0.000} mm");
        }

        foreach (var stopped in _outcomes.Where(outcome => outcome.Stopped)) output.WriteLine($"stopped, gap {stopped.Gap:0.000} mm: {stopped.Told}");
    }

    private void Check((PatternRun Run, int Sliver, int Least, int Wants, Tape Tape) given)
    {
        var limits = new Limits(given.Least == 0 ? null : Length.FromMillimetres(given.Least), Length.FromMillimetres(given.Sliver), HalfTile: true);
        var problem = given.Run.Problem(limits, given.Wants < 0 ? [] : PromiseTests.WantsOf(given.Run, given.Wants));
        var model = new PatternModel(problem with { Run = problem.Run with { Tape = given.Tape } });
        var choice = new PatternChoice(model.Problem.Run);
        var search = new PatternSearch(model, choice);
        foreach (var _ in search.Improve())
        {
            // Only the end is asked.
        }

        var (best, bound, order) = (choice.Best!.Place, search.Bound(choice.Best.Place), new ScoreOrder(model.Problem.Run.Order));
        Assert.Equal((best.Score, best.Smallest), (model.At(best.X, best.Y).Score, model.At(best.X, best.Y).Smallest));
        var (places, ahead) = (0, double.MinValue);
        foreach (var (x, y) in Grid(model.Domain))
        {
            var place = model.At(x, y);
            places++;
            var told = $"found {best}, bound {bound}; swept {place}; {model.Work} reckoned, complete {search.IsComplete}";
            if (!order.NoWorseBeforeSmallest(place.Score, best.Score)) continue;
            Assert.True(place.Smallest <= bound + 1e-6, told);
            Assert.True(search.MayDoBetterBefore(best) || order.NoWorseBeforeSmallest(best.Score, place.Score), told);
            ahead = Math.Max(ahead, place.Smallest - best.Smallest);
        }

        // What the tape would rank before it is narrower by a hair that the tape does not show, and was passed over for that.
        Assert.All(choice.Seen.Where(seen => order.Compare(seen.Place.Score, best.Score) < 0), seen => Assert.True(
            seen.Place.Smallest < best.Smallest && seen.Place.Score.SmallestCut == best.Score.SmallestCut, $"found {best}, passed over {seen.Place}"));
        Assert.True(!search.IsComplete || !search.MayDoBetterBefore(best));
        var gap = bound - best.Smallest;
        if (search.IsComplete) Assert.True(gap <= AllowedGap(given.Tape), $"found {best}, bound {bound}: {gap / 3200} mm");
        lock (_lock) _outcomes.Add(new(given.Run.Given.Name.Split(' ', ',')[0], !search.IsComplete, places, gap / 3200, ahead / 3200, $"{given.Run}\n{string.Join(", ", model.Problem.Run.Wants)}; found {best}, bound {bound}, {model.Work} looked at"));
    }

    /// <summary>Every place on a grid over one step of the lattice each way.</summary>
    private static IEnumerable<(long X, long Y)> Grid(OffsetDomain domain)
    {
        var (a, b) = (domain.A, domain.B);
        var (wide, high) = (Math.Sqrt(((double)a.X * a.X) + ((double)a.Y * a.Y)) / 3200, Math.Sqrt(((double)b.X * b.X) + ((double)b.Y * b.Y)) / 3200);
        var coarse = Math.Max(1, Math.Sqrt(wide * high / MostPlaces));
        var (m, n) = ((int)Math.Max(wide / coarse, 1), (int)Math.Max(high / coarse, 1));
        for (var i = 0; i < m; i++)
        {
            for (var j = 0; j < n; j++) yield return (((a.X * i) / m) + ((b.X * j) / n), ((a.Y * i) / m) + ((b.Y * j) / n));
        }
    }
}
