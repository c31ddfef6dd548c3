using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>What a plan claims to have proved hangs on the order in which things count; docs/lines.md says how.</summary>
public sealed class ProofTests
{
    private static readonly Job Wall = OneWall.Job(
        Length.FromMillimetres(2400), Length.FromMillimetres(1200), Length.FromMillimetres(3), Length.FromMillimetres(300),
        JointRange.Only(Length.FromMillimetres(3)), Tape.Millimetres);

    [Fact]
    public void A_true_wall_in_the_usual_order_has_a_proof_that_nothing_is_better() =>
        Assert.Equal(ProofKind.Exact, OneWall.Plan(Wall).Proof.Kind);

    [Theory]
    [InlineData(Criterion.Mirror)]
    [InlineData(Criterion.Tiles)]
    public void Nothing_is_claimed_where_something_not_searched_through_counts_before_the_smallest_cut(Criterion first)
    {
        var order = Wall.Runs[0].Order.Where(criterion => criterion != first).Prepend(first).ToSequence();
        var proof = OneWall.Plan(Wall with { Runs = [Wall.Runs[0] with { Order = order }] }).Proof;
        Assert.Equal(ProofKind.None, proof.Kind);
        Assert.DoesNotContain("No place", proof.Words, StringComparison.Ordinal);
    }
}
