using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// A run under the hand: what it comes to wherever its rods stand, quick enough to be asked at every frame. A place of the
/// rods is one <see cref="Placing"/> for each face, in the face's own coordinates, as <see cref="Proposal.Faces"/> has them.
/// One instance serves one thread.
/// </summary>
public sealed class RodSlide
{
    private readonly RunModel _model;
    private readonly long[] _u;
    private readonly long[] _v;
    private readonly (int Face, string Edge, string Words, int[] At)[] _edges;
    private readonly CrossedCells[] _crossed;

    private RodSlide(RunModel model)
    {
        _model = model;
        (_u, _v) = (new long[model.Frames.Length], new long[model.Frames.Length]);
        _crossed = [.. model.Frames.Select(frame => new CrossedCells(frame, model.Courses, model.Problem.Tape))];
        _edges = [.. model.Frames.SelectMany((frame, f) => frame.Face.Edges
            .Select((edge, i) => (edge.Name, Index: i))
            .GroupBy(edge => edge.Name, StringComparer.Ordinal)
            .Select(edge => (f, edge.Key, EdgeWords.Of(edge.Key), edge.Select(at => at.Index).ToArray())))];
    }

    /// <summary>Readies a run.</summary>
    /// <param name="job">The job.</param>
    /// <param name="run">A run of its plan.</param>
    public static RodSlide Of(Job job, RunPlan run)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(run);
        return new(new(JobRuns.Problem(job, run.Request, run.Finished), run.Best.Placing.Joint));
    }

    /// <summary>The faces, left to right.</summary>
    public Sequence<FinishedFace> Faces => _model.Problem.Faces;

    /// <summary>Whether the bottom rod moves one face alone: each has an x of its own.</summary>
    public bool Restart => _model.Restart;

    /// <summary>How far a rod moves before everything comes round again.</summary>
    /// <param name="rod">Level: the rod along the bottom, which moves the tiling left and right. Plumb: the one that moves it up and down.</param>
    public Length Repeat(Axis rod) => Length.FromSteps(IsAlong(rod) ? _model.Courses.Period : _model.Courses.Rise * _model.OwnRows);

    /// <summary>From one mark of a rod to the next: a tile and its joint.</summary>
    public Length Pitch(Axis rod) => Length.FromSteps(IsAlong(rod) ? _model.Courses.Period : _model.Courses.Rise);

    /// <summary>The place with a rod moved on.</summary>
    /// <param name="place">The place.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="by">How far: right or up; left or down below zero.</param>
    /// <param name="face">The face whose x moves where each has its own.</param>
    public Sequence<Placing> Moved(Sequence<Placing> place, Axis rod, Length by, int face)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.Select((at, f) => rod == Axis.Plumb ? at with { Y = at.Y + by } : !Restart || f == face ? at with { X = at.X + by } : at).ToSequence();
    }

    /// <summary>What the run comes to at a place.</summary>
    public SlideFigures At(Sequence<Placing> place)
    {
        var score = Score(place);
        return new(
            score,
            _edges.Select(edge => new EdgeCut(_model.Frames[edge.Face].Face.Name, edge.Edge, edge.Words, Least(edge.Face, edge.At))).ToSequence(),
            Reasons.Outcomes(_model, new(_u, _v, score)));
    }

    /// <summary>The smallest cut with a rod moved on by some distances from a place: a piece of the rod's curve.</summary>
    /// <param name="place">The place.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="face">The face whose x moves where each has its own.</param>
    /// <param name="first">The first distance.</param>
    /// <param name="step">From one distance to the next.</param>
    /// <param name="smallest">Takes the smallest cuts; its length says how many.</param>
    public void Curve(Sequence<Placing> place, Axis rod, int face, Length first, Length step, Span<Length> smallest)
    {
        for (var i = 0; i < smallest.Length; i++) smallest[i] = Score(Moved(place, rod, first + (step * i), face)).SmallestCut;
    }

    /// <summary>Climbs from a distance to the top of the curve near it.</summary>
    /// <param name="place">The place.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="face">The face whose x moves where each has its own.</param>
    /// <param name="near">A distance from the place.</param>
    /// <param name="step">How far from there the top may be.</param>
    /// <returns>The distance of the top, and the smallest cut there.</returns>
    public (Length By, Length Smallest) Peak(Sequence<Placing> place, Axis rod, int face, Length near, Length step)
    {
        var best = (By: near, Smallest: Score(Moved(place, rod, near, face)).SmallestCut);
        for (; step > Length.Zero; step = Length.FromSteps(step.Steps / 2))
        {
            foreach (var by in new[] { best.By + step, best.By - step })
            {
                var smallest = Score(Moved(place, rod, by, face)).SmallestCut;
                if (smallest > best.Smallest) best = (by, smallest);
            }
        }

        return best;
    }

    /// <summary>How far a rod moves on from a place, within one repeat, to hold a want to the step; none where no want asks for a line that way.</summary>
    /// <param name="place">The place.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="face">The face whose x moves where each has its own.</param>
    public Sequence<Length> ToWants(Sequence<Placing> place, Axis rod, int face)
    {
        Put(place);
        var along = IsAlong(rod);
        var (pitch, found) = (along ? _model.Courses.Period : _model.Courses.Rise, new SortedSet<long>());
        foreach (var check in _model.Checks.OfType<Check.Stands>())
        {
            if (check.Axis == CheckAxis.Along != along || (Restart && rod == Axis.Level && check.Face != face)) continue;
            foreach (var offset in along ? _model.Offsets : [0])
            {
                foreach (var target in check.Targets) found.Add(Grid.Mod(target - offset - (along ? _u : _v)[check.Face], pitch));
            }
        }

        return found.Select(Length.FromSteps).ToSequence();
    }

    /// <summary>Every tile of a face that its field may show while the tiling is drawn moved by up to one <see cref="Shift"/>.</summary>
    /// <param name="place">The place.</param>
    /// <param name="face">The face's place on the run.</param>
    public IEnumerable<Box> Lattice(Sequence<Placing> place, int face)
    {
        ArgumentNullException.ThrowIfNull(place);
        var (courses, bounds) = (_model.Courses, Faces[face].Field.Outer.Bounds);
        var (along, across) = (Length.FromSteps(courses.Period), Length.FromSteps(courses.Rise * courses.Repeat));
        var (left, below) = _model.Bond.Lay == Lay.Level ? (along, across) : (across, along);
        return CourseLayout.Tiles(_model.Bond, place[face], bounds with { Left = bounds.Left - left, Bottom = bounds.Bottom - below }).Select(tile => tile.Cell);
    }

    /// <summary>How far a drawn lattice moves, right and up, less than a repeat of the bond each way, to show another place.</summary>
    /// <param name="drawn">The place it is drawn for.</param>
    /// <param name="place">The place to show.</param>
    /// <param name="face">The face's place on the run.</param>
    public (Length Right, Length Up) Shift(Sequence<Placing> drawn, Sequence<Placing> place, int face)
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

    /// <summary>The cut tiles of a face, by kind.</summary>
    /// <param name="place">The place.</param>
    /// <param name="face">The face's place on the run.</param>
    /// <param name="cells">Takes the tiles in place of what it had.</param>
    public void Cut(Sequence<Placing> place, int face, CutCells cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        Put(place);
        _crossed[face].Find(_u[face], _v[face], cells);
    }

    /// <summary>A whole tile's size on the faces.</summary>
    public (Length Width, Length Height) Tile => _model.Bond.Lay == Lay.Level
        ? (Length.FromSteps(_model.Courses.Length), Length.FromSteps(_model.Courses.Depth))
        : (Length.FromSteps(_model.Courses.Depth), Length.FromSteps(_model.Courses.Length));

    /// <summary>The place as a job keeps it.</summary>
    public HeldPlace Held(Sequence<Placing> place)
    {
        ArgumentNullException.ThrowIfNull(place);
        var first = Faces[0];
        var joint = _model.Joint == _model.Problem.Joint.Wanted ? (Length?)null : _model.Joint;
        return new(Restart ? place.Select(at => at.X).ToSequence() : [place[0].X + first.Unrolled], place[0].Y + first.Raised, joint);
    }

    private bool IsAlong(Axis rod) => rod == Axis.Level == (_model.Bond.Lay == Lay.Level);

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
