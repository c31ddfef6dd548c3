using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Bases;

/// <summary>Finds the straight lines along which a straightedge can be laid from reading to reading.</summary>
internal static class Profiles
{
    // Places are marked out by tape and chalk: so many millimetres off a line are on it.
    private const double OnLine = 10;

    // And what stands no further along it than this from the one before is beside that one.
    private const double Apart = 1;

    /// <summary>The rows, the columns and the diagonals of a grid, of three readings or more.</summary>
    public static IEnumerable<Profile> Of(FlatGrid grid)
    {
        var (rows, columns) = (grid.Rows.Count, grid.Rows[0].Count);
        foreach (var (right, up) in (IReadOnlyList<(int, int)>)[(1, 0), (0, 1), (1, 1), (1, -1)])
        {
            for (var row = 0; row < rows; row++)
            {
                for (var column = 0; column < columns; column++)
                {
                    // A line begins where the crossing before it is off the grid.
                    if (On(column - right, row - up)) continue;
                    var line = new List<FlatReading>();
                    for (var (x, y) = (column, row); On(x, y); (x, y) = (x + right, y + up)) line.Add(At(grid, x, y));
                    if (line.Count > 2) yield return Line(line);
                }
            }
        }

        bool On(int column, int row) => column >= 0 && column < columns && row >= 0 && row < rows;
    }

    /// <summary>A line for every two of some places between which others lie on the same line.</summary>
    public static IEnumerable<Profile> Of(IReadOnlyList<FlatReading> readings)
    {
        var places = readings.Select(reading => Place.Of(reading.At)).ToArray();
        for (var i = 0; i < places.Length; i++)
        {
            for (var j = i + 1; j < places.Length; j++)
            {
                var (from, way, length) = (places[i], (places[j] - places[i]).Unit, places[i].To(places[j]));
                var between = Enumerable.Range(0, places.Length).Where(k => k != i && k != j && Math.Abs((places[k] - from).Across(way)) <= OnLine).Select(k => (At: (places[k] - from).Along(way), Reading: readings[k]))
                    .Where(one => one.At > Apart && one.At < length - Apart).OrderBy(one => one.At).ToList();
                if (between.Count == 0) continue;
                // Of readings side by side a straightedge meets one: the highest of each, and on a line of its own the lowest.
                var beside = Beside(between);
                yield return Through(beside.Select(one => one.MaxBy(reading => reading.Reading.Out)));
                if (beside.Count < between.Count) yield return Through(beside.Select(one => one.MinBy(reading => reading.Reading.Out)));

                Profile Through(IEnumerable<(double At, FlatReading Reading)> some)
                {
                    List<(double At, FlatReading Reading)> line = [(0, readings[i]), .. some, (length, readings[j])];
                    return new([.. line.Select(one => Place.Of(one.Reading.At))], [.. line.Select(one => one.At)], [.. line.Select(one => (double)one.Reading.Out.Millimetres)]);
                }
            }
        }
    }

    /// <summary>The gaps under one straightedge.</summary>
    public static Profile Of(LaidStraightedge laid)
    {
        var (from, whole) = (Place.Of(laid.From), Place.Of(laid.To) - Place.Of(laid.From));
        var places = laid.Gaps.Select((_, i) => from + (whole * (i / (laid.Gaps.Count - 1.0)))).ToArray();
        return new(places, [.. places.Select(place => from.To(place))], [.. laid.Gaps.Select(gap => -(double)gap.Millimetres)]);
    }

    /// <summary>The reading at a crossing.</summary>
    public static FlatReading At(FlatGrid grid, int column, int row) => new(new(grid.From.X + (grid.Right * column), grid.From.Y + (grid.Up * row)), grid.Rows[row][column]);

    private static List<List<(double At, FlatReading Reading)>> Beside(List<(double At, FlatReading Reading)> line)
    {
        var groups = new List<List<(double At, FlatReading Reading)>>();
        foreach (var one in line)
        {
            if (groups.Count == 0 || one.At - groups[^1][0].At > Apart) groups.Add([]);
            groups[^1].Add(one);
        }

        return groups;
    }

    private static Profile Line(IReadOnlyList<FlatReading> line)
    {
        var places = line.Select(reading => Place.Of(reading.At)).ToArray();
        return new(places, [.. places.Select(place => places[0].To(place))], [.. line.Select(reading => (double)reading.Out.Millimetres)]);
    }
}
