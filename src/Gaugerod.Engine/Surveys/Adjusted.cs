namespace Gaugerod.Engine.Surveys;

/// <summary>
/// Corners as the readings settle them, and how far each reading is to be believed. The formulas are those of data snooping
/// (W. Baarda, A testing procedure for use in geodetic networks, 1968; C. Ghilani, Adjustment Computations; from memory).
/// </summary>
internal sealed class Adjusted
{
    private readonly LeastSquares _apart;
    private readonly double[][] _along;
    private readonly double[] _misses;

    public Adjusted(Network network, double[] places, double[][] slopes, double[] misses)
    {
        (Network, Places, _misses) = (network, places, misses);
        _apart = new(slopes, Adjustment.Least);
        _along = new double[misses.Length][];
        for (var i = 0; i < misses.Length; i++) _along[i] = _apart.Row(i);
    }

    public Network Network { get; }

    /// <summary>x and y of every corner, in mm.</summary>
    public double[] Places { get; }

    /// <summary>Whether it came to rest.</summary>
    public bool IsSettled { get; init; } = true;

    /// <summary>How many readings there are beyond what settles the shape.</summary>
    public int Beyond => _misses.Length - _apart.Rank;

    /// <summary>What must be added to a reading, in mm.</summary>
    public double Correction(int reading) => -_misses[reading] * Network.Readings[reading].Accuracy;

    /// <summary>How much of a slip in a reading shows in its own correction: from 0, nothing checks it, to 1, it settles nothing.</summary>
    public double Redundancy(int reading) => Math.Max(0, 1 - LeastSquares.Dot(_along[reading], _along[reading]));

    /// <summary>Whether nothing tells a slip of this reading.</summary>
    public bool IsUnchecked(int reading) => Redundancy(reading) < LeastChecked;

    /// <summary>A correction by its own standard deviation: without slips it follows the normal law. 0 of a reading that nothing checks.</summary>
    public double Standardised(int reading) =>
        IsUnchecked(reading) ? 0 : -_misses[reading] / Math.Sqrt(Redundancy(reading));

    /// <summary>What a reading would come to by all the others, in mm; not to be asked of one that nothing checks.</summary>
    public double ByOthers(int reading) => Network.Readings[reading].Value + (Correction(reading) / Redundancy(reading));

    /// <summary>The least slip of a reading that is found four times in five, in mm.</summary>
    public double LeastSlip(int reading) =>
        IsUnchecked(reading) ? double.PositiveInfinity : (Critical + Power) * Network.Readings[reading].Accuracy / Math.Sqrt(Redundancy(reading));

    /// <summary>How alike the tests of two readings are: 1 and -1 cannot be told apart.</summary>
    public double Alike(int one, int other) => LikeIf(one, other, [], 0);

    /// <summary>As <see cref="Alike"/>, were one more thing read.</summary>
    /// <param name="one">A reading.</param>
    /// <param name="other">Another.</param>
    /// <param name="more">What would be read, as <see cref="Along"/> gives it.</param>
    /// <param name="square">Its square.</param>
    public double LikeIf(int one, int other, ReadOnlySpan<double> more, double square)
    {
        var (a, b) = (RedundancyIf(one, more, square), RedundancyIf(other, more, square));
        if (a < LeastChecked || b < LeastChecked) return 0;
        var shared = -LeastSquares.Dot(_along[one], _along[other]);
        if (more.Length > 0) shared += LeastSquares.Dot(_along[one], more) * LeastSquares.Dot(_along[other], more) / (1 + square);
        return shared / Math.Sqrt(a * b);
    }

    /// <summary>As <see cref="Redundancy"/>, were one more thing read.</summary>
    public double RedundancyIf(int reading, ReadOnlySpan<double> more, double square)
    {
        if (more.Length == 0) return Redundancy(reading);
        var with = LeastSquares.Dot(_along[reading], more);
        return Redundancy(reading) + (with * with / (1 + square));
    }

    /// <summary>One more reading, told in what the readings settle.</summary>
    public double[] Along(in Reading more) => _apart.Along(Network.Row(more, Places));

    /// <summary>The standard deviation of what a reading of this kind and these spots comes to, in mm.</summary>
    public double Deviation(in Reading of)
    {
        var along = Along(of with { Accuracy = 1 });
        return Math.Sqrt(LeastSquares.Dot(along, along));
    }

    /// <summary>What a reading comes to where the corners stand, in mm.</summary>
    public double Value(in Reading of) => ReadingSlope.Of(of, Places, new double[Places.Length]);

    /// <summary>Beyond this a standardised correction is one in a thousand where all is well: 3.29 (Baarda 1968; from memory).</summary>
    public const double Critical = 3.2905267314919255;

    /// <summary>Slips as large as this more are found four times in five: 0.84.</summary>
    public const double Power = 0.8416212335729143;

    private const double LeastChecked = 1e-3;
}
