using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Cutting;

/// <summary>Sorts pieces into those sawn against a fence, by its distance, and those marked by hand.</summary>
internal static class SawSettings
{
    /// <summary>
    /// The settings, the largest fence first and of two equal ones the one along the width, and the pieces marked by
    /// hand; pieces in the order given. A piece with two square cuts stands under both.
    /// </summary>
    public static (Sequence<SawSetting> Settings, Sequence<string> ByHand) Of(Product product, Sequence<Piece> pieces, Tape tape)
    {
        var fences = new Dictionary<(Length Fence, bool Across), List<string>>();
        var byHand = new List<string>();
        foreach (var piece in pieces)
        {
            if (piece.Kind == PieceKind.Full) continue;
            if (!AgainstAFence(piece, tape))
            {
                byHand.Add(piece.Id);
                continue;
            }

            var quarters = InTile.Quarters(product, piece);
            foreach (var cut in piece.Cuts)
            {
                var key = (tape.Down(cut.Least), InTile.IsAcross(InTile.Turned(cut.Away, quarters)));
                if (!fences.TryGetValue(key, out var list)) fences[key] = list = [];
                if (list.Count == 0 || !string.Equals(list[^1], piece.Id, StringComparison.Ordinal)) list.Add(piece.Id);
            }
        }

        var settings = fences
            .OrderByDescending(f => f.Key.Fence)
            .ThenByDescending(f => f.Key.Across)
            .Select(f => new SawSetting(f.Key.Fence, f.Key.Across, f.Value.ToSequence()));
        return (settings.ToSequence(), byHand.ToSequence());
    }

    // A taper that reads the same on the tape at both ends is sawn straight, at the shorter one, so that it fits. No
    // fence can be set to less than a mark.
    private static bool AgainstAFence(Piece piece, Tape tape)
    {
        if (!piece.OfRectangle || piece.Kind is not (PieceKind.Straight or PieceKind.Corner or PieceKind.Taper) || piece.Cuts.Count == 0) return false;
        foreach (var cut in piece.Cuts)
        {
            if (tape.Down(cut.Least) <= Length.Zero) return false;
            if (piece.Kind == PieceKind.Taper && tape.Down(cut.First) != tape.Down(cut.Last)) return false;
        }

        return true;
    }
}
