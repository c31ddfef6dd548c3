using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// Quick scores that are never worse than the true one, to pass over placings that cannot win, and the teeth they are
/// reckoned from. They look at some of the legs only, so the smallest of these is at least the smallest of all.
/// </summary>
internal sealed class RunBounds
{
    private readonly RunModel _model;
    private readonly FaceLeast[] _level;
    private readonly FaceLeast[] _side;
    private readonly bool[][] _shares;
    private readonly bool _everyRow;

    /// <param name="model">The run.</param>
    /// <param name="everyRow">Whether each row has its own teeth where a wall leans: slower, and needed where slivers must be counted.</param>
    public RunBounds(RunModel model, bool everyRow)
    {
        (_model, _everyRow) = (model, everyRow);
        _level = new FaceLeast[model.Frames.Length];
        _side = new FaceLeast[model.Frames.Length];
        _shares = [.. model.Frames.Select(frame => Shares(frame, model.Courses))];
    }

    /// <summary>The teeth across of some faces: every edge that lies along courses, at both its ends.</summary>
    public Sawtooth Across(int from, int to, bool onRun)
    {
        var teeth = new Sawtooth(_model.Courses.Depth, _model.Courses.Rise, _model.Frames.Length, _model.Relax.Level, _model.Off);
        for (var f = from; f < to; f++)
        {
            var shift = onRun ? _model.Frames[f].RunAcross : 0;
            foreach (var edge in _model.Frames[f].Levels) Add(teeth, edge, edge.LeastAcross + shift, edge.MostAcross + shift, f, 0);
        }

        teeth.Sort();
        return teeth;
    }

    /// <summary>The teeth along of all faces wherever the courses begin: every edge that ends courses, for every set of courses that begins alike.</summary>
    public void AlongEveryCourse(Sawtooth teeth)
    {
        teeth.Clear();
        for (var f = 0; f < _model.Frames.Length; f++)
        {
            var frame = _model.Frames[f];
            foreach (var edge in frame.Sides)
            {
                foreach (var offset in _model.Offsets) Add(teeth, edge, edge.LeastAlong + frame.RunAlong - offset, edge.MostAlong + frame.RunAlong - offset, f, 0);
            }
        }

        teeth.Sort();
    }

    /// <summary>The teeth along of some faces when course 0 begins at v: every edge that ends courses, in the courses it ends.</summary>
    /// <param name="teeth">Filled anew.</param>
    /// <param name="v">Where course 0 begins on each face.</param>
    /// <param name="from">The first face.</param>
    /// <param name="to">One past the last.</param>
    /// <param name="onRun">Whether u is one for all the faces, measured on the run, rather than each face's own.</param>
    public void Along(Sawtooth teeth, ReadOnlySpan<long> v, int from, int to, bool onRun)
    {
        teeth.Clear();
        var courses = _model.Courses;
        var phases = _model.Offsets.Length;
        Span<(long Least, long Most, int Whole)> extremes = stackalloc (long, long, int)[phases];
        for (var f = from; f < to; f++)
        {
            var frame = _model.Frames[f];
            var (start, shift) = (v[f], onRun ? frame.RunAlong : 0);
            foreach (ref readonly var edge in frame.Sides.AsSpan())
            {
                extremes.Fill((long.MaxValue, long.MinValue, 0));
                for (var k = Grid.FloorDiv(edge.B0 - start - courses.Depth, courses.Rise) + 1; start + (k * courses.Rise) < edge.B1; k++)
                {
                    var bottom = start + (k * courses.Rise);
                    var (one, other) = (edge.AlongAt(Math.Max(edge.B0, bottom)), edge.AlongAt(Math.Min(edge.B1, bottom + courses.Depth)));
                    var at = (edge.TileAfter ? Math.Max(one, other) : Math.Min(one, other)) - courses.Offset(k);
                    // Where the edge passes out over a tile's side the tile is as wide as the edge's other end leaves it.
                    if (one != other) teeth.AddMoves(one + other - at - (2 * courses.Offset(k)) + shift, edge.TileAfter, f, edge.Edge);
                    ref var seen = ref extremes[(int)Grid.Mod(k, phases)];
                    // Kept near each other, not within one repeat: the offsets of like courses differ by whole repeats.
                    if (_everyRow && !edge.IsSquare) Add(teeth, edge, at + shift, at + shift, f, 0);
                    at = seen.Most == long.MinValue ? Grid.Mod(at, courses.Period) : Nearby(at, seen.Most, courses.Period);
                    // A row that the edge meets in part may be cut at the next edge as well, and counted there.
                    var whole = edge.B0 <= bottom && bottom + courses.Depth <= edge.B1 ? 1 : 0;
                    seen = (Math.Min(seen.Least, at), Math.Max(seen.Most, at), seen.Whole + whole);
                }

                foreach (var (least, most, whole) in extremes)
                {
                    if (most == long.MinValue) continue;
                    Add(teeth, edge, least + shift, most + shift, f, _shares[f][edge.Edge] ? 0 : whole);
                }
            }
        }

        teeth.Sort();
    }

