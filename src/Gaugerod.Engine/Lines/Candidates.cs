using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>The places, along and across, at which a run's score may be best. docs/lines.md says why no others can be.</summary>
internal sealed class Candidates
{
    private readonly RunModel _model;
    private readonly long[] _sizes;
    private readonly Check.Equal[] _equal;

    public Candidates(RunModel model)
    {
        _model = model;
        _sizes = [.. Sizes(model).Distinct()];
        _equal = [.. model.Checks.OfType<Check.Equal>()];
    }

    /// <summary>Every start across that may be best for some faces, in order.</summary>
    /// <param name="across">The teeth across.</param>
    /// <param name="first">The first face.</param>
    /// <param name="end">One past the last.</param>
    /// <param name="onRun">Whether starts are on the run rather than on each face.</param>
    /// <param name="rows">How many courses to list them for.</param>
    /// <param name="smallest">A smallest cut that is known, as smallest cuts are compared, to find where other legs just reach it; null for none.</param>
    /// <param name="more">Puts in more.</param>
    public long[] Starts(Sawtooth across, int first, int end, bool onRun, int rows, long? smallest, Action<List<long>>? more = null)
    {
        var rise = _model.Courses.Rise;
        var starts = across.Moves(_sizes, smallest, moves =>
        {
            Equal(across, first, end, moves);
            EdgeEnds(first, end, onRun, moves);
            more?.Invoke(moves);
        });
        starts = KeptToLines(starts, Lines(CheckAxis.Across, first, end, frame => onRun ? frame.RunAcross : 0), rise);
        var all = new long[starts.Length * rows];
        for (var i = 0; i < rows; i++)
        {
            for (var k = 0; k < starts.Length; k++) all[(i * starts.Length) + k] = starts[k] + (i * rise);
        }

        return all;
    }

    /// <summary>Every move along that may be best for some faces, in order.</summary>
    /// <param name="along">The teeth along.</param>
    /// <param name="first">The first face.</param>
    /// <param name="end">One past the last.</param>
    /// <param name="onRun">Whether moves are on the run rather than on each face.</param>
    /// <param name="smallest">A smallest cut that is known, as smallest cuts are compared; null for none.</param>
    /// <param name="more">Puts in more.</param>
    public long[] Moves(Sawtooth along, int first, int end, bool onRun, long? smallest = null, Action<List<long>>? more = null) =>
        KeptToLines(
            along.Moves(_sizes, smallest, moves =>
            {
                Equal(along, first, end, moves);
                RakingEnds(first, end, onRun, moves);
                more?.Invoke(moves);
            }),
            Lines(CheckAxis.Along, first, end, frame => onRun ? frame.RunAlong : 0), _model.Courses.Period);

    /// <summary>Moves at which the left and the right edge of a face are cut alike.</summary>
    public void Mirrored(Sawtooth along, List<long> moves)
    {
        for (var f = 0; f < _model.Frames.Length; f++)
        {
            var (face, frame) = (f, _model.Frames[f]);
            along.EqualMoves(
                tooth => tooth.Face == face && frame.LeftEdges.Contains(tooth.Edge),
                tooth => tooth.Face == face && frame.RightEdges.Contains(tooth.Edge), 0, moves);
        }
    }

    private void Equal(Sawtooth teeth, int first, int end, List<long> moves)
    {
        foreach (var check in _equal)
        {
            if (check.Face < first || check.Face >= end) continue;
            bool One(Tooth tooth) => tooth.Face == check.Face && check.Edges.Contains(tooth.Edge);
            bool Other(Tooth tooth) => tooth.Face == check.OtherFace && check.OtherEdges.Contains(tooth.Edge);
            teeth.EqualMoves(One, Other, check.Mark, moves);
            teeth.EqualMoves(Other, One, check.Mark, moves);
        }
    }

