using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// Reckons how one face comes out at one placing without making its pieces: only rows and the edges that cross them are
/// looked at, never the tiles between. It gives the same legs and counts as the pieces do; a test holds the two together.
/// One instance serves one search on one thread: it keeps its working arrays.
/// </summary>
internal sealed class FaceReckoner
{
    private const long NotCut = long.MaxValue;
    private const long CutWithoutLeg = RoundLegs.None;

    private readonly FaceFrame _frame;
    private readonly Courses _courses;
    private readonly FacingPair[] _sidePairs;
    private readonly FacingPair[] _levelPairs;
    private readonly long[] _legs;
    private readonly long[] _leastAtEdge;
    private readonly long[] _off;
    private readonly RoundLegs _round;
    private readonly Action<long, int, long> _note;
    private readonly List<SideHit> _hits = [];
    private readonly List<int> _rowEnds = [];
    private long _hitsAt = long.MinValue;
    private long _firstCourse;
    private long _firstColumn;
    private Relax _relax;

    /// <param name="frame">The face.</param>
    /// <param name="courses">The courses.</param>
    /// <param name="off">By its edges, by how much cuts may come out smaller; empty where that does not count.</param>
    public FaceReckoner(FaceFrame frame, Courses courses, long[] off)
    {
        (_frame, _courses, _off) = (frame, courses, off);
        _sidePairs = frame.Pairs(frame.Sides, courses.Length);
        _levelPairs = frame.Pairs(frame.Levels, courses.Depth);
        _legs = new long[((frame.MostAlong - frame.LeastAlong) / courses.Period) + 3];
        _leastAtEdge = new long[frame.Face.Edges.Count];
        (_round, _note) = (new(frame.Rounds, _legs.Length), Note);
    }

    /// <summary>By the face's edges: the narrowest leg at each in the last reckoning; <see cref="long.MaxValue"/> where nothing is cut there.</summary>
    public ReadOnlySpan<long> LeastAtEdge => _leastAtEdge;

    /// <summary>Reckons one placing.</summary>
    /// <param name="u">Where a tile of course 0 begins, along, on the face.</param>
    /// <param name="v">Where course 0 begins, across, on the face.</param>
    /// <param name="sliver">What is narrower counts as a sliver.</param>
    /// <param name="relax">Legs up to this are taken for none; nothing for the true reckoning.</param>
    public FaceCount Reckon(long u, long v, long sliver, Relax relax)
    {
        _relax = relax;
        if (v != _hitsAt) FindHits(v);
        Array.Fill(_leastAtEdge, NotCut);
        var (cuts, slivers, least) = (0, 0, NotCut);
        var hit = 0;
        for (var row = 0; row < _rowEnds.Count; row++)
        {
            var k = _firstCourse + row;
            var start = u + _courses.Offset(k);
            _firstColumn = Grid.FloorDiv(_frame.LeastAlong - start - _courses.Length, _courses.Period) + 1;
            Array.Fill(_legs, NotCut);
            for (; hit < _rowEnds[row]; hit++) Side(start, _hits[hit]);
            Row(start, v + (k * _courses.Rise));
            foreach (var leg in _legs)
            {
                if (leg == NotCut) continue;
                cuts++;
                if (leg < sliver) slivers++;
                if (leg < least) least = leg;
            }
        }

        return new(cuts, slivers, least >= CutWithoutLeg ? null : least, _off.Length > 0 ? Judged() : least);
    }

    /// <summary>Of what is cut at each edge the narrowest loses most; between two edges it counts at both.</summary>
    private long Judged()
    {
        var judged = NotCut;
        for (var edge = 0; edge < _off.Length; edge++)
        {
            if (_leastAtEdge[edge] < CutWithoutLeg) judged = Math.Min(judged, _leastAtEdge[edge] - _off[edge]);
        }

        return judged;
    }

    /// <summary>Where each row meets the sides does not change with u: found once for each v.</summary>
    private void FindHits(long v)
    {
        _hits.Clear();
        _rowEnds.Clear();
        _hitsAt = v;
        _firstCourse = Grid.FloorDiv(_frame.LeastAcross - v - _courses.Depth, _courses.Rise) + 1;
        for (var bottom = v + (_firstCourse * _courses.Rise); bottom < _frame.MostAcross; bottom += _courses.Rise)
        {
            foreach (ref readonly var edge in _frame.Sides.AsSpan())
            {
                var (low, high) = (Math.Max(edge.B0, bottom), Math.Min(edge.B1, bottom + _courses.Depth));
                if (low >= high) continue;
                var (one, other) = (edge.AlongAt(low), edge.AlongAt(high));
                _hits.Add(new(Math.Min(one, other), Math.Max(one, other), edge));
            }

            _rowEnds.Add(_hits.Count);
        }
    }

    private void Side(long start, in SideHit hit)
    {
        for (var (left, c) = FirstTile(start, hit.From); left < hit.To; left += _courses.Period, c++)
        {
            var right = left + _courses.Length;
            var (near, far) = (Math.Max(left, hit.From), Math.Min(right, hit.To));
            Width(c, hit.Edge, hit.Edge.TileAfter ? (right - far, right - near) : (near - left, far - left), _relax.Side);
        }
    }

    /// <summary>The first tile of a course that ends beyond a place: where it begins, and its column.</summary>
    private (long Left, long Column) FirstTile(long start, long place)
    {
        var column = Grid.FloorDiv(place - start - _courses.Length, _courses.Period) + 1;
        return (start + (column * _courses.Period), column);
    }