    /// <summary>Whether a chord of a round has a leg hangs on all of the round's chords in a tile, so it promises nothing; it only says where to look.</summary>
    private static void Add(Sawtooth teeth, in FrameEdge edge, long least, long most, int face, int tiles)
    {
        if (edge.Round == 0) teeth.Add(least, most, edge.TileAfter, face, edge.Edge, tiles);
        else foreach (var at in (ReadOnlySpan<long>)[least, most]) teeth.AddMoves(at, edge.TileAfter, face, edge.Edge);
    }

    /// <summary>Whether a row's side passes between the ends of a level edge.</summary>
    public bool PassesLevel(ReadOnlySpan<long> v)
    {
        for (var f = 0; f < v.Length; f++)
        {
            foreach (ref readonly var edge in _model.Frames[f].Levels.AsSpan())
            {
                foreach (var side in (ReadOnlySpan<long>)[v[f], v[f] + _model.Courses.Depth])
                {
                    if (Grid.FloorDiv(edge.LeastAcross - side, _model.Courses.Rise) != Grid.FloorDiv(edge.MostAcross - side, _model.Courses.Rise)) return true;
                }
            }
        }

        return false;
    }

    /// <summary>The best score that any u could give at v, as far as v alone tells; also readies the levels of these faces for <see cref="Both"/>.</summary>
    public Score AcrossOnly(ReadOnlySpan<long> v, int from, int to)
    {
        for (var f = from; f < to; f++)
        {
            _level[f] = LevelLeast(f, v[f]);
            _side[f] = new(long.MaxValue, 0, long.MaxValue);
        }

        return Optimistic([], v, from, to, checkAlong: false);
    }

    /// <summary>The best score a placing could have, from the teeth; v must be the one last given to <see cref="AcrossOnly"/>.</summary>
    /// <param name="teeth">The teeth along.</param>
    /// <param name="move">The move of the teeth.</param>
    /// <param name="u">The faces' own u that the move makes.</param>
    /// <param name="v">Where course 0 begins on each face.</param>
    /// <param name="from">The first face.</param>
    /// <param name="to">One past the last.</param>
    public Score Both(Sawtooth teeth, long move, ReadOnlySpan<long> u, ReadOnlySpan<long> v, int from, int to)
    {
        var sliver = _model.Problem.Limits.Sliver.Steps - _model.Relax.Most;
        for (var f = from; f < to; f++) _side[f] = teeth.Least(f, move, sliver);
        return Optimistic(u, v, from, to, checkAlong: true);
    }

    private Score Optimistic(ReadOnlySpan<long> u, ReadOnlySpan<long> v, int from, int to, bool checkAlong)
    {
        _model.Count(from, to);
        var (least, slivers) = (_model.Whole, 0);
        var judged = least;
        for (var f = from; f < to; f++)
        {
            least = Math.Min(least, Math.Min(_side[f].Leg, _level[f].Leg));
            judged = Math.Min(judged, Math.Min(_side[f].Judged, _level[f].Judged));
            // A tile may be a sliver both ways, so the two are not added up.
            slivers += Math.Max(_side[f].Slivers, _level[f].Slivers);
        }

        var (musts, wishes, late) = (0, 0, 0);
        foreach (var check in _model.Checks)
        {
            if (check.Face < from || check.Face >= to) continue;
            var held = check switch
            {
                Check.Stands { Axis: CheckAxis.Across } => _model.IsHeld(check, u, v),
                Check.Stands => !checkAlong || _model.IsHeld(check, u, v),
                Check.EveryCourse every => checkAlong ? _model.IsHeld(check, u, v) : every.MayHold(v[check.Face], _model.Courses),
                PointCheck point => checkAlong ? _model.IsHeld(check, u, v) : point.MayHold(v[check.Face], _model.Courses),
                // Only a limit on all edges can be judged from the smallest legs.
                Check.AtLeast all when check.Want < 0 => _side[check.Face].Leg >= all.SideSize && _level[check.Face].Leg >= all.LevelSize,
                _ => true,
            };
            if (held) continue;
            if (check.Must) musts++;
            else if (check.IsLate) late += check.Weight;
            else wishes += check.Weight;
        }

        return new(musts, wishes, slivers, Length.FromSteps(least), Length.Zero, 0, 0, 0) { UnaskedMissed = late, AtWorst = _model.Off.Any ? Length.FromSteps(judged) : null };
    }

