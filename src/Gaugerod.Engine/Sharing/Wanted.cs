using System.Globalization;

namespace Gaugerod.Engine.Sharing;

/// <summary>A blank and how many of it are wanted.</summary>
/// <param name="Blank">The blank as it lies when settled.</param>
/// <param name="Wanted">How many; one or more.</param>
/// <param name="Shape">What is cut out of it, lying so; null for all of it.</param>
internal readonly record struct Kind(Blank Blank, int Wanted, Outline? Shape = null)
{
    /// <summary>The blank and what is cut out of it.</summary>
    public Cutout Cutout => new(Blank, Shape);
}

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
    private bool[] _nest = [];

    /// <param name="stock">The tile.</param>
    /// <param name="blanks">The blanks, in any order; each goes into the tile.</param>
    /// <exception cref="ArgumentException">A blank goes into the tile in no way.</exception>
    public Wanted(Stock stock, IReadOnlyList<Blank> blanks)
        : this(stock, [.. blanks.Select(blank => new Cutout(blank, null))])
    {
    }

    /// <param name="stock">The tile.</param>
    /// <param name="cutouts">The blanks and what is cut out of them, in any order; each goes into the tile.</param>
    /// <param name="nests">Whether pieces may share by their outlines too.</param>
    /// <exception cref="ArgumentException">A blank goes into the tile in no way.</exception>
    public Wanted(Stock stock, IReadOnlyList<Cutout> cutouts, bool nests = true)
    {
        Stock = stock;
        var groups = new Dictionary<Cutout, List<int>>();
        for (var i = 0; i < cutouts.Count; i++)
        {
            var settled = stock.Settled(cutouts[i]);
            var (width, height) = (settled.Blank.Width, settled.Blank.Height);
            if (width <= 0 || height <= 0 || width > stock.Width || height > stock.Height)
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Blank {i} does not go into the tile."), nameof(cutouts));
            }

            if (!groups.TryGetValue(settled, out var list)) groups[settled] = list = [];
            list.Add(i);
        }

        // The largest first: that is the order in which they are hardest to place.
        var ordered = groups
            .OrderByDescending(g => (Int128)g.Key.Blank.Width * g.Key.Blank.Height)
            .ThenByDescending(g => g.Key.Blank.Width).ThenBy(g => (int)g.Key.Blank.Kept).ThenBy(g => g.Key.Shape, Outline.Order).ToList();
        Of = new int[cutouts.Count];
        for (var kind = 0; kind < ordered.Count; kind++)
        {
            foreach (var i in ordered[kind].Value) Of[i] = kind;
        }

        Kinds = ordered.ConvertAll(g => new Kind(g.Key.Blank, g.Value.Count, g.Key.Shape)).ToArray();
        Members = ordered.ConvertAll(g => g.Value.ToArray()).ToArray();
        _ways = Array.ConvertAll(Kinds, k => stock.Ways(k.Cutout).Select(w => w.Lies.Blank).Distinct().ToArray());
        Across = Array.ConvertAll(Kinds, k => k.Blank.Height == stock.Height ? Sharing.Across.Upright : k.Blank.Width == stock.Width ? Sharing.Across.Level : Sharing.Across.No);
        Area = Enumerable.Range(0, Kinds.Length).Select(Share).ToArray();
        Corners = Array.ConvertAll(Kinds, CornersOf);
        if (!nests) return;
        foreach (var _ in FindNests())
        {
        }
    }

    public Stock Stock { get; }

    public Kind[] Kinds { get; }

    /// <summary>For every kind, which of the blanks given are of it.</summary>
    public int[][] Members { get; }

    /// <summary>For every blank given, its kind.</summary>
    public int[] Of { get; }

    public Across[] Across { get; }

    /// <summary>For every kind, its share of the tile, blade and all, or without the blade where it nests; the shares of what a tile holds never pass one.</summary>
    public double[] Area { get; }

    /// <summary>For every kind, how many of the tile's four corners it takes.</summary>
    public int[] Corners { get; }

    /// <summary>Whether two kinds share a tile by their outlines, just the two of them, and not by their rectangles as strips.</summary>
    public bool Nest(int one, int other) => _nest.Length > 0 && _nest[(one * Kinds.Length) + other];

    /// <summary>Whether a kind shares a tile with any other by its outline.</summary>
    public bool Nests(int kind) => _nest.Length > 0 && Array.IndexOf(_nest, true, kind * Kinds.Length, Kinds.Length) >= 0;

    /// <summary>The ways a kind may lie; the first is its blank's.</summary>
    public Blank[] Ways(int kind) => _ways[kind];

    /// <summary>How long a strip is, across the way it runs.</summary>
    public long Length(int kind) => Across[kind] == Sharing.Across.Upright ? Kinds[kind].Blank.Width : Kinds[kind].Blank.Height;

    /// <summary>Whether a strip keeps one of the two ends of the tile.</summary>
    public bool NeedsEnd(int kind) =>
        (Kinds[kind].Blank.Kept & (Across[kind] == Sharing.Across.Upright ? Sides.Left | Sides.Right : Sides.Bottom | Sides.Top)) != Sides.None;

    /// <summary>Looks which kinds share a tile by their outlines, a little at a time; done before anything else is asked.</summary>
    public IEnumerable<bool> FindNests()
    {
        if (!Array.Exists(Kinds, k => k.Shape is not null)) yield break;
        _nest = new bool[Kinds.Length * Kinds.Length];
        var (nesting, strips) = (new Nesting(Stock), new bool[Kinds.Length]);
        for (var i = 0; i < Kinds.Length; i++)
        {
            if (Kinds[i].Shape is null) continue;
            for (var j = 0; j < Kinds.Length; j++)
            {
                if ((j < i && Kinds[j].Shape is not null && _nest[(j * Kinds.Length) + i]) || ShareAsStrips(i, j) || nesting.Beside(Kinds[i].Cutout, Kinds[j].Cutout) is null) continue;
                _nest[(i * Kinds.Length) + j] = _nest[(j * Kinds.Length) + i] = true;
                if (Across[i] == Across[j]) strips[i] = strips[j] = true;
            }

            yield return true;
        }

        // Strips that nest do not share by their lengths alone.
        for (var i = 0; i < strips.Length; i++)
        {
            if (strips[i]) Across[i] = Sharing.Across.No;
        }

        for (var i = 0; i < Kinds.Length; i++) Area[i] = Share(i);
    }

    private bool ShareAsStrips(int one, int other) =>
        Across[one] != Sharing.Across.No && Across[one] == Across[other]
        && Length(one) + Stock.Kerf + Length(other) <= (Across[one] == Sharing.Across.Upright ? Stock.Width : Stock.Height)
        && (Stock.Turns != Turns.None || !NeedsEnd(one) || !NeedsEnd(other) || Kinds[one].Blank.Kept != Kinds[other].Blank.Kept);

    private double Share(int kind)
    {
        var (blank, shape) = (Kinds[kind].Blank, Kinds[kind].Shape);
        var tile = (double)(Stock.Width + Stock.Kerf) * (Stock.Height + Stock.Kerf);
        return Nests(kind) ? (shape?.Area ?? ((double)blank.Width * blank.Height)) / tile : (double)(blank.Width + Stock.Kerf) * (blank.Height + Stock.Kerf) / tile;
    }

    private int CornersOf(Kind kind)
    {
        if (kind.Shape is { } shape) return shape.Corners.ToArray().Count(spot => (spot.X == 0 || spot.X == Stock.Width) && (spot.Y == 0 || spot.Y == Stock.Height));
        var corners = 0;
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var pair = (Sides)(((3 << quarter) | (3 << quarter >> 4)) & 15);
            if ((kind.Blank.Kept & pair) == pair) corners++;
        }

        return corners;
    }
}
