namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Covers what is wanted with tiles taken in parts, making fills as they are needed. Fills once made are kept for the next
/// time.
/// </summary>
internal sealed class Relaxed
{
    /// <summary>What a whole tile weighs: weights are whole numbers, so that what they prove is exact.</summary>
    public const long Unit = 1_000_000_000;

    private readonly TileFits _fits;
    private readonly TileFill _fill;
    private readonly Serving _serving;
    private readonly List<int[]> _known = [];
    private readonly HashSet<string> _keys = new(StringComparer.Ordinal);

    public Relaxed(TileFits fits, TileFill fill, Serving serving)
    {
        (_fits, _fill, _serving) = (fits, fill, serving);
    }

    /// <summary>Adds fills to those known.</summary>
    public void Know(IEnumerable<int[]> fills)
    {
        foreach (var fill in fills)
        {
            if (_keys.Add(string.Join(' ', fill))) _known.Add(fill);
        }
    }

    /// <summary>For the bound: kinds may serve for smaller ones, and it ends as soon as the bound reaches the next whole tile.</summary>
    /// <param name="want">How many of each kind are wanted.</param>
    public Cover ForBound(int[] want) => Begin(want, kinds => _serving.Nearest(kinds), false);

    /// <summary>For the fills: nothing serves for anything else, and it goes on to the end, but not for ever.</summary>
    /// <param name="want">How many of each kind are wanted.</param>
    public Cover ForFills(int[] want) => Begin(want, _ => [], true);

    private Cover Begin(int[] want, Func<int[], List<(int Large, int Small)>> serving, bool toTheEnd)
    {
        var kinds = Enumerable.Range(0, want.Length).Where(kind => want[kind] > 0).ToArray();
        var program = new CoverProgram(want, Array.ConvertAll(kinds, kind => Alone(kind, want[kind])), kinds);
        var columns = new Columns(program, want.Length, serving(kinds));
        columns.Add(_known.Select(fill => Trimmed(fill, want)).Where(fill => fill.Length > 0));
        return new(this, _fill, want, columns, toTheEnd);
    }

    /// <summary>How many copies of a kind one tile gives, of so many wanted.</summary>
    private int Alone(int kind, int want)
    {
        var copies = new int[want];
        Array.Fill(copies, kind);
        var count = 1;
        while (count < want && _fits.Fit(copies.AsSpan(0, count + 1))) count++;
        return count;
    }

    private static int[] Trimmed(int[] fill, int[] want)
    {
        var keep = new List<int>(fill.Length);
        var copies = 0;
        for (var i = 0; i < fill.Length; i++)
        {
            copies = i > 0 && fill[i] == fill[i - 1] ? copies + 1 : 1;
            if (copies <= want[fill[i]]) keep.Add(fill[i]);
        }

        return [.. keep];
    }
}
