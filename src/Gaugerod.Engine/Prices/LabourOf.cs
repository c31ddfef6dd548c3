namespace Gaugerod.Engine.Prices;

/// <summary>What of a plan work is done to.</summary>
public enum LabourOf
{
    /// <summary>The field that tile covers.</summary>
    TiledArea,

    /// <summary>All pieces that are set.</summary>
    Pieces,

    /// <summary>Pieces that are cut or drilled.</summary>
    CutPieces,

    /// <summary>Pieces with one straight cut.</summary>
    Straight,

    /// <summary>Pieces with two square cuts.</summary>
    Corners,

    /// <summary>Pieces with a corner cut out.</summary>
    Notches,

    /// <summary>Pieces with something cut out of one side.</summary>
    Slots,

    /// <summary>Pieces with a round hole.</summary>
    Holes,

    /// <summary>Pieces whose cut is not parallel to their side.</summary>
    Tapers,

    /// <summary>Pieces of any other shape.</summary>
    Shapes,

    /// <summary>Straight cuts, by their length.</summary>
    CutLength,

    /// <summary>Joints between pieces, by their length.</summary>
    Joints,

    /// <summary>Trim, by the length of its lines.</summary>
    Trim,

    /// <summary>Pieces of trim that are set, corner pieces among them.</summary>
    TrimPieces,

    /// <summary>Mitred ends of trim.</summary>
    Mitres,

    /// <summary>Soft joints, by their length: at edges and changes of plane, and across fields.</summary>
    SoftJoints,

    /// <summary>Board, by its area, linings of niches among it.</summary>
    BoardArea,
}

/// <summary>How much of one kind there is in one run.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Run">The run; empty for what is of none.</param>
/// <param name="Amount">Square metres, metres, or how many.</param>
public readonly record struct LabourAmount(LabourOf Kind, string Run, decimal Amount)
{
    /// <summary>Whether a kind is measured in a unit: areas by the square, lengths by the length, all else by the piece.</summary>
    public static bool IsIn(LabourOf kind, PriceUnit unit) => kind switch
    {
        LabourOf.TiledArea or LabourOf.BoardArea => PriceUnits.IsArea(unit),
        LabourOf.CutLength or LabourOf.Joints or LabourOf.Trim or LabourOf.SoftJoints => PriceUnits.IsLength(unit),
        _ => unit == PriceUnit.Each,
    };
}
