using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sharing;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Pieces of a tile that is scored and snapped which no straight score gives, or whose strip is too narrow to break off clean.</summary>
internal static class SnapRules
{
    internal static IEnumerable<Finding> Findings(Product product, Sequence<Piece> pieces, Tape tape)
    {
        if (product.Snaps is not { } least) yield break;
        var bent = pieces.Where(piece => piece.Kind is PieceKind.Notch or PieceKind.Slot or PieceKind.Hole || piece.UprightInner.Count > 0 || !Outline.Of(piece.Upright).IsConvex).ToList();
        if (bent.Count > 0)
        {
            yield return new(
                FindingLevel.Warn, "snap", product.Name,
                $"No straight score gives {PieceNames.Of(bent)}: a notch, a slot or a hole is sawn wet, ground or nipped.",
                "straight cuts from side to side", string.Create(CultureInfo.InvariantCulture, $"{bent.Count} with an inner corner or a hole"), Remarks.NoSource);
        }

        var narrow = pieces.Except(bent).Select(piece => (Piece: piece, Narrowest: Narrowest(piece))).Where(of => of.Narrowest is { } found && found.Strip < least)
            .Select(of => (of.Piece, of.Narrowest!.Value.Strip, of.Narrowest.Value.Cut)).ToList();
        if (narrow.Count == 0) yield break;

        // A side that is not twice as long as the least strip cannot be parted at all.
        var (isShort, isLong) = (narrow.Exists(of => OpenSides.Whole(of.Piece, of.Cut.Away) < least * 2), narrow.Exists(of => OpenSides.Whole(of.Piece, of.Cut.Away) >= least * 2));
        var kept = $"{LengthText.Nearest(least, tape)} kept or taken off";
        var whole = $"a whole tile, for no score of a side under {LengthText.Nearest(least * 2, tape)} leaves two such strips";
        var nearest = isLong && isShort ? $"{kept}; or {whole}" : isLong ? kept : whole;
        var places = narrow.GroupBy(of => EdgeWords.Of(of.Piece.Face, of.Cut.Faces), StringComparer.Ordinal).Select(at => $"{PieceNames.Of([.. at.Select(of => of.Piece)])} ({at.Key})");
        yield return new(
            FindingLevel.Warn, "snap", product.Name,
            $"A strip too narrow to break off clean is kept or falls off at {string.Join("; ", places)}. Nearest that snaps: {nearest}. Else saw it wet, grind it off, or shift the line.",
            $"at least {LengthText.Nearest(least, tape)} on either side of a score", Shown.Fine(narrow.Min(of => of.Strip), tape), Remarks.NoSource);
    }

    /// <summary>The narrower of what a cut keeps and what it takes off, of all of a piece's cuts; null without any.</summary>
    private static (Length Strip, CutMark Cut)? Narrowest(Piece piece)
    {
        if (!piece.OfRectangle) return null;
        (Length Strip, CutMark Cut)? narrowest = null;
        foreach (var cut in piece.Cuts)
        {
            var strip = Length.Min(cut.Least, (cut.Away is TileSide.Left or TileSide.Right ? piece.Cell.Width : piece.Cell.Height) - cut.Least);
            if (narrowest is not { } known || strip < known.Strip) narrowest = (strip, cut);
        }

        return narrowest;
    }
}
