using CsCheck;
using Gaugerod.Engine.Cutting;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>Sets small enough to sketch on an offcut (common practice, no source), and every set against all ways to pair it.</summary>
public sealed class PairingTests
{
    private static readonly Gen<Strip[]> FewStrips =
        Gen.Select(Gen.Long[1, 30], Gen.Bool, (need, near) => new Strip(Length.FromSteps(need), near)).Array[0, 9];

    [Fact]
    public void Two_pieces_and_the_kerf_that_fill_the_tile_exactly_share_it()
    {
        var paired = AnyTwo([148, 149], 300, 3);
        Assert.Equal([1, 0], paired.Partner);
        Assert.Equal(1, paired.Proof.Tiles);
    }

    [Fact]
    public void One_step_more_and_each_takes_a_tile()
    {
        var paired = AnyTwo([149, 149], 300, 3);
        Assert.Equal([Pairing.Alone, Pairing.Alone], paired.Partner);
        Assert.Equal(2, paired.Proof.Tiles);
    }

    [Fact]
    public void A_piece_as_wide_as_the_tile_never_shares_even_without_kerf() =>
        Assert.Equal([Pairing.Alone, Pairing.Alone], AnyTwo([300, 1], 300, 0).Partner);

    [Fact]
    public void Five_pieces_of_which_two_are_too_wide_for_each_other_take_three_tiles()
    {
        // 250 goes with 40, 200 with 90, and 120 stays over.
        var paired = AnyTwo([200, 40, 120, 250, 90], 300, 3);
        Assert.Equal(3, paired.Proof.Tiles);
        Assert.Equal([4, 3, Pairing.Alone, 1, 0], paired.Partner);
    }

    [Fact]
    public void Three_wide_pieces_and_one_narrow_take_three_tiles_since_the_narrow_one_helps_only_one()
    {
        var proof = AnyTwo([200, 200, 200, 50], 300, 3).Proof;
        Assert.Equal(new PairingProof("p", 4, 1, 3, 3), proof);
    }

    [Fact]
    public void Where_the_tile_has_a_direction_two_left_ends_never_share()
    {
        Strip[] lefts = [new(Length.FromSteps(50), true), new(Length.FromSteps(60), true)];
        var paired = Pairing.Find("p", lefts, Length.FromSteps(300), Length.FromSteps(3), turnable: false);
        Assert.Equal([Pairing.Alone, Pairing.Alone], paired.Partner);
        Assert.Equal(new PairingProof("p", 2, 0, 2, 2) { RemovedAtNearEnd = 0 }, paired.Proof);
    }

    [Fact]
    public void Where_the_tile_has_a_direction_a_left_end_shares_with_a_right_end()
    {
        Strip[] both = [new(Length.FromSteps(50), true), new(Length.FromSteps(247), false), new(Length.FromSteps(247), false)];
        var paired = Pairing.Find("p", both, Length.FromSteps(300), Length.FromSteps(3), turnable: false);
        Assert.Equal([1, 0, Pairing.Alone], paired.Partner);
        Assert.Equal(2, paired.Proof.Tiles);
    }

    [Fact]
    public void No_pieces_take_no_tile()
    {
        Assert.Equal(0, AnyTwo([], 300, 3).Proof.Tiles);
        Assert.Equal(0, Pairing.Find("p", [], Length.FromSteps(300), Length.Zero, turnable: false).Proof.Tiles);
    }

    [Fact]
    public void A_piece_of_no_width_and_a_kerf_below_nothing_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AnyTwo([0], 300, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => AnyTwo([10], 300, -1));
    }

    [Fact]
    public void No_way_of_pairing_takes_fewer_tiles_and_the_proof_holds() =>
        Gen.Select(FewStrips, Gen.Long[20, 32], Gen.Long[0, 3], Gen.Bool).Each(
            (strips, tile, kerf, turnable) =>
            {
                var paired = Pairing.Find("p", strips, Length.FromSteps(tile), Length.FromSteps(kerf), turnable);
                PairingCase.Holds(paired, strips, tile, kerf, turnable);
                Assert.Equal(PairingCase.LeastByTryingAll(strips, tile, kerf, turnable), paired.Proof.Tiles);
            },
            iter: 5000);

    [Fact]
    public void One_more_piece_never_takes_fewer_tiles_and_at_most_one_more() =>
        Gen.Select(Gen.Select(Gen.Long[1, 300], Gen.Bool, (need, near) => new Strip(Length.FromSteps(need), near)).Array[1, 80], Gen.Bool).Each(
            (strips, turnable) =>
            {
                var (tile, kerf) = (Length.FromSteps(300), Length.FromSteps(3));
                var before = Pairing.Find("p", strips.AsSpan(1), tile, kerf, turnable).Proof.Tiles;
                var after = Pairing.Find("p", strips, tile, kerf, turnable).Proof.Tiles;
                Assert.InRange(after, before, before + 1);
            },
            iter: 2000);

    [Fact]
    public void The_checker_finds_a_proof_that_was_tampered_with()
    {
        long[] needs = [50, 200, 200, 200];
        var proof = AnyTwo([.. needs], 300, 3).Proof;
        Assert.Null(PairingChecker.AnyTwo(proof, needs, 300, 3));
        Assert.NotNull(PairingChecker.AnyTwo(proof with { Tiles = 4 }, needs, 300, 3));
        Assert.NotNull(PairingChecker.AnyTwo(proof with { Removed = 2 }, needs, 300, 3));
        Assert.NotNull(PairingChecker.AnyTwo(proof with { OddGroups = 4 }, needs, 300, 3));
        Assert.NotNull(PairingChecker.AnyTwo(proof, needs, 450, 3));

        var directed = new PairingProof("p", 4, 1, 3, 3) { RemovedAtNearEnd = 1 };
        Assert.Null(PairingChecker.Opposite(directed, [50, 200], [200, 200], 300, 3));
        Assert.NotNull(PairingChecker.Opposite(directed, [50, 200], [90, 200], 300, 3));
        Assert.NotNull(PairingChecker.Opposite(directed with { RemovedAtNearEnd = 0 }, [50, 200], [200, 200], 300, 3));
    }

    private static Paired AnyTwo(long[] needs, long tile, long kerf) => Pairing.Find(
        "p", [.. needs.Select(n => new Strip(Length.FromSteps(n), true))], Length.FromSteps(tile), Length.FromSteps(kerf), turnable: true);
}
