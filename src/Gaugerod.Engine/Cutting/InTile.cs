using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Cutting;

/// <summary>From how a piece stands on the wall to how it lies in its tile, the tile lying on its width.</summary>
internal static class InTile
{
    // Counter-clockwise, so that a quarter turn brings each side to the next.
    private static readonly Sequence<TileSide> Around = [TileSide.Left, TileSide.Bottom, TileSide.Right, TileSide.Top];

    /// <summary>
    /// How many quarters counter-clockwise bring a tile as it is set on the wall back to lying on its width: none when it
    /// is laid level; three when it stands upright, since a tile is stood up with its left end down. A square tile that may be
    /// turned any way is always taken to lie level, and a tile that is no rectangle as its bond lays it.
    /// </summary>
    /// <exception cref="ArgumentException">The cell is no tile of this product, either way up.</exception>
    public static int Quarters(Product product, Piece piece)
    {
        var cell = piece.Cell;
        if (!piece.OfRectangle) return 0;
        if (product.Width == product.Height && !product.TurnsAQuarter && piece.Lies == Angle.FromThousandths(Angle.QuarterTurn)) return 3;
        if (cell.Width == product.Width && cell.Height == product.Height) return 0;
        if (cell.Width == product.Height && cell.Height == product.Width) return 3;
        throw new ArgumentException($"A cell of {cell.Width} by {cell.Height} is not a tile of {product.Width} by {product.Height}.", nameof(piece));
    }

    /// <summary>Where a side comes to lie after so many quarters counter-clockwise.</summary>
    public static TileSide Turned(TileSide side, int quarters) => Around[(Place(side) + quarters) % 4];

    /// <summary>How many quarters counter-clockwise bring one side to where another was.</summary>
    public static int Between(TileSide from, TileSide to) => (Place(to) - Place(from) + 4) % 4;

    /// <summary>The side across the tile.</summary>
    public static TileSide Opposite(TileSide side) => Turned(side, 2);

    /// <summary>Whether a distance from this side is measured along the width, not the height.</summary>
    public static bool IsAcross(TileSide side) => side is TileSide.Left or TileSide.Right;

    /// <summary>The piece in its tile, turned so many quarters counter-clockwise from how it stands on the wall.</summary>
    public static PieceInTile Place(Piece piece, int quarters)
    {
        var (cell, points) = (piece.Cell, piece.Upright.Points);
        var turned = new Point[points.Count];
        for (var i = 0; i < turned.Length; i++)
        {
            var (x, y) = (points[i].X - cell.Left, points[i].Y - cell.Bottom);
            turned[i] = quarters switch
            {
                0 => new(x, y),
                1 => new(cell.Height - y, x),
                2 => new(cell.Width - x, cell.Height - y),
                3 => new(y, cell.Width - x),
                _ => throw new ArgumentOutOfRangeException(nameof(quarters), quarters, "Quarters go from 0 to 3."),
            };
        }

        return new(piece.Id, new(Sequence.Of<Point>(turned)), quarters);
    }

    /// <summary>How much of the tile the piece takes, from the side it keeps to its furthest point.</summary>
    public static Length Need(Piece piece, CutMark cut)
    {
        var (cell, need) = (piece.Cell, cut.Most);
        foreach (var p in piece.Upright.Points.AsSpan())
        {
            var reach = cut.Away switch
            {
                TileSide.Left => cell.Right - p.X,
                TileSide.Right => p.X - cell.Left,
                TileSide.Bottom => cell.Top - p.Y,
                _ => p.Y - cell.Bottom,
            };
            need = Length.Max(need, reach);
        }

        return need;
    }

    private static int Place(TileSide side) => side switch
    {
        TileSide.Left => 0,
        TileSide.Bottom => 1,
        TileSide.Right => 2,
        _ => 3,
    };
}
