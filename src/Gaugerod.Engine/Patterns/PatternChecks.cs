using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Patterns;

/// <summary>Makes the lines of a run and its wants and limits ready to be checked against them.</summary>
internal sealed class PatternChecks
{
    private readonly PatternModel _model;
    private readonly TileSlots _slots = new();
    private readonly NeckSlots _necks = new();
    private readonly List<FieldLine> _lines = [];
    private readonly List<PatternCheck> _checks = [];

    public PatternChecks(PatternModel model)
    {
        _model = model;
        for (var f = 0; f < model.Fields.Length; f++)
        {
            var field = model.Fields[f];
            var (chords, legs) = (ArcLegs.Chords(field.Field.Face), new EdgeLegs(field.Field.Face));
            for (var e = 0; e < field.Edges.Length; e++)
            {
                if (!field.Field.IsDrilled(field.Tags[e])) AddSide(f, field.Tags[e], field.Edges[e], chords[field.Tags[e]], legs);
            }
        }

        var wants = model.Problem.Run.Wants;
        for (var i = 0; i < wants.Count; i++)
        {
            _checks.AddRange(Of(wants[i], i));
        }

        var limits = model.Problem.Run.Limits;
        for (var f = 0; f < model.Fields.Length; f++)
        {
            var all = LinesOf(f, _ => true);
            if (limits.Smallest is { } smallest) _checks.Add(new PatternCheck.AtLeast(-1, true, 1, all, smallest.Steps));
            if (limits.HalfTile) _checks.Add(new PatternCheck.PartAtLeast(-1, false, 1, all, 0.5) { IsLate = CheckMaker.MovesThings(wants) });
        }

        Lines = [.. _lines];
        Checks = [.. _checks];
        Mirrors = [.. Enumerable.Range(0, model.Fields.Length).Select(Mirror).OfType<MirrorPair>()];
        Slots = _slots.Count;
    }

    public FieldLine[] Lines { get; }

    public PatternCheck[] Checks { get; }

    public MirrorPair[] Mirrors { get; }

    public int Slots { get; }

    private int AddLine(int face, int edge, EdgeLine line)
    {
        _lines.Add(FieldLine.Of(face, edge, line, _model.Judged, _slots));
        return _lines.Count - 1;
    }

    private void AddSide(int face, int edge, EdgeLine line, double rake, EdgeLegs legs)
    {
        var made = FieldLine.Of(face, edge, line, _model.Judged, _slots) with { Legs = legs };
        if (rake > 0)
        {
            TileShape[] shapes = [.. _model.Judged.Motif.Select(tile => new TileShape(tile))];
            made = made with { Squares = [.. shapes.Select(shape => ArcLegs.Square(line, rake, shape))] };
            if (legs.RoundOf(edge) is var round && round > 0) made = made with { IsRound = true, Tiles = _necks.Of(made, round, shapes) };
        }

        _lines.Add(made);
    }

    private IEnumerable<PatternCheck> Of(Want want, int index) => want is Want.JointOnEdge on && Find(on.Edge.Face) is { } f
        ? Joint(on, index, f)
        : Other(want, index) is { } check ? [check] : [];

    private PatternCheck? Other(Want want, int index)
    {
        switch (want)
        {
            case Want.JointAtHeight at when Find(at.Face) is { } f:
                return AtHeight(at, index, f);
            case Want.FullCourse full when Find(full.Edge.Face) is { } f:
                return Clear(full.Edge, index, want, f);
            case Want.AtLeast { PartOfTile: { } part } least when Find(least.Edge.Face) is { } f:
                return new PatternCheck.PartAtLeast(index, want.Must, want.Weight, Named(f, least.Edge.Edge), (double)part.Numerator / part.Denominator);
            case Want.AtLeast { Size: { } size } least when Find(least.Edge.Face) is { } f:
                return new PatternCheck.AtLeast(index, want.Must, want.Weight, Named(f, least.Edge.Edge), size.Steps);
            case Want.Centred centred when Find(centred.Face) is { } f:
                return Centred(centred, index, f);
            case Want.InLine line when Find(line.Face) is { } f:
                return line.At is { } middle ? OnPlumb(middle, CentreOn.Joint, line, index, f) : new PatternCheck.Never(index, want.Must, want.Weight);
            case Want.HoleOn hole when Find(hole.Face) is { } f:
                return OnHole(hole, index, f);
            case Want.EqualCuts equal when Find(equal.One.Face) is { } f && Find(equal.Other.Face) is { } g:
            {
                var (one, other) = (Named(f, equal.One.Edge), Named(g, equal.Other.Edge));
                return new PatternCheck.Equal(index, want.Must, want.Weight, one, other, Deepest(one), Deepest(other), _model.Problem.Run.Tape.Mark.Steps);
            }

            default:
                return null;
        }
    }

