using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>Wants that name an arc mean the whole of it. A wall of 2500 by 1400 mm, tiles of 200, joint 3, gap 5; a niche 600 wide whose round head's crown stands 1100 up, worked by hand.</summary>
public sealed class ArcWantTests
{
    private static readonly double Error = Arc.Error.Steps + Check.Tolerance;

    [Fact]
    public void A_joint_wanted_on_an_arch_stands_on_its_crown()
    {
        var plan = Planned(new Want.JointOnEdge(new("wall", "niche.arch"), true, 1));

        // The tile over the crown stands on the niche's own joint of 5.
        Assert.Contains(plan.Faces[0].Pieces, piece => Math.Abs(piece.Cell.Bottom.Steps - (1105.0 * 3200)) <= Error);
        Assert.True(Assert.Single(plan.Best.Wants).Held);
    }

    [Fact]
    public void No_cut_along_an_arch_is_under_the_size_that_was_asked()
    {
        var plan = Planned(new Want.AtLeast(new("wall", "niche.arch"), Mm(60), null, true, 1));

        // Over the crown, at 1000 of 2500, the tile goes on for 60 and more before its joint.
        var over = plan.Faces[0].Pieces.Where(piece => piece.Cell.Bottom < Mm(1105) && piece.Cell.Top > Mm(1105) && piece.Cell.Left < Mm(1000) && piece.Cell.Right > Mm(1000)).ToList();
        Assert.All(over, piece => Assert.True(piece.Cell.Top.Steps - (1105.0 * 3200) >= (60 * 3200) - Error));
        Assert.True(Assert.Single(plan.Best.Wants).Held);
    }

    private static RunPlan Planned(Want want)
    {
        Edge Side(string name) => new(name, EdgeKind.Fixture);
        var arc = Arc.Of(At(1300, 800), At(1000, 1100), At(700, 800))!;
        Point[] points = [At(700, 400), At(1300, 400), At(1300, 800), .. arc.Corners(), At(700, 800)];
        Edge[] edges = [Side("bottom"), Side("right"), .. Enumerable.Repeat(Side("arch"), arc.Chords), Side("left")];
        var niche = new Opening("niche", new(points.ToSequence()), edges.ToSequence());
        return OneWall.Plan(OneWall.Job(Mm(2500), Mm(1400), Mm(5), Mm(200), new(Mm(3), Mm(3), Mm(3)), Tape.Millimetres, [want], openings: [niche]));
    }
}
