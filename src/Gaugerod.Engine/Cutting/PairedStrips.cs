using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Cutting;

/// <summary>Pieces with one cut from side to side, two of them to a tile. The rules, and why the count is the least under them, stand in docs/cutting.md.</summary>
internal sealed class PairedStrips
{
    private readonly Product _product;
    private readonly IReadOnlyList<Piece> _pieces;
    private readonly int[] _quarters;
    private readonly bool _atTheMiddle;

    private PairedStrips(Product product, IReadOnlyList<Piece> pieces, bool atTheMiddle)
    {
        (_product, _pieces, _atTheMiddle) = (product, pieces, atTheMiddle);
        _quarters = new int[pieces.Count];
        Partner = new int[pieces.Count];
        Array.Fill(Partner, Pairing.Alone);
    }

    /// <summary>For each piece the place of the one it shares a tile with, or <see cref="Pairing.Alone"/>.</summary>
    public int[] Partner { get; }

    /// <summary>Why no fewer tiles would do for those with one cut.</summary>
    public List<PairingProof> Proofs { get; } = [];

    /// <summary>How many pieces have more cuts than one, or none.</summary>
    public int Others { get; private set; }

    /// <summary>How many tiles they all take, when each of the others takes one.</summary>
    public int Tiles => Others + Proofs.Sum(proof => proof.Tiles);

    /// <summary>Pairs pieces of one product.</summary>
    /// <param name="product">The tile.</param>
    /// <param name="pieces">Its pieces.</param>
    /// <param name="atTheMiddle">Whether a cut is reckoned by its middle, for a bound; else by its longer end, so that the pairs come apart.</param>
    public static PairedStrips Of(Product product, IReadOnlyList<Piece> pieces, bool atTheMiddle = false)
    {
        var paired = new PairedStrips(product, pieces, atTheMiddle);
        var (onWidth, onHeight) = (new List<int>(), new List<int>());
        for (var i = 0; i < pieces.Count; i++)
        {
            if (!HasOneCut(pieces[i]))
            {
                paired.Others++;
                continue;
            }

            paired._quarters[i] = InTile.Quarters(product, pieces[i]);
            (product.TurnsAQuarter || InTile.IsAcross(paired.Kept(i)) ? onWidth : onHeight).Add(i);
        }

        // Only a square tile that may be turned a quarter lets a piece cut along its width share with one cut along its height.
        paired.Share(product.TurnsAQuarter ? "width or height" : "width", onWidth, product.Width);
        paired.Share("height", onHeight, product.Height);
        return paired;
    }

    public static bool HasOneCut(Piece piece) =>
        piece.OfRectangle && piece.Kind is (PieceKind.Straight or PieceKind.Taper) && piece.Cuts.Count == 1;

    private void Share(string pool, List<int> members, Length length)
    {
        if (members.Count == 0) return;
        var strips = members.Select(Strip).ToArray();
        var found = Pairing.Find(pool, strips, length, _product.Kerf, _product.Turning != Turning.None);
        for (var k = 0; k < strips.Length; k++)
        {
            if (found.Partner[k] is var other && other != Pairing.Alone) Partner[members[k]] = members[other];
        }

        Proofs.Add(found.Proof with { AtTheMiddle = _atTheMiddle });
    }

    private TileSide Kept(int i) => InTile.Turned(InTile.Opposite(_pieces[i].Cuts[0].Away), _quarters[i]);

    private Strip Strip(int i) => new(Need(_pieces[i]), Kept(i) is TileSide.Left or TileSide.Bottom);

    private Length Need(Piece piece)
    {
        var cut = piece.Cuts[0];
        return _atTheMiddle ? Length.FromSteps(Math.Max(1, (cut.First.Steps + cut.Last.Steps) / 2)) : InTile.Need(piece, cut);
    }
}
