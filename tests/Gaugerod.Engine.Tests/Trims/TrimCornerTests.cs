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
    public void A_corner_piece_is_one_and_fills_the_corner_though_two_trims_end_at_it()
    {
        var (right, head) = RightAndHead(null, null, Bullnose with { Outside = Mm(80) });
        Assert.Equal(("tc1", CornerPieceKind.Outside), (right.AtEnd!.Id, right.AtEnd.Kind));
        Assert.Equal(right.AtEnd, head.AtBegin);
        // 80 along the head and down the right, 50 wide.
        var part = Assert.Single(right.AtEnd.Parts);
        Point[] hook = [At(1950, 920), At(2000, 920), At(2000, 1000), At(1920, 1000), At(1920, 950), At(1950, 950)];
        Assert.Equal(hook.OrderBy(p => p.X).ThenBy(p => p.Y), part.Outline.Points.OrderBy(p => p.X).ThenBy(p => p.Y));
        Assert.True(part.Outline.DoubledArea == 2 * (Int128)Mm(1).Steps * Mm(1).Steps * ((80 * 80) - (30 * 30)));
    }

    [Fact]
    public void A_niche_takes_four_corner_pieces_and_they_are_bought_apart_from_stops()
    {
        string[] sides = ["bottom", "right", "top", "left"];
        var bullnose = Bullnose with { Outside = Mm(90), Inside = Mm(70), Stop = Mm(60) };
        var niche = new Opening("niche", Ring.Of(new Box(Mm(800), Mm(400), Mm(1100), Mm(700))), [.. sides.Select(side => Trimmed(side, bullnose, TrimJoints.Centred))]);
        var plan = Plan(new("foot", EdgeKind.Floor), new("right", EdgeKind.Free), Trimmed("head", bullnose, TrimJoints.Free), [niche], bullnose);
        // The field points into the corners of the niche's frame: 400 by 400 outside, a piece of 70 in every corner.
        Assert.All(plan.Lines.Where(line => line.Edge != "head"), line => Assert.Equal(Mm(400 - (2 * 73)), line.Length));
        Assert.Equal([new(CornerPieceKind.Inside, false, 0, 4), new(CornerPieceKind.Stop, false, 0, 1)], Assert.Single(plan.Stocks).CornerPieces);
        var stop = plan.Lines.Single(line => line.Edge == "head").AtBegin!;
        Assert.Equal(Ring.Of(new Box(Mm(1940), Mm(950), Mm(2000), Mm(1000))).Bounds, stop.Parts[0].Outline.Bounds);
    }

    /// <summary>50 over 30 wide at a right angle: the mitre runs from one crossing to the other, 30 along the wide one and 50 along the narrow one. tan 31° = 0.6, tan 59° = 1.66 (trigonometry).</summary>
    [Fact]
    public void Two_widths_meet_on_a_mitre_from_corner_to_corner_with_two_settings_of_the_saw()
    {
        var (plan, right, head) = TwoWidths(30);
        Assert.Equal((TrimEnd.Mitre, TrimEnd.Mitre), (right.End, head.Begin));
        Assert.Equal((Mm(30), Mm(50)), (right.Pieces[^1].MitreTakes, head.Pieces[0].MitreTakes));
        Assert.Contains(At(1950, 970), right.Pieces[^1].Outline.Points);
        Assert.Contains(At(1950, 970), head.Pieces[0].Outline.Points);
        Assert.Contains("the saw is set 31° off square for right and 59° for head", Assert.Single(plan.Findings, finding => finding.Rule == "trim-corner").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mitre_that_no_saw_makes_is_refused_and_the_wider_trim_covers()
    {
        var (plan, right, head) = TwoWidths(20);
        Assert.Equal((TrimEnd.Covers, TrimEnd.Butts), (right.End, head.Begin));
        var finding = Assert.Single(plan.Findings, finding => finding.Rule == "trim-corner");
        Assert.Equal(("These trims cannot be mitred here: the saw would be set 22° off square for right and 68° for head. The nearest that can be had: right covers the other.", "60° off square", "68°"), (finding.Text, finding.Limit, finding.Value));
        // What it names as the nearest is taken without a word.
        Assert.DoesNotContain(TwoWidths(20, TrimCorner.Covers).Plan.Findings, f => f.Rule == "trim-corner");
    }

    [Fact]
    public void A_trim_may_be_mitred_at_one_end_and_cover_at_the_other()
    {
        var head = Trimmed("head", Bullnose, TrimJoints.Free);
        head = head with { Trimmed = head.Trimmed! with { Left = new(TrimCorner.Covers), Right = new(TrimCorner.Mitred) } };
        var line = Plan(new("foot", EdgeKind.Floor), Trimmed("right", Bullnose, TrimJoints.Free), head, [], left: Trimmed("left", Bullnose, TrimJoints.Free)).Lines.Single(line => line.Edge == "head");
        Assert.Equal((TrimEnd.Mitre, TrimEnd.Covers, Mm(2000)), (line.Begin, line.End, line.Length));
    }

    [Fact]
    public void A_trim_that_returns_ends_on_a_mitre_of_its_thickness_and_a_piece_of_the_other_hand_goes_on()
    {
        var head = Trimmed("head", Bullnose, TrimJoints.Free);
        head = head with { Trimmed = head.Trimmed! with { Right = new(null, Mm(90)) } };
        var plan = Plan(new("foot", EdgeKind.Floor), new("right", EdgeKind.Free), head, []);
        var line = Assert.Single(plan.Lines);
        Assert.Equal((TrimEnd.Mitre, PieceEnd.Mitred, MitreHand.Right, Mm(9)), (line.Begin, line.Pieces[0].Begin, line.Pieces[0].Hand!.Value, line.Pieces[0].MitreTakes));
        var turned = Assert.Single(line.Returns);
        Assert.Equal((Mm(90), MitreHand.Left, Mm(9), false), (turned.Length, turned.Hand, turned.MitreTakes, turned.AtLeft));
        Assert.InRange(turned.Stock, 1, plan.Stocks[0].Bought);
        Assert.Empty(plan.Findings);
    }

    [Fact]
    public void A_return_where_another_trim_goes_on_is_left_out_and_said()
    {
        var head = Trimmed("head", Bullnose, TrimJoints.Free);
        head = head with { Trimmed = head.Trimmed! with { Right = new(null, Mm(90)) } };
        var plan = Plan(new("foot", EdgeKind.Floor), Trimmed("right", Bullnose, TrimJoints.Free), head, []);
        Assert.All(plan.Lines, line => Assert.Empty(line.Returns));
        Assert.Equal("A return of 90 mm is asked for at the right end, which goes on along right: nothing can turn there. It is left out; ask for it where the trim ends.", Assert.Single(plan.Findings).Text);
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
        Assert.Equal((TrimEnd.StopPiece, Mm(1997 - 73), CornerPieceKind.Stop), (head.Begin, head.Length, head.AtBegin!.Kind));
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

    [Theory]
    [InlineData(TrimCorner.Covers, TrimCorner.Covers, "Both trims are to cover the other; right is taken to.", TrimEnd.Covers)]
    [InlineData(TrimCorner.Butts, TrimCorner.Butts, "Both trims are to butt against the other; right is taken to cover.", TrimEnd.Covers)]
    [InlineData(TrimCorner.Mitred, TrimCorner.Butts, "One of the two trims is to be mitred and the other is not; the one that is not was followed.", TrimEnd.Covers)]
    [InlineData(TrimCorner.Mitred, TrimCorner.Piece, "One of the two trims is to be mitred and the other to end at a corner piece; the mitre was followed.", TrimEnd.Mitre)]
    [InlineData(TrimCorner.Piece, TrimCorner.Covers, "One of the two trims is to end at a corner piece and the other is not; the one that is not was followed.", TrimEnd.Butts)]
    [InlineData(TrimCorner.Piece, null, "A corner piece is asked for and none is to be had for this corner: the nearest that can be had is a mitre.", TrimEnd.Mitre)]
    public void Two_trims_that_do_not_agree_are_told_of_and_it_is_said_what_was_followed(TrimCorner? right, TrimCorner? head, string said, TrimEnd end)
    {
        var plan = Plan(new("foot", EdgeKind.Floor), Trimmed("right", Bullnose, TrimJoints.Free, null, right), Trimmed("head", Bullnose, TrimJoints.Free, null, head), []);
        Assert.Equal(said, Assert.Single(plan.Findings, finding => finding.Rule == "trim-corner").Text);
        Assert.Equal(end, plan.Lines.Single(line => line.Edge == "right").End);
    }

    [Fact]
    public void All_four_sides_of_a_niche_come_from_one_bar_where_they_go_into_it()
    {
        // Four sides of 340 mm to the long points, cut from 2,500 mm with three cuts of 2 mm between.
        var bar = Bullnose with { Kind = TrimKind.Profile, ByBar = true, Stock = Mm(2500), Width = Mm(20), Joint = Length.Zero };
        string[] sides = ["bottom", "right", "top", "left"];
        var niche = new Opening("niche", Ring.Of(new Box(Mm(800), Mm(400), Mm(1100), Mm(700))), [.. sides.Select(side => Trimmed(side, bar, TrimJoints.Unbroken))]);
        var plan = Plan(new("foot", EdgeKind.Floor), new("right", EdgeKind.Fixture), new("head", EdgeKind.Fixture), [niche], bar);
        Assert.Equal(new TrimStock("trim", 1, 1, []), Assert.Single(plan.Stocks));
        Assert.Empty(plan.Findings);
    }

    private static (PlannedTrim Right, PlannedTrim Head) RightAndHead(TrimCorner? right, TrimCorner? head, TrimProduct? product = null)
    {
        var lines = Plan(new("foot", EdgeKind.Floor), Trimmed("right", Bullnose, TrimJoints.Free, null, right), Trimmed("head", Bullnose, TrimJoints.Free, null, head), [], product).Lines;
        return (lines.Single(line => line.Edge == "right"), lines.Single(line => line.Edge == "head"));
    }

    private static (TrimPlan Plan, PlannedTrim Right, PlannedTrim Head) TwoWidths(int narrow, TrimCorner? said = null)
    {
        var other = Bullnose with { Name = "narrow", Width = Mm(narrow) };
        var plan = Plan(new("foot", EdgeKind.Floor), Trimmed("right", Bullnose, TrimJoints.Free, null, said), Trimmed("head", other, TrimJoints.Free), [], other: other);
        return (plan, plan.Lines.Single(line => line.Edge == "right"), plan.Lines.Single(line => line.Edge == "head"));
    }

    private static Point At(long x, long y) => new(Mm(x), Mm(y));

    private static TrimPlan Plan(Edge foot, Edge right, Edge head, Plane.Sequence<Opening> openings, TrimProduct? product = null, TrimProduct? other = null, Edge? left = null)
    {
        var job = Job(
            Ring.Of(new Box(Length.Zero, Length.Zero, Mm(2000), Mm(1000))), [foot, right, head, left ?? new("left", EdgeKind.InsideCorner)], openings, product ?? Bullnose,
            new("tile", Mm(197), Mm(197), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
        if (other is not null) job = job with { Trims = [Bullnose, other] };
        Assert.Empty(JobCheck.Check(job));
        return Planner.Plan(job).Trims;
    }
}
