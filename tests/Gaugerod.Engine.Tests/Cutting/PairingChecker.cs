using Gaugerod.Engine.Cutting;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>
/// Reads a pairing's proof and the needs, the smallest first, and nothing else: one pass, no pairing. It says what is
/// wrong, or null when the proof holds.
/// </summary>
internal static class PairingChecker
{
    /// <summary>Where any two may share. Source of the bound: Tutte 1947 and Berge 1958, from memory.</summary>
    public static string? AnyTwo(PairingProof proof, IReadOnlyList<long> needs, long tile, long kerf)
    {
        if (!Ascends(needs)) return "the needs do not ascend";
        if (proof.RemovedAtNearEnd is not null) return "the proof is for a tile with a direction";
        if (proof.Pieces != needs.Count || proof.Removed < 0 || proof.Removed > needs.Count) return "the counts do not fit the pieces";

        // Every piece that is left and fits with the smallest left is in one group with it; any other is alone.
        var (group, odd) = (0, 0);
        for (var i = proof.Removed; i < needs.Count; i++)
        {
            if (i == proof.Removed || needs[proof.Removed] + needs[i] + kerf <= tile) group++;
            else odd++;
        }

        odd += group % 2;
        return odd != proof.OddGroups ? $"{odd} odd groups, not {proof.OddGroups}" : Count(proof);
    }

    /// <summary>Where only different ends may share. Source of the bound: Koenig 1931, from memory.</summary>
    public static string? Opposite(PairingProof proof, IReadOnlyList<long> near, IReadOnlyList<long> far, long tile, long kerf)
    {
        if (!Ascends(near) || !Ascends(far)) return "the needs do not ascend";
        if (proof.RemovedAtNearEnd is not { } nearGone) return "the proof is for a tile without a direction";
        var farGone = proof.Removed - nearGone;
        var pieces = near.Count + far.Count;
        if (proof.Pieces != pieces || nearGone < 0 || nearGone > near.Count || farGone < 0 || farGone > far.Count) return "the counts do not fit the pieces";
        if (nearGone < near.Count && farGone < far.Count && near[nearGone] + far[farGone] + kerf <= tile) return "two that are left could share";
        return pieces - proof.Removed != proof.OddGroups ? "what is left are not all groups alone" : Count(proof);
    }

    // Of every odd group one piece stays over; a removed piece can take care of one of those.
    private static string? Count(PairingProof proof)
    {
        var alone = Math.Max(0, proof.OddGroups - proof.Removed);
        var least = alone + ((proof.Pieces - alone + 1) / 2);
        return proof.Tiles == least ? null : $"this proves {least} tiles, not {proof.Tiles}";
    }

    private static bool Ascends(IReadOnlyList<long> needs)
    {
        for (var i = 1; i < needs.Count; i++)
        {
            if (needs[i] < needs[i - 1]) return false;
        }

        return true;
    }
}
