using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Cuts that take off so little that what falls away is too thin to be scored and snapped.</summary>
internal static class ShaveRules
{
    /// <summary>0.1 mm: a tile that is too large by less than this is set as it is.</summary>
    private static readonly Length Nothing = Length.FromSteps(Length.StepsPerMillimetre / 10);

    internal static IEnumerable<Finding> Findings(string run, Sequence<Piece> pieces, Tape tape)
    {
        var limit = tape.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3);
        var shaved = pieces.Where(piece => piece.OfRectangle).SelectMany(piece => Shaved(piece, limit)).ToList();
        if (shaved.Count == 0) yield break;
        var tiles = shaved.Select(shave => shave.Piece.Id).Distinct(StringComparer.Ordinal).Count();
        var where = shaved.GroupBy(shave => EdgeWords.Of(shave.Piece.Face, shave.Edge), StringComparer.Ordinal)
            .Select(edge => string.Create(CultureInfo.InvariantCulture, $"{edge.Select(shave => shave.Piece.Id).Distinct(StringComparer.Ordinal).Count()} at {edge.Key}"));
        yield return new(
            FindingLevel.Note, "shave", run,
            string.Create(CultureInfo.InvariantCulture, $"{(tiles == 1 ? "One tile loses" : $"{tiles} tiles lose")} a strip too thin to be scored and snapped ({string.Join(", ", where)}): that is for the wet saw or the grinder, or the line is shifted."),
            $"more than {LengthText.Nearest(limit, tape)} taken off", Shown.Fine(shaved.Min(shave => shave.Off), tape), Remarks.NoSource);
    }

    /// <summary>The sides of a piece's tile at which it loses a little and nowhere more, with the edge that takes it.</summary>
    private static IEnumerable<(Piece Piece, string Edge, Length Off)> Shaved(Piece piece, Length limit) => piece.Cuts
        .GroupBy(cut => cut.Away)
        .Select(side => side.MaxBy(cut => Off(piece, cut)))
        .Select(cut => (piece, cut.Faces, Off(piece, cut)))
        .Where(shave => shave.Item3 >= Nothing && shave.Item3 <= limit);

    private static Length Off(Piece piece, CutMark cut) =>
        (cut.Away is TileSide.Left or TileSide.Right ? piece.Cell.Width : piece.Cell.Height) - cut.Least;
}
