namespace Gaugerod.Engine.Surveys;

/// <summary>Corners and what was read between them.</summary>
/// <param name="Corners">How many corners and other spots have a place of their own.</param>
/// <param name="Readings">What was read.</param>
/// <param name="Fixed">
/// Which of the x and y of all, one after another, stay where they begin: the first corner, and of a shape that nothing ties to
/// level or plumb the second's y.
/// </param>
internal sealed record Network(int Corners, IReadOnlyList<Reading> Readings, bool[] Fixed)
{
    /// <summary>The x and y that may move, in order.</summary>
    public int[] Free { get; } = [.. Enumerable.Range(0, 2 * Corners).Where(i => !Fixed[i])];

    /// <summary>Whether a length was read already, this way or the other.</summary>
    public bool IsRead(Reading length) => length.Of == ReadingOf.Length && Readings.Any(r =>
        r.Of == ReadingOf.Length && ((r.First == length.First && r.Second == length.Second) || (r.First == length.Second && r.Second == length.First)));

    public Network With(Reading more) => this with { Readings = [.. Readings, more] };

    /// <summary>What the readings come to where the corners stand, and how each changes with what is free, all in accuracies.</summary>
    /// <param name="places">Where they stand.</param>
    /// <param name="misses">Gets what was read less what it comes to.</param>
    /// <returns>A column for each x or y that is free.</returns>
    public double[][] Slopes(double[] places, out double[] misses)
    {
        var columns = new double[Free.Length][];
        for (var k = 0; k < columns.Length; k++) columns[k] = new double[Readings.Count];
        misses = new double[Readings.Count];
        var slope = new double[places.Length];
        for (var i = 0; i < misses.Length; i++)
        {
            var reading = Readings[i];
            Array.Clear(slope);
            misses[i] = (reading.Value - ReadingSlope.Of(reading, places, slope)) / reading.Accuracy;
            for (var k = 0; k < columns.Length; k++) columns[k][i] = slope[Free[k]] / reading.Accuracy;
        }

        return columns;
    }

    /// <summary>A reading's slopes along what is free, in accuracies.</summary>
    public double[] Row(in Reading reading, double[] places)
    {
        var slope = new double[places.Length];
        ReadingSlope.Of(reading, places, slope);
        var accuracy = reading.Accuracy;
        return Array.ConvertAll(Free, at => slope[at] / accuracy);
    }
}
