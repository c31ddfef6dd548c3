namespace Gaugerod.Engine.Takeoffs;

/// <summary>What the flat method comes to.</summary>
/// <param name="WithShare">The area with the share for waste, in the unit of the area given.</param>
/// <param name="Packs">Whole packs.</param>
internal sealed record AreaOrder(decimal WithShare, int Packs);
