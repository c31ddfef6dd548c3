using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>A run with a straight bond under the hand.</summary>
internal sealed class CourseSlide : RodSlide
{
    private readonly RunModel _model;
    private readonly long[] _u;
    private readonly long[] _v;
    private readonly (int Face, string Edge, string Words, int[] At)[] _edges;
    private readonly CrossedCells[] _crossed;

    private CourseSlide(RunModel model)
    {
        _model = model;
        (_u, _v) = (new long[model.Frames.Length], new long[model.Frames.Length]);
        _crossed = [.. model.Frames.Select(frame => new CrossedCells(frame, model.Courses, model.Problem.Tape))];
        _edges = [.. model.Frames.SelectMany((frame, f) => frame.Face.Edges
            .Select((edge, i) => (edge.Name, Index: i))
            .GroupBy(edge => edge.Name, StringComparer.Ordinal)
            .Select(edge => (f, edge.Key, EdgeWords.Of(edge.Key), edge.Select(at => at.Index).ToArray())))];
    }

    public static CourseSlide Make(Job job, RunPlan run) =>
        new(new(JobRuns.Problem(job, run.Request, run.Finished), run.Best.Placing.Joint));

    public override Sequence<FinishedFace> Faces => _model.Problem.Faces;

    public override bool Restart => _model.Restart;

    public override Length Repeat(Axis rod) => Length.FromSteps(IsAlong(rod) ? _model.Courses.Period : _model.Courses.Rise * _model.OwnRows);

    public override Length Pitch(Axis rod) => Length.FromSteps(IsAlong(rod) ? _model.Courses.Period : _model.Courses.Rise);

    public override SlideFigures At(Sequence<Placing> place)
    {
        var score = Score(place);
        return new(
            score,
            _edges.Select(edge => new EdgeCut(_model.Frames[edge.Face].Face.Name, edge.Edge, edge.Words, Least(edge.Face, edge.At)) { Slopes = Array.Exists(edge.At, at => EdgeClasses.Of(_model.Frames[edge.Face].Face.Edges[at]) == EdgeClass.Raking) }).ToSequence(),
            Reasons.Outcomes(_model, new(_u, _v, score)));
    }

    public override Sequence<Length> ToWants(Sequence<Placing> place, Axis rod, int face)
    {
        Put(place);
        var along = IsAlong(rod);
        var (pitch, found) = (along ? _model.Courses.Period : _model.Courses.Rise, new SortedSet<long>());
        foreach (var check in _model.Checks)
        {
            var targets = check.TargetsOn(along ? CheckAxis.Along : CheckAxis.Across).ToList();
            if (targets.Count == 0 || (Restart && rod == Axis.Level && check.Face != face)) continue;
            foreach (var offset in along ? _model.Offsets : [0])
            {
                foreach (var target in targets) found.Add(Grid.Mod(target - offset - (along ? _u : _v)[check.Face], pitch));
            }
        }

        return found.Select(Length.FromSteps).ToSequence();
    }

    public override IEnumerable<Ring> Lattice(Sequence<Placing> place, int face)
    {
        ArgumentNullException.ThrowIfNull(place);
        var (courses, bounds) = (_model.Courses, Faces[face].Field.Outer.Bounds);
        var (along, across) = (Length.FromSteps(courses.Period), Length.FromSteps(courses.Rise * courses.Repeat));
        var (left, below) = _model.Bond.Lay == Lay.Level ? (along, across) : (across, along);
        return CourseLayout.Tiles(_model.Bond, place[face], bounds with { Left = bounds.Left - left, Bottom = bounds.Bottom - below }).Select(tile => Ring.Of(tile.Cell));
    }

    public override (Length Right, Length Up) Shift(Sequence<Placing> drawn, Sequence<Placing> place, int face)
    {
        Put(drawn);
        var (u, v) = (_u[face], _v[face]);
        Put(place);
        var whole = _model.Courses.Rise * _model.Courses.Repeat;
        var rounds = Grid.FloorDiv(_v[face] - v, whole);
        var across = _v[face] - v - (rounds * whole);
        var along = Grid.Mod(_u[face] - u - _model.Courses.Offset(rounds * _model.Courses.Repeat), _model.Courses.Period);
        return _model.Bond.Lay == Lay.Level ? (Length.FromSteps(along), Length.FromSteps(across)) : (Length.FromSteps(across), Length.FromSteps(along));
    }

    public override void Cut(Sequence<Placing> place, int face, CutCells cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        Put(place);
        _crossed[face].Find(_u[face], _v[face], cells);
    }

    public override Sequence<Ring> Tiles
    {
        get
        {
            var (width, height) = (Length.FromSteps(_model.Courses.Length), Length.FromSteps(_model.Courses.Depth));
            return [Ring.Of(_model.Bond.Lay == Lay.Level ? new(Length.Zero, Length.Zero, width, height) : new(Length.Zero, Length.Zero, height, width))];
        }
    }

    public override HeldPlace Held(Sequence<Placing> place)
    {
        ArgumentNullException.ThrowIfNull(place);
        var first = Faces[0];
        var joint = _model.Joint == _model.Problem.Joint.Wanted ? (Length?)null : _model.Joint;
        return new(Restart ? place.Select(at => at.X).ToSequence() : [place[0].X + first.Unrolled], place[0].Y + first.Raised, joint);
    }

    private bool IsAlong(Axis rod) => rod == Axis.Level == (_model.Bond.Lay == Lay.Level);

    private protected override Length Smallest(Sequence<Placing> place) => Score(place).SmallestCut;

    private Score Score(Sequence<Placing> place)
    {
        Put(place);
        return _model.Score(_u, _v);
    }

    private void Put(Sequence<Placing> place)
    {
        ArgumentNullException.ThrowIfNull(place);
        var level = _model.Bond.Lay == Lay.Level;
        for (var f = 0; f < _u.Length; f++) (_u[f], _v[f]) = level ? (place[f].X.Steps, place[f].Y.Steps) : (place[f].Y.Steps, place[f].X.Steps);
    }

    private Length? Least(int face, int[] edges)
    {
        var legs = _model.LeastAtEdge(face);
        var least = long.MaxValue;
        foreach (var edge in edges) least = Math.Min(least, legs[edge]);
        // The last but one stands for a cut that has no leg: a raking edge runs out to nothing wherever the tile is.
        return least >= long.MaxValue - 1 ? null : Length.FromSteps(least);
    }
}
