using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Cutting;

/// <summary>Sorts pieces into those sawn against a fence, by its distance, and those marked by hand.</summary>
internal static class SawSettings
{
    /// <summary>
    /// The settings, the largest fence first and of two equal ones the one along the width, and the pieces marked by
    /// hand; pieces in the order given. A piece with two square cuts, or cut on two sides across, stands under both. A cut that only parts what is in a tile
    /// stands under its setting too.
    /// </summary>
    public static (Sequence<SawSetting> Settings, Sequence<string> ByHand) Of(Product product, Sequence<Piece> pieces, IReadOnlyList<CutTile> tiles, Tape tape, Fences fences)
    {
        var at = new Dictionary<(Length Fence, bool Across), (List<string> Pieces, List<int> Parts)>();
        var byHand = new List<string>();
        var laid = tiles.SelectMany(tile => tile.Pieces.Select(of => (of.Id, Tile: tile, of.At))).ToDictionary(of => of.Id, StringComparer.Ordinal);
        foreach (var piece in pieces)
        {
            if (piece.Kind == PieceKind.Full) continue;
            if (!AgainstAFence(piece, tape))
            {
                var cuts = piece.OfRectangle && piece.UprightInner.Count == 0 && laid.TryGetValue(piece.Id, out var of) ? Beside(of.Tile, of.At) : [];
                if (cuts.Count == 0) byHand.Add(piece.Id);
                foreach (var cut in cuts) List(Under(cut.Fence, cut.Upright).Pieces, piece.Id);
                continue;
            }

            var quarters = InTile.Quarters(product, piece);
            foreach (var cut in piece.Cuts)
            {
                List(Under(fences.For(cut.Least), InTile.IsAcross(InTile.Turned(cut.Away, quarters))).Pieces, piece.Id);
            }
        }

        foreach (var tile in tiles.Where(tile => tile.Pieces.Count > 1))
        {
            var own = tile.Pieces.Select(piece => piece.Id).ToHashSet(StringComparer.Ordinal);
            foreach (var cut in tile.Cuts)
            {
                if (Gives(cut.Fence, true, own) || Gives(cut.Fence, false, own)) continue;
                var list = Under(cut.Fence, cut.Upright).Parts;
                if (!list.Contains(tile.Number)) list.Add(tile.Number);
            }
        }

        var settings = at
            .OrderByDescending(f => f.Key.Fence)
            .ThenByDescending(f => f.Key.Across)
            .Select(f => new SawSetting(f.Key.Fence, f.Key.Across, f.Value.Pieces.ToSequence()) { Parts = f.Value.Parts.ToSequence() });
        return (settings.ToSequence(), byHand.ToSequence());

        bool Gives(Length fence, bool across, HashSet<string> own) => at.TryGetValue((fence, across), out var lists) && lists.Pieces.Exists(own.Contains);

        static void List(List<string> list, string id)
        {
            if (list.Count == 0 || !string.Equals(list[^1], id, StringComparison.Ordinal)) list.Add(id);
        }

        (List<string> Pieces, List<int> Parts) Under(Length fence, bool across)
        {
            if (!at.TryGetValue((fence, across), out var lists)) at[(fence, across)] = lists = ([], []);
            return lists;
        }
    }

    /// <summary>The cuts that give a piece its sides, where it comes out of its tile with four square ones: a strip cut on two sides across is sawn like any other.</summary>
    private static List<SawCut> Beside(CutTile tile, Ring at)
    {
        var box = at.Bounds;
        if (at.Points.Count != 4 || at.DoubledArea != Ring.Of(box).DoubledArea) return [];
        List<SawCut> cuts = [.. tile.Cuts.Where(cut => cut.Upright
            ? (cut.At == box.Left || cut.At == box.Right) && cut.Over.Bottom <= box.Bottom && cut.Over.Top >= box.Top
            : (cut.At == box.Bottom || cut.At == box.Top) && cut.Over.Left <= box.Left && cut.Over.Right >= box.Right)];

        // No fence can be set to less than a mark.
        return cuts.TrueForAll(cut => cut.Fence > Length.Zero) ? cuts : [];
    }

    /// <summary>
    /// Whether it is sawn against a fence. A taper that reads the same on the tape at both ends is sawn straight, at the shorter
    /// one, so that it fits. No fence can be set to less than a mark.
    /// </summary>
    public static bool AgainstAFence(Piece piece, Tape tape)
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
