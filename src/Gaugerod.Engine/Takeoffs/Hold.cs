namespace Gaugerod.Engine.Takeoffs;

/// <summary>What has to dry, cure or stand before work goes on. It is elapsed time: it goes on by night and over days off.</summary>
public enum HoldKind
{
    /// <summary>Filled seams, before what comes on them.</summary>
    Seams,

    /// <summary>Levelling, before what comes on it.</summary>
    Levelling,

    /// <summary>A bed, before what comes on it.</summary>
    Bed,

    /// <summary>Primer, before what comes on it.</summary>
    Primer,

    /// <summary>A coat of membrane, before the next one and before tile.</summary>
    Coat,

    /// <summary>Membrane, before it is tested with water.</summary>
    Test,

    /// <summary>How long the water of a test stands.</summary>
    Flood,

    /// <summary>Mortar, before what holds tile up is taken off.</summary>
    Support,

    /// <summary>Mortar, before a floor is walked on.</summary>
    Walk,

    /// <summary>Mortar, before grout.</summary>
    Grout,

    /// <summary>Grout, before soft joints.</summary>
    Soft,

    /// <summary>Grout, before sealer.</summary>
    Sealer,

    /// <summary>Grout, sealant or sealer, before water.</summary>
    Water,

    /// <summary>What the user's own task asks.</summary>
    Own,

    /// <summary>What is made elsewhere, from its order or template on.</summary>
    Lead,
}

/// <summary>How long a hold of one kind is.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Minutes">How long; 0 to 365 days.</param>
public readonly record struct HoldTime(HoldKind Kind, int Minutes)
{
    /// <summary>None is longer.</summary>
    public const int Most = 365 * 24 * 60;
}
