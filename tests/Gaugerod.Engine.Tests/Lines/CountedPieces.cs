using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Engine.Tests.Lines;

/// <summary>
/// How a face comes out at a placing, counted from the shapes that the referee cuts: nothing of the engine but its
/// statement of the rules. A tile is cut when some of it is missing; a leg is what stands between a cut and the tile's
/// other side, or the next cut that faces it, square to the tile; a cut that lies by more than 1 in 8 askew has no leg.
/// </summary>
internal sealed class CountedPieces
{
    private const double Rake = 8;

    /// <summary>Cells where it is a matter of less than a step whether a tile is cut or a piece is there at all.</summary>
    private readonly List<double?> _unsure = [];
    private readonly List<double?> _sure = [];

    private static readonly Length Hair = Length.FromSteps(2);

    public CountedPieces(RandomRun run, FinishedFace face, Judge judge, long x, long y)
    {
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
                if (more.Count > 0 && Missing(wider, more) > 0) _unsure.Add(more.Min(part => Leg(part, wider)));
                continue;
            }

            var slanted = parts.Any(part => Judge.SlantedLength(part) > 0);
            var leg = parts.Min(part => Leg(part, cell));
            var isSure = !slanted || (missing > 4 * (cell.Width + cell.Height).Steps && parts.All(part => part.Area > 4 * part.Length));
            (isSure ? _sure : _unsure).Add(leg);
        }
    }

    public int CutsAtLeast => _sure.Count;

    public int CutsAtMost => _sure.Count + _unsure.Count;

    public int Slivers(double limit) => _sure.Count(leg => leg < limit);

    public int SliversAtMost(double limit) => _sure.Concat(_unsure).Count(leg => leg < limit);

    /// <summary>The narrowest leg among the cuts that are sure, and among all.</summary>
    public (double? Sure, double? All) Least => (_sure.Min(), _sure.Concat(_unsure).Min());

    private readonly record struct Cut(double Low, double LowAt, double High, double HighAt, bool TileAfter);

    private static double Missing(Box cell, List<Polygon> parts) => ((double)cell.Width.Steps * cell.Height.Steps) - parts.Sum(part => part.Area);

    private static double? Leg(Polygon part, Box cell)
    {
        var (sides, levels) = (new List<Cut>(), new List<Cut>());
        foreach (var (a, b) in Judge.Sides(part))
        {
            var (dx, dy) = (Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y));
            if (OnSide(a.X, b.X, cell.Left.Steps, cell.Right.Steps) || OnSide(a.Y, b.Y, cell.Bottom.Steps, cell.Top.Steps)) continue;
            // The part lies to the left of its sides: right of one that runs down, above one that runs right.
            if (dx * Rake <= dy) sides.Add(Upwards(a.Y, a.X, b.Y, b.X, tileAfter: b.Y < a.Y));
            else if (dy * Rake <= dx) levels.Add(Upwards(a.X, a.Y, b.X, b.Y, tileAfter: b.X > a.X));
        }

        var (one, other) = (Narrowest(sides, cell.Left.Steps, cell.Right.Steps), Narrowest(levels, cell.Bottom.Steps, cell.Top.Steps));
        return one is null ? other : other is null ? one : Math.Min(one.Value, other.Value);
    }

    private static bool OnSide(double one, double other, long low, long high) => one == other && (one == low || one == high);

    private static Cut Upwards(double low, double lowAt, double high, double highAt, bool tileAfter) =>
        low <= high ? new(low, lowAt, high, highAt, tileAfter) : new(high, highAt, low, lowAt, tileAfter);

    private static double? Narrowest(List<Cut> cuts, double near, double far)
    {
        double? least = null;
        foreach (var cut in cuts)
        {
            var leg = cut.TileAfter ? far - Math.Max(cut.LowAt, cut.HighAt) : Math.Min(cut.LowAt, cut.HighAt) - near;
            foreach (var facing in cuts.Where(other => other.TileAfter != cut.TileAfter))
            {
                var (from, to) = (Math.Max(cut.Low, facing.Low), Math.Min(cut.High, facing.High));
                if (from >= to) continue;
                double Between(double at) => cut.TileAfter ? At(facing, at) - At(cut, at) : At(cut, at) - At(facing, at);
                var gap = Math.Min(Between(from), Between(to));
                if (gap >= 0) leg = Math.Min(leg, gap);
            }

            if (least is null || leg < least) least = leg;
        }

        return least;
    }

    private static double At(Cut cut, double place) => cut.LowAt + ((cut.HighAt - cut.LowAt) * (place - cut.Low) / (cut.High - cut.Low));
}
