using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>Why tiles do not make the bond asked for.</summary>
/// <param name="Found">What was found.</param>
/// <param name="Expected">What the bond needs.</param>
/// <param name="Nearest">The nearest that would do; null when there is none.</param>
internal sealed record BondRefusal(string Found, string Expected, string? Nearest);

/// <summary>What came of the wish for a bond: the bond, or why there is none.</summary>
internal readonly record struct BondMaking(Bond? Bond, BondRefusal? Refusal)
{
    public static implicit operator BondMaking(Bond bond) => new(bond, null);

    public static implicit operator BondMaking(BondRefusal refusal) => new(null, refusal);
}

/// <summary>The tiles a bond is made of, and the joint between them.</summary>
/// <param name="Products">The run's own product, then those the bond names.</param>
/// <param name="Range">The joint widths allowed.</param>
/// <param name="Joint">The one laid.</param>
/// <param name="Tape">How lengths are said.</param>
internal sealed record BondTiles(Sequence<Product> Products, JointRange Range, Length Joint, Tape Tape)
{
    /// <summary>
    /// How far tiles may miss the size that a bond needs: 0.4 mm (1/64 in), which the joint takes up unseen. Common practice,
    /// no source.
    /// </summary>
    public static readonly Length Slack = Length.FromInches(0, 1, 64);

    public Product Tile => Products[0];

    public string Say(Length length) => LengthText.Finer(length, Tape);

    public static string Say(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether a joint that comes of the tiles' own sizes is within what is allowed. Tiles touch only where they may.</summary>
    public bool Allows(Length joint) =>
        joint >= Length.Min(Range.Least, Length.FromSteps(1)) && joint >= Range.Least - Slack && joint <= Range.Most + Slack;

    /// <summary>Whether a length is what it should be, near enough.</summary>
    public static bool Fits(Length length, Length should) => (length - should).Abs() <= Slack;
}
