using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Patterns;

/// <summary>Sliding a pattern tells the same as planning with it held there: the plan, by its pieces, is the referee.</summary>
public sealed class PatternSlideTests
{
    /// <summary>A place on a face comes to whole steps when the bond is turned, once there and once back.</summary>
    private const long Step = 2;

    private static readonly Gen<(BondCase Given, int Turn, long Right, long Up)> Cases = Gen.Select(
        RandomBonds.Any(2), Gen.Frequency((1, Gen.Const(45_000)), (3, Gen.Int[1, 179_999])), Gen.Long[-3_000_000, 3_000_000], Gen.Long[-3_000_000, 3_000_000]);

    [Fact]
    public void A_place_that_is_held_comes_out_as_the_slide_said() => Cases.Each(CheckHeld, iter: 30);

    [Fact]
    public void A_lattice_drawn_once_and_moved_shows_every_cut_tile_of_every_other_place() => Cases.Each(CheckLattice, iter: 40);

    private static void CheckHeld((BondCase Given, int Turn, long Right, long Up) given)
    {
        var job = Wall(given.Given, given.Turn);
        var plan = OneWall.Plan(job);
        var slide = RodSlide.Of(job, plan);
        Assert.Equal(plan.Best.Score with { Tiles = 0 }, Scored(slide, plan.Best.Faces, plan));

        var place = Moved(slide, plan, given.Right, given.Up);
        var said = slide.At(place);
        var held = OneWall.Plan(job with { Runs = [job.Runs[0] with { Place = slide.Held(place) }] });
        Assert.Equal(said.Score, held.Best.Score with { Tiles = 0, SmallestCut = said.Score.SmallestCut });
        Assert.Equal(ProofKind.None, held.Proof.Kind);

        // The same tiles lie there, though another of them may be called the first.
        // A sheet's chips are spaced evenly to a step, so that from sheet to sheet up to half a step a chip adds up.
        var there = slide.Shift(place, held.Best.Faces, 0);
        var near = given.Given.Request is BondRequest.Mosaic ? 32 * Step : Step;
        Assert.InRange(Math.Abs(there.Right.Steps), 0, near);
        Assert.InRange(Math.Abs(there.Up.Steps), 0, near);
        var again = OneWall.Plan(job with { Runs = [job.Runs[0] with { Place = slide.Held(held.Best.Faces) }] });
        Assert.InRange(Math.Abs((again.Best.Faces[0].X - held.Best.Faces[0].X).Steps), 0, Step);
        Assert.InRange(Math.Abs((again.Best.Faces[0].Y - held.Best.Faces[0].Y).Steps), 0, Step);
    }

    private static void CheckLattice((BondCase Given, int Turn, long Right, long Up) given)
    {
        var job = Wall(given.Given, given.Turn);
        var plan = OneWall.Plan(job);
        var slide = RodSlide.Of(job, plan);
        var drawn = slide.Lattice(plan.Best.Faces, 0).Select(ring => ring.Points[0]).ToList();
        var place = Moved(slide, plan, given.Right, given.Up);
        var (right, up) = slide.Shift(plan.Best.Faces, place, 0);
        var cells = new CutCells();
        slide.Cut(place, 0, cells);
        var cut = cells.Of(PieceKind.Shaped);
        Assert.Equal(slide.At(place).Score.Cuts, cut.Length / 3);
        for (var i = 0; i < cut.Length; i += 3)
        {
            // A tile's first corner, moved to where the lattice was drawn, is one of the drawn ones' to the step.
            var (x, y) = (cut[i] - right.Steps, cut[i + 1] - up.Steps);
            Assert.Contains(drawn, point => Math.Abs(point.X.Steps - x) <= Step && Math.Abs(point.Y.Steps - y) <= Step);
        }
    }

    private static Score Scored(RodSlide slide, Sequence<Engine.Layouts.Placing> place, RunPlan plan) =>
        // Where nothing is cut the plan says the tile's shorter side.
        plan.Best.Score.Cuts == 0 ? plan.Best.Score with { Tiles = 0 } : slide.At(place).Score;

    private static Sequence<Engine.Layouts.Placing> Moved(RodSlide slide, RunPlan plan, long right, long up) =>
        slide.Moved(slide.Moved(plan.Best.Faces, Axis.Level, Length.FromSteps(right), 0), Axis.Plumb, Length.FromSteps(up), 0);

    private static Job Wall(BondCase given, int turn)
    {
        var window = new Opening("window", Ring.Of(new(Mm(310), Mm(405), Mm(520), Mm(710))), [.. new[] { "bottom", "right", "top", "left" }.Select(name => new Edge(name, EdgeKind.Fixture))]);
        var names = given.Products.Select((product, i) => product with { Name = $"tile {i}" }).ToSequence();
        var job = OneWall.Job(Mm(987), Mm(1111), Mm(3), Mm(100), JointRange.Only(given.Joint), Tape.Millimetres, openings: [window], limits: new(null, Mm(10), HalfTile: true));
        var bond = given.Request with { Turn = Angle.FromThousandths(turn), With = names.Skip(1).Select(name => name.Name).ToSequence() };
        return job with { Products = names, Runs = [job.Runs[0] with { Product = "tile 0", Bond = bond }] };
    }

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);
}
