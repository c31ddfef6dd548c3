using CsCheck;
using Gaugerod.Engine.Sharing;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>Battens cut to length, against trying every way to share them out.</summary>
public sealed class BarsTests
{
    // By hand, in inches: 60 and 36 make one of 96; the other 60 takes a second.
    [Fact]
    public void Two_walls_of_60_and_one_of_36_inches_take_two_battens_of_96() => Assert.Equal(2, Bars.Count(96, [60, 60, 36]));

    // By hand: 180 in would be two battens of 96 by their sum; without a joint none gives two pieces of 60.
    [Fact]
    public void Three_walls_of_60_inches_take_three_since_none_has_a_joint() => Assert.Equal(3, Bars.Count(96, [60, 60, 60]));

    [Fact]
    public void What_is_longer_than_a_batten_takes_whole_ones_and_a_rest()
    {
        Assert.Equal([96, 96, 8], Bars.Parts(96, 200));
        Assert.Equal([96, 96], Bars.Parts(96, 192));
        Assert.Equal(3, Bars.Count(96, [96, 96, 8]));
    }

    [Fact]
    public void No_way_of_sharing_takes_fewer() => Gen.Int[1, 100].List[1, 7].Each(
        pieces => Assert.Equal(Fewest([.. pieces], 0, []), Bars.Count(100, [.. pieces.Select(piece => (long)piece)])), 300);

    // Every piece into every bar that is begun, or into a new one.
    private static int Fewest(int[] pieces, int at, List<int> left)
    {
        if (at == pieces.Length) return left.Count;
        var best = int.MaxValue;
        for (var i = 0; i < left.Count; i++)
        {
            if (left[i] < pieces[at]) continue;
            left[i] -= pieces[at];
            best = Math.Min(best, Fewest(pieces, at + 1, left));
            left[i] += pieces[at];
        }

        left.Add(100 - pieces[at]);
        best = Math.Min(best, Fewest(pieces, at + 1, left));
        left.RemoveAt(left.Count - 1);
        return best;
    }
}
