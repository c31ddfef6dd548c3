using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>How a piece is marked on its tile, as the cut list draws and says it, for a page that is not a sheet.</summary>
public sealed class PiecePictures
{
    private const double Width = 62, Tallest = 74;

    /// <summary>Above the topmost size, whose figures stand higher than its row.</summary>
    private const double Head = 1.4;

    private readonly Plan _plan;
    private readonly Figures _figures;
    private readonly Dictionary<string, (RunPlan Run, FacePlan Face, Piece Piece)> _pieces;

    /// <param name="plan">The plan whose pieces are shown.</param>
    public PiecePictures(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        (_plan, _figures) = (plan, new(plan.Job.Tape));
        _pieces = plan.Runs
            .SelectMany(run => run.Faces.SelectMany(face => face.Pieces.Select(piece => (run, face, piece))))
            .ToDictionary(of => of.piece.Id, StringComparer.Ordinal);
    }

    /// <summary>What the sizes in the words mean.</summary>
    public static string Key => CutWords.Key;

    /// <summary>A piece's cuts and holes in words, one to a line.</summary>
    /// <param name="piece">The piece's number.</param>
    /// <exception cref="KeyNotFoundException">The plan has no such piece.</exception>
    public string Words(string piece) => CutWords.Of(OnFace(piece), _figures);

    /// <summary>The box around a piece as the fence leaves it, width by height, with fractions set as fractions and the unit said once.</summary>
    /// <param name="piece">The piece's number.</param>
    /// <exception cref="KeyNotFoundException">The plan has no such piece.</exception>
    public string Size(string piece) => Said(Sawn(piece));

    /// <summary>The box around a piece as it was asked for, where a setting shared with a smaller one makes it otherwise; empty where it comes out as asked.</summary>
    /// <param name="piece">The piece's number.</param>
    /// <exception cref="KeyNotFoundException">The plan has no such piece.</exception>
    public string Asked(string piece)
    {
        var box = _pieces[piece].Piece.Upright.Bounds;
        return Sawn(piece) == (box.Width, box.Height) ? "" : Said((box.Width, box.Height));
    }

    /// <summary>How wide and how high a piece is when it comes from the saw: less than was asked for where its setting is that of a smaller one.</summary>
    /// <param name="piece">The piece's number.</param>
    /// <exception cref="KeyNotFoundException">The plan has no such piece.</exception>
    public (Length Width, Length Height) Sawn(string piece)
    {
        var of = _pieces[piece].Piece;
        var (tape, within, box) = (_plan.Job.Tape, _plan.Job.Cutting.Fence, of.Upright.Bounds);
        var settings = _plan.Cutting.Where(cutting => string.Equals(cutting.Product, of.Product, StringComparison.Ordinal)).SelectMany(cutting => cutting.Settings)
            .Where(setting => setting.Pieces.Contains(piece, StringComparer.Ordinal)).ToList();
        var (width, height) = (box.Width, box.Height);
        if (settings.TrueForAll(setting => setting.Short(of, tape, within) == Length.Zero)) return (width, height);
        foreach (var cut in of.Cuts)
        {
            // Settings do not reach into each other, so the one a cut is made at is the largest that is no larger than it.
            var kept = tape.Down(cut.Least);
            var fence = settings.Where(setting => setting.Fence <= kept).Select(setting => setting.Fence).DefaultIfEmpty(kept).Max();
            if (kept - fence > within) continue;
            if (cut.Away is TileSide.Left or TileSide.Right) width -= kept - fence;
            else height -= kept - fence;
        }

        return (width, height);
    }

    private string Said((Length Width, Length Height) size) => Fractions.Set($"{_figures.Cut(size.Width)} × {_figures.Cut(size.Height)} {_figures.Unit}");

    /// <summary>The piece in its tile with the sizes that are marked on it, 62 mm wide and not to a round scale.</summary>
    /// <param name="piece">The piece's number.</param>
    /// <exception cref="KeyNotFoundException">The plan has no such piece.</exception>
    public Drawing Of(string piece)
    {
        var of = OnFace(piece);
        var height = PieceSketch.HeightOf(of, Width, Tallest, _figures);
        var pen = new Pen();
        PieceSketch.Draw(pen, of, new(0, Head, Width, height), _figures);
        return new(Width, height + Head, $"Piece {piece}", Words(piece).Replace('\n', ' '), pen.Marks);
    }

    /// <summary>The tile that a piece shares with others, as the sheets draw it: where each lies in it, its cuts numbered; null for a piece with a tile to itself.</summary>
    /// <param name="piece">The piece's number.</param>
    /// <exception cref="KeyNotFoundException">The plan has no such piece.</exception>
    public Drawing? Shared(string piece)
    {
        var name = _pieces[piece].Piece.Product;
        var tile = _plan.Cutting.Where(cutting => string.Equals(cutting.Product, name, StringComparison.Ordinal)).SelectMany(cutting => cutting.Tiles)
            .FirstOrDefault(tile => tile.Pieces.Count > 1 && tile.Pieces.Any(own => string.Equals(own.Id, piece, StringComparison.Ordinal)));
        return tile is null ? null : SharedTilePicture.Alone(tile, _plan.Job.Products.First(product => string.Equals(product.Name, name, StringComparison.Ordinal)), Width);
    }

    // One at a time: what is to be said of thousands takes a phone too long.
    private PieceOnFace OnFace(string number)
    {
        var (run, face, piece) = _pieces[number];
        return PieceOnFace.Of(piece, face.Face) with { Note = HeldJoint.Of(piece, run, _figures) };
    }
}
