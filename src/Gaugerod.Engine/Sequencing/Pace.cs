using Gaugerod.Plane;

namespace Gaugerod.Engine.Sequencing;

/// <summary>What work is counted by.</summary>
public enum PaceUnit
{
    /// <summary>Nothing: each such task takes so many minutes.</summary>
    Minutes,

    /// <summary>Square metres an hour.</summary>
    SquareMetres,

    /// <summary>Metres an hour.</summary>
    Metres,

    /// <summary>Pieces an hour: tiles, pieces of trim.</summary>
    Pieces,

    /// <summary>Pieces that are cut, an hour; one with two cuts counts once.</summary>
    Cuts,

    /// <summary>Lines and rods an hour.</summary>
    Lines,
}

/// <summary>How quickly the user works, by his own figure.</summary>
/// <param name="Unit">By what.</param>
/// <param name="Amount">How many an hour, or minutes for each task; more than zero.</param>
public readonly record struct Pace(PaceUnit Unit, double Amount)
{
    /// <summary>The minutes that an amount takes, rounded up; of minutes the amount does not count.</summary>
    internal int Minutes(double amount) => Unit == PaceUnit.Minutes ? (int)Amount : (int)Math.Ceiling(Math.Min((amount / Amount * 60) - 1e-9, int.MaxValue / 4));
}

/// <summary>How much there is to do of a task, by one of the things it may be counted by.</summary>
/// <param name="Unit">By what.</param>
/// <param name="Amount">How much: square metres, metres or a number.</param>
public readonly record struct WorkAmount(PaceUnit Unit, double Amount);

/// <summary>What each kind of work may be counted by.</summary>
public static class PaceUnits
{
    /// <summary>The units, the most usual first.</summary>
    public static Sequence<PaceUnit> Of(WorkKind kind) => kind switch
    {
        WorkKind.Setting => [PaceUnit.SquareMetres, PaceUnit.Pieces],
        WorkKind.Returns or WorkKind.SoftJoints or WorkKind.Seams => [PaceUnit.Metres, PaceUnit.Minutes],
        WorkKind.Trims => [PaceUnit.Pieces, PaceUnit.Metres, PaceUnit.Minutes],
        WorkKind.Grouting => [PaceUnit.SquareMetres, PaceUnit.Metres, PaceUnit.Minutes],
        WorkKind.Lines => [PaceUnit.Lines, PaceUnit.Minutes],
        WorkKind.TearOut or WorkKind.Boards or WorkKind.Levelling or WorkKind.Bed or WorkKind.Primer or WorkKind.Membrane or WorkKind.FloorCover or WorkKind.Sealer => [PaceUnit.SquareMetres, PaceUnit.Minutes],
        _ => [PaceUnit.Minutes],
    };
}
