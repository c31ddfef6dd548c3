using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Engine.Tests.Lines;

/// <summary>
/// How a face comes out at a placing, counted from the shapes that the referee cuts: nothing of the engine but its
/// statement of the rules (docs/lines.md, "A leg"). A tile is cut when some of it is missing. Of each stretch of a part's outline that follows a side of the tile
/// within 1 in 8 the widths of the part from there to the tile's other side, or to the next cut that faces it, are taken square to the tile: the leg is the least of
/// them, or where they come down to nothing the greatest. At a round outside the tile they count where none is under 1 mm; within one only at its crown.
/// </summary>
internal sealed class CountedPieces
{
    private const double Rake = 8, Neck = 3200, Doubt = 2;

    /// <summary>Cells where it is a matter of less than a step whether a tile is cut or a piece is there at all.</summary>
    private readonly List<Range> _unsure = [];
    private readonly List<Range> _sure = [];
    private readonly RoundEdges _rounds;

    private static readonly Length Hair = Length.FromSteps(2);

    public CountedPieces(RandomRun run, FinishedFace face, Judge judge, long x, long y)
    {
        _rounds = new(face);
        var square = face.Edges.All(edge => edge.From.X == edge.To.X || edge.From.Y == edge.To.Y);
        foreach (var cell in Cells.Around(face.Field.Outer.Bounds, run, x, y))
        {
            var parts = judge.Parts(cell);
            var missing = Missing(cell, parts);
            if (parts.Count == 0 || missing == 0)
            {
                // Within a step of a corner or of a slanted side it is a matter of rounding whether the tile is cut there.
                if (square) continue;
                var wider = new Box(cell.Left - Hair, cell.Bottom - Hair, cell.Right + Hair, cell.Top + Hair);
                var more = judge.Parts(wider);
                if (more.Count > 0 && Missing(wider, more) > 0) _unsure.Add(Leg(more, wider));
                continue;
            }

            var slanted = parts.Any(part => Judge.SlantedLength(part) > 0);
            var isSure = !slanted || (missing > 4 * (cell.Width + cell.Height).Steps && parts.All(part => part.Area > 4 * part.Length));
            (isSure ? _sure : _unsure).Add(Leg(parts, cell));
        }
    }

    public int CutsAtLeast => _sure.Count;

    public int CutsAtMost => _sure.Count + _unsure.Count;

    public int Slivers(double limit) => _sure.Count(leg => leg.Most < limit);

    public int SliversAtMost(double limit) => _sure.Concat(_unsure).Count(leg => leg.Least < limit);

    /// <summary>The narrowest leg among the cuts that are sure, and among all; a great deal where there is none.</summary>
    public (double Sure, double All) Least =>
        (_sure.Select(leg => leg.Most).DefaultIfEmpty(None).Min(), _sure.Concat(_unsure).Select(leg => leg.Least).DefaultIfEmpty(None).Min());

    private const double None = double.MaxValue;

    /// <summary>A leg, where a step of rounding decides as the one way would have it and as the other.</summary>
    private readonly record struct Range(double Least, double Most)
    {
        public Range And(Range other) => new(Math.Min(Least, other.Least), Math.Min(Most, other.Most));
    }

    private readonly record struct Cut(double Low, double LowAt, double High, double HighAt, bool TileAfter, string Name, RoundKind Kind);

    private static double Missing(Box cell, List<Polygon> parts) => ((double)cell.Width.Steps * cell.Height.Steps) - parts.Sum(part => part.Area);

    private Range Leg(List<Polygon> parts, Box cell)
    {
        var cuts = parts.ConvertAll(part => Cuts(part, cell));
        var leg = new Range(None, None);
        foreach (var (sides, levels) in cuts)
        {
            leg = leg.And(Narrowest(sides, [.. cuts.SelectMany(of => of.Sides)], cell.Left.Steps, cell.Right.Steps));
            leg = leg.And(Narrowest(levels, [.. cuts.SelectMany(of => of.Levels)], cell.Bottom.Steps, cell.Top.Steps));
        }

        return leg;
    }

    private (List<Cut> Sides, List<Cut> Levels) Cuts(Polygon part, Box cell)
    {
        var (sides, levels) = (new List<Cut>(), new List<Cut>());
        foreach (var (a, b) in Judge.Sides(part))
        {
            var (dx, dy) = (Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y));
            if (OnSide(a.X, b.X, cell.Left.Steps, cell.Right.Steps) || OnSide(a.Y, b.Y, cell.Bottom.Steps, cell.Top.Steps)) continue;
            var (name, kind) = _rounds.Of(a, b) ?? ("", RoundKind.Straight);
            if (kind == RoundKind.Hollow) continue;
            // The part lies to the left of its sides: right of one that runs down, above one that runs right.
            if (dx * Rake <= dy) sides.Add(Upwards(a.Y, a.X, b.Y, b.X, tileAfter: b.Y < a.Y, name, kind));
            else if (dy * Rake <= dx) levels.Add(Upwards(a.X, a.Y, b.X, b.Y, tileAfter: b.X > a.X, name, kind));
        }

        return (sides, levels);
    }

    private static bool OnSide(double one, double other, long low, long high) => one == other && (one == low || one == high);

    private static Cut Upwards(double low, double lowAt, double high, double highAt, bool tileAfter, string name, RoundKind kind) =>
        low <= high ? new(low, lowAt, high, highAt, tileAfter, name, kind) : new(high, highAt, low, lowAt, tileAfter, name, kind);

    private Range Narrowest(List<Cut> cuts, List<Cut> all, double near, double far)
    {
        var least = new Range(None, None);
        foreach (var cut in cuts)
        {
            var legs = RunsOut(ToSide(cut, near, far));
            foreach (var facing in cuts.Where(other => other.TileAfter != cut.TileAfter))
            {
                var (from, to) = (Math.Max(cut.Low, facing.Low), Math.Min(cut.High, facing.High));
                if (from >= to || ((cut.Kind == RoundKind.Column || facing.Kind == RoundKind.Column) && _rounds.Apart(cut.Name, facing.Name) < Neck)) continue;
                double Between(double at) => cut.TileAfter ? At(facing, at) - At(cut, at) : At(cut, at) - At(facing, at);
                var (one, other) = (Between(from), Between(to));
                if (Math.Min(one, other) >= 0) legs = legs.And(RunsOut((Math.Min(one, other), Math.Max(one, other))));
            }

            if (cut.Kind == RoundKind.Column)
            {
                var neck = all.Where(other => other.Name == cut.Name && other.TileAfter == cut.TileAfter).Min(other => ToSide(other, near, far).Least);
                if (neck < Neck - Doubt) continue;
                if (neck < Neck + Doubt) legs = legs with { Most = None };
            }

            least = least.And(legs);
        }

        return least;
    }

    private static (double Least, double Most) ToSide(Cut cut, double near, double far)
    {
        var (low, high) = (Math.Min(cut.LowAt, cut.HighAt), Math.Max(cut.LowAt, cut.HighAt));
        return cut.TileAfter ? (far - high, far - low) : (low - near, high - near);
    }

    private static Range RunsOut((double Least, double Most) width) =>
        width.Least > Doubt || width.Least == width.Most ? new(width.Least, width.Least) : new(Math.Max(width.Least, 0), width.Most > Doubt ? width.Most : None);

    private static double At(Cut cut, double place) => cut.LowAt + ((cut.HighAt - cut.LowAt) * (place - cut.Low) / (cut.High - cut.Low));
}