    /// <summary>
    /// At least the narrowest leg at any edge that lies along courses, and no more than it by what a joint can hide; and how
    /// many tiles are surely slivers there.
    /// </summary>
    private FaceLeast LevelLeast(int face, long start)
    {
        var frame = _model.Frames[face];
        var (courses, joint) = (_model.Courses, _model.Joint.Steps);
        var sliver = _model.Problem.Limits.Sliver.Steps - _model.Relax.Most;
        var (least, judged, one, slivers) = (long.MaxValue, long.MaxValue, 0, 0);
        foreach (ref readonly var edge in frame.Levels.AsSpan())
        {
            // An edge no longer than a joint may fall into one and cut nothing.
            if (edge.Round > 0 || edge.A1 - edge.A0 <= joint) continue;
            var into = Grid.Mod((edge.TileAfter ? edge.MostAcross : edge.LeastAcross) - start, courses.Rise);
            if (into == 0 || into >= courses.Depth) continue;
            var leg = edge.TileAfter ? courses.Depth - into : into;
            if (leg <= _model.Relax.Level) continue;
            // Where the edge is out of line its worst end may stand in a joint.
            var hidden = edge.B0 == edge.B1 ? 0 : (((edge.MostAcross - edge.LeastAcross) * joint) / (edge.A1 - edge.A0)) + 2;
            leg += hidden;
            least = Math.Min(least, leg);
            judged = Math.Min(judged, leg - _model.Off.At(face, edge.Edge));
            if (leg < sliver) one = 1;
            // The whole edge is a row of slivers when its better end is one too; the tiles at its ends may be another edge's.
            var better = leg + edge.MostAcross - edge.LeastAcross;
            if (better < sliver && !_shares[face][edge.Edge]) slivers += Math.Max(0, (int)((edge.A1 - edge.A0 - joint) / courses.Period) - 1);
        }

        return new(least, _model.Relax.Any ? one : Math.Max(one, slivers), judged);
    }

    /// <summary>By a face's edges: whether the same tile may be cut there and at an edge beside it, and is counted at that one.</summary>
    private static bool[] Shares(FaceFrame frame, Courses courses)
    {
        var shares = new bool[frame.Face.Edges.Count];
        foreach (var (edges, size) in new[] { (frame.Sides, courses.Length), (frame.Levels, courses.Depth) })
        {
            for (var i = 0; i < edges.Length; i++)
            {
                for (var j = 0; j < i && !shares[edges[i].Edge]; j++) shares[edges[i].Edge] = Beside(edges[i], edges[j], size);
            }
        }

        return shares;
    }

    /// <summary>Whether somewhere both edges are less than a size apart.</summary>
    private static bool Beside(in FrameEdge one, in FrameEdge other, long size)
    {
        var side = one.Class == EdgeClass.Side;
        return (side ? Apart(one.LeastAcross, one.MostAcross, other.LeastAcross, other.MostAcross) : Apart(one.A0, one.A1, other.A0, other.A1)) < 0
            && (side ? Apart(one.LeastAlong, one.MostAlong, other.LeastAlong, other.MostAlong) : Apart(one.LeastAcross, one.MostAcross, other.LeastAcross, other.MostAcross)) < size;
    }

    private static long Apart(long least, long most, long otherLeast, long otherMost) => Math.Max(otherLeast - most, least - otherMost);

    private static long Nearby(long at, long to, long period) => to + Grid.Mod(at - to + (period / 2), period) - (period / 2);
}