    private void Row(long start, long bottom)
    {
        var top = bottom + _courses.Depth;
        foreach (ref readonly var edge in _frame.Levels.AsSpan())
        {
            if (edge.MostAcross <= bottom || edge.LeastAcross >= top) continue;
            var (from, to) = Within(edge, bottom, top);
            for (var (c, last) = Columns(start, from, to); c <= last; c++)
            {
                var left = start + (c * _courses.Period);
                var (one, other) = (edge.AcrossAt(Math.Max(from, left)), edge.AcrossAt(Math.Min(to, left + _courses.Length)));
                var (low, high) = (Math.Max(bottom, Math.Min(one, other)), Math.Min(top, Math.Max(one, other)));
                Width(c, edge, edge.TileAfter ? (top - high, top - low) : (low - bottom, high - bottom), _relax.Level);
            }
        }

        foreach (ref readonly var edge in _frame.Raking.AsSpan())
        {
            if (edge.MostAcross <= bottom || edge.LeastAcross >= top) continue;
            var (from, to) = Within(edge, bottom, top);
            for (var (c, last) = Columns(start, from, to); c <= last; c++) Note(c - _firstColumn, edge.Edge, CutWithoutLeg);
        }

        // Between two cuts there is only what both cut, so those come first.
        _round.Settle(_note);
        Facing(start, bottom, top);
    }

    /// <summary>Where two cuts fall in one tile, what stands between them is the leg.</summary>
    private void Facing(long start, long bottom, long top)
    {
        foreach (var pair in _sidePairs)
        {
            var (one, other) = (_frame.Sides[pair.Before], _frame.Sides[pair.After]);
            if (FaceFrame.Gap(one, other, bottom, top) is not { } gap) continue;
            var (first, _) = Columns(start, one.LeastAlong, one.MostAlong);
            var (_, last) = Columns(start, other.LeastAlong, other.MostAlong);
            // Only a tile that both cut has both: the column of the one and the column of the other meet there.
            for (var c = first; c <= last; c++)
            {
                var left = start + (c * _courses.Period);
                if (one.MostAlong > left && other.LeastAlong < left + _courses.Length) Strip(c, one, other, gap, _relax.Side);
            }
        }

        foreach (var pair in _levelPairs)
        {
            var (one, other) = (_frame.Levels[pair.Before], _frame.Levels[pair.After]);
            if (one.MostAcross <= bottom || other.LeastAcross >= top || one.LeastAcross >= top || other.MostAcross <= bottom) continue;
            var (from, to) = (Math.Max(one.A0, other.A0), Math.Min(one.A1, other.A1));
            for (var (c, last) = Columns(start, from, to); c <= last; c++)
            {
                var left = start + (c * _courses.Period);
                if (FaceFrame.Gap(one, other, left, left + _courses.Length) is { } gap) Strip(c, one, other, gap, _relax.Level);
            }
        }
    }

    /// <summary>The columns whose tiles have some of a stretch in their inside.</summary>
    private (long First, long Last) Columns(long start, long from, long to) => (
        Grid.FloorDiv(from - start - _courses.Length, _courses.Period) + 1,
        Grid.FloorDiv(to - start - 1, _courses.Period));

    /// <summary>The stretch of an edge, along, that lies in a row.</summary>
    private static (long From, long To) Within(FrameEdge edge, long bottom, long top)
    {
        if (edge.B0 == edge.B1) return (edge.A0, edge.A1);
        var rising = edge.B1 > edge.B0;
        var (low, high) = (Math.Max(bottom, edge.LeastAcross), Math.Min(top, edge.MostAcross));
        var (one, other) = (edge.AlongAtAcross(low), edge.AlongAtAcross(high));
        return rising ? (one, other) : (other, one);
    }

    /// <summary>Takes how wide a tile is at an edge, least and most.</summary>
    private void Width(long column, in FrameEdge edge, (long Least, long Most) width, long relax)
    {
        if (edge.Round > 0) _round.Add(column - _firstColumn, edge, width.Least, relax);
        else if (relax == 0 || width.Least > relax) Note(column - _firstColumn, edge.Edge, Legs.Of(width.Least, width.Most) ?? CutWithoutLeg);
    }

    /// <summary>Takes how wide a tile is between two edges, least and most.</summary>
    private void Strip(long column, in FrameEdge one, in FrameEdge other, (long Least, long Most) gap, long relax)
    {
        if ((relax == 0 || gap.Least > relax) && Legs.Of(gap.Least, gap.Most) is { } leg) Narrow(column - _firstColumn, one.Edge, other.Edge, leg);
    }

    private void Note(long column, int edge, long leg)
    {
        ref var least = ref _legs[column];
        if (leg < least) least = leg;
        if (leg < _leastAtEdge[edge]) _leastAtEdge[edge] = leg;
    }

    private void Narrow(long column, int one, int other, long leg)
    {
        ref var least = ref _legs[column];
        if (least == NotCut) return;
        if (leg < least) least = leg;
        if (leg < _leastAtEdge[one]) _leastAtEdge[one] = leg;
        if (leg < _leastAtEdge[other]) _leastAtEdge[other] = leg;
    }
}

/// <summary>The stretch of a side, along, that one row meets.</summary>
internal readonly record struct SideHit(long From, long To, FrameEdge Edge);

/// <summary>What a face comes to at a placing.</summary>
/// <param name="Cuts">How many tiles are cut.</param>
/// <param name="Slivers">How many of them have a leg under the limit.</param>
/// <param name="Least">The narrowest leg, in steps; null when there is none.</param>
/// <param name="Judged">The narrowest as smallest cuts are compared; more than any tile when there is none.</param>
internal readonly record struct FaceCount(int Cuts, int Slivers, long? Least, long Judged);