    private PatternCheck.Clear AtHeight(Want.JointAtHeight at, int index, int face)
    {
        var bounds = _model.Fields[face].Field.Face.Plane?.Bounds ?? _model.Fields[face].Field.Face.Field.Outer.Bounds;
        var (from, to) = (_model.Fields[face].Lay(new(bounds.Left, at.Height)), _model.Fields[face].Lay(new(bounds.Right, at.Height)));
        var line = AddLine(face, -1, EdgeLine.Of(from.X.Steps, from.Y.Steps, to.X.Steps, to.Y.Steps));
        return new(index, at.Must, at.Weight, [line], [0]) { Through = Family(_lines[line].Line, BondPoints.Crossings(_model.Judged, _model.Problem.Joint.Steps)), InTheMiddle = true };
    }

    private PatternCheck.Clear Clear(EdgeRef edge, int index, Want want, int face)
    {
        var lines = Named(face, edge.Edge);
        return new(index, want.Must, want.Weight, lines, [.. lines.Select(line => OutOf(_lines[line].Line))])
        {
            Through = lines.Length == 0 ? null : Family(_lines[lines[0]].Line, BondPoints.Corners(_model.Judged)),
        };
    }

    /// <summary>As <see cref="OnEdge.Joint"/>: an edge that is out is brought to a joint where it can be, and the want is missed.</summary>
    private IEnumerable<PatternCheck> Joint(Want.JointOnEdge want, int index, int face)
    {
        var (clear, mark) = (Clear(want.Edge, index, want, face) with { IsLate = want.OfMovable }, _model.Problem.Run.Tape.Mark.Steps);
        if (Array.Exists(clear.Lines, line => _lines[line].Squares.Length > 0)) return [clear];
        var never = new PatternCheck.Never(index, want.Must, want.Weight) { IsLate = want.OfMovable };
        if (clear.Lines.Length == 0) return [never];
        if (Array.Exists(clear.Out, by => by > mark)) return [never, clear with { Want = -1, AimOf = index }];
        var joint = _model.Problem.Joint.Steps;
        var beside = clear.Lines.Select(line => FieldLine.Of(face, _lines[line].Edge, _lines[line].Line, _model.Judged, new(), joint + (long)PointsOnLine.Tolerance + 1));
        return [clear with { Along = new([.. beside], mark, joint) }];
    }

    private PatternCheck.Stands Centred(Want.Centred centred, int index, int face)
    {
        var finished = _model.Fields[face].Field.Face;
        var bounds = centred.Opening is { } name
            ? finished.Openings.First(opening => string.Equals(opening.Name, name, StringComparison.Ordinal)).Ring.Bounds
            : finished.Plane?.Bounds ?? finished.Field.Outer.Bounds;
        return OnPlumb(Length.FromSteps((bounds.Left.Steps + bounds.Right.Steps) / 2), centred.On, centred, index, face);
    }

    /// <summary>A point of the bond stands on a plumb line of a face.</summary>
    private PatternCheck.Stands OnPlumb(Length middle, CentreOn on, Want want, int index, int face)
    {
        var finished = _model.Fields[face].Field.Face;
        var whole = finished.Field.Outer.Bounds;
        var (foot, head) = (_model.Fields[face].Lay(new(middle, whole.Bottom)), _model.Fields[face].Lay(new(middle, whole.Top)));
        var plumb = EdgeLine.Of(foot.X.Steps, foot.Y.Steps, head.X.Steps, head.Y.Steps);
        return new(index, want.Must, want.Weight)
        {
            Through = PointsOnLine.Of(plumb, Tiled(finished, middle), Points(on), _model.Domain.A, _model.Domain.B),
        };
    }

