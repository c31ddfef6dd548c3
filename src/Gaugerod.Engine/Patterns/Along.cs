using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Patterns;

/// <summary>Lines along which tiles' sides are to lie. Where no tile is cut there a line may still run within a joint, and the tiles stand off it.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Mark">Nearer than this a tile's side lies on one.</param>
/// <param name="Joint">The joint's width.</param>
internal sealed record Along(FieldLine[] Lines, double Mark, double Joint)
{
    /// <summary>Whether the tiles beside a line, none of which it cuts, leave more than a mark between themselves and it.</summary>
    public bool LeavesAGap(in Shifts shifts)
    {
        foreach (var line in Lines)
        {
            var (moved, on) = (
                (shifts.Y * line.Line.AlongX) - (shifts.X * line.Line.AlongY),
                (shifts.X * line.Line.AlongX) + (shifts.Y * line.Line.AlongY));
            foreach (ref readonly var near in line.Between(-PointsOnLine.Tolerance - moved, Joint + PointsOnLine.Tolerance - moved))
            {
                var begins = line.Spans[near.Tile].Least + near.Inwards + moved;
                if (begins <= Mark + PointsOnLine.Tolerance || begins > Joint + PointsOnLine.Tolerance) continue;
                var at = (near.X * line.Line.AlongX) + (near.Y * line.Line.AlongY) + on;
                if (line.Alongs[near.Tile].Most + at > PatternCutter.Hair && line.Alongs[near.Tile].Least + at < line.Line.Length - PatternCutter.Hair) return true;
            }
        }

        return false;
    }
}
