using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>What a trim is.</summary>
public enum TrimKind
{
    /// <summary>A tile with one rounded edge.</summary>
    Bullnose,

    /// <summary>A narrow rounded strip on an outer edge.</summary>
    QuarterRound,

    /// <summary>A hollow strip in an inner corner.</summary>
    Cove,

    /// <summary>A bar of metal or plastic.</summary>
    Profile,

    /// <summary>A flat or rounded strip between two fields, or on top of one.</summary>
    Liner,

    /// <summary>No trim: the edge of the field's tiles is mitred.</summary>
    MitredEdge,

    /// <summary>No trim: the edge of the field's tiles is cut back behind and eased, where none is to be had.</summary>
    EasedEdge,
}

/// <summary>A trim as it is bought. Sizes are the real ones.</summary>
/// <param name="Name">Its name, unique among the job's trims.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Stock">How long a piece or a bar comes.</param>
/// <param name="Width">What it takes of the face.</param>
/// <param name="Joint">The joint between two pieces.</param>
/// <param name="Least">The shortest piece that is set.</param>
public sealed record TrimProduct(string Name, TrimKind Kind, Length Stock, Length Width, Length Joint, Length Least)
{
    /// <summary>Whether nothing is bought for it: it is worked on the tiles themselves.</summary>
    public bool IsWorked => Kind is TrimKind.MitredEdge or TrimKind.EasedEdge;

    /// <summary>Its thickness, which a mitre over a corner of two faces takes; default zero for unknown.</summary>
    public Length Thickness { get; init; }

    /// <summary>What the saw turns to dust.</summary>
    public Length Kerf { get; init; }

    /// <summary>Whether it is bought by the bar, whose ends are sawn anyway, and not by the piece.</summary>
    public bool ByBar { get; init; }

    /// <summary>Pieces or bars allowed for breakage beside the trim plan; default none.</summary>
    public int Breakage { get; init; }

    /// <summary>Pieces or bars to leave with the client; default none.</summary>
    public int Spares { get; init; }

    /// <summary>A flat share on top of everything, in hundredths, only because it was asked for; default none.</summary>
    public int? FlatPercent { get; init; }

    /// <summary>How far a corner piece for a corner that points out of the field reaches along both its lines; null where none is to be had.</summary>
    public Length? Outside { get; init; }

    /// <summary>The same for a corner that points into the field.</summary>
    public Length? Inside { get; init; }

    /// <summary>How long a piece with a finished end is, for where a line stops in the open; null where none is to be had.</summary>
    public Length? Stop { get; init; }
}