    /// <summary>A row comes to an edge, or leaves it, where a row's side passes the edge's end.</summary>
    private void EdgeEnds(int first, int end, bool onRun, List<long> moves)
    {
        foreach (var frame in _model.Frames[first..end])
        {
            var shift = onRun ? frame.RunAcross : 0;
            foreach (var edge in frame.Sides.Concat(frame.Raking))
            {
                foreach (var place in new[] { edge.B0, edge.B1 })
                {
                    for (var off = -1; off <= 1; off++)
                    {
                        moves.Add(Grid.Mod(place + shift + off, _model.Courses.Rise));
                        moves.Add(Grid.Mod(place + shift - _model.Courses.Depth + off, _model.Courses.Rise));
                    }
                }
            }
        }
    }

    /// <summary>
    /// Where an edge that lies along courses ends at one that rakes, a tile comes to it or leaves it as its side passes that
    /// end. Everywhere else a side of the field stands there, and its tooth says so.
    /// </summary>
    private void RakingEnds(int first, int end, bool onRun, List<long> moves)
    {
        foreach (var frame in _model.Frames[first..end])
        {
            if (frame.Raking.Length == 0) continue;
            var shift = onRun ? frame.RunAlong : 0;
            foreach (var place in frame.Levels.Concat(frame.Raking).SelectMany(edge => new[] { edge.A0, edge.A1 }).Distinct())
            {
                foreach (var offset in _model.Offsets)
                {
                    for (var off = -1; off <= 1; off++)
                    {
                        moves.Add(Grid.Mod(place + shift - offset + off, _model.Courses.Period));
                        moves.Add(Grid.Mod(place + shift - offset - _model.Courses.Length + off, _model.Courses.Period));
                    }
                }
            }
        }
    }

    /// <summary>Where a tile may begin so that a want is held to the step.</summary>
    private List<long> Lines(CheckAxis axis, int first, int end, Func<FaceFrame, long> shift)
    {
        var repeat = axis == CheckAxis.Along ? _model.Courses.Period : _model.Courses.Rise;
        long[] offsets = axis == CheckAxis.Along ? _model.Offsets : [0];
        var lines = new List<long>();
        foreach (var check in _model.Checks)
        {
            if (check.Face < first || check.Face >= end) continue;
            foreach (var target in check.TargetsOn(axis))
            {
                foreach (var offset in offsets) lines.Add(Grid.Mod(target - offset + shift(_model.Frames[check.Face]), repeat));
            }
        }

        return lines;
    }

    /// <summary>
    /// Adds the wanted lines to some moves, and takes out what stands within a hair of one: a want would count as held there,
    /// and the hair would be spent on another cut, so that tiles asked to be whole were trimmed by it.
    /// </summary>
    private static long[] KeptToLines(long[] moves, List<long> lines, long repeat)
    {
        if (lines.Count == 0) return moves;
        var kept = new SortedSet<long>(lines);
        foreach (var move in moves)
        {
            if (!lines.Exists(line => Near(move - line, repeat))) kept.Add(move);
        }

        return [.. kept];
    }

    private static bool Near(long off, long repeat)
    {
        var rest = Grid.Mod(off, repeat);
        return rest <= Check.Tolerance || repeat - rest <= Check.Tolerance;
    }

    private static IEnumerable<long> Sizes(RunModel model)
    {
        yield return model.Problem.Limits.Sliver.Steps - model.Relax.Most;
        if (model.Relax.Any)
        {
            yield return model.Relax.Side;
            yield return model.Relax.Side + 1;
            yield return model.Relax.Level;
            yield return model.Relax.Level + 1;
        }

        foreach (var check in model.Checks.OfType<Check.AtLeast>())
        {
            yield return check.SideSize;
            yield return check.LevelSize;
        }

        // The neck beside a round counts from a width on.
        foreach (var relax in model.Frames.Any(frame => frame.Rounds > 0) ? new[] { model.Relax.Side, model.Relax.Level }.Distinct() : [])
        {
            yield return Legs.Neck + relax;
            yield return Legs.Neck + relax - 1;
        }

        // Between a side of the field and an opening's the leg is what stands between them, and stays so while both cut one tile.
        foreach (var gap in model.Frames.SelectMany(frame => frame.Gaps(model.Courses))) yield return gap;
    }
}
