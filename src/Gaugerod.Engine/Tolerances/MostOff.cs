using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tolerances;

/// <summary>
/// Says by how much at the most cuts at each edge of a face may come out smaller than planned, wherever the bond stands: with as many
/// tiles between the snapped line and the cut as there can be. In a plan there are as many, or up to two fewer: the line may stand anywhere in a repeat, and so may the cut tile.
/// </summary>
internal static class MostOff
{
    /// <summary>One for each of the face's edges.</summary>
    /// <param name="face">The face.</param>
    /// <param name="tile">The tile as it is laid: across and up.</param>
    /// <param name="joint">The joint.</param>
    /// <param name="stack">What adds up.</param>
    public static Sequence<Length> Of(FinishedFace face, (Length Across, Length Up) tile, Length joint, ErrorStack stack)
    {
        var bounds = face.Field.Outer.Bounds;
        var middle = Length.FromSteps((bounds.Left.Steps + bounds.Right.Steps) / 2);
        // The level line is the first course above a lower edge: the lowest, or one above it where no course stands on that.
        var lower = StartingLines.LowerEdges(face).Select(edge => Length.FromSteps(edge.Top)).DefaultIfEmpty(bounds.Bottom).ToList();
        var (lowest, highest) = (lower[0], lower.Find(top => bounds.Top - top > tile.Up + joint) is var top && top > lower[0] ? top : lower[0]);
        return face.Edges.Select(edge =>
        {
            var tiles = EdgeClasses.Of(edge) switch
            {
                // The plumb line is the tile's side nearest to the middle, and the middle of a tile that is cut lies within half a tile of the edge.
                EdgeClass.Side => Most(Length.Max((edge.From.X - middle).Abs(), (edge.To.X - middle).Abs()) + Half(tile.Across) + Half(tile.Across + joint), tile.Across + joint),
                EdgeClass.Level => Most(Length.Max(Length.Max(edge.From.Y, edge.To.Y) - lowest, highest + tile.Up + joint - Length.Min(edge.From.Y, edge.To.Y)) + Half(tile.Up), tile.Up + joint),
                _ => 0,
            };
            return stack.AtWorst(tiles, tiles + 1);
        }).ToSequence();
    }

    private static int Most(Length way, Length repeat) => (int)Grid.FloorDiv(Length.Max(way, Length.Zero).Steps, repeat.Steps);

    private static Length Half(Length of) => Length.FromSteps((of.Steps + 1) / 2);
}
