using CsCheck;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Lines;

/// <summary>
/// The search against the plain way: every place on a grid of 1/64 in, or of 1/4 mm, scored alike. Rooms are two to six
/// small tiles across, so that the sweep can be afforded: nothing in either way of looking depends on how large a tile is.
/// GAUGEROD_LONG=1 sweeps larger tiles.
/// </summary>
public sealed class SearchAgainstSweepTests(ITestOutputHelper output)
{
    private const long Sixtyfourth = 1270;
    private const long QuarterMillimetre = 800;

    private static readonly Gen<(Limits, long)> Rules =
        from half in Gen.Bool
        from least in Gen.Bool
        from inches in Gen.Bool
        select (new Limits(least ? Length.FromMillimetres(6) : null, Length.FromMillimetres(12), half), inches ? Sixtyfourth : QuarterMillimetre);

    [Fact]
    public void On_square_rooms_the_search_is_never_worse_than_a_sweep_and_one_with_the_critical_offsets_ties_it() =>
        output.WriteLine(Swept(square: true, 200).ToString());

    [Fact]
    public void On_crooked_rooms_no_sweep_beats_the_bound_or_meets_more_of_what_was_asked()
    {
        var tally = Swept(square: false, 100);
        output.WriteLine(tally.ToString());
        if (Cases.Seed != Cases.Everyday) return;

        // docs/lines.md says why it may be otherwise in other rooms: in none of these is a swept place ahead in the order.
        Assert.Equal(0, tally.Behind);
        Assert.Equal(Length.Zero, tally.MostBehind);
    }

    /// <summary>What is taken off at an edge is drawn for it: up to 8 mm, of tiles of 45 mm and less, so that an optimum often stands elsewhere than with none.</summary>
    [Fact]
    public void With_smallest_cuts_compared_at_their_worst_no_sweep_of_square_rooms_is_better()
    {
        var (gate, other) = (new Lock(), 0);
        Gen.Select(Small(square: true, 45), Gen.Long[0, 8 * 3200].Array[5]).EachDear(
            given =>
            {
                var (((run, rules), off), plain) = (given, new SweptRoom(given.Item1.Run, given.Item1.Rules.Limits));
                var room = new SweptRoom(run, rules.Limits, edge => Length.FromSteps(off[edge % 5]));
                room.SweepGrid(rules.Grid);
                Assert.True(room.AgainstSweep() <= 0, room.ToString());
                room.SweepCriticalOffsets();
                Assert.True(room.AgainstSweep() <= 0, room.ToString());
                Assert.NotEqual(ProofKind.None, room.Found.Proof.Kind);
                Assert.True(room.Found.Proof.Bound >= room.Found.Best.Score.AtWorst && room.Found.Proof.Bound <= Length.Max(run.Product.Width, run.Product.Height));
                if (room.Found.Proof.Kind == ProofKind.Exact)
                {
                    // "No better place exists" speaks of the tiles to buy as well.
                    room.SweepWherePiecesShare();
                    Assert.True(room.AgainstSweep() <= 0, room.ToString());
                    if (room.AgainstSweep() == 0) Assert.True(room.Found.Best.Score.Tiles <= room.TilesOfTies().Min(), room.ToString());
                }

                lock (gate) other += plain.Found.Best.Score.SmallestCut > room.Found.Best.Score.SmallestCut ? 1 : 0;
            },
            Cases.IsLong ? 200 : 50);
        output.WriteLine($"the smallest cut as planned is given up in {other}");
        Assert.True(other > 5);
    }

    [Fact]
    public void With_smallest_cuts_compared_at_their_worst_no_sweep_of_60_crooked_rooms_beats_the_bound() =>
        Gen.Select(Small(square: false, 45), Gen.Long[0, 8 * 3200].Array[5]).EachDear(
            given =>
            {
                var ((run, rules), off) = given;
                var room = new SweptRoom(run, rules.Limits, edge => Length.FromSteps(off[edge % 5]));
                room.SweepGrid(rules.Grid);
                var (mine, plain) = (room.Found.Best.Score, room.Sweep);
                var asked = (mine.MustsMissed, mine.WishesMissed).CompareTo((plain.MustsMissed, plain.WishesMissed));
                Assert.True(asked <= 0, room.ToString());
                if (asked == 0) Assert.True(plain.Judged <= room.Found.Proof.Bound, room.ToString());
            },
            60);

    /// <summary>Rooms of other seeds in which the search once fell behind its own proof.</summary>
    [Theory]
    [InlineData(true, 3, 86)]
    [InlineData(true, 3, 121)]
    [InlineData(true, 4, 120)]
    [InlineData(true, 5, 38)]
    [InlineData(false, 3, 16)]
    public void A_room_that_once_broke_the_proof_keeps_to_it(bool square, ulong seed, int number) =>
        Check(Small(square, 45).Drawn(seed, number), square, new());

    private static SweepTally Swept(bool square, int count)
    {
        var tally = new SweepTally();
        Small(square, Cases.IsLong ? 150 : 45).EachDear(given => Check(given, square, tally), count);
        return tally;
    }

    private static Gen<(RandomRun Run, (Limits Limits, long Grid) Rules)> Small(bool square, int size) => Gen.Select(RandomRooms.Small(square, 2, size), Rules);

    private static void Check((RandomRun Run, (Limits Limits, long Grid) Rules) given, bool square, SweepTally tally)
    {
        var room = new SweptRoom(given.Run, given.Rules.Limits);
        room.SweepGrid(given.Rules.Grid);
        tally.Add(room);
        if (square) CheckSquare(room, tally);
        else CheckCrooked(room);
    }

    private static void CheckSquare(SweptRoom room, SweepTally tally)
    {
        Assert.True(room.AgainstSweep() <= 0, room.ToString());
        Assert.NotEqual(ProofKind.None, room.Found.Proof.Kind);

        room.SweepCriticalOffsets();
        Assert.True(room.AgainstSweep() == 0, room.ToString());
        if (room.Found.Proof.Kind != ProofKind.Exact) return;

        // "No better place exists" speaks of the tiles to buy as well.
        room.SweepWherePiecesShare();
        Assert.True(room.AgainstSweep() == 0, room.ToString());
        var tiles = room.TilesOfTies();
        tally.AddTies(tiles.Count);
        Assert.True(room.Found.Best.Score.Tiles <= tiles.Min(), $"{room}\ntiles where all else ties: {string.Join(' ', tiles)}");
    }

    private static void CheckCrooked(SweptRoom room)
    {
        // What was asked for is never missed more often; what the proof says of the smallest cut is true. In how many rooms
        // the sweep still does better in the whole order, by a sliver or within the bound, the tally says.
        var (mine, plain) = (room.Found.Best.Score, room.Sweep);
        var asked = (mine.MustsMissed, mine.WishesMissed).CompareTo((plain.MustsMissed, plain.WishesMissed));
        Assert.True(asked <= 0, room.ToString());
        if (asked == 0) Assert.True(plain.SmallestCut <= room.Found.Proof.Bound, room.ToString());
    }
}
