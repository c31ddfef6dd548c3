using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>A wall of 2,000 by 1,000 mm, its trim 50 mm wide with 3 mm beside it and 3 mm between pieces; lengths reckoned by hand, what setters do is common practice, no source.</summary>
public sealed class TrimCornerTests
{
    [Fact]
    public void Two_trims_on_a_mitre_both_reach_the_corner_of_the_wall_one_left_hand_and_one_right()
    {
        var (right, head) = RightAndHead(TrimCorner.Mitred, TrimCorner.Mitred);
        // To the long points: from the field's foot, a joint of 3 over the floor, to the top; and from the corner to the field's left side.
        Assert.Equal((Mm(997), Mm(1997)), (right.Length, head.Length));
        Assert.Equal((MitreHand.Left, MitreHand.Right), (right.Pieces[^1].Hand, head.Pieces[0].Hand));
        Assert.Equal((Mm(50), Mm(50)), (right.Pieces[^1].MitreTakes, head.Pieces[0].MitreTakes));
        Assert.Contains(new Point(Mm(2000), Mm(1000)), right.Pieces[^1].Outline.Points);
        Assert.Contains(new Point(Mm(2000), Mm(1000)), head.Pieces[0].Outline.Points);
        Assert.Contains(new Point(Mm(1950), Mm(950)), head.Pieces[0].Outline.Points);
    }

    [Fact]
    public void The_trim_that_covers_shows_its_factory_end_and_the_other_stops_a_joint_before_it()
    {
        var (right, head) = RightAndHead(TrimCorner.Covers, null);
        Assert.Equal((TrimEnd.Covers, TrimEnd.Butts), (right.End, head.Begin));
        Assert.Equal((Mm(997), Mm(1997 - 50 - 3)), (right.Length, head.Length));
        Assert.Equal(PieceEnd.Factory, right.Pieces[^1].End);
        (right, head) = RightAndHead(TrimCorner.Butts, null);
        Assert.Equal((TrimEnd.Butts, TrimEnd.Covers), (right.End, head.Begin));
        Assert.Equal((Mm(997 - 53), Mm(1997)), (right.Length, head.Length));
    }

    [Fact]
    public void A_corner_piece_takes_its_reach_and_a_joint_from_both()
    {
        var (right, head) = RightAndHead(null, null, Bullnose with { Outside = Mm(80) });
        Assert.Equal((TrimEnd.CornerPiece, TrimEnd.CornerPiece), (right.End, head.Begin));
        Assert.Equal((Mm(997 - 83), Mm(1997 - 83)), (right.Length, head.Length));
    }

    [Fact]
    public void A_frame_round_a_niche_is_mitred_with_its_long_points_away_from_the_niche()
    {
        string[] sides = ["bottom", "right", "top", "left"];
        var niche = new Opening("niche", Ring.Of(new Box(Mm(800), Mm(400), Mm(1100), Mm(700))), [.. sides.Select(side => Trimmed(side, Bullnose, TrimJoints.Centred))]);
        var plan = Plan(new("foot", EdgeKind.Floor), new("right", EdgeKind.Fixture), new("head", EdgeKind.Fixture), [niche]);
        Assert.Equal(4, plan.Lines.Count);
        Assert.All(plan.Lines, line => Assert.Equal((Mm(400), TrimEnd.Mitre, TrimEnd.Mitre), (line.Length, line.Begin, line.End)));
        Assert.All(plan.Lines, line => Assert.Equal((MitreHand.Right, MitreHand.Left), (line.Pieces[0].Hand, line.Pieces[^1].Hand)));
    }

    [Fact]
    public void Three_trims_over_a_sill_end_at_it_without_a_mitre()
    {
        string[] sides = ["right", "top", "left"];
        var niche = new Opening("niche", Ring.Of(new Box(Mm(800), Mm(400), Mm(1100), Mm(700))), [new("bottom", EdgeKind.Fixture), .. sides.Select(side => Trimmed(side, Bullnose, TrimJoints.Free))]);
        var lines = Plan(new("foot", EdgeKind.Floor), new("right", EdgeKind.Fixture), new("head", EdgeKind.Fixture), [niche]).Lines;
        var left = Assert.Single(lines, line => line.Edge == "niche.left");
        var right = Assert.Single(lines, line => line.Edge == "niche.right");
        // Both uprights: from the long point 50 over the niche to a joint above the tile under it, which stands a joint of 3 under the sill.
        Assert.Equal([TrimEnd.Hidden, TrimEnd.Mitre], new[] { left.Begin, left.End }.Order());
        Assert.Equal((Mm(350), Mm(350)), (left.Length, right.Length));
        Assert.Equal(3, lines.Count);
    }

