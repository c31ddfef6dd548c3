using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Planning;

/// <summary>The course below a level line that is cut at its foot: it is set last, when what holds up the one above it is off.</summary>
public static class HangingCourse
{
    /// <summary>Whether a piece is of it.</summary>
    /// <param name="run">The run.</param>
    /// <param name="line">A level line of the piece's face.</param>
    /// <param name="piece">The piece.</param>
    public static bool Holds(RunPlan run, SnapLine line, Piece piece)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(piece);
        var reach = run.Best.Placing.Joint + run.Best.Placing.Joint;

        // A floor that falls is no wall to screw a batten to.
        return piece.Frame is null && piece.Cell.Top <= line.At && line.At - piece.Cell.Top <= reach && piece.Cuts.Any(cut => cut.Away == TileSide.Bottom);
    }
}
