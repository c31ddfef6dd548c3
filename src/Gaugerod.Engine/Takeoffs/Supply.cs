namespace Gaugerod.Engine.Takeoffs;

/// <summary>What something bought by the pack is for.</summary>
public enum SupplyKind
{
    /// <summary>Sets tile.</summary>
    Mortar,

    /// <summary>Fills the joints between tiles.</summary>
    Grout,
}

/// <summary>Something bought by the pack that is mixed or pressed out: what it makes is known of a pack, not of a tile.</summary>
/// <param name="Name">Its name, unique in the job.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Pack">What a pack is called, such as <c>50 lb bag</c>.</param>
/// <param name="Makes">What a pack makes, ready to use, in litres; more than zero.</param>
public sealed record Supply(string Name, SupplyKind Kind, string Pack, double Makes)
{
    /// <summary>What stays in the bucket and on the trowel, in hundredths of what is used, 0 to 100. Default none: nobody's figure but the setter's own is worth much.</summary>
    public int LossPercent { get; init; }
}

/// <summary>What one run takes of a supply.</summary>
/// <param name="Run">The run.</param>
/// <param name="Litres">How much, without loss.</param>
/// <param name="How">How it was reckoned, in words.</param>
public sealed record SupplyUse(string Run, double Litres, string How);

/// <summary>A supply to buy.</summary>
/// <param name="Supply">What.</param>
/// <param name="Uses">What each run takes; one or more.</param>
public sealed record SupplyLine(Supply Supply, Plane.Sequence<SupplyUse> Uses)
{
    // A pack that is filled to the last drop is not followed by one for a rounding error.
    private const double Nothing = 1e-9;

    /// <summary>All that is used, loss among it, in litres.</summary>
    public double Litres => Uses.Sum(use => use.Litres) * (100 + Supply.LossPercent) / 100;

    /// <summary>Whole packs.</summary>
    public int Packs => (int)Math.Ceiling((Litres / Supply.Makes) - Nothing);

    /// <summary>What is left of them, in litres.</summary>
    public double Over => Math.Max(0, (Packs * Supply.Makes) - Litres);
}
