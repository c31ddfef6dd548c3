namespace Gaugerod.Engine.Sharing;

/// <summary>
/// The blanks of a tile as parcels are built of them. Strips that need no end of the tile go as one section: whatever else is in
/// the tile, they may as well lie side by side, since each goes from side to side.
/// </summary>
internal sealed class Sections
{
    private readonly List<Blank[]> _ways = [];
    private readonly List<int> _blank = [];

    /// <summary>The ways each section may lie.</summary>
    public ReadOnlySpan<Blank[]> Ways => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_ways);

    /// <summary>For each section the place of its blank in the tile's list; -1 for the strips that go as one.</summary>
    public IReadOnlyList<int> Blank => _blank;

    /// <summary>The places of the strips that go as one.</summary>
    public List<int> Middle { get; } = [];

    /// <summary>Whether the tile may be turned as a whole without changing what its sections are; strips that go as one run one way only.</summary>
    public bool TurnsAsOne { get; private set; }

    /// <summary>Whether strips of this tile run from bottom to top.</summary>
    public bool Upright { get; private set; }

    /// <summary>Fills itself with the blanks of a tile; false where strips cross each other, so that they never share.</summary>
    public bool Fill(Wanted wanted, ReadOnlySpan<int> kinds)
    {
        _ways.Clear();
        _blank.Clear();
        Middle.Clear();
        var stock = wanted.Stock;
        var (length, across) = (0L, Across.No);
        for (var i = 0; i < kinds.Length; i++)
        {
            var crossing = wanted.Across[kinds[i]];
            if (crossing != Across.No)
            {
                if (across != Across.No && across != crossing) return false;
                across = crossing;
                if (!wanted.NeedsEnd(kinds[i]))
                {
                    Middle.Add(i);
                    length += wanted.Length(kinds[i]) + stock.Kerf;
                    continue;
                }
            }

            _ways.Add(wanted.Ways(kinds[i]));
            _blank.Add(i);
        }

        Upright = across == Across.Upright;
        TurnsAsOne = length == 0 || stock.Turns == Turns.Half;
        if (length == 0) return true;
        _ways.Add([Upright ? new(length - stock.Kerf, stock.Height, Sides.Bottom | Sides.Top) : new(stock.Width, length - stock.Kerf, Sides.Left | Sides.Right)]);
        _blank.Add(-1);
        return true;
    }
}
