using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>What the setter asks for is there on the wall, as the pieces show. A wall of 2500 by 1400 mm, tiles of 300, joint 3, gap 5; worked by hand.</summary>
public sealed class WantsHeldTests
{
    private static readonly Length Tile = Mm(300);
    private static readonly Length Joint = Mm(3);
    private static readonly Length Gap = Mm(5);
    private static readonly Tape Tape = Tape.Millimetres;
    private static readonly EdgeRef Left = new("wall", "left");
    private static readonly EdgeRef Right = new("wall", "right");
    private static readonly EdgeRef Foot = new("wall", "foot");
    private static readonly EdgeRef Head = new("wall", "head");
    private static readonly Opening Window = new(
        "window", RingMm((700, 600), (1300, 600), (1300, 1000), (700, 1000)),
        new[] { "bottom", "right", "top", "left" }.Select(name => new Edge(name, EdgeKind.Fixture)).ToSequence());

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_joint_stands_at_the_height_that_was_asked(bool must)
    {
        var plan = Planned(new Want.JointAtHeight("wall", Mm(777), must, 5));

        // Half of 3 mm is a whole number of steps: the joint reaches from 775.5 to 778.5.
        Assert.Contains(Cells(plan), piece => piece.Cell.Top == Length.FromSteps((777 * 3200) - 4800));
        Assert.Contains(Cells(plan), piece => piece.Cell.Bottom == Length.FromSteps((777 * 3200) + 4800));
        Held(plan);
    }

    [Fact]
    public void A_tile_stands_on_the_edge_that_was_asked()
    {
        var plan = Planned(new Want.JointOnEdge(new("wall", "window.bottom"), true, 1));

        Assert.Contains(Cells(plan), piece => piece.Cell.Top == Mm(600) - Gap);
        Held(plan);
    }

    [Theory]
    [InlineData("foot")]
    [InlineData("head")]
    [InlineData("left")]
    [InlineData("right")]
    public void The_course_along_an_edge_is_whole(string edge)
    {
        var plan = Planned(new Want.FullCourse(new("wall", edge), true, 1));

        Assert.True(edge switch
        {
            "foot" => Cells(plan).Any(piece => piece.Cell.Bottom == Gap),
            "head" => Cells(plan).Any(piece => piece.Cell.Top == Mm(1400) - Gap),
            "left" => Cells(plan).Any(piece => piece.Cell.Left == Gap),
            _ => Cells(plan).Any(piece => piece.Cell.Right == Mm(2500) - Gap),
        });
        Held(plan);
    }

    [Fact]
    public void No_cut_along_an_edge_is_under_the_size_that_was_asked()
    {
        var (size, part) = (Mm(280), (9, 10));
        var bySize = Planned(new Want.AtLeast(Left, size, null, true, 1));
        var byPart = Planned(new Want.AtLeast(Head, null, part, true, 1));

        Assert.All(bySize.Courses(), course => Assert.True(course[0].Width >= size));
        Assert.All(byPart.Courses()[^1], piece => Assert.True(piece.Height >= Mm(270)));
        Held(bySize);
        Held(byPart);
    }

    [Theory]
    [InlineData(CentreOn.Tile)]
    [InlineData(CentreOn.Joint)]
    [InlineData(CentreOn.Either)]
    public void A_tile_or_a_joint_stands_on_the_middle_of_an_opening(CentreOn on)
    {
        var plan = Planned(new Want.Centred("wall", "window", on, true, 1));
        var twice = Mm(2000);
        var tile = Cells(plan).Any(piece => piece.Cell.Left + piece.Cell.Right == twice);
        var joint = Cells(plan).Any(piece => (piece.Cell.Right * 2) + Joint == twice);

        Assert.True(on switch { CentreOn.Tile => tile, CentreOn.Joint => joint, _ => tile || joint });
        Held(plan);
    }

    [Fact]
    public void Cuts_at_two_edges_are_equal_to_a_mark_of_the_tape()
    {
        var plan = Planned(new Want.EqualCuts(Left, Right, true, 1), new Want.EqualCuts(Foot, Head, true, 1));
        var courses = plan.Courses();

        Assert.All(courses, course => Assert.True((course[0].Width - course[^1].Width).Abs() <= Tape.Mark));
        Assert.True((courses[0][0].Height - courses[^1][0].Height).Abs() <= Tape.Mark);
        Held(plan);
    }