    [Fact]
    public void A_trim_stops_in_the_open_with_a_factory_end_or_with_a_stop()
    {
        var head = Assert.Single(Plan(new("foot", EdgeKind.Floor), new("right", EdgeKind.Free), Trimmed("head", Bullnose, TrimJoints.Free), []).Lines);
        Assert.Equal((TrimEnd.Stop, PieceEnd.Factory, Mm(1997)), (head.Begin, head.Pieces[0].Begin, head.Length));
        head = Assert.Single(Plan(new("foot", EdgeKind.Floor), new("right", EdgeKind.Free), Trimmed("head", Bullnose, TrimJoints.Free), [], Bullnose with { Stop = Mm(70) }).Lines);
        Assert.Equal((TrimEnd.CornerPiece, Mm(1997 - 73), 1), (head.Begin, head.Length, head.CornerPieces));
    }

    /// <summary>Half a mark of 1 mm is the most that is left to a joint.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1600, 0)]
    [InlineData(-1600, 0)]
    [InlineData(1601, 2)]
    [InlineData(-1601, 1)]
    public void Nobody_cuts_a_piece_for_less_than_half_a_mark_of_the_tape(long over, int cuts)
    {
        // Two pieces of 297 and a joint of 3, and a joint of 3 at the left corner.
        var job = Job(
            Ring.Of(new Box(Length.Zero, Length.Zero, Mm(600) + Length.FromSteps(over), Mm(1000))),
            [new("foot", EdgeKind.Floor), new("right", EdgeKind.Free), Trimmed("head", Bullnose, TrimJoints.Free), new("left", EdgeKind.InsideCorner)], [], Bullnose,
            new("tile", Mm(197), Mm(197), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
        var line = Assert.Single(Planner.Plan(job).Trims.Lines);
        Assert.Equal(Mm(597) + Length.FromSteps(over), line.Length);
        Assert.Equal((cuts, line.Length), (line.Ways[0].Cuts, line.Pieces[^1].To));
    }

    [Fact]
    public void Two_that_both_want_to_cover_are_told_of()
    {
        var plan = Plan(new("foot", EdgeKind.Floor), Trimmed("right", Bullnose, TrimJoints.Free, null, TrimCorner.Covers), Trimmed("head", Bullnose, TrimJoints.Free, null, TrimCorner.Covers), []);
        Assert.Equal("Both trims are to cover the other; right is taken to.", Assert.Single(plan.Findings, finding => finding.Rule == "trim-corner").Text);
    }

    [Fact]
    public void All_four_sides_of_a_niche_come_from_one_bar_where_they_go_into_it()
    {
        // Four sides of 340 mm to the long points, cut from 2,500 mm with three cuts of 2 mm between.
        var bar = Bullnose with { Kind = TrimKind.Profile, ByBar = true, Stock = Mm(2500), Width = Mm(20), Joint = Length.Zero };
        string[] sides = ["bottom", "right", "top", "left"];
        var niche = new Opening("niche", Ring.Of(new Box(Mm(800), Mm(400), Mm(1100), Mm(700))), [.. sides.Select(side => Trimmed(side, bar, TrimJoints.Unbroken))]);
        var plan = Plan(new("foot", EdgeKind.Floor), new("right", EdgeKind.Fixture), new("head", EdgeKind.Fixture), [niche], bar);
        Assert.Equal(new TrimStock("trim", 1, 1, 0), Assert.Single(plan.Stocks));
        Assert.Empty(plan.Findings);
    }

    private static (PlannedTrim Right, PlannedTrim Head) RightAndHead(TrimCorner? right, TrimCorner? head, TrimProduct? product = null)
    {
        var lines = Plan(new("foot", EdgeKind.Floor), Trimmed("right", Bullnose, TrimJoints.Free, null, right), Trimmed("head", Bullnose, TrimJoints.Free, null, head), [], product).Lines;
        return (lines.Single(line => line.Edge == "right"), lines.Single(line => line.Edge == "head"));
    }

    private static TrimPlan Plan(Edge foot, Edge right, Edge head, Plane.Sequence<Opening> openings, TrimProduct? product = null)
    {
        var job = Job(
            Ring.Of(new Box(Length.Zero, Length.Zero, Mm(2000), Mm(1000))), [foot, right, head, new("left", EdgeKind.InsideCorner)], openings, product ?? Bullnose,
            new("tile", Mm(197), Mm(197), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
        Assert.Empty(JobCheck.Check(job));
        return Planner.Plan(job).Trims;
    }
}
