namespace Gaugerod.Engine.Surveys;

/// <summary>
/// Where corners stand roughly, before their readings are weighed: every corner square and the sides as long as read. This fixes
/// which way round a shape lies, which lengths alone never tell.
/// </summary>
internal static class StartingShape
{
    /// <summary>Of a side that was not read nothing is known but that it has some length, in mm.</summary>
    private const double SomeLength = 1000;

    /// <summary>What is only a guess weighs as little as this beside what was read.</summary>
    private const double Guess = 1e-3;

    /// <summary>The corners of a shape with square corners only; null when so many turns do not bring it round.</summary>
    /// <param name="network">Its readings; those of other spots than its corners do not count here.</param>
    /// <param name="inward">Which of its corners point in, one for each, counter-clockwise; the spots after them have none.</param>
    public static double[]? Of(Network network, bool[] inward)
    {
        if (inward.Length - (2 * inward.Count(i => i)) != 4) return null;
        var rows = new List<(double[] Row, double Wanted)>();
        var (x, y) = (1, 0);
        for (var side = 0; side < inward.Length; side++)
        {
            var (from, to) = (side, (side + 1) % inward.Length);
            if (side > 0) (x, y) = inward[side] ? (y, -x) : (-y, x);
            Add(from, to, -y, x, 0, 1);
            Add(from, to, x, y, SomeLength, Guess);
            foreach (var reading in network.Readings)
            {
                if (reading.Of != ReadingOf.Length || !reading.First.IsCorner || !reading.Second.IsCorner) continue;
                if ((reading.First.From, reading.Second.From) == (from, to) || (reading.First.From, reading.Second.From) == (to, from)) Add(from, to, x, y, reading.Value, 1);
            }
        }

        foreach (var reading in network.Readings)
        {
            if (reading.Of is not (ReadingOf.Across or ReadingOf.Up) || !reading.First.IsCorner || !reading.Second.IsCorner) continue;
            var across = reading.Of == ReadingOf.Across;
            Add(reading.First.From, reading.Second.From, across ? 1 : 0, across ? 0 : 1, reading.Value, 1);
        }

        for (var at = 0; at < 2 * network.Corners; at++)
        {
            // The first corner is where all is counted from; any other spot begins in the middle.
            if (at < 2) rows.Add((Unit(at), 0));
        }

        for (var spot = inward.Length; spot < network.Corners; spot++)
        {
            for (var corner = 0; corner < inward.Length; corner++)
            {
                Add(corner, spot, 1, 0, 0, Guess);
                Add(corner, spot, 0, 1, 0, Guess);
            }
        }

        var columns = new double[2 * network.Corners][];
        for (var k = 0; k < columns.Length; k++) columns[k] = rows.Select(r => r.Row[k]).ToArray();
        return new LeastSquares(columns, Adjustment.Least).Solve([.. rows.Select(r => r.Wanted)]);

        double[] Unit(int at)
        {
            var row = new double[2 * network.Corners];
            row[at] = 1;
            return row;
        }

        void Add(int from, int to, double x, double y, double wanted, double weight)
        {
            var row = new double[2 * network.Corners];
            (row[2 * to], row[(2 * to) + 1]) = (x * weight, y * weight);
            (row[2 * from], row[(2 * from) + 1]) = (-x * weight, -y * weight);
            rows.Add((row, wanted * weight));
        }
    }
}
