using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Trims of two walls that stand beside each other, each 2,000 mm wide; what meets at their corner is read off the drawing by hand.</summary>
public sealed class TrimsOfTwoWallsTests
{
    private static readonly string[] s_sides = ["bottom", "right", "top", "left"];

    [Theory]
    [InlineData(EdgeKind.InsideCorner)]
    [InlineData(EdgeKind.OutsideCorner)]
    public void Every_side_of_a_niche_on_either_wall_keeps_its_bar_though_its_sides_are_outside_corners(EdgeKind corner)
    {
        var niche = new Opening("niche", Ring.Of(new Box(Mm(800), Mm(400), Mm(1100), Mm(700))), [.. s_sides.Select(Bar)]);
        var lines = Plan(corner, (1000, 1000), (1000, 1000), new EdgeRequest(false, null), new EdgeRequest(false, null), niche).Lines;
        Assert.Equal(s_sides.Select(side => $"niche.{side}").Order(), lines.Where(line => line.Face == "left").Select(line => line.Edge).Order());
        Assert.Equal(s_sides.Select(side => $"niche.{side}").Order(), lines.Where(line => line.Face == "right").Select(line => line.Edge).Order());
    }

    [Fact]
    public void Trims_over_two_niches_do_not_meet_at_the_corner_of_their_walls()
    {
        var niche = new Opening("niche", Ring.Of(new Box(Mm(800), Mm(400), Mm(1100), Mm(700))), [.. s_sides.Select(side => side == "top" ? Bar(side) : Bar(side) with { Trim = Mm(50), Trimmed = null })]);
        var lines = Plan(EdgeKind.OutsideCorner, (1000, 1000), (1000, 1000), new EdgeRequest(false, null), new EdgeRequest(false, null), niche).Lines;
        Assert.Equal(2, lines.Count);
        Assert.All(lines, line => Assert.Equal((TrimEnd.Stop, TrimEnd.Stop), (line.Begin, line.End)));
    }

    /// <summary>The left wall's head falls from 1,600 to 1,300 mm at the corner; the right wall's stands level.</summary>
    [Theory]
    [InlineData(1300, true)]
    [InlineData(1450, false)]
    public void Trims_meet_where_they_are_as_high_at_the_corner_whatever_they_are_at_their_middles(long level, bool meet)
    {
        var lines = Plan(EdgeKind.InsideCorner, (1600, 1300), (level, level), new EdgeRequest(true, TrimCorner.Mitred), new EdgeRequest(true, TrimCorner.Mitred)).Lines;
        Assert.Equal(meet ? (TrimEnd.Mitre, TrimEnd.Mitre) : (TrimEnd.Hidden, TrimEnd.Hidden), (lines[0].Begin, lines[1].End));
    }

    [Theory]
    [InlineData(EdgeKind.OutsideCorner, TrimCorner.Covers, TrimCorner.Covers, "Both trims are to cover the other; that of left is taken to.", TrimEnd.Covers)]
    [InlineData(EdgeKind.OutsideCorner, TrimCorner.Butts, TrimCorner.Butts, "Both trims are to butt against the other; that of left is taken to cover.", TrimEnd.Covers)]
    [InlineData(EdgeKind.OutsideCorner, TrimCorner.Covers, TrimCorner.Mitred, "One of the two trims is to be mitred and the other is not; the mitre was followed.", TrimEnd.Mitre)]
    [InlineData(EdgeKind.OutsideCorner, TrimCorner.Piece, TrimCorner.Butts, "One of the two trims is to end at a corner piece and the other is not; the one that is not was followed.", TrimEnd.Covers)]
    [InlineData(EdgeKind.OutsideCorner, null, TrimCorner.Piece, "A corner piece is asked for and none is to be had for this corner: the nearest that can be had is a mitre.", TrimEnd.Mitre)]
    [InlineData(EdgeKind.InsideCorner, TrimCorner.Piece, null, "A corner piece is asked for and none is to be had for this corner. It is left out; neither end shows there.", TrimEnd.Hidden)]
    [InlineData(EdgeKind.InsideCorner, TrimCorner.Covers, TrimCorner.Covers, null, TrimEnd.Hidden)]
    [InlineData(EdgeKind.OutsideCorner, TrimCorner.Covers, TrimCorner.Butts, null, TrimEnd.Covers)]
    [InlineData(EdgeKind.OutsideCorner, null, null, null, TrimEnd.Mitre)]
    public void Two_trims_that_do_not_agree_at_the_corner_of_two_walls_are_told_of(EdgeKind corner, TrimCorner? one, TrimCorner? next, string? said, TrimEnd end)
    {
        var plan = Plan(corner, (1000, 1000), (1000, 1000), new EdgeRequest(true, one), new EdgeRequest(true, next));
        Assert.Equal(said, plan.Findings.SingleOrDefault(finding => finding.Rule == "trim-corner")?.Text);
        Assert.Equal(end, plan.Lines[0].Begin);
    }

    private sealed record EdgeRequest(bool IsTrimmed, TrimCorner? Corner);

    private static Edge Bar(string side) => Trimmed(side, Bullnose, TrimJoints.Free) with { Kind = EdgeKind.OutsideCorner, Finish = CornerFinish.Profile };

    /// <summary>Two walls, each with a head so high at its left and its right; a niche stands on both.</summary>
    private static TrimPlan Plan(EdgeKind corner, (long Left, long Right) one, (long Left, long Right) next, EdgeRequest asked, EdgeRequest askedNext, Opening? niche = null)
    {
        var corners = new Edge("corner", corner) { Finish = corner == EdgeKind.OutsideCorner ? CornerFinish.Mitre : null };
        Edge foot = new("foot", EdgeKind.Floor), end = new("end", EdgeKind.InsideCorner);
        var left = Wall("left", one, [foot, corners, Head(asked), end], niche);
        var right = Wall("right", next, [foot, end, Head(askedNext), corners], niche);
        var job = Job(Ring.Of(new Box(Length.Zero, Length.Zero, Mm(2000), Mm(1000))), [foot, end, new("head", EdgeKind.Free), end with { Name = "other" }], [], Bullnose, new("tile", Mm(197), Mm(197), Mm(8)) { BondCoat = Mm(3) }, Mm(3), new BondRequest.Grid(Lay.Level));
        job = job with { Faces = [left, right], Runs = [job.Runs[0] with { Faces = ["left", "right"] }] };
        Assert.Empty(JobCheck.Check(job));
        return Planner.Plan(job).Trims;
    }

    private static Edge Head(EdgeRequest asked) => asked.IsTrimmed ? Trimmed("head", Bullnose, TrimJoints.Free, null, asked.Corner) : new("head", EdgeKind.Ceiling);

    private static Face Wall(string name, (long Left, long Right) height, Sequence<Edge> edges, Opening? niche) => new(
        name, new FaceShape.Outline(new([new(Length.Zero, Length.Zero), new(Mm(2000), Length.Zero), new(Mm(2000), Mm(height.Right)), new(Length.Zero, Mm(height.Left))]), edges, Length.Zero), niche is null ? [] : [niche], []);
}
