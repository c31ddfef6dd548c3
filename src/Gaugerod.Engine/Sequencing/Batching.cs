using Gaugerod.Plane;

namespace Gaugerod.Engine.Sequencing;

/// <summary>
/// What each mix of a task covers. A mix is no more than a pack, but where a single piece takes more, is used up within its pot life and on its day, and ends with a course
/// where it covers the end of one.
/// </summary>
internal sealed class Batching
{
    private readonly IReadOnlyList<PieceWork> _pieces;
    private readonly Mixing _mixing;
    private readonly WorkClock _clock;
    private readonly long _begin;
    private readonly double[] _done;

    private Batching(Mixing mixing, WorkClock clock, long begin)
    {
        (_pieces, _mixing, _clock, _begin, _done) = (mixing.Pieces, mixing, clock, begin, new double[mixing.Pieces.Count + 1]);
        for (var i = 0; i < _pieces.Count; i++) _done[i + 1] = _done[i] + _pieces[i].Minutes;
    }

    /// <summary>The mixes.</summary>
    /// <param name="mixing">What is mixed.</param>
    /// <param name="clock">The minutes that are worked.</param>
    /// <param name="begin">How many were worked before the task begins.</param>
    /// <param name="clocks">How the clock is read.</param>
    public static Sequence<Batch> Of(Mixing mixing, WorkClock clock, long begin, Clocks clocks)
    {
        if (mixing.PotLife is not { } life) return [];
        var (batching, all, first, free) = (new Batching(mixing, clock, begin), new List<Batch>(), 0, long.MinValue);
        while (first < mixing.Pieces.Count)
        {
            var (begins, last) = batching.Mix(first, life, free);
            all.Add(batching.Batch(all.Count + 1, first, last, begins, clocks));
            (first, free) = (last, batching.Ends(last));
        }

        return all.ToSequence();
    }

    // Not before the mix before is used up: minutes are rounded down where one begins and up where one ends.
    private (long Begins, int Last) Mix(int first, int life, long free)
    {
        var (begins, day) = (Math.Max(free, _clock.Begin(At(first))!.Value), _clock.DayOf(At(first))!.Value.After);

        // Where a night or a break comes before a mix has set one tile, it is mixed after it.
        var ends = Ends(first + 1);
        if (ends - begins > life)
        {
            // Nobody mixes in the break or before the day begins.
            begins = Math.Max(begins, _clock.Moment(ends - (long)Math.Ceiling(_pieces[first].Minutes))!.Value);
            day = _clock.DayOf(Until(first + 1) - 1)!.Value.After;
        }

        var (last, course, litres) = (first + 1, 0, _pieces[first].Litres);
        while (true)
        {
            if (last == _pieces.Count) return (begins, last);
            if (!_pieces[last].IsBeside(_pieces[last - 1])) course = last;
            litres += _pieces[last].Litres;
            if (Ends(last + 1) - begins > life || Until(last + 1) > day || litres > _mixing.Pack + 1e-9) return (begins, course > first ? course : last);
            last++;
        }
    }

    // The minute in which a piece is begun, and that by which all before one are done.
    private long At(int piece) => _begin + (long)Math.Floor(_done[piece] + 1e-9);

    private long Until(int pieces) => _begin + Math.Max(1, (long)Math.Ceiling(_done[pieces] - 1e-9));

    private long Ends(int pieces) => _clock.End(Until(pieces))!.Value;

    private Batch Batch(int number, int first, int last, long begins, Clocks clocks)
    {
        var litres = 0.0;
        for (var i = first; i < last; i++) litres += _pieces[i].Litres;
        return new(number, Scheduler.Shown(clocks, begins), Scheduler.Shown(clocks, Ends(last)), Courses(first, last).ToSequence(), last - first, litres, litres / _mixing.Pack);
    }

    private IEnumerable<BatchCourse> Courses(int first, int last)
    {
        for (var i = first; i < last;)
        {
            var (from, to, own) = (i, i, _pieces[i]);
            while (from > 0 && _pieces[from - 1].IsBeside(own)) from--;
            while (to < _pieces.Count && _pieces[to].IsBeside(own)) to++;
            var until = Math.Min(to, last);
            yield return new(own.Course, i - from + 1, until - from, to - from) { Face = own.Face };
            i = until;
        }
    }
}
