using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>
/// That a sawn side is not left where it is seen is common practice, no source; the sizes are reckoned by hand: tiles of 200 mm,
/// joints of 2 mm, 3 mm at an edge that is not open.
/// </summary>
public sealed class OpenEdgeRulesTests
{
    private static readonly Want s_wholeAtTheFoot = new Want.FullCourse(new("wall", "foot"), Must: true, 1);

    // 3 + 200 + 2 + 200 + 2 leaves 93 of 500 for the third course; it is at joints below and at its sides.
    [Fact]
    public void A_course_cut_at_an_open_head_is_given_by_no_tile_and_where_whole_ones_end_is_said()
    {
        var finding = Assert.Single(Open(Wall(624, 500, head: new("head", EdgeKind.Free), want: s_wholeAtTheFoot)));
        Assert.Equal((FindingLevel.Warn, "the head of wall", "cut to 93 mm of 200 mm"), (finding.Level, finding.Where, finding.Value));
        Assert.StartsWith("A1, A2, A3, A4 show a sawn side here, where nothing covers it: no tile gives them ", finding.Text, StringComparison.Ordinal);
        Assert.Contains("Nearest: let the tile end 95 mm further in, where whole ones do;", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_said_where_a_trim_covers_the_cuts() =>
        Assert.Empty(Open(Wall(624, 500, head: new("head", EdgeKind.Free) { Trim = Mm(10) }, want: s_wholeAtTheFoot)));

    [Fact]
    public void Nothing_is_said_where_whole_tiles_end_at_the_open_edge() =>
        Assert.Empty(Open(Wall(624, 607, head: new("head", EdgeKind.Free), want: s_wholeAtTheFoot)));

    [Fact]
    public void A_single_course_may_be_cut_at_the_foot_instead()
    {
        var finding = Assert.Single(Open(Wall(624, 150, head: new("head", EdgeKind.Free), want: s_wholeAtTheFoot)));
        Assert.Equal("cut to 147 mm of 200 mm", finding.Value);
        Assert.Contains("need not: turn the tile and take as much off the side across", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_two_open_sides_closer_than_a_tile_there_is_no_tile_with_both()
    {
        // Said at each side it is cut at, in the same words, so that it is read once.
        var finding = Assert.Single(FindingsAlike.Together(Open(Wall(150, 607, right: new("right", EdgeKind.Free), left: new("left", EdgeKind.Free), want: s_wholeAtTheFoot))));
        Assert.Equal("cut to 150 mm of 200 mm", finding.Value);
        Assert.Contains("Nearest: 50 mm more from one open side to the other", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rounded_tile_cut_at_the_corner_it_should_cover_has_no_rounded_side_left()
    {
        var over = new Edge("right", EdgeKind.OutsideCorner) { Finish = CornerFinish.BullnoseOver };
        var finding = Assert.Single(Open(Wall(500, 607, right: over, want: new Want.FullCourse(new("wall", "left"), Must: true, 1))));
        Assert.Equal("the right side of wall", finding.Where);
    }

    private static Job Wall(long width, long height, Edge? head = null, Edge? right = null, Edge? left = null, Want? want = null)
    {
        var job = OneWall.Job(Mm(width), Mm(height), Mm(3), Mm(200), JointRange.Only(Mm(2)), Tape.Millimetres, want is null ? [] : [want]);
        var shape = (FaceShape.Read)job.Faces[0].Shape;
        return job with { Faces = [job.Faces[0] with { Shape = shape with { Head = head ?? shape.Head, Right = right ?? shape.Right, Left = left ?? shape.Left } }] };
    }

    private static List<Finding> Open(Job job)
    {
        Assert.Empty(JobCheck.Check(job));
        return [.. Planner.Plan(job).Findings.Where(finding => finding.Rule == "open-edge")];
    }
}
