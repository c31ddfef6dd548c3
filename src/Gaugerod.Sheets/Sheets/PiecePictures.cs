using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>How a piece is marked on its tile, as the cut list draws and says it, for a page that is not a sheet.</summary>
public sealed class PiecePictures
{
    private const double Width = 62, Tallest = 74;

    /// <summary>Above the topmost size, whose figures stand higher than its row.</summary>
    private const double Head = 1.4;

    private readonly Figures _figures;
    private readonly Dictionary<string, (RunPlan Run, FacePlan Face, Piece Piece)> _pieces;

    /// <param name="plan">The plan whose pieces are shown.</param>
    public PiecePictures(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _figures = new(plan.Job.Tape);
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

    /// <summary>The box around a piece as its picture shows it, width by height, with fractions set as fractions and the unit said once.</summary>
    /// <param name="piece">The piece's number.</param>
    /// <exception cref="KeyNotFoundException">The plan has no such piece.</exception>
    public string Size(string piece)
    {
        var box = _pieces[piece].Piece.Upright.Bounds;
        return Fractions.Set($"{_figures.Cut(box.Width)} × {_figures.Cut(box.Height)} {_figures.Unit}");
    }

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

    // One at a time: what is to be said of thousands takes a phone too long.
    private PieceOnFace OnFace(string number)
    {
        var (run, face, piece) = _pieces[number];
        return PieceOnFace.Of(piece, face.Face) with { Note = HeldJoint.Of(piece, run, _figures) };
    }
}
