namespace Gaugerod.Engine.Sharing;

/// <summary>What the cover came to.</summary>
/// <param name="Tiles">The sum of the parts of tiles.</param>
/// <param name="Weights">Weights of every kind that give the best bound found, one tile being <see cref="Relaxed.Unit"/>; zero for what is not wanted.</param>
/// <param name="Used">The fills used and how much of each.</param>
internal sealed record Cover(double Tiles, long[] Weights, IReadOnlyList<(int[] Fill, double Level)> Used);

/// <summary>
/// Covers what is wanted with tiles taken in parts, making fills as they are needed. Fills once made are kept for the next
/// time.
/// </summary>
internal sealed class Relaxed
{
    /// <summary>What a whole tile weighs: weights are whole numbers, so that what they prove is exact.</summary>
    public const long Unit = 1_000_000_000;

    private readonly Wanted _wanted;
    private readonly TileFits _fits;
    private readonly TileFill _fill;
    private readonly Serving _serving;
    private readonly List<int[]> _known = [];
    private readonly HashSet<string> _keys = new(StringComparer.Ordinal);

    public Relaxed(Wanted wanted, TileFits fits, TileFill fill, Serving serving)
    {
        (_wanted, _fits, _fill, _serving) = (wanted, fits, fill, serving);
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
    /// <param name="stop">Whether to leave off before the end.</param>
    public Cover ForBound(int[] want, Func<bool> stop) => Solve(want, kinds => _serving.Nearest(kinds), false, stop);

    /// <summary>For the fills: nothing serves for anything else, and it goes on to the end, but not for ever.</summary>
    public Cover ForFills(int[] want, Func<bool> stop)
    {
        var end = _fill.Work + 400_000;
        return Solve(want, _ => [], true, () => _fill.Work > end || stop());
    }

    private Cover Solve(int[] want, Func<int[], List<(int Large, int Small)>> serving, bool toTheEnd, Func<bool> stop)
    {
        var kinds = Enumerable.Range(0, want.Length).Where(kind => want[kind] > 0).ToArray();
        var program = new CoverProgram(want, Array.ConvertAll(kinds, kind => Alone(kind, want[kind])), kinds);
        var columns = new Columns(program, want.Length, serving(kinds));
        columns.Add(_known.Select(fill => Trimmed(fill, want)).Where(fill => fill.Length > 0));
        var pricing = new Pricing(_fill, want, columns, toTheEnd);
        columns.Settle();
        while (!stop() && pricing.Next()) columns.Settle();
        Know(columns.Fills);
        return new(program.Tiles, pricing.Weights, program.Used.ToList());
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
