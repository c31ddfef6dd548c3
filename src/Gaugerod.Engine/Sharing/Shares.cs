namespace Gaugerod.Engine.Sharing;

/// <summary>The best plan known, and the best argument that it is the best.</summary>
/// <param name="Fills">What is cut from each tile, as kinds in rising order.</param>
/// <param name="Proof">Why no fewer than <see cref="WeightProof.Tiles"/> would do.</param>
/// <param name="Least">The least number known; more than the proof's where every plan of fewer tiles was tried in vain.</param>
internal sealed record Shares(IReadOnlyList<int[]> Fills, WeightProof Proof, int Least)
{
    /// <summary>Whether plan and proof meet.</summary>
    public bool Proved => Fills.Count == Least;
}
