using Gaugerod.Engine.Cutting;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>What must hold of every pairing, said without the code that makes it.</summary>
internal static class PairingCase
{
    public static bool MayShare(Strip a, Strip b, long tile, long kerf, bool turnable) =>
        (turnable || a.AtNearEnd != b.AtNearEnd) && a.Need.Steps + kerf + b.Need.Steps <= tile;

    /// <summary>Partners name each other and may share, the tiles are as many as the proof says, and the proof holds.</summary>
    public static void Holds(Paired paired, Strip[] strips, long tile, long kerf, bool turnable)
    {
        var alone = 0;
        for (var i = 0; i < strips.Length; i++)
        {
            var other = paired.Partner[i];
            if (other == Pairing.Alone)
            {
                alone++;
                continue;
            }

            Assert.Equal(i, paired.Partner[other]);
            Assert.NotEqual(i, other);
            Assert.True(MayShare(strips[i], strips[other], tile, kerf, turnable));
        }

        Assert.Equal(paired.Proof.Tiles, alone + ((strips.Length - alone) / 2));
        Assert.Null(turnable
            ? PairingChecker.AnyTwo(paired.Proof, Needs(strips, null), tile, kerf)
            : PairingChecker.Opposite(paired.Proof, Needs(strips, true), Needs(strips, false), tile, kerf));
    }

    public static int LeastByTryingAll(Strip[] strips, long tile, long kerf, bool turnable) =>
        LeastByTryingAll(strips.Length, (i, j) => MayShare(strips[i], strips[j], tile, kerf, turnable));

    /// <summary>The fewest tiles for so many pieces, two of which may share: every way of pairing them is tried.</summary>
    public static int LeastByTryingAll(int pieces, Func<int, int, bool> mayShare)
    {
        return Least((1 << pieces) - 1);

        int Least(int left)
        {
            if (left == 0) return 0;
            var first = int.TrailingZeroCount(left);
            var rest = left & ~(1 << first);
            var best = 1 + Least(rest);
            for (var j = first + 1; j < pieces; j++)
            {
                if ((rest >> j & 1) == 1 && mayShare(first, j)) best = Math.Min(best, 1 + Least(rest & ~(1 << j)));
            }

            return best;
        }
    }

    private static long[] Needs(Strip[] strips, bool? nearEnd) =>
        [.. strips.Where(s => nearEnd is null || s.AtNearEnd == nearEnd).Select(s => s.Need.Steps).Order()];
}
