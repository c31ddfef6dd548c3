using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>Compares scores by a run's order of criteria.</summary>
internal sealed class ScoreOrder(Sequence<Criterion> order)
{
    // What counts after it is what the tool wishes for unasked where things may be moved: neither a want of the setter's nor a
    // sliver is given for it. Where slivers are left out nothing is known of what comes after them.
    private readonly Criterion? _before = order.Contains(Criterion.Slivers) ? order.Last(criterion => criterion is Criterion.Musts or Criterion.Wishes or Criterion.Slivers) : null;

    /// <summary>The order when a run states none. docs/lines.md gives the reasons.</summary>
    public static Sequence<Criterion> Usual { get; } =
    [
        Criterion.Musts, Criterion.Wishes, Criterion.Slivers, Criterion.Smallest, Criterion.Mirror, Criterion.Cuts, Criterion.Tiles,
    ];

    /// <summary>Whether tiles come last, so that they need be counted only where all else ties.</summary>
    public bool TilesLast => order[^1] == Criterion.Tiles;

    /// <summary>Whether the smallest cut comes before mirrored cuts and before tiles, on which every proof leans.</summary>
    public bool SmallestIsProved
    {
        get
        {
            var span = order.AsSpan();
            var smallest = span.IndexOf(Criterion.Smallest);
            return smallest < span.IndexOf(Criterion.Mirror) && smallest < span.IndexOf(Criterion.Tiles);
        }
    }

    /// <summary>Less than zero when the first score is the better one.</summary>
    public int Compare(in Score one, in Score other)
    {
        foreach (var criterion in order.AsSpan())
        {
            var by = By(criterion, one, other);
            if (by != 0) return by;
        }

        return 0;
    }

    /// <summary>A score with everything that comes after the smallest cut at its best.</summary>
    public Score UpToSmallest(Score score)
    {
        var span = order.AsSpan();
        foreach (var criterion in span[(span.IndexOf(Criterion.Smallest) + 1)..])
        {
            score = criterion switch
            {
                Criterion.Musts => score with { MustsMissed = 0 },
                Criterion.Wishes => score with { WishesMissed = 0 },
                Criterion.Slivers => score with { Slivers = 0 },
                Criterion.Mirror => score with { Mirror = Length.Zero },
                Criterion.Cuts => score with { Cuts = 0 },
                _ => score with { Tiles = 0 },
            };
            if (criterion == _before) score = score with { UnaskedMissed = 0 };
        }

        return score;
    }

    /// <summary>Compares places by the scores they promise, those that promise alike by where they are.</summary>
    public int ByPromise((Score Promise, long Place) one, (Score Promise, long Place) other)
    {
        var by = Compare(one.Promise, other.Promise);
        return by != 0 ? by : one.Place.CompareTo(other.Place);
    }

    /// <summary>The first criterion in which two scores differ; null when they do not.</summary>
    public Criterion? FirstDifference(in Score one, in Score other)
    {
        foreach (var criterion in order.AsSpan())
        {
            if (By(criterion, one, other) != 0) return criterion;
        }

        return null;
    }

    /// <summary>Whether the first score is no worse in everything that comes before the smallest cut.</summary>
    public bool NoWorseBeforeSmallest(in Score one, in Score other)
    {
        foreach (var criterion in order.AsSpan())
        {
            if (criterion == Criterion.Smallest) return true;
            var by = By(criterion, one, other);
            if (by != 0) return by < 0;
        }

        return true;
    }

    private int By(Criterion criterion, in Score one, in Score other)
    {
        var by = Alone(criterion, one, other);
        return by == 0 && criterion == _before ? one.UnaskedMissed.CompareTo(other.UnaskedMissed) : by;
    }

    private static int Alone(Criterion criterion, in Score one, in Score other) => criterion switch
    {
        Criterion.Musts => one.MustsMissed.CompareTo(other.MustsMissed),
        Criterion.Wishes => one.WishesMissed.CompareTo(other.WishesMissed),
        Criterion.Slivers => one.Slivers.CompareTo(other.Slivers),
        Criterion.Smallest => other.Judged.CompareTo(one.Judged),
        Criterion.Mirror => one.Mirror.CompareTo(other.Mirror),
        Criterion.Cuts => one.Cuts.CompareTo(other.Cuts),
        _ => one.Tiles.CompareTo(other.Tiles),
    };
}
