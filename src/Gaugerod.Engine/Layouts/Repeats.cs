using Gaugerod.Engine.Bonds;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Layouts;

/// <summary>The steps of a lattice, and which of them set a motif down where it touches a box. In steps of 1/3200 mm.</summary>
internal readonly struct Repeats
{
    private readonly long _ax, _ay, _bx, _by;
    private readonly long _left, _bottom, _right, _top;

    public Repeats(Lattice lattice, Sequence<BondTile> motif)
    {
        (_ax, _ay) = (lattice.First.Along.Steps, lattice.First.Across.Steps);
        (_bx, _by) = (lattice.Second.Along.Steps, lattice.Second.Across.Steps);
        (_left, _bottom) = (motif.Min(tile => tile.Cell.Left.Steps), motif.Min(tile => tile.Cell.Bottom.Steps));
        (_right, _top) = (motif.Max(tile => tile.Cell.Right.Steps), motif.Max(tile => tile.Cell.Top.Steps));
    }

    /// <summary>Where a repeat lies.</summary>
    public (long X, long Y) At(long i, long j) => ((i * _ax) + (j * _bx), (i * _ay) + (j * _by));

    /// <summary>The repeats whose motif's box touches a box's inside: row after row, each from its beginning.</summary>
    public IEnumerable<(long I, long J)> Touching(long left, long bottom, long right, long top)
    {
        // Where the motif's origin must lie, its ends left out.
        var (l, b, r, t) = (left - _right, bottom - _top, right - _left, top - _bottom);
        var (from, to) = Rows(l, b, r, t);
        for (var j = from; j <= to; j++)
        {
            var (first, last) = (long.MinValue, long.MaxValue);
            if (!Narrow(_ax, l - (j * _bx), r - (j * _bx), ref first, ref last)) continue;
            if (!Narrow(_ay, b - (j * _by), t - (j * _by), ref first, ref last)) continue;
            for (var i = first; i <= last; i++) yield return (i, j);
        }
    }

    /// <summary>The rows that may come into a box: the corners' own rows, as the lattice counts them.</summary>
    private (long From, long To) Rows(long l, long b, long r, long t)
    {
        var whole = ((Int128)_ax * _by) - ((Int128)_ay * _bx);
        var (from, to) = (long.MaxValue, long.MinValue);
        foreach (var (x, y) in new[] { (l, b), (r, b), (r, t), (l, t) })
        {
            var row = (long)((((Int128)_ax * y) - ((Int128)_ay * x)) / whole);
            (from, to) = (Math.Min(from, row - 1), Math.Max(to, row + 1));
        }

        return (from, to);
    }

    /// <summary>Keeps those i for which i times a step lies strictly between two places; false when there are none.</summary>
    private static bool Narrow(long step, long over, long under, ref long first, ref long last)
    {
        if (step == 0) return over < 0 && under > 0;
        if (step < 0) (step, over, under) = (-step, -under, -over);
        (first, last) = (Math.Max(first, Grid.FloorDiv(over, step) + 1), Math.Min(last, -Grid.FloorDiv(-under, step) - 1));
        return first <= last;
    }
}
