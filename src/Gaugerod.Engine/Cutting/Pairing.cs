using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Cutting;

/// <summary>A piece that runs from one side of the tile to the opposite one and keeps one of the two ends between them.</summary>
/// <param name="Need">How much of the tile it takes, from the end it keeps; more than zero.</param>
/// <param name="AtNearEnd">Whether it keeps the tile's left or lower end; of no account where the tile may be turned half round.</param>
internal readonly record struct Strip(Length Need, bool AtNearEnd);

/// <summary>Which strips share a tile.</summary>
/// <param name="Partner">For every strip the place of the one it shares with, or <see cref="Pairing.Alone"/>.</param>
/// <param name="Proof">Why no fewer tiles would do.</param>
internal sealed record Paired(Sequence<int> Partner, PairingProof Proof);

/// <summary>
/// The least number of tiles for strips, at most two to a tile: a largest matching in a threshold graph, exact by two
/// pointers. The arguments stand in docs/cutting.md.
/// </summary>
internal static class Pairing
{
    /// <summary>The partner of a strip that has a tile to itself.</summary>
    public const int Alone = -1;

    /// <summary>Pairs strips; two may share when both and the kerf between them are at most the tile's length.</summary>
    /// <param name="pool">What to call the strips in the proof.</param>
    /// <param name="strips">The strips; which of two equal ones is paired is decided by their order.</param>
    /// <param name="tile">The tile's length from end to end.</param>
    /// <param name="kerf">What the blade takes between two strips.</param>
    /// <param name="turnable">Whether the tile may be turned half round, so that any two strips may share.</param>
    /// <exception cref="ArgumentOutOfRangeException">A strip takes nothing of the tile, or the kerf is negative.</exception>
    public static Paired Find(string pool, ReadOnlySpan<Strip> strips, Length tile, Length kerf, bool turnable)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(kerf.Steps, nameof(kerf));
        var partner = new int[strips.Length];
        Array.Fill(partner, Alone);
        var room = tile.Steps - kerf.Steps;
        var proof = turnable
            ? AnyTwo(Sorted(strips, null), room, partner)
            : Opposite(Sorted(strips, true), Sorted(strips, false), room, partner);
        return new(Sequence.Of<int>(partner), proof with { Pool = pool });
    }

    // Largest with smallest while they fit. When they do not, the largest fits with none that is left: it stays alone.
    private static PairingProof AnyTwo((long Need, int Index)[] sorted, long room, int[] partner)
    {
        var (low, high) = (0, sorted.Length - 1);

        // Where the last one stayed alone: the pieces below removed are all used up as partners, those from loners on
        // fit with none that is not, and the pieces between all fit with the smallest of them.
        var (removed, loners) = (0, sorted.Length);
        while (low < high)
        {
            if (sorted[low].Need + sorted[high].Need <= room)
            {
                Join(partner, sorted[low++].Index, sorted[high--].Index);
            }
            else
            {
                (removed, loners) = (low, high--);
            }
        }

        var odd = sorted.Length - loners + ((loners - removed) % 2);
        return Proof(sorted.Length, removed, odd);
    }

    // From the largest near piece down, each takes the smallest far piece not yet taken. What fits a larger near piece
    // also fits every smaller one, so nothing is lost by serving the larger first.
    private static PairingProof Opposite((long Need, int Index)[] near, (long Need, int Index)[] far, long room, int[] partner)
    {
        var used = 0;

        // Where the last near piece stayed alone: that one and all larger ones fit only with the far pieces used so far.
        var (spared, taken) = (near.Length, 0);
        for (var i = near.Length - 1; i >= 0; i--)
        {
            if (used < far.Length && near[i].Need + far[used].Need <= room)
            {
                Join(partner, near[i].Index, far[used++].Index);
            }
            else
            {
                (spared, taken) = (i, used);
            }
        }

        var pieces = near.Length + far.Length;
        var removed = spared + taken;
        return Proof(pieces, removed, pieces - removed) with { RemovedAtNearEnd = spared };
    }

    private static PairingProof Proof(int pieces, int removed, int odd) =>
        new("", pieces, removed, odd, pieces - ((pieces + removed - odd) / 2));

    private static void Join(int[] partner, int a, int b) => (partner[a], partner[b]) = (b, a);

    private static (long Need, int Index)[] Sorted(ReadOnlySpan<Strip> strips, bool? nearEnd)
    {
        var list = new List<(long Need, int Index)>(strips.Length);
        for (var i = 0; i < strips.Length; i++)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(strips[i].Need.Steps, nameof(strips));
            if (nearEnd is null || strips[i].AtNearEnd == nearEnd) list.Add((strips[i].Need.Steps, i));
        }

        list.Sort();
        return [.. list];
    }
}
