using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>Where the search begins: the starts across that may be best, and what they promise.</summary>
internal sealed partial class JointSearch
{
    private long[]? _starts;

    /// <summary>
    /// Laid upright with each face's own x, it is the move along, up the wall, that all faces share; the starts are then moves.
    /// </summary>
    private bool _moveIsShared => Model.Restart && Model.Bond.Lay == Lay.Upright;

    /// <summary>Every start across that may be best, on the run.</summary>
    public long[] Starts => _starts ??= _moveIsShared ? SharedMoves(null) : SharedStarts(null, null);

    /// <summary>The starts, with those added at which other legs reach a smallest cut or two pieces just make a tile.</summary>
    public long[] FinerStarts(long smallest) => _moveIsShared
        ? SharedMoves(smallest)
        : SharedStarts(smallest, (across, moves) =>
        {
            across.PairMoves(Model.Problem.Product.Kerf.Steps, moves);
            // Where courses stand upright, it is the start across that makes the cuts at left and right alike.
            _candidates.Mirrored(across, moves);
        });

    /// <summary>The start of some whose promise is best; null for none.</summary>
    public long? MostPromising(IEnumerable<long> starts) => ByPromise(starts) is [var (_, start), ..] ? start : null;

    /// <summary>Where course 0 of a placing begins across, on the run.</summary>
    public long StartOf(RunPlacing placing) => _moveIsShared
        ? Grid.Mod(placing.U[0] + Model.Frames[0].RunAlong, Model.Courses.Period)
        : placing.V[0] + Model.Frames[0].RunAcross;

    /// <summary>After so much the starts come round again.</summary>
    public long WholeOfStarts => _moveIsShared ? Model.Courses.Period : Model.Courses.Rise * Model.Courses.Repeat;

    /// <summary>Where the move is shared, the widest step between two neighbouring starts of a face's own; zero otherwise.</summary>
    public long WidestOwnStep()
    {
        if (!_moveIsShared) return 0;
        return Enumerable.Range(0, _v.Length).Max(f => Widest(
            _candidates.Starts(_bounds.Across(f, f + 1, onRun: false), f, f + 1, onRun: false, Model.OwnRows, null), Model.Courses.Rise * Model.OwnRows));
    }

    private static long Widest(long[] places, long whole)
    {
        var widest = places[0] + whole - places[^1];
        for (var i = 1; i < places.Length; i++) widest = Math.Max(widest, places[i] - places[i - 1]);
        return widest;
    }

    private long[] SharedStarts(long? smallest, Action<Sawtooth, List<long>>? more)
    {
        var across = _bounds.Across(0, Model.Frames.Length, onRun: true);
        return _candidates.Starts(across, 0, Model.Frames.Length, onRun: true, Model.Courses.Repeat, smallest, moves => more?.Invoke(across, moves));
    }

    private long[] SharedMoves(long? smallest)
    {
        _bounds.AlongEveryCourse(_along);
        // Which courses meet an edge is not settled yet, so any two legs may be the ones that are equal.
        return _candidates.Moves(_along, 0, Model.Frames.Length, onRun: true, smallest, moves => _along.EqualMoves(_ => true, _ => true, 0, moves));
    }

    private List<(Score Promise, long V)> ByPromise(IEnumerable<long> starts)
    {
        var promises = new List<(Score Promise, long V)>();
        foreach (var v in starts)
        {
            Place(v);
            promises.Add((Promise(), v));
        }

        promises.Sort(Order.ByPromise);
        return promises;
    }
}
