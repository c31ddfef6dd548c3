using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sharing;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Cutting;

/// <summary>A piece on the bench: laid back on its tile's width, with the blank it is cut from.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Quarters">How far it was turned from how it stands on the wall.</param>
/// <param name="At">Its outline in its tile.</param>
/// <param name="Cutout">The blank, and the outline where it is no rectangle.</param>
internal sealed record BenchPiece(Piece Piece, int Quarters, Outline At, Cutout Cutout)
{
    /// <summary>Whether it may share a tile with another: it leaves something that is straight on all sides, or may lie beside one.</summary>
    public bool MayShare(Stock stock) =>
        Piece.Kind != PieceKind.Full && (Cutout.Shape is { } shape ? shape.IsConvex || shape.Inner.Any() : Cutout.Blank.Width < stock.Width || Cutout.Blank.Height < stock.Height);

    /// <summary>Lays a piece on the bench.</summary>
    public static BenchPiece Of(Product product, Piece piece, Stock stock)
    {
        var quarters = InTile.Quarters(product, piece);
        var outline = Outline.Of(InTile.Place(piece, quarters).At);
        var cutout = Cutout.Of(outline, stock);

        // A tile that is no rectangle has no sides for a fence: its pieces share by their outlines or not at all.
        if (!piece.OfRectangle) cutout = new(new(stock.Width, stock.Height, Sides.Left | Sides.Bottom | Sides.Right | Sides.Top), outline);
        return new(piece, quarters, outline, cutout);
    }

    /// <summary>The tile as stock.</summary>
    public static Stock StockOf(Product product, Piece piece)
    {
        var half = product.Turning == Turning.None ? Turns.None : Turns.Half;
        if (piece.OfRectangle) return new(product.Width.Steps, product.Height.Steps, product.Kerf.Steps, product.TurnsAQuarter ? Turns.Quarters : half);
        return new(piece.Cell.Width.Steps, piece.Cell.Height.Steps, product.Kerf.Steps, half != Turns.None && IsAlikeTurned(piece) ? Turns.Half : Turns.None);
    }

    /// <summary>The outline of a tile that is no rectangle, moved to its own lower left corner: pieces of tiles that differ in it never share. Null for a rectangle.</summary>
    public static Ring? TileOf(Piece piece) => piece.OfRectangle ? null : piece.Tile.Moved(-piece.Cell.Left, -piece.Cell.Bottom);

    /// <summary>How the piece is turned and where it lies, when its blank lies so and there.</summary>
    public PieceInTile Lay(LaidBlank laid, Stock stock)
    {
        for (var quarters = 0; quarters < 4; quarters++)
        {
            if (quarters % 2 == 1 && stock.Turns != Turns.Quarters) continue;
            var turned = At.Turned(quarters, stock);
            if (!(Piece.OfRectangle ? Cutout.Of(turned, stock) : new(Cutout.Blank, turned)).Equals(laid.Lies)) continue;
            var ring = InTile.Place(Piece, (Quarters + quarters) % 4).At;
            var box = ring.Bounds;
            return new(Piece.Id, ring.Moved(Length.FromSteps(laid.At.Left) - box.Left, Length.FromSteps(laid.At.Bottom) - box.Bottom), (Quarters + quarters) % 4);
        }

        throw new InvalidOperationException($"Piece {Piece.Id} lies in its tile as it may not.");
    }

    private static bool IsAlikeTurned(Piece piece)
    {
        var (cell, corners) = (piece.Cell, piece.Tile.Points.ToHashSet());
        return corners.All(corner => corners.Contains(new(cell.Left + cell.Right - corner.X, cell.Bottom + cell.Top - corner.Y)));
    }
}
