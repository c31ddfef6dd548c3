using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>Pieces as they would come off a wall, in millimetres.</summary>
internal static class Make
{
    public static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    public static Product Tile(long width, long height, Turning turning = Turning.Free, long kerf = 3) =>
        new("tile", Mm(width), Mm(height), Mm(9)) { Turning = turning, Kerf = Mm(kerf) };

    /// <summary>One straight cut; so much is kept, measured from the side across from it.</summary>
    public static Piece Straight(Product tile, string id, TileSide away, Length kept, bool upright = false) =>
        OneCut(tile, id, PieceKind.Straight, away, kept, kept, upright);

    public static Piece Taper(Product tile, string id, TileSide away, Length first, Length last, bool upright = false) =>
        OneCut(tile, id, PieceKind.Taper, away, first, last, upright);

    public static Piece Whole(Product tile, string id, bool upright = false)
    {
        var cell = Cell(tile, id, upright);
        return new(id, PieceKind.Full, "wall", 1, 1, tile.Name, cell, Ring.Of(cell), [], Length.Min(tile.Width, tile.Height), []);
    }

    /// <summary>Two square cuts; so much is kept from the left and so much from below.</summary>
    public static Piece Corner(Product tile, string id, Length width, Length height, PieceKind kind = PieceKind.Corner)
    {
        var cell = Cell(tile, id, upright: false);
        var kept = new Box(cell.Left, cell.Bottom, cell.Left + width, cell.Bottom + height);
        return new(id, kind, "wall", 1, 1, tile.Name, cell, Ring.Of(kept), [], Length.Min(width, height),
        [
            new(TileSide.Right, width, width, Length.Zero, height, "corner"),
            new(TileSide.Top, height, height, Length.Zero, width, "ceiling"),
        ]);
    }

    private static Piece OneCut(Product tile, string id, PieceKind kind, TileSide away, Length first, Length last, bool upright)
    {
        var c = Cell(tile, id, upright);
        Sequence<Point> points = away switch
        {
            TileSide.Right => [new(c.Left, c.Bottom), new(c.Left + first, c.Bottom), new(c.Left + last, c.Top), new(c.Left, c.Top)],
            TileSide.Left => [new(c.Right - first, c.Bottom), new(c.Right, c.Bottom), new(c.Right, c.Top), new(c.Right - last, c.Top)],
            TileSide.Top => [new(c.Left, c.Bottom), new(c.Right, c.Bottom), new(c.Right, c.Bottom + last), new(c.Left, c.Bottom + first)],
            _ => [new(c.Left, c.Top - first), new(c.Right, c.Top - last), new(c.Right, c.Top), new(c.Left, c.Top)],
        };
        var to = away is TileSide.Left or TileSide.Right ? c.Height : c.Width;
        CutMark cut = new(away, first, last, Length.Zero, to, "edge");
        return new(id, kind, "wall", 1, 1, tile.Name, c, new(points), [], cut.Least, [cut]);
    }

    // Each where no other is, so that a place on the wall is never taken for a place in the tile.
    private static Box Cell(Product tile, string id, bool upright)
    {
        var (width, height) = upright ? (tile.Height, tile.Width) : (tile.Width, tile.Height);
        var (left, bottom) = (Mm(17 + (id.Length * 700)), Mm(1900 + (id[^1] * 30)));
        return new(left, bottom, left + width, bottom + height);
    }
}
