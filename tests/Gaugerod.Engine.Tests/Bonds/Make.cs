using System.Globalization;
using System.Text.RegularExpressions;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Bonds;

/// <summary>Bonds for checks by hand, asked for as a job asks.</summary>
internal static class Make
{
    /// <summary>Tiles set tight: so shares and areas are those of the bare tiles.</summary>
    public static readonly Length Tight = Length.Zero;

    public static Bond Bond(BondRequest request, Length joint, params (Length Width, Length Height)[] tiles)
    {
        var making = Making(request, joint, tiles);
        Assert.Null(making.Refusal);
        return making.Bond!;
    }

    /// <summary>Why there is no such bond: what was found, what is expected, what would do.</summary>
    public static BondRefusal Refused(BondRequest request, Length joint, params (Length Width, Length Height)[] tiles)
    {
        var refusal = Making(request, joint, tiles).Refusal;
        Assert.NotNull(refusal);
        return refusal;
    }

    public static BondMaking Making(BondRequest request, Length joint, params (Length Width, Length Height)[] tiles) =>
        BondMaker.Make(request, new(tiles.Select((t, i) => BondCase.Tile(t.Width, t.Height, i)).ToSequence(), JointRange.Only(joint), joint, Tape.Millimetres));

    /// <summary>The metric lengths that a message names, in their order.</summary>
    public static Length[] Lengths(string? said) =>
    [
        .. Regex.Matches(said ?? "", @"(-?[\d.]+) mm").Select(m => Length.FromSteps((long)(decimal.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) * Length.StepsPerMillimetre))),
    ];

    /// <summary>The area of a product's tiles in one repeat, in square inches.</summary>
    public static double Area(Bond bond, int product = 0) =>
        bond.Motif.Where(tile => tile.Product == product).Sum(tile => (double)tile.Shape.DoubledArea / 2) / ((double)Length.StepsPerInch * Length.StepsPerInch);

    public static double Repeat(Bond bond) => (double)bond.Lattice.Area / ((double)Length.StepsPerInch * Length.StepsPerInch);

    public static double Share(Bond bond, int product) => Area(bond, product) / Repeat(bond);
}
