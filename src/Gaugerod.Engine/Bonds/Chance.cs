using System.Text;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Numbers that look like chance and are always the same for one word: FNV-1a of the word's UTF-8 (the offset and prime of the
/// 64-bit variant) starts a SplitMix64. Both are published as free for any use; from memory, to be found with their
/// authors, G. Fowler, L. C. Noll and K.-P. Vo, and S. Vigna.
/// </summary>
internal sealed class Chance
{
    private ulong _state = 14695981039346656037;

    public Chance(string word)
    {
        foreach (var b in Encoding.UTF8.GetBytes(word)) _state = unchecked((_state ^ b) * 1099511628211);
    }

    /// <summary>The next number from zero up to but not including a limit under 2^32.</summary>
    public long Below(long limit)
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            var z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            z ^= z >> 31;
            return (long)((z >> 32) * (ulong)limit >> 32);
        }
    }
}
