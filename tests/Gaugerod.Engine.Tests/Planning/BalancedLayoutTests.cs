using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>
/// Balanced layouts through the front door. The rule (ANSI A108.02, 4.3.1 and 4.3.2: centre and balance, no piece under
/// half a tile) as the trade works it: of whole tiles n and what remains r, cut (r - 2 joints) / 2 at each side; where that
/// is under half a tile lay one tile fewer, and each cut is larger by half of a tile and a joint. An odd number of whole
/// tiles has a tile on the middle of the wall, an even number a joint.
/// </summary>
public sealed class BalancedLayoutTests
{
    /// <summary>
    /// Source: a trade press article on balancing a layout, as worked there: a sliver of 1 1/2 in beside whole 24 in
    /// tiles, (24 + 1 1/2) / 2 = 12 3/4 in at each side. The joint goes with the tile and does not change it.
    /// </summary>
    [Theory]
    [InlineData(3, 0)]
    [InlineData(4, 1)]
    public void A_sliver_and_a_whole_tile_are_shared_by_both_sides(long tiles, long eighths)
    {
        var (tile, joint, gap) = (Inch(24), Inch(0, eighths, 8), Inch(0, 1, 4));
        var width = (gap * 2) + (tile * tiles) + (joint * tiles) + Inch(1, 1, 2);

        Check(width, gap, tile, joint, Tape.Sixteenths, whole: tiles - 1, cut: Inch(12, 3, 4));
    }

    /// <summary>Source: worked by hand from the rule above; check values 2 to 5.</summary>
    [Theory]
    [InlineData("120 in, first try 9 and 5 1/8", 120, 4, 12, 0, 1, 8, 8, 11, 3, 16)]
    [InlineData("96 in, first try 7 and 5 3/8", 96, 8, 12, 0, 1, 8, 6, 11, 7, 16)]
    [InlineData("60 in, first try 13 and 1 13/16", 60, 8, 4, 4, 1, 16, 12, 3, 31, 32)]
    [InlineData("144 in, first try 5 and 11 3/8", 144, 4, 24, 0, 1, 8, 4, 23, 7, 16)]
    public void Walls_in_inches_come_out_as_worked_by_hand(
        string what, long width, long gap, long tile, long quarterOf, long joint, long jointOf, long whole, long cut, long part, long of)
    {
        Assert.NotEmpty(what);
        var size = quarterOf == 0 ? Inch(tile) : Inch(tile, 1, quarterOf);
        Check(Inch(width), Inch(0, 1, gap), size, Inch(0, joint, jointOf), Tape.Sixteenths, whole, Inch(cut, part, of));
    }

    /// <summary>Source: worked by hand from the rule above; check values 6 and 7. Cuts in tenths of a millimetre.</summary>
    [Theory]
    [InlineData("2400 mm, first try 7 and 133", 2400, 300, 6, 2845)]
    [InlineData("3000 mm, first try 4 and 287.5", 3000, 600, 3, 5890)]
    public void Walls_in_millimetres_come_out_as_worked_by_hand(string what, long width, long tile, long whole, long cut)
    {
        Assert.NotEmpty(what);
        Check(Mm(width), Mm(5), Mm(tile), Mm(3), Tape.Millimetres, whole, Length.FromSteps(cut * 320));
    }

    private static void Check(Length width, Length gap, Length tile, Length joint, Tape tape, long whole, Length cut)
    {
        // As high as four whole courses.
        var height = (gap * 2) + (tile * 4) + (joint * 3);
        var plan = OneWall.Plan(OneWall.Job(width, height, gap, tile, JointRange.Only(joint), tape));
        var courses = plan.Courses();

        Assert.Equal(4, courses.Count);
        Assert.All(courses, course =>
        {
            Assert.Equal(whole + 2, course.Count);
            Assert.All(course[1..^1], piece => Assert.Equal(PieceKind.Full, piece.Kind));
            Assert.Equal((cut, tile), (course[0].Width, course[0].Height));
            Assert.Equal((cut, tile), (course[^1].Width, course[^1].Height));

            // The middle of the wall: on the middle of a tile, or of the joint between two.
            var (left, right) = whole % 2 == 1
                ? (course[(course.Count - 1) / 2].Cell.Left, course[(course.Count - 1) / 2].Cell.Right)
                : (course[(course.Count / 2) - 1].Cell.Right, course[course.Count / 2].Cell.Left);
            Assert.Equal(width, left + right);
        });
        Assert.Equal(cut, plan.Best.Score.SmallestCut);
        Assert.Equal(0, plan.Best.Score.Slivers);
    }

    private static Length Inch(long whole, long part = 0, long of = 1) => Length.FromInches(whole, part, of);

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);
}
