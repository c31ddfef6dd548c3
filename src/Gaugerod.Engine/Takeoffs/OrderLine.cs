namespace Gaugerod.Engine.Takeoffs;

/// <summary>Something to buy.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Need">How many are needed: pieces of the cut plan, breakage and spares together.</param>
/// <param name="Unit">What one of them is, such as <c>tile</c>.</param>
/// <param name="Pack">How many come in a pack.</param>
/// <param name="Packs">How many packs.</param>
/// <param name="Planned">Of the need, what the cut plan takes.</param>
/// <param name="Breakage">Of the need, what is allowed for breakage.</param>
/// <param name="Spares">Of the need, what is left with the client.</param>
/// <param name="Flat">Of the need, what a flat share adds because the setter asked for one.</param>
/// <param name="Basis">How it was reckoned, in words.</param>
public sealed record OrderLine(
    string Item, int Need, string Unit, int Pack, int Packs, int Planned, int Breakage, int Spares, int Flat, string Basis)
{
    /// <summary>What is left over of the packs.</summary>
    public int Over => (Packs * Pack) - Need;

    /// <summary>What the tiles left over allow, and what one more pack would; empty where nothing is to be said.</summary>
    public string Freedom { get; init; } = "";
}
