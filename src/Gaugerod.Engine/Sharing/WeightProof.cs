namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Why no fewer tiles would do: every kind has a weight, no tile holds more than so much of it, and all that is wanted
/// weighs so many times that. To check it, one needs only to look for the heaviest tile.
/// </summary>
/// <param name="Weights">The weight of each kind, whole numbers from zero.</param>
/// <param name="Heaviest">The most that one tile can hold; one or more.</param>
/// <param name="Total">What all that is wanted weighs.</param>
internal sealed record WeightProof(long[] Weights, long Heaviest, Int128 Total)
{
    /// <summary>The least number of tiles.</summary>
    public int Tiles => (int)((Total + Heaviest - 1) / Heaviest);

    /// <summary>Weighs everything.</summary>
    public static WeightProof Of(Wanted wanted, long[] weights, long heaviest)
    {
        Int128 total = 0;
        for (var kind = 0; kind < weights.Length; kind++) total += (Int128)weights[kind] * wanted.Kinds[kind].Wanted;
        return new(weights, Math.Max(1, heaviest), total);
    }
}
