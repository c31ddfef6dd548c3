using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>
/// Judges by geometry alone whether pieces may lie in a tile: it turns a piece with its cell, lays the cell on the tile,
/// and looks at the boxes. It knows nothing of pools, ends or needs.
/// </summary>
internal static class CutPlanReferee
{
    /// <summary>The turns this tile allows that lay the piece's cell on the lying tile.</summary>
    public static IEnumerable<int> Turns(Product tile, Piece piece)
    {
        var square = tile.Width == tile.Height;
        var upright = !square && piece.Cell.Width == tile.Height;
        int[] allowed = (tile.Turning, upright) switch
        {
            (Turning.None, false) => [0],
            (Turning.None, true) => [3],
            (Turning.Half, false) => [0, 2],
            (Turning.Half, true) => [1, 3],
            _ => [0, 1, 2, 3],
        };
        return allowed.Where(t => Lie(Ring.Of(piece.Cell), piece.Cell, t).Bounds == new Box(Length.Zero, Length.Zero, tile.Width, tile.Height));
    }

    /// <summary>A ring on the wall, turned about the origin by whole quarters and moved so that the cell's lower left is there.</summary>
    public static Ring Lie(Ring ring, Box cell, int quarters)
    {
        var (points, corners) = (ring.Points.AsEnumerable(), cell.Corners().AsEnumerable());
        for (var i = 0; i < quarters; i++)
        {
            points = points.Select(p => new Point(-p.Y, p.X));
            corners = corners.Select(p => new Point(-p.Y, p.X));
        }

        var box = Box.Around(corners);
        return new([.. points.Select(p => p.Moved(-box.Left, -box.Bottom))]);
    }

    public static bool Apart(Box a, Box b, Length kerf) =>
        a.Right + kerf <= b.Left || b.Right + kerf <= a.Left || a.Top + kerf <= b.Bottom || b.Top + kerf <= a.Bottom;

    /// <summary>Whether there is any way at all to lay both in one tile, each with its factory sides on the tile's.</summary>
    public static bool MayShare(Product tile, Piece a, Piece b) =>
        a.Cuts.Count == 1 && b.Cuts.Count == 1 &&
        Turns(tile, a).Any(s => Turns(tile, b).Any(t => Apart(Lie(a.Outline, a.Cell, s).Bounds, Lie(b.Outline, b.Cell, t).Bounds, tile.Kerf)));
}
