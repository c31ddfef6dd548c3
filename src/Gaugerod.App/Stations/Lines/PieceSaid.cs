using System.Globalization;
using Gaugerod.App.Parts;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.App.Stations.Lines;

/// <summary>A piece in words.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Size">The box around it.</param>
/// <param name="What">Its kind, its face and its course.</param>
/// <param name="Cuts">Its cuts, in the words of the printed cut list; empty for a whole tile.</param>
/// <param name="Source">The tile it comes from, and what else does.</param>
internal sealed record PieceSaid(string Number, string Size, string What, IReadOnlyList<string> Cuts, string Source)
{
    public static PieceSaid Of(Plan plan, PiecePictures pictures, Piece piece)
    {
        var tape = plan.Job.Tape;
        var kind = PieceWords.Of(piece.Kind);
        return new(
            piece.Id,
            $"{LengthText.DownBare(piece.Upright.Bounds.Width, tape)} × {LengthText.Down(piece.Upright.Bounds.Height, tape)}",
            string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(kind[0])}{kind[1..]}, {piece.Face}, course {piece.Course}"),
            piece.Kind == PieceKind.Full ? [] : pictures.Words(piece.Id).Split('\n'),
            SourceTile.Of(plan, piece));
    }

    /// <summary>A piece of trim, a corner piece or a stop.</summary>
    public static PieceSaid Of(Plan plan, TrimPart part)
    {
        var tape = plan.Job.Tape;
        var line = part.Line;
        var trim = plan.Job.Trims.First(trim => string.Equals(trim.Name, line.Product, StringComparison.Ordinal));
        var (reach, where) = (part.Corner?.Reach ?? part.Return?.Length ?? part.Piece!.Length, $"{line.Product}, {TrimWords.Where(line)}");
        return new(
            part.Id,
            $"{LengthText.DownBare(reach, tape)} × {LengthText.Nearest(trim.Width, tape)}",
            part.Corner is { } corner ? $"{char.ToUpperInvariant(TrimWords.Of(corner)[0])}{TrimWords.Of(corner)[1..]}, {where}" : part.Return is null ? $"Trim: {where}" : $"Trim, goes on round the end: {where}",
            part.Return is { } turned ? [TrimWords.Of(turned)] : part is { Piece: { } piece, IsCut: true } ? [TrimWords.Ends(line, piece)] : [],
            (part.Piece?.Stock ?? part.Return?.Stock) is not { } stock ? "Bought as it is."
                : string.Create(CultureInfo.InvariantCulture, $"From {(trim.ByBar ? "bar" : "piece")} {stock} of its stock{(part.IsCut ? "" : ", left whole")}."));
    }
}
