using Gaugerod.Engine.Boards;
using NetTopologySuite.Geometries;

namespace Gaugerod.Engine.Tests.Boards;

/// <summary>Every choice of seams, judged with another library's areas and lines: slow, and knows nothing of how the search goes.</summary>
internal sealed class SeamReferee
{
    private const double Near = 2 * 81280, Narrow = 4 * 81280;

    private readonly Geometry _field;
    private readonly Band[] _bands;
    private readonly long[] _studs;
    private readonly SheetLies _sheet;
    private readonly List<Coordinate> _corners;
    private readonly bool _byShares;

    public SeamReferee(Geometry field, IEnumerable<Coordinate> corners, Band[] bands, long[] studs, SheetLies sheet, bool byShares) =>
        (_field, _corners, _bands, _studs, _sheet, _byShares) = (field, [.. corners], bands, studs, sheet, byShares);

    /// <summary>The least cost of any choice, seams' length in steps; null where none will do.</summary>
    public (int AtCorners, int InLine, int Narrow, long Shares, int Pieces, double Seams)? Best()
    {
        var rows = _bands.Select(Choices).ToList();
        var best = new Dictionary<int, (int, int, int, long, int, double)> { [0] = default };
        for (var r = 0; r < rows.Count; r++)
        {
            var next = new Dictionary<int, (int, int, int, long, int, double)>();
            foreach (var (seams, own) in rows[r])
            {
                foreach (var (below, sofar) in best)
                {
                    var inLine = r == 0 ? 0 : Enumerable.Range(0, _studs.Length).Count(i => (seams & below & (1 << i)) != 0 && Meets(r - 1, i));
                    var cost = (sofar.Item1 + own.Item1, sofar.Item2 + inLine, sofar.Item3 + own.Item3, sofar.Item4 + own.Item4, sofar.Item5 + own.Item5, sofar.Item6 + own.Item6);
                    if (!next.TryGetValue(seams, out var known) || cost.CompareTo(known) < 0) next[seams] = cost;
                }
            }

            best = next;
        }

        if (best.Count == 0) return null;
        var least = best.Values.Min();
        for (var r = 0; r + 1 < _bands.Length; r++)
        {
            var line = Line(-1e9, Level(r), 1e9, Level(r));
            least = (least.Item1 + Hits(line), least.Item2, least.Item3, least.Item4, least.Item5, least.Item6 + line.Length);
        }

        return least;
    }

    private double Level(int row) => _bands[row].Top + _sheet.Before;

    private bool Meets(int row, int stud) => _field.Covers(new Point(_studs[stud], Level(row) + 0.25));

    /// <summary>All sets of seams of a row that leave pieces no larger than a sheet.</summary>
    private List<(int Seams, (int, int, int, long, int, double) Cost)> Choices(Band band)
    {
        var lines = _studs.Select(x => Line(x + 0.25, band.Bottom, x + 0.25, band.Top)).ToArray();
        var cells = new Dictionary<(int, int), (bool Fits, int Narrow, long Shares, int Pieces)>();
        var choices = new List<(int, (int, int, int, long, int, double))>();
        for (var seams = 0; seams < 1 << _studs.Length; seams++)
        {
            var (cost, fits, before) = ((0, 0, 0, 0L, 0, 0.0), true, -1);
            for (var i = 0; i <= _studs.Length && fits; i++)
            {
                if (i < _studs.Length)
                {
                    if ((seams & (1 << i)) == 0) continue;
                    fits &= lines[i].Length > 0.5;
                    cost = (cost.Item1 + Hits(lines[i]), 0, cost.Item3, cost.Item4, cost.Item5, cost.Item6 + lines[i].Length);
                }

                if (!cells.TryGetValue((before, i), out var cell)) cells[(before, i)] = cell = Cell(band, before, i);
                fits &= cell.Fits;
                cost = (cost.Item1, 0, cost.Item3 + cell.Narrow, cost.Item4 + cell.Shares, cost.Item5 + cell.Pieces, cost.Item6);
                before = i;
            }

            if (fits) choices.Add((seams, cost));
        }

        return choices;
    }

    private (bool Fits, int Narrow, long Shares, int Pieces) Cell(Band band, int from, int to)
    {
        var (left, right) = (from < 0 ? -1e9 : _studs[from] + _sheet.After, to == _studs.Length ? 1e9 : _studs[to] - _sheet.Before);
        if (right <= left) return (true, 0, 0, 0);
        var cut = _field.Intersection(new GeometryFactory().ToGeometry(new Envelope(left, right, band.Bottom, band.Top)));
        var (fits, narrow, shares, pieces) = (true, 0, 0L, 0);
        for (var g = 0; g < cut.NumGeometries; g++)
        {
            if (cut.GetGeometryN(g) is not Polygon { Area: > 10 } part) continue;
            var (width, height) = (Math.Round(part.EnvelopeInternal.Width), Math.Round(part.EnvelopeInternal.Height));
            pieces++;
            fits &= width <= _sheet.Across && height <= _sheet.Up;
            if (Math.Min(width, height) < Narrow) narrow++;
            shares += 2520 * 2520 / ((long)Math.Clamp(Math.Floor(_sheet.Across / width), 1, 10) * (long)Math.Clamp(Math.Floor(_sheet.Up / height), 1, 10));
        }

        return (fits, narrow, _byShares ? shares : 0, pieces);
    }

    private Geometry Line(double x1, double y1, double x2, double y2) => _field.Intersection(new LineString([new(x1, y1), new(x2, y2)]));

    private int Hits(Geometry seam) => _corners.Count(corner => Enumerable.Range(0, seam.NumGeometries).Select(seam.GetGeometryN).OfType<LineString>().Any(part =>
    {
        var box = part.EnvelopeInternal;
        return corner.X > box.MinX - Near + 0.3 && corner.X < box.MaxX + Near - 0.3 && corner.Y > box.MinY - Near + 0.3 && corner.Y < box.MaxY + Near - 0.3;
    }));
}
