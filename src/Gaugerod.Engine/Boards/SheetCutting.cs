using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sharing;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>
/// Which sheet each piece is cut from. A piece takes the rectangle around it; straight cuts from side to side part what lies in a sheet,
/// and nothing is lost to them, for board is scored and snapped. None is turned a quarter.
/// </summary>
internal static class SheetCutting
{
    // Boards of a job are few; so much looks far beyond what they need. A face by itself is looked at more briefly.
    private const long Work = 2_000_000, Brief = 50_000;

    /// <summary>How many sheets some pieces take, found quickly.</summary>
    /// <param name="sheet">The sheet as the pieces lie.</param>
    /// <param name="pieces">The rectangles around them.</param>
    public static int Count(SheetLies sheet, IReadOnlyList<Box> pieces)
    {
        var stock = new Stock(sheet.Across, sheet.Up, 0, Turns.None);
        return Search(stock, [.. pieces.Select(piece => new Blank(piece.Width.Steps, piece.Height.Steps, Sides.None))], Brief).Best.Fills.Count;
    }

    /// <summary>What is taken of a board, and the sheet of each piece.</summary>
    /// <param name="product">The board.</param>
    /// <param name="pieces">All pieces of it, of every face.</param>
    public static BoardStock Cut(BoardProduct product, IReadOnlyList<SheetPiece> pieces)
    {
        var stock = new Stock(product.Length.Steps, product.Width.Steps, 0, Turns.None);
        var search = Search(stock, [.. pieces.Select(piece => new Blank(piece.Along.Steps, piece.Across.Steps, Sides.None))], Work);
        var (wanted, best) = (search.Wanted, search.Best);
        var members = Array.ConvertAll(wanted.Members, of => new Queue<int>(of));
        var layout = new TileLayout(wanted);
        var sheets = new List<List<(int Piece, Box At)>>();
        foreach (var fill in best.Fills)
        {
            layout.Lay([.. fill.Order()]);
            var own = fill.Order().Select(kind => members[kind].Dequeue()).ToList();
            sheets.Add([.. layout.Blanks.Select(laid => (own[laid.Blank], Of(laid.At)))]);
        }

        // Numbered as one builds: by the first piece that a sheet gives.
        return new(product.Name, sheets.OrderBy(sheet => sheet.Min(piece => piece.Piece)).Select((sheet, i) => new BoardSheet(i + 1, sheet.OrderBy(piece => piece.Piece).Select(piece => new PieceInSheet(pieces[piece.Piece].Id, piece.At)).ToSequence())).ToSequence(), best.Least);
    }

    private static (Wanted Wanted, Shares Best) Search(Stock stock, IReadOnlyList<Blank> blanks, long work)
    {
        var wanted = new Wanted(stock, blanks);
        var search = new SharingSearch(wanted, work);
        search.Run();
        return (wanted, search.Best);
    }

    private static Box Of(Area area) => new(Length.FromSteps(area.Left), Length.FromSteps(area.Bottom), Length.FromSteps(area.Right), Length.FromSteps(area.Top));
}
