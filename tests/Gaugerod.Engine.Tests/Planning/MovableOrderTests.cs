using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>What the tool wishes for things that may be moved stands behind what the setter asks and behind slivers.</summary>
public sealed class MovableOrderTests
{
    [Fact]
    public void No_thing_is_brought_to_a_joint_at_the_price_of_a_sliver_or_of_what_was_asked() => MovableRoom.Any(1, 6).EachDear(
        room =>
        {
            var (open, asked) = (room.Open(), room.AsAsked());
            if (JobCheck.Check(open).Count > 0 || JobCheck.Check(asked).Count > 0) return;
            var (moved, left) = (Planner.Plan(open).Runs[0].Best.Score, Planner.Plan(asked).Runs[0].Best.Score);
            Assert.True(
                (moved.MustsMissed, moved.WishesMissed, moved.Slivers).CompareTo((left.MustsMissed, left.WishesMissed, left.Slivers)) <= 0,
                $"moved {moved}, left where it was asked {left}");
        },
        Cases.IsLong ? 120 : 30);

    [Fact]
    public void A_joint_that_the_setter_asks_for_himself_is_listed_once()
    {
        var room = new MovableRoom(1500, 1800, (200, 100), new BondRequest.Grid(Lay.Level), [500, 900, 410, 310, 300, 600], [(60, 60), (60, 60), null, null, (60, 60), null], null);
        var job = room.Open();
        job = job with { Runs = [job.Runs[0] with { Wants = [new Want.JointOnEdge(new("wall", "niche.bottom"), Must: false, 3), new Want.FullCourse(new("wall", "bench"), Must: true, 1)] }] };
        var wants = Planner.Plan(job).Runs[0].Best.Wants;

        Assert.Single(wants, outcome => outcome.Text.Contains("the bottom of the niche", StringComparison.Ordinal));
        Assert.Single(wants, outcome => outcome.Text.Contains("the bench", StringComparison.Ordinal));
        Assert.Single(wants, outcome => outcome.Text.Contains("the left side of the niche", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sliver_is_never_given_for_a_joint_that_nobody_asked_for_whatever_the_order()
    {
        var (sliver, joint) = (Score.Perfect with { Slivers = 1 }, Score.Perfect with { UnaskedMissed = 4 });
        Criterion[] last = [Criterion.Musts, Criterion.Smallest, Criterion.Mirror, Criterion.Cuts, Criterion.Wishes, Criterion.Tiles, Criterion.Slivers];

        Assert.True(new ScoreOrder(ScoreOrder.Usual).Compare(joint, sliver) < 0);
        Assert.True(new ScoreOrder([.. last]).Compare(joint, sliver) < 0);
        Assert.True(new ScoreOrder(ScoreOrder.Usual).Compare(joint, Score.Perfect with { SmallestCut = default }) > 0);
    }
}
