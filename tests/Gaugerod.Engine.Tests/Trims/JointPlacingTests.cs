using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Trims beside courses, reckoned by hand; what setters do is common practice, no source.</summary>
public sealed class JointPlacingTests
{
    private static long Inches(long whole, long part = 0, long of = 1) => Length.FromInches(whole, part, of).Steps;

    /// <summary>Source: every arrangement of a short line, listed step by step.</summary>
    [Fact]
    public void On_3000_short_lines_no_arrangement_of_all_there_are_is_better() => LineCase.Small.Each(
        asked => Assert.Equal(ListedLines.Best(asked), asked.Told(JointPlacing.Best(asked.Line, asked.Joints, asked.Twice))), iter: 3000);

    /// <summary>Joints of a whole 12 in trim step through 9 in courses by 3 in: somewhere between two of 0, 3 and 6, and 1 1/2 in is the most.</summary>
    [Fact]
    public void Twelve_inch_trim_left_whole_beside_nine_inch_courses_stands_an_inch_and_a_half_off_at_most()
    {
        var best = JointPlacing.Best(Courses(Inches(96)), TrimJoints.Staggered, 0)!;
        Assert.Equal(2 * Inches(1, 1, 2), best.Stagger(Courses(Inches(96))));
        Assert.Equal((2, 2, 0, 9), (best.Cost.Cuts, best.Cost.Trimmed, best.Cost.Inner, best.Cost.Pieces));
        Assert.All(best.Pieces.Skip(1).SkipLast(1), piece => Assert.Equal(Inches(11, 7, 8), piece.Length));
    }

    [Fact]
    public void Two_joints_alone_beside_nine_inch_courses_can_stand_three_inches_off()
    {
        var line = Courses(Inches(32));
        Assert.Equal(2 * Inches(3), JointPlacing.Best(line, TrimJoints.Staggered, 0)!.Stagger(line));
    }

    [Fact]
    public void In_line_with_nine_inch_courses_every_piece_of_twelve_inch_trim_is_cut_to_nine()
    {
        // 90 in of ten courses, from the middle of one joint to that of another less half a joint at each end.
        var best = JointPlacing.Best(Courses(Inches(90) - Inches(0, 1, 8)), TrimJoints.InLine, 0)!;
        Assert.All(best.Pieces, piece => Assert.Equal(Inches(8, 7, 8), piece.Length));
        Assert.Equal((10, 10), (best.Cost.Pieces, best.Cost.Cuts));
    }

    [Fact]
    public void As_the_courses_repeat_one_end_piece_is_left_whole_and_every_joint_stands_as_far_past_its_course()
    {
        // A whole piece ends 3 in past a course joint; half a course off, 4 1/2 in, would trim both ends.
        var line = Courses(Inches(90) - Inches(0, 1, 8));
        var best = JointPlacing.Best(line, TrimJoints.Repeating, 0)!;
        Assert.Equal(2 * Inches(3), best.Stagger(line));
        Assert.All(best.Pieces.Skip(1).SkipLast(1), piece => Assert.Equal(Inches(8, 7, 8), piece.Length));
        Assert.Equal(best.Cost.Pieces - 1, best.Cost.Cuts);
        Assert.Equal(2 * Inches(4, 1, 2), JointPlacing.Best(line, TrimJoints.Repeating, 2 * Inches(4))!.Stagger(line));
    }

    [Fact]
    public void A_stagger_of_four_inches_is_had_only_by_trimming_pieces_between_others()
    {
        var line = Courses(Inches(96));
        var best = JointPlacing.Best(line, TrimJoints.Staggered, 2 * Inches(4))!;
        Assert.True(best.Stagger(line) >= 2 * Inches(4));
        Assert.True(best.Cost.Inner > 0);
        Assert.Equal(2 * Inches(4, 1, 2), JointPlacing.GreatestStagger(line));
        Assert.Null(JointPlacing.Best(line, TrimJoints.Staggered, (2 * Inches(4, 1, 2)) + 1));
    }

    [Fact]
    public void A_stub_is_shared_out_between_two_pieces()
    {
        // Three whole pieces and 3/4 in over: the stub is under the least, so the first and the last are cut alike.
        var line = Bare((3 * Inches(12)) + Inches(0, 3, 4)) with { Least = Inches(2) };
        var best = JointPlacing.Best(line, TrimJoints.Free, 0)!;
        Assert.Equal((2, 4), (best.Cost.Cuts, best.Cost.Pieces));
        Assert.InRange(best.Shortest(line), Inches(6, 3, 8) - Inches(0, 1, 8), Inches(6, 3, 8));
    }

    [Fact]
    public void One_sawn_piece_between_two_stops_would_show_a_sawn_end_so_two_stand_there()
    {
        var line = Bare(Inches(10)) with { Begin = TrimEnd.Stop, End = TrimEnd.Stop };
        Assert.Equal(2, JointPlacing.Best(line, TrimJoints.Free, 0)!.Pieces.Count);
        Assert.Single(JointPlacing.Best(line with { End = TrimEnd.Hidden }, TrimJoints.Free, 0)!.Pieces);
    }

    [Fact]
    public void A_piece_that_is_mitred_anyway_is_the_one_that_is_shortened()
    {
        var line = Bare(Inches(30)) with { Begin = TrimEnd.Mitre };
        var best = JointPlacing.Best(line, TrimJoints.Free, 0)!;
        Assert.Equal((1, 1), (best.Cost.Cuts, best.Cost.Trimmed));
        Assert.True(best.Pieces[0].Length < line.Stock);
    }

    [Fact]
    public void Centred_the_ends_are_alike()
    {
        var line = Courses(Inches(50));
        var best = JointPlacing.Best(line, TrimJoints.Centred, 0)!;
        Assert.Equal(best.Pieces[0].Length, best.Pieces[^1].Length);
        Assert.Equal(2, best.Cost.Cuts);
    }

    /// <summary>12 in trim with its joint of 1/8 in in it beside 9 in courses with theirs, the first joint 9 in up.</summary>
    private static TrimLine Courses(long length)
    {
        var joints = Enumerable.Range(1, (int)(length / Inches(9)) + 1).Select(i => new FieldJoint((i * Inches(9)) - Inches(0, 1, 8), i * Inches(9))).Where(joint => joint.To < length);
        return Bare(length) with { Beside = joints.ToSequence() };
    }

    private static TrimLine Bare(long length) => new(length, TrimEnd.Hidden, TrimEnd.Hidden, Inches(11, 7, 8), Inches(0, 1, 8), Inches(1), []);
}