    [Fact]
    public void A_must_comes_before_any_wish_and_the_heavier_wish_before_the_lighter()
    {
        var must = new Want.JointAtHeight("wall", Mm(500), true, 1);
        var heavy = new Want.JointAtHeight("wall", Mm(600), false, 100);
        var light = new Want.JointAtHeight("wall", Mm(700), false, 99);

        Assert.Equal([true, false, false], Outcomes(Planned(must, heavy, light)));
        Assert.Equal([false, true], Outcomes(Planned(light, heavy)));
        Assert.Equal([true, false], Outcomes(Planned(heavy, light)));
    }

    [Fact]
    public void A_wish_is_held_even_where_it_leaves_slivers()
    {
        // 1390 high from 5: a joint's middle at 20 leaves 13.5 under it.
        var plan = Planned(new Want.JointAtHeight("wall", Mm(20), false, 5));

        Held(plan);
        Assert.True(plan.Best.Score.Slivers > 0);
    }

    [Fact]
    public void A_must_that_cannot_be_held_is_said_to_be_missed_and_all_else_goes_on()
    {
        // 300 + 3 apart is a repeat; 500 and 600 are not.
        var plan = Planned(new Want.JointAtHeight("wall", Mm(500), true, 1), new Want.JointAtHeight("wall", Mm(600), true, 1));

        Assert.Equal(1, plan.Best.Score.MustsMissed);
        Assert.Single(plan.Best.Wants, outcome => outcome.Held);
    }

    [Fact]
    public void The_joint_stays_as_wanted_where_no_want_needs_another()
    {
        var flexible = new JointRange(Mm(2), Joint, Mm(5));

        Assert.Equal(Joint, Planned(flexible).Placing().Joint);
        Assert.Equal(Joint, Planned(flexible, new Want.FullCourse(Foot, true, 1)).Placing().Joint);
    }

    [Fact]
    public void The_joint_flexes_to_bring_whole_courses_from_one_edge_to_another()
    {
        // Four courses and three joints in 1390 - 178 = 1212: joints of 4.
        var job = OneWall.Job(
            Mm(2500), Mm(1222), Gap, Tile, new(Mm(2), Joint, Mm(5)), Tape, [new Want.FullCourse(Foot, true, 1), new Want.FullCourse(Head, true, 1)]);
        var plan = OneWall.Plan(job);

        Held(plan);
        Assert.Equal(Mm(4), plan.Placing().Joint);
        Assert.Equal(4, plan.Courses().Count);
        Assert.All(plan.Courses(), course => Assert.Equal(Tile, course[0].Height));
    }

    [Fact]
    public void The_joint_never_leaves_its_range()
    {
        // The same wall asks for 4 mm; the range ends at 3.5.
        var most = Length.FromSteps(11_200);
        var job = OneWall.Job(
            Mm(2500), Mm(1222), Gap, Tile, new(Mm(2), Joint, most), Tape, [new Want.FullCourse(Foot, true, 1), new Want.FullCourse(Head, true, 1)]);
        var plan = OneWall.Plan(job);

        Assert.Equal(Joint, plan.Placing().Joint);
        Assert.Equal(1, plan.Best.Score.MustsMissed);
    }

    private static RunPlan Planned(params Want[] wants) => Planned(JointRange.Only(Joint), wants);

    private static RunPlan Planned(JointRange joint, params Want[] wants) =>
        OneWall.Plan(OneWall.Job(Mm(2500), Mm(1400), Gap, Tile, joint, Tape, wants.ToSequence(), openings: [Window]));

    private static Sequence<Piece> Cells(RunPlan plan) => Assert.Single(plan.Faces).Pieces;

    private static IEnumerable<bool> Outcomes(RunPlan plan) => plan.Best.Wants.Select(outcome => outcome.Held);

    private static void Held(RunPlan plan)
    {
        Assert.All(plan.Best.Wants, outcome => Assert.True(outcome.Held, outcome.Text));
        Assert.Equal((0, 0), (plan.Best.Score.MustsMissed, plan.Best.Score.WantsMissed));
    }
}
