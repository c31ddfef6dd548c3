using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>Why tiles do not make the bond asked for.</summary>
/// <param name="Found">What was found.</param>
/// <param name="Expected">What the bond needs.</param>
/// <param name="Offers">What might do, the nearest first. Only one that makes the bond is ever said.</param>
internal sealed record BondRefusal(string Found, string Expected, IEnumerable<BondOffer> Offers)
{
    /// <summary>The first of the offers that makes the bond; null when there is none, or none was looked for.</summary>
    public BondOffer? Offer { get; init; }

    /// <summary>The nearest that would do, in words; null when there is none.</summary>
    public string? Nearest => Offer?.Words;
}

/// <summary>What might make the bond in place of what was asked for.</summary>
/// <param name="Words">What to change, in words.</param>
internal sealed record BondOffer(string Words)
{
    /// <summary>Another bond to ask for; null where only tiles change.</summary>
    public BondRequest? Request { get; init; }

    /// <summary>Other tiles; null where only the bond changes.</summary>
    public BondTiles? Tiles { get; init; }
}

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

    /// <summary>The tiles with other sides of one of them: wherever its name stands, it is the same tile.</summary>
    /// <param name="index">Which of the products.</param>
    /// <param name="width">Its width; null to leave it.</param>
    /// <param name="height">Its height; null to leave it.</param>
    public BondTiles Sized(int index, Length? width, Length? height) => this with
    {
        Products = Products.Select(product => string.Equals(product.Name, Products[index].Name, StringComparison.Ordinal)
            ? product with { Width = width ?? product.Width, Height = height ?? product.Height }
            : product).ToSequence(),
    };

    /// <summary>The offer of other sides of one of the tiles.</summary>
    public BondOffer Offer(string words, int index, Length? width, Length? height) => new(words) { Tiles = Sized(index, width, height) };

    /// <summary>Whether every tile is of a size that tiles have.</summary>
    public bool CanBeHad => Products.All(product => Length.Min(product.Width, product.Height) >= Product.LeastSide && Length.Max(product.Width, product.Height) <= Product.MostSide);

    /// <summary>The last length below one that can be said finely: a hundredth of a millimetre, 1/128 in.</summary>
    public Length Under(Length length) => Fine.Down(length - Length.FromSteps(1));

    /// <summary>The first mark of the tape above a length.</summary>
    public Length Over(Length length) => Tape.Down(length) + Tape.Mark;

    private Tape Fine => new(Tape.Unit, Tape.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 128) : Length.FromSteps(32));

    public static string Say(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether a joint that comes of the tiles' own sizes is within what is allowed. Tiles touch only where they may.</summary>
    public bool Allows(Length joint) =>
        joint >= Length.Min(Range.Least, Length.FromSteps(1)) && joint >= Range.Least - Slack && joint <= Range.Most + Slack;

    /// <summary>Whether a length is what it should be, near enough.</summary>
    public static bool Fits(Length length, Length should) => (length - should).Abs() <= Slack;
}
