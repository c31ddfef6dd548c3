namespace Gaugerod.Engine.Surveys;

/// <summary>Which readings may be in error, where any must be.</summary>
internal static class Suspects
{
    /// <summary>Tests alike by more than this tell no two readings apart.</summary>
    public const double NoTelling = 0.99;

    /// <summary>
    /// The reading most likely in error, and all that cannot be told from it, in rising order; none where no correction is beyond
    /// what its accuracy allows. A slip shows in other corrections too, so that only the largest says anything.
    /// </summary>
    public static int[] Of(Adjusted adjusted)
    {
        var (worst, most) = (-1, Adjusted.Critical);
        for (var i = 0; i < adjusted.Network.Readings.Count; i++)
        {
            if (Math.Abs(adjusted.Standardised(i)) is var size && size > most) (worst, most) = (i, size);
        }

        return worst < 0 ? [] : Alike(adjusted, worst);
    }

    /// <summary>A reading and all that cannot be told from it.</summary>
    public static int[] Alike(Adjusted adjusted, int reading) =>
        [.. Enumerable.Range(0, adjusted.Network.Readings.Count).Where(i => i == reading || Math.Abs(adjusted.Alike(reading, i)) > NoTelling)];
}
