using Gaugerod.Engine.Layouts;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Patterns;

/// <summary>From where a pattern lies straight to where it lies on the run and its faces, and back.</summary>
internal sealed class PatternPlaces(PatternModel model)
{
    /// <summary>Steps of the lattice to either side, the nearest first.</summary>
    private static readonly (int I, int J)[] s_outwards =
        [.. Enumerable.Range(-6, 13).SelectMany(i => Enumerable.Range(-6, 13).Select(j => (i, j))).OrderBy(step => (step.i * step.i) + (step.j * step.j))];

    private readonly OffsetDomain _repeats = new(model.Bond.Lattice);

    /// <summary>The corner that a pattern is said to stand by, in the motif's own place: the first tile's lower left corner, or where it has none, its middle.</summary>
    public Point Mark { get; } = MarkOf(model);

    /// <summary>Whether the mark is a corner, not a middle.</summary>
    public bool IsCorner => model.Bond.Motif[0].Shape.Points.Contains(Mark);

    /// <summary>The place on the run, unrolled: of those that lay the same tiles that of the first face's mark.</summary>
    public Placing OnRun(PatternPlacing placing)
    {
        var onFace = OnFace(placing, 0);
        var face = model.Fields[0].Field.Face;
        return onFace with { X = onFace.X + face.Unrolled, Y = onFace.Y + face.Raised };
    }

    /// <summary>The place on a face: where the mark stands that it is set out from.</summary>
    public Placing OnFace(PatternPlacing placing, int face)
    {
        var at = model.Fields[face].OnFace(Marked(placing, face));
        return new(at.X, at.Y, model.Problem.Joint) { Turn = model.Problem.Turn };
    }

    /// <summary>
    /// The mark that a face is set out from, as the bond lies: of the tiles like the first that lie whole on it, that nearest to its
    /// middle. Where none lies whole the nearest of all.
    /// </summary>
    public Point Marked(PatternPlacing placing, int face) => Nearest(placing, face).At;

    /// <summary>The mark, whether a tile like the first lies whole there, and how far it is from the middle of all that is set out with the face.</summary>
    public (Point At, bool Whole, Int128 Off) Nearest(PatternPlacing placing, int face)
    {
        var of = model.Fields[face].Field.Face;
        var bounds = of.Plane?.Bounds ?? of.Field.Outer.Bounds;
        var middle = model.Fields[face].Lay(Point.FromSteps(
            (bounds.Left.Steps + bounds.Right.Steps) / 2, (bounds.Bottom.Steps + bounds.Top.Steps) / 2));
        var (x, y) = _repeats.Near(placing.X, placing.Y, middle.X.Steps - Mark.X.Steps, middle.Y.Steps - Mark.Y.Steps);
        foreach (var (i, j) in s_outwards)
        {
            var at = (X: x + (i * _repeats.A.X) + (j * _repeats.B.X), Y: y + (i * _repeats.A.Y) + (j * _repeats.B.Y));
            if (WholeTile.Is(model.Fields[face], model.Bond.Motif[0].Shape.Moved(Length.FromSteps(at.X), Length.FromSteps(at.Y)))) return Stands(at.X, at.Y, whole: true);
        }

        return Stands(x, y, whole: false);

        (Point At, bool Whole, Int128 Off) Stands(long left, long up, bool whole)
        {
            var at = Point.FromSteps(left + Mark.X.Steps, up + Mark.Y.Steps);
            return (at, whole, Segments.Dot(middle, at, middle, at));
        }
    }

    /// <summary>The place of a bond whose mark stands somewhere on the run.</summary>
    public (long X, long Y) Of(Length onRunX, Length onRunY)
    {
        var laid = model.Heading.Back(new(onRunX, onRunY));
        return (laid.X.Steps - Mark.X.Steps, laid.Y.Steps - Mark.Y.Steps);
    }

    /// <summary>The shortest step of the lattice along a direction, as the bond lies, told to a hair over a length; null where it has none within a few repeats.</summary>
    public double? StepAlong(double x, double y, double over)
    {
        const int Most = 12;
        double? least = null;
        for (var i = 0; i <= Most; i++)
        {
            for (var j = -Most; j <= Most; j++)
            {
                var (sx, sy) = ((double)((i * _repeats.A.X) + (j * _repeats.B.X)), (double)((i * _repeats.A.Y) + (j * _repeats.B.Y)));
                var step = Math.Abs((sx * x) + (sy * y));
                if (step < 1 || Math.Abs((sx * y) - (sy * x)) * over > PointsOnLine.Tolerance * step) continue;
                if (least is null || step < least) least = step;
            }
        }

        return least;
    }

    /// <summary>
    /// In how many even steps a step along a direction is divided by the rows of tiles like the first: two where every second
    /// row stands over, as hexagons do. One where rows fall unevenly, or so many that a rod of them would be of no use.
    /// </summary>
    public int RowsWithin(double x, double y, double step)
    {
        const int Most = 4, Reach = 12;
        for (var rows = Most; rows > 1; rows--)
        {
            var (part, even, met) = (step / rows, true, false);
            for (var i = 0; i <= Reach && even; i++)
            {
                for (var j = -Reach; j <= Reach && even; j++)
                {
                    var along = ((((i * _repeats.A.X) + (j * _repeats.B.X)) * x) + (((i * _repeats.A.Y) + (j * _repeats.B.Y)) * y)) / part;
                    even = Math.Abs(along - Math.Round(along)) * part < PointsOnLine.Tolerance * Reach;
                    met |= even && Math.Abs(Math.Round(along)) % rows == 1;
                }
            }

            if (even && met) return rows;
        }

        return 1;
    }

    private static Point MarkOf(PatternModel model)
    {
        var tile = model.Bond.Motif[0];
        var corner = new Point(tile.Cell.Left, tile.Cell.Bottom);
        return tile.Shape.Points.Contains(corner)
            ? corner
            : Point.FromSteps((tile.Cell.Left.Steps + tile.Cell.Right.Steps) / 2, (tile.Cell.Bottom.Steps + tile.Cell.Top.Steps) / 2);
    }
}
