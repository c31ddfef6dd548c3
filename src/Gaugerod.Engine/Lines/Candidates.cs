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
    /// <param name="smallest">A smallest cut that is known, to find where other legs just reach it; zero for none.</param>
    /// <param name="more">Puts in more.</param>
    public long[] Starts(Sawtooth across, int first, int end, bool onRun, long smallest, Action<List<long>>? more = null)
    {
        var (rise, repeat) = (_model.Courses.Rise, _model.Courses.Repeat);
        var starts = across.Moves([.. _sizes, smallest], moves =>
        {
            Equal(across, first, end, moves);
            EdgeEnds(first, end, onRun, moves);
            Wanted(CheckAxis.Across, first, end, frame => onRun ? frame.RunAcross : 0, moves);
            more?.Invoke(moves);
        });
        var all = new long[starts.Length * repeat];
        for (var i = 0; i < repeat; i++)
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
    /// <param name="smallest">A smallest cut that is known; zero for none.</param>
    /// <param name="more">Puts in more.</param>
    public long[] Moves(Sawtooth along, int first, int end, bool onRun, long smallest = 0, Action<List<long>>? more = null) =>
        along.Moves([.. _sizes, smallest], moves =>
        {
            Equal(along, first, end, moves);
            Wanted(CheckAxis.Along, first, end, frame => onRun ? frame.RunAlong : 0, moves);
            more?.Invoke(moves);
        });

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

    private void Wanted(CheckAxis axis, int first, int end, Func<FaceFrame, long> shift, List<long> moves)
    {
        var repeat = axis == CheckAxis.Along ? _model.Courses.Period : _model.Courses.Rise;
        long[] offsets = axis == CheckAxis.Along ? _model.Offsets : [0];
        foreach (var check in _model.Checks.OfType<Check.Stands>())
        {
            if (check.Axis != axis || check.Face < first || check.Face >= end) continue;
            foreach (var target in check.Targets)
            {
                foreach (var offset in offsets)
                {
                    var at = target - offset + shift(_model.Frames[check.Face]);
                    foreach (var off in new[] { -Check.Tolerance, 0, Check.Tolerance }) moves.Add(Grid.Mod(at + off, repeat));
                }
            }
        }
    }

    private static IEnumerable<long> Sizes(RunModel model)
    {
        yield return model.Problem.Limits.Sliver.Steps - model.Relax;
        if (model.Relax > 0)
        {
            yield return model.Relax;
            yield return model.Relax + 1;
        }

        foreach (var check in model.Checks.OfType<Check.AtLeast>())
        {
            yield return check.SideSize;
            yield return check.LevelSize;
        }
    }
}
