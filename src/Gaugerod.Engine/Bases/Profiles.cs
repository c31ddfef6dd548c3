using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Bases;

/// <summary>Finds the straight lines along which a straightedge can be laid from reading to reading.</summary>
internal static class Profiles
{
    // Places are marked out by tape and chalk: so many millimetres off a line are on it.
    private const double OnLine = 10;

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
                var between = Enumerable.Range(0, places.Length).Where(k => k != i && k != j && Math.Abs((places[k] - from).Across(way)) <= OnLine && (places[k] - from).Along(way) is var at && at > 1 && at < length - 1).ToList();
                if (between.Count > 0) yield return Line([readings[i], .. between.OrderBy(k => (places[k] - from).Along(way)).Select(k => readings[k]), readings[j]]);
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

    private static Profile Line(IReadOnlyList<FlatReading> line)
    {
        var places = line.Select(reading => Place.Of(reading.At)).ToArray();
        return new(places, [.. places.Select(place => places[0].To(place))], [.. line.Select(reading => (double)reading.Out.Millimetres)]);
    }
}
