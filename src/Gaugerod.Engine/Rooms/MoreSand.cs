namespace Gaugerod.Engine.Rooms;

/// <summary>A bagged mix of cement and sand that is made leaner with sand, by weight.</summary>
/// <param name="Kilograms">What the bag weighs, 1 to 100 kg.</param>
/// <param name="From">Parts of sand to one of cement in the bag, 1 to 10.</param>
/// <param name="To">Parts of sand as wanted, more than in the bag, up to 12.</param>
public sealed record MoreSand(double Kilograms, int From, int To)
{
    /// <summary>The sand that goes to each bag, in kg: the bag holds one part of cement in 1 + From.</summary>
    public double Added => Kilograms * (To - From) / (1 + From);
}
