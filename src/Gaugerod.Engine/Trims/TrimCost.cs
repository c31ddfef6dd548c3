namespace Gaugerod.Engine.Trims;

/// <summary>What a line costs, the most important first.</summary>
/// <param name="Cuts">Cuts at the saw, mitres among them.</param>
/// <param name="Trimmed">Pieces shorter than the stock.</param>
/// <param name="Inner">Of these, those that stand between others.</param>
/// <param name="Pieces">Pieces in all.</param>
internal readonly record struct TrimCost(int Cuts, int Trimmed, int Inner, int Pieces) : IComparable<TrimCost>
{
    public int CompareTo(TrimCost other) => (Cuts, Trimmed, Inner, Pieces).CompareTo((other.Cuts, other.Trimmed, other.Inner, other.Pieces));

    public static bool operator <(TrimCost a, TrimCost b) => a.CompareTo(b) < 0;

    public static bool operator >(TrimCost a, TrimCost b) => a.CompareTo(b) > 0;

    public static bool operator <=(TrimCost a, TrimCost b) => a.CompareTo(b) <= 0;

    public static bool operator >=(TrimCost a, TrimCost b) => a.CompareTo(b) >= 0;

    public static TrimCost operator +(TrimCost a, TrimCost b) => new(a.Cuts + b.Cuts, a.Trimmed + b.Trimmed, a.Inner + b.Inner, a.Pieces + b.Pieces);

    public static TrimCost operator -(TrimCost a, TrimCost b) => new(a.Cuts - b.Cuts, a.Trimmed - b.Trimmed, a.Inner - b.Inner, a.Pieces - b.Pieces);

    /// <summary>What a piece at one end of a line costs.</summary>
    public static TrimCost AtEnd(TrimEnd end, bool trimmed) => new(end == TrimEnd.Mitre || trimmed ? 1 : 0, trimmed ? 1 : 0, 0, 1);

    /// <summary>What a piece between two others costs.</summary>
    public static TrimCost Between(bool trimmed) => trimmed ? new(1, 1, 1, 1) : new(0, 0, 0, 1);

    /// <summary>What a piece that is the whole line costs; null where both its ends show and it is no whole one.</summary>
    public static TrimCost? Alone(TrimEnd begin, TrimEnd end, bool trimmed)
    {
        var mitres = (begin == TrimEnd.Mitre ? 1 : 0) + (end == TrimEnd.Mitre ? 1 : 0);
        if (trimmed && Shows(begin) && Shows(end)) return null;
        return new(mitres == 0 && trimmed ? 1 : mitres, trimmed ? 1 : 0, 0, 1);
    }

    /// <summary>Whether an end needs to be a factory end.</summary>
    public static bool Shows(TrimEnd end) => end is TrimEnd.Stop or TrimEnd.Covers;
}
