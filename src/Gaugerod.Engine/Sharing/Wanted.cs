using System.Globalization;

namespace Gaugerod.Engine.Sharing;

/// <summary>A blank and how many of it are wanted.</summary>
/// <param name="Blank">The blank as it lies when settled.</param>
/// <param name="Wanted">How many; one or more.</param>
internal readonly record struct Kind(Blank Blank, int Wanted);

/// <summary>How a kind crosses the tile.</summary>
internal enum Across
{
    /// <summary>Not at all: it is smaller than the tile both ways.</summary>
    No,

    /// <summary>From bottom to top: a strip, measured along the width.</summary>
    Upright,

    /// <summary>From side to side: a strip, measured along the height.</summary>
    Level,
}

/// <summary>All that is wanted of one tile: kinds of blanks, each in the ways it may lie.</summary>
internal sealed class Wanted
{
    private readonly Blank[][] _ways;

    /// <param name="stock">The tile.</param>
    /// <param name="blanks">The blanks, in any order; each goes into the tile.</param>
    /// <exception cref="ArgumentException">A blank goes into the tile in no way.</exception>
    public Wanted(Stock stock, IReadOnlyList<Blank> blanks)
    {
        Stock = stock;
        var groups = new Dictionary<Blank, List<int>>();
        for (var i = 0; i < blanks.Count; i++)
        {
            var settled = stock.Settled(blanks[i]);
            if (settled.Width <= 0 || settled.Height <= 0 || settled.Width > stock.Width || settled.Height > stock.Height)
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Blank {i} does not go into the tile."), nameof(blanks));
            }

            if (!groups.TryGetValue(settled, out var list)) groups[settled] = list = [];
            list.Add(i);
        }

        // The largest first: that is the order in which they are hardest to place.
        var ordered = groups
            .OrderByDescending(g => (Int128)g.Key.Width * g.Key.Height)
            .ThenByDescending(g => g.Key.Width).ThenBy(g => (int)g.Key.Kept).ToList();
        Kinds = ordered.ConvertAll(g => new Kind(g.Key, g.Value.Count)).ToArray();
        Members = ordered.ConvertAll(g => g.Value.ToArray()).ToArray();
        _ways = Array.ConvertAll(Kinds, k => stock.Ways(k.Blank).Select(w => w.Lies).ToArray());
        Across = Array.ConvertAll(Kinds, k => k.Blank.Height == stock.Height ? Sharing.Across.Upright : k.Blank.Width == stock.Width ? Sharing.Across.Level : Sharing.Across.No);
        Area = Array.ConvertAll(Kinds, k => (double)(k.Blank.Width + stock.Kerf) * (k.Blank.Height + stock.Kerf) / ((double)(stock.Width + stock.Kerf) * (stock.Height + stock.Kerf)));
    }

    public Stock Stock { get; }

    public Kind[] Kinds { get; }

    /// <summary>For every kind, which of the blanks given are of it.</summary>
    public int[][] Members { get; }

    public Across[] Across { get; }

    /// <summary>For every kind, its share of the tile, blade and all; the shares of what a tile holds never pass one.</summary>
    public double[] Area { get; }

    /// <summary>The ways a kind may lie; the first is its blank's.</summary>
    public Blank[] Ways(int kind) => _ways[kind];

    /// <summary>How long a strip is, across the way it runs.</summary>
    public long Length(int kind) => Across[kind] == Sharing.Across.Upright ? Kinds[kind].Blank.Width : Kinds[kind].Blank.Height;

    /// <summary>Whether a strip keeps one of the two ends of the tile.</summary>
    public bool NeedsEnd(int kind) =>
        (Kinds[kind].Blank.Kept & (Across[kind] == Sharing.Across.Upright ? Sides.Left | Sides.Right : Sides.Bottom | Sides.Top)) != Sides.None;
}
