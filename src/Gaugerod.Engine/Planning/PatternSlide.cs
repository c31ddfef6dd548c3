using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>A run with a pattern, or a bond that is turned, under the hand.</summary>
internal sealed class PatternSlide : RodSlide
{
    private readonly PatternModel _model;
    private readonly PatternPlaces _places;
    private readonly (int Face, string Edge, string Words, int[] Lines)[] _edges;

    private PatternSlide(PatternModel model)
    {
        (_model, _places) = (model, new(model));
        _edges = [.. Enumerable.Range(0, model.Lines.Length).Where(i => model.Lines[i].Edge >= 0)
            .GroupBy(i => (model.Lines[i].Face, Faces[model.Lines[i].Face].Edges[model.Lines[i].Edge].Name))
            .Select(edge => (edge.Key.Face, edge.Key.Name, EdgeWords.Of(edge.Key.Name), edge.ToArray()))];
        Tiles = model.Judged.Motif.Select(tile => Outline(tile.Shape)).ToSequence();
    }

    public static PatternSlide Make(Job job, RunPlan run) => new(new(PatternPlans.Problem(job, run.Request, run.Finished)));

    public override Sequence<FinishedFace> Faces => _model.Problem.Run.Faces;

    public override bool Restart => false;

    public override Sequence<Ring> Tiles { get; }

    // Turned so that nothing comes round again level or plumb, a rod is shown over as much as one step of the bond.
    public override Length Repeat(Axis rod)
    {
        var (x, y) = Way(rod);
        var bounds = Faces[0].Field.Outer.Bounds;
        var over = rod == Axis.Level ? bounds.Width : bounds.Height;
        var (a, b) = (_model.Domain.A, _model.Domain.B);
        return Grid.Nearest(_places.StepAlong(x, y, over.Steps) ?? Math.Sqrt(Math.Max(((double)a.X * a.X) + ((double)a.Y * a.Y), ((double)b.X * b.X) + ((double)b.Y * b.Y))));
    }

    public override Length Pitch(Axis rod) => Repeat(rod);

    public override SlideFigures At(Sequence<Placing> place)
    {
        var placing = Scored(place);
        var edges = _edges.Select(edge => new EdgeCut(Faces[edge.Face].Name, edge.Edge, edge.Words, Least(edge.Lines))).ToSequence();
        return new(placing.Score, edges, PatternProposals.Outcomes(_model, placing));
    }

    public override Sequence<Length> ToWants(Sequence<Placing> place, Axis rod, int face)
    {
        var (x, y) = Way(rod);
        var at = Laid(place);
        var (right, up) = _model.Domain.Within(at.X, at.Y);
        var repeat = Repeat(rod).Steps;
        var found = new SortedSet<long>();
        foreach (var family in _model.Checks.Select(check => check.Through).OfType<PointsOnLine>())
        {
            var per = (x * family.SquareX) + (y * family.SquareY);
            if (Math.Abs(per) < 1e-6) continue;
            foreach (var off in family.Offs)
            {
                // On the way the point may come to stand beyond the line's ends.
                var by = Grid.Mod(Grid.Nearest((off - (right * family.SquareX) - (up * family.SquareY)) / per).Steps, repeat);
                var to = _model.Domain.Within(right + Grid.Nearest(by * x).Steps, up + Grid.Nearest(by * y).Steps);
                if (family.MayHold(Shifts.Only(to.X, to.Y))) found.Add(by);
            }
        }

        foreach (var (atX, atY) in _model.Checks.OfType<PatternCheck.StandsOn>().SelectMany(check => check.Points.Moves))
        {
            found.Add(Grid.Mod(Grid.Nearest(((atX - right) * x) + ((atY - up) * y)).Steps, repeat));
        }

        return found.Select(Length.FromSteps).ToSequence();
    }

    public override IEnumerable<Ring> Lattice(Sequence<Placing> place, int face)
    {
        var field = _model.Fields[face];
        var (a, b) = (_model.Domain.A, _model.Domain.B);
        var (wide, high) = (Length.FromSteps(Math.Abs(a.X) + Math.Abs(b.X)), Length.FromSteps(Math.Abs(a.Y) + Math.Abs(b.Y)));
        var bounds = field.Bounds;
        var (u, v) = Laid(place);
        var around = new Box(bounds.Left - wide, bounds.Bottom - high, bounds.Right + wide, bounds.Top + high);
        return PatternLayout.Tiles(_model.Judged, u, v, around)
            .Select(tile => field.OnFace(_model.Judged.Motif[tile.Tile].Shape.Moved(Length.FromSteps(tile.X), Length.FromSteps(tile.Y))));
    }

    public override (Length Right, Length Up) Shift(Sequence<Placing> drawn, Sequence<Placing> place, int face)
    {
        var (from, to) = (Laid(drawn), Laid(place));
        var (x, y) = _model.Domain.Near(to.X - from.X, to.Y - from.Y, 0, 0);
        var moved = _model.Heading.Turn(Point.FromSteps(x, y));
        return (moved.X, moved.Y);
    }

    public override void Cut(Sequence<Placing> place, int face, CutCells cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        _ = Scored(place);
        cells.Clear();
        foreach (var tile in _model.CutTiles(face))
        {
            var first = _model.Judged.Motif[tile.Tile].Shape.Points[0];
            var at = _model.Fields[face].OnFace(Point.FromSteps(first.X.Steps + tile.X, first.Y.Steps + tile.Y));
            cells.Add(PieceKind.Shaped, at.X.Steps, at.Y.Steps, tile.Tile);
        }
    }

    public override HeldPlace Held(Sequence<Placing> place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return new([place[0].X + Faces[0].Unrolled], place[0].Y + Faces[0].Raised, null);
    }

    private protected override Length Smallest(Sequence<Placing> place) => Grid.Nearest(Scored(place).Smallest);

    private PatternPlacing Scored(Sequence<Placing> place)
    {
        var (x, y) = Laid(place);
        return _model.At(x, y);
    }

    private (long X, long Y) Laid(Sequence<Placing> place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return _places.Of(place[0].X + Faces[0].Unrolled, place[0].Y + Faces[0].Raised);
    }

    /// <summary>The direction of a rod as the bond lies.</summary>
    private (double X, double Y) Way(Axis rod) => rod == Axis.Level ? (_model.Heading.Cos, -_model.Heading.Sin) : (_model.Heading.Sin, _model.Heading.Cos);

    private Length? Least(int[] lines)
    {
        var least = double.MaxValue;
        foreach (var line in lines) least = Math.Min(least, _model.LeastAtLine[line]);
        return least == double.MaxValue ? null : Length.FromSteps((long)least);
    }

    private Ring Outline(Ring shape)
    {
        var turned = shape.Points.Select(_model.Heading.Turn).ToList();
        return new(turned.Select(point => point.Moved(-turned[0].X, -turned[0].Y)).ToSequence());
    }
}
