namespace Gaugerod.Engine.Boards;

/// <summary>The last seam of every row so far, as its place; zero for none yet.</summary>
internal readonly record struct LastSeams
{
    private const int Bits = 9, InOne = 128 / Bits;

    private readonly UInt128 _low, _high;

    private LastSeams(UInt128 low, UInt128 high) => (_low, _high) = (low, high);

    /// <summary>No more rows than this.</summary>
    public static int Most => 2 * InOne;

    /// <summary>No place beyond this.</summary>
    public static int MostPlaces => (1 << Bits) - 1;

    public int this[int row] => (int)((row < InOne ? _low >> (row * Bits) : _high >> ((row - InOne) * Bits)) & (UInt128)MostPlaces);

    public LastSeams With(int row, int place) => row < InOne
        ? new((_low & ~((UInt128)MostPlaces << (row * Bits))) | ((UInt128)place << (row * Bits)), _high)
        : new(_low, (_high & ~((UInt128)MostPlaces << ((row - InOne) * Bits))) | ((UInt128)place << ((row - InOne) * Bits)));
}
