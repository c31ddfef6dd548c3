using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>A bond that was asked for, with tiles that make it.</summary>
internal sealed record BondCase(string Name, BondRequest Request, Sequence<Product> Products, Length Joint)
{
    public BondTiles Tiles => new(Products, JointRange.Only(Joint), Joint, Tape.Millimetres);

    public Bond Bond => BondMaker.Make(Request, Tiles) is { Bond: { } bond } ? bond : throw new InvalidOperationException($"{this}: {BondMaker.Make(Request, Tiles).Refusal}");

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Name}: {Request} joint {Joint.Steps} tiles {string.Join(", ", Products.Select(p => $"{p.Width.Steps}x{p.Height.Steps}"))}");

    public static Product Tile(Length width, Length height, int number = 0) => new(string.Create(CultureInfo.InvariantCulture, $"tile {number}"), width, height, Length.FromMillimetres(9));
}
