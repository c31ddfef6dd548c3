namespace Gaugerod.Engine.Sequencing;

/// <summary>What is done, in the order in which the trade does it.</summary>
public enum WorkKind
{
    /// <summary>What the user adds.</summary>
    Own,

    /// <summary>What is made elsewhere comes in; nobody works.</summary>
    Arrival,

    /// <summary>Floors, fixtures and ways are covered.</summary>
    Protection,

    /// <summary>What was there is taken out.</summary>
    TearOut,

    /// <summary>Boards are put up or laid.</summary>
    Boards,

    /// <summary>Their seams are taped and filled.</summary>
    Seams,

    /// <summary>A face is brought into a plane.</summary>
    Levelling,

    /// <summary>A bed is laid to falls.</summary>
    Bed,

    /// <summary>Primer is brushed on.</summary>
    Primer,

    /// <summary>A coat of membrane is put on.</summary>
    Membrane,

    /// <summary>The drain is plugged and water let in.</summary>
    FloodTest,

    /// <summary>Lines are snapped and rods marked.</summary>
    Lines,

    /// <summary>Tile is set.</summary>
    Setting,

    /// <summary>The returns of niches and windows are set.</summary>
    Returns,

    /// <summary>A floor that is tiled is covered.</summary>
    FloorCover,

    /// <summary>Trims are set.</summary>
    Trims,

    /// <summary>Joints are grouted.</summary>
    Grouting,

    /// <summary>Soft joints are sealed.</summary>
    SoftJoints,

    /// <summary>Sealer is put on.</summary>
    Sealer,

    /// <summary>Covers come off, the care sheet is gone through with the client.</summary>
    HandOver,

    /// <summary>Water may run; nobody works.</summary>
    FirstUse,
}
