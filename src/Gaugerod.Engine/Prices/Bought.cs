using Gaugerod.Plane;

namespace Gaugerod.Engine.Prices;

/// <summary>A unit that something bought may be priced by.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="InPack">How many of it a pack holds.</param>
/// <param name="Word">What one is called, such as <c>box of 10</c>.</param>
public readonly record struct BuyingWay(PriceUnit Unit, decimal InPack, string Word);

/// <summary>Something that the plan buys.</summary>
/// <param name="Item">What it is, as the order calls it.</param>
/// <param name="Packs">How many packs, whole: low without breakage and loss, likely and high as ordered.</param>
/// <param name="Ways">What it may be priced by, the usual first; one or more.</param>
/// <param name="How">How the packs were reckoned, in words.</param>
public sealed record Bought(string Item, Spread Packs, Sequence<BuyingWay> Ways, string How);
