namespace Gaugerod.Engine.Prices;

/// <summary>What a price is for.</summary>
public enum PriceUnit
{
    /// <summary>A box of tiles.</summary>
    Box,

    /// <summary>One of it: a tile, a bar, a piece.</summary>
    Each,

    /// <summary>A square metre.</summary>
    SquareMetre,

    /// <summary>A square foot.</summary>
    SquareFoot,

    /// <summary>A metre.</summary>
    Metre,

    /// <summary>A foot.</summary>
    Foot,

    /// <summary>An hour of work.</summary>
    Hour,

    /// <summary>A pack: a bag, a bucket, a tube.</summary>
    Pack,

    /// <summary>All of it for one price.</summary>
    Lump,
}
