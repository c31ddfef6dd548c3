namespace Gaugerod.Engine.Takeoffs;

/// <summary>What something bought by the pack is for.</summary>
public enum SupplyKind
{
    /// <summary>Sets tile.</summary>
    Mortar,

    /// <summary>Fills the joints between tiles.</summary>
    Grout,

    /// <summary>Fills the soft joints at edges and changes of plane.</summary>
    Sealant,

    /// <summary>A round cord pressed into a soft joint before the sealant.</summary>
    Backer,

    /// <summary>Rolled or brushed on, and watertight when it is dry.</summary>
    Membrane,

    /// <summary>Laid into the membrane along corners and seams.</summary>
    Band,

    /// <summary>Brushed or rolled on before what is to stick.</summary>
    Primer,

    /// <summary>Wiped on when the joints are dry.</summary>
    Sealer,

    /// <summary>Fills low places and levels.</summary>
    Filler,

    /// <summary>Keeps the joints open while the mortar is soft.</summary>
    Spacers,

    /// <summary>Holds two tiles flush at a joint, and is broken off.</summary>
    Clips,

    /// <summary>Pulls a clip tight, and is used again.</summary>
    Wedges,

    /// <summary>Holds boards.</summary>
    Screws,

    /// <summary>A mesh bedded over the seams of boards.</summary>
    Tape,

    /// <summary>Carries the first whole course while the mortar is soft: a straight piece of wood or metal.</summary>
    Batten,

    /// <summary>Curbs and benches are built of it: blocks, bricks, mortar.</summary>
    Masonry,

    /// <summary>A bed is made of it.</summary>
    Mix,
}

/// <summary>What a supply is measured in.</summary>
public enum SupplyMeasure
{
    /// <summary>Litres.</summary>
    Volume,

    /// <summary>Metres.</summary>
    Length,

    /// <summary>Square metres.</summary>
    Area,

    /// <summary>Pieces.</summary>
    Count,
}

/// <summary>Something bought by the pack: what a pack makes is known of it, not of the tile.</summary>
/// <param name="Name">Its name, unique in the job.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Pack">What a pack is called, such as <c>50 lb bag</c>.</param>
/// <param name="Makes">What a pack makes, ready to use, in litres, metres, square metres or pieces, as its kind is measured; more than zero.</param>
public sealed record Supply(string Name, SupplyKind Kind, string Pack, double Makes)
{
    /// <summary>What stays in the bucket and on the trowel, in hundredths of what is used, 0 to 100. Default none: nobody's figure but the setter's own is worth much.</summary>
    public int LossPercent { get; init; }

    /// <summary>How thick a membrane goes on; null of anything else.</summary>
    public Coat? Coat { get; init; }

    /// <summary>How long a mix of it may be used, in minutes, 1 to 1440; null, the default, where that is not known.</summary>
    public int? PotLife { get; init; }

    /// <summary>How long it takes tile once it is combed, in minutes, 1 to 1440; null, the default, where that is not known.</summary>
    public int? OpenTime { get; init; }

    /// <summary>How long it holds up what comes next, by its bag or its data sheet. Default nothing.</summary>
    public Plane.Sequence<HoldTime> Holds { get; init; } = [];

    /// <summary>What it is measured in.</summary>
    public SupplyMeasure Measure => MeasureOf(Kind);

    /// <summary>What a kind is measured in.</summary>
    public static SupplyMeasure MeasureOf(SupplyKind kind) => kind switch
    {
        SupplyKind.Backer or SupplyKind.Band or SupplyKind.Tape or SupplyKind.Batten => SupplyMeasure.Length,
        SupplyKind.Primer or SupplyKind.Sealer => SupplyMeasure.Area,
        SupplyKind.Spacers or SupplyKind.Clips or SupplyKind.Wedges or SupplyKind.Screws => SupplyMeasure.Count,
        _ => SupplyMeasure.Volume,
    };
}

/// <summary>How thick a membrane goes on, all coats together.</summary>
/// <param name="Wet">Wet, in mm; more than zero.</param>
public sealed record Coat(double Wet)
{
    /// <summary>How thick it is when dry, in mm; null where the maker says what a pack covers.</summary>
    public double? Dry { get; init; }

    /// <summary>What dries to a film.</summary>
    /// <param name="dry">The film, in mm; more than zero.</param>
    /// <param name="solids">What of it does not dry away, in hundredths of its volume, 1 to 100.</param>
    public static Coat DriesTo(double dry, int solids) => new(Film.Wet(dry, solids / 100.0)) { Dry = dry };
}

/// <summary>What one run or face takes of a supply.</summary>
/// <param name="Where">The run, or the face.</param>
/// <param name="Amount">How much, without loss, in what the supply is measured in.</param>
/// <param name="How">How it was reckoned, in words.</param>
public sealed record SupplyUse(string Where, double Amount, string How)
{
    /// <summary>Whether it goes on a face, under its tile, and is none of what a run of that name is set with. Default not.</summary>
    public bool IsUnder { get; init; }

    /// <summary>The straight pieces that it is needed in; default none, where it is not cut to length.</summary>
    public Plane.Sequence<Plane.Measure.Length> Pieces { get; init; } = [];
}

/// <summary>A supply to buy.</summary>
/// <param name="Supply">What.</param>
/// <param name="Uses">What is taken where; one or more.</param>
public sealed record SupplyLine(Supply Supply, Plane.Sequence<SupplyUse> Uses)
{
    // A pack that is filled to the last drop is not followed by one for a rounding error.
    private const double Nothing = 1e-9;

    /// <summary>How many lengths the pieces are cut from, where it comes in lengths; null, the default, where it is not cut.</summary>
    public int? Lengths { get; init; }

    /// <summary>All that is used, loss among it, in what the supply is measured in.</summary>
    public double Amount => Uses.Sum(use => use.Amount) * (100 + Supply.LossPercent) / 100;

    /// <summary>Whole packs; of what is cut to length no fewer than its pieces take.</summary>
    public int Packs => Math.Max(Lengths ?? 0, (int)Math.Ceiling((Amount / Supply.Makes) - Nothing));

    /// <summary>What is left of them.</summary>
    public double Over => Math.Max(0, (Packs * Supply.Makes) - Amount);
}