    private PatternCheck.StandsOn OnHole(Want.HoleOn want, int index, int face)
    {
        var field = _model.Fields[face];
        var middle = field.Lay(field.Field.Face.Holes.First(hole => string.Equals(hole.Name, want.Hole, StringComparison.Ordinal)).Centre);
        return new(index, want.Must, want.Weight, PointsOnPoint.Of(middle.X.Steps, middle.Y.Steps, Points(want.On), _model.Domain));
    }

    private IEnumerable<(double X, double Y)> Points(CentreOn on)
    {
        var (middles, crossings) = (BondPoints.Middles(_model.Judged), BondPoints.Crossings(_model.Judged, _model.Problem.Joint.Steps));
        return on switch { CentreOn.Tile => middles, CentreOn.Joint => crossings, _ => middles.Concat(crossings) };
    }

    /// <summary>Where a plumb line of a face runs over tile, from the lowest of the field up.</summary>
    private static (double From, double To)[] Tiled(FinishedFace face, Length at)
    {
        var crossed = new List<double>();
        foreach (var edge in face.Edges)
        {
            if (edge.From.X <= at == edge.To.X <= at) continue;
            var part = (double)(at - edge.From.X).Steps / (edge.To.X - edge.From.X).Steps;
            crossed.Add((edge.From.Y - face.Field.Outer.Bounds.Bottom).Steps + (part * (edge.To.Y - edge.From.Y).Steps));
        }

        crossed.Sort();
        return [.. Enumerable.Range(0, crossed.Count / 2).Select(i => (crossed[2 * i], crossed[(2 * i) + 1]))];
    }

    /// <summary>The moves that lay a side of a tile along a line; the corners may stand beyond the line's ends.</summary>
    private PointsOnLine Family(EdgeLine line, IEnumerable<(double X, double Y)> points)
    {
        var longest = _model.Judged.Motif.Max(tile => (double)(tile.Cell.Width + tile.Cell.Height).Steps);
        return PointsOnLine.Of(line, [(-longest, line.Length + longest)], points, _model.Domain.A, _model.Domain.B);
    }

    private MirrorPair? Mirror(int face)
    {
        var finished = _model.Fields[face].Field.Face;
        bool IsSide(int edge, bool rises) => edge < finished.OuterEdges && EdgeClasses.Of(finished.Edges[edge]) == EdgeClass.Side
            && finished.Edges[edge].To.Y > finished.Edges[edge].From.Y == rises;
        var (left, right) = (LinesOf(face, edge => IsSide(edge, rises: false)), LinesOf(face, edge => IsSide(edge, rises: true)));
        return left.Length == 0 || right.Length == 0 ? null : new(left, right, Deepest(left));
    }

    /// <summary>The lines of the edges with a name; of a folded face those of all its planes.</summary>
    private int[] Named(int face, string name)
    {
        var of = _model.Fields[face].Field.Face;
        var same = Enumerable.Range(0, _model.Fields.Length).Where(i => i == face || (of.Plane is { } plane && _model.Fields[i].Field.Face.IsCalled(plane.Face)));
        return [.. same.SelectMany(i =>
        {
            var edges = CheckMaker.Edges(_model.Fields[i].Field.Face, name);
            return LinesOf(i, edge => edges.Contains(edge));
        })];
    }

    private int[] LinesOf(int face, Func<int, bool> edge) =>
        [.. Enumerable.Range(0, _lines.Count).Where(i => _lines[i].Face == face && _lines[i].Edge >= 0 && edge(_lines[i].Edge))];

    private double Deepest(int[] lines) => lines.Length == 0 ? 0 : lines.Max(line => _lines[line].GreatestDepth);

    /// <summary>How far a line is out over its length from the nearest direction of a tile's side; zero where it is not meant to follow one.</summary>
    private double OutOf(EdgeLine line)
    {
        var least = double.MaxValue;
        foreach (var tile in _model.Judged.Motif)
        {
            var shape = new TileShape(tile);
            for (var k = 0; k < shape.Sides; k++)
            {
                var (x, y) = shape.Outwards(k);
                least = Math.Min(least, Math.Abs((x * line.AlongX) + (y * line.AlongY)));
            }
        }

        return least <= Rake.Sine ? least * line.Length : 0;
    }

    private int? Find(string face)
    {
        var faces = _model.Problem.Run.Faces;
        for (var i = 0; i < faces.Count; i++)
        {
            if (faces[i].IsCalled(face)) return i;
        }

        return null;
    }
}
