using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Prices;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Tolerances;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What the sheets are printed on.</summary>
public enum Paper
{
    /// <summary>210 by 297 mm.</summary>
    A4,

    /// <summary>8 1/2 by 11 in.</summary>
    Letter,
}

/// <summary>How a bond carries through the corners of a run.</summary>
public enum Corners
{
    /// <summary>One x offset through the corner, so that an offcut can go on along the next wall.</summary>
    Wrap,

    /// <summary>Each face has its own x offset; courses still carry at one height.</summary>
    Restart,
}

/// <summary>Faces tiled as one, left to right as seen from inside the room.</summary>
/// <param name="Name">Its name, unique in the job.</param>
/// <param name="Product">The product's name.</param>
/// <param name="Faces">The faces' names, left to right.</param>
/// <param name="Bond">The bond.</param>
/// <param name="Corners">Whether the bond wraps or restarts.</param>
/// <param name="Joint">The joint width allowed.</param>
/// <param name="Through">The face seen from the entrance, whose tile runs into its inside corners; null for the middle one.</param>
/// <param name="Limits">What is allowed.</param>
/// <param name="Wants">What is asked for.</param>
/// <param name="Order">What placings are compared by, the most important first; every criterion once.</param>
public sealed record RunRequest(
    string Name, string Product, Sequence<string> Faces, BondRequest Bond, Corners Corners, JointRange Joint,
    string? Through, Limits Limits, Sequence<Want> Wants, Sequence<Criterion> Order)
{
    /// <summary>A place chosen by hand; null, the default, for the best that the search finds.</summary>
    public HeldPlace? Place { get; init; }

    /// <summary>What it is set and grouted with; null, the default, where that is not reckoned.</summary>
    public SettingRequest? Setting { get; init; }

    /// <summary>How far soft joints across its fields may stand apart; null, the default, for what is published for a shaded room.</summary>
    public MovementRequest? Movement { get; init; }

    /// <summary>What is set already, face by face, and where it came to stand. Default nothing.</summary>
    public Sequence<SetSoFar> Set { get; init; } = [];
}

/// <summary>Everything for one client at one place, as far as it was measured and asked for.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Note">What the person who made it wants said on every sheet; null for nothing.</param>
/// <param name="Tape">The tape it is measured and shown with.</param>
/// <param name="Paper">What its sheets are printed on.</param>
/// <param name="EdgeJoint">The soft joint at edges that state none of their own.</param>
/// <param name="Products">The tiles.</param>
/// <param name="Faces">The faces.</param>
/// <param name="Runs">The runs.</param>
public sealed record Job(
    string Name, string? Note, Tape Tape, Paper Paper, Length EdgeJoint,
    Sequence<Product> Products, Sequence<Face> Faces, Sequence<RunRequest> Runs)
{
    /// <summary>Where it lies, so whose published limits hold; null, the default, for the North American ones as far as they are held for all.</summary>
    public Region? Region { get; init; }

    /// <summary>The trims that edges and bands may name. Default none.</summary>
    public Sequence<TrimProduct> Trims { get; init; } = [];

    /// <summary>The boards that faces may name. Default none.</summary>
    public Sequence<BoardProduct> Boards { get; init; } = [];

    /// <summary>What is bought by the pack and that runs may name. Default none.</summary>
    public Sequence<Supply> Supplies { get; init; } = [];

    /// <summary>Curbs and benches that are built up solid, and of what. Default none.</summary>
    public Sequence<FillRequest> Fills { get; init; } = [];

    /// <summary>What is asked of the order of work; null, the default, for none.</summary>
    public WorkRequest? Work { get; init; }

    /// <summary>What is asked of the cutting; default the usual.</summary>
    public CuttingAims Cutting { get; init; } = CuttingAims.Usual;

    /// <summary>How far off readings, lines and joints may be; null, the default, for the usual.</summary>
    public SettingErrors? Errors { get; init; }

    /// <summary>The setter's prices and rates; null, the default, where nothing is priced.</summary>
    public PriceRequest? Prices { get; init; }

    /// <summary>What the setter notes for the hand-over; null, the default, where none is asked for.</summary>
    public HandOverRequest? HandOver { get; init; }

    /// <summary>What is to be said of how the job was read; the plan's findings carry it on. Default nothing.</summary>
    public Sequence<Finding> Remarks { get; init; } = [];
}
