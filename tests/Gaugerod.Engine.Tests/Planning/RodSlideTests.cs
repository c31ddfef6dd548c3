using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>Sliding a rod tells the same as planning with the tiling held there: the plan, by its pieces, is the referee.</summary>
public sealed class RodSlideTests
{
    public static TheoryData<string> Bonds => ["grid", "half", "third there and back", "third upright", "quarter"];

    [Theory]
    [MemberData(nameof(Bonds))]
    public void The_rods_begin_where_the_plan_stands(string bond)
    {
        var job = Wall(bond);
        var plan = OneWall.Plan(job);
        var slide = RodSlide.Of(job, plan);
        Assert.Equal(plan.Best.Score with { Tiles = 0 }, slide.At(plan.Best.Faces).Score);
    }

    [Theory]
    [MemberData(nameof(Bonds))]
    public void A_place_that_is_held_comes_out_as_the_slide_said(string bond)
    {
        var job = Wall(bond);
        var plan = OneWall.Plan(job);
        var slide = RodSlide.Of(job, plan);
        foreach (var (right, up) in new[] { (37, 0), (-512, 333), (1234, -777) })
        {
            var place = slide.Moved(slide.Moved(plan.Best.Faces, Axis.Level, Mm(right), 0), Axis.Plumb, Mm(up), 0);
            var said = slide.At(place);
            var held = OneWall.Plan(job with { Runs = [job.Runs[0] with { Place = slide.Held(place) }] });

            Assert.Equal(place, held.Best.Faces);
            Assert.Equal(said.Score, held.Best.Score with { Tiles = 0 });
            Assert.Equal(said.Score.Cuts, held.Faces[0].Pieces.Count(piece => piece.Kind != PieceKind.Full));
            var cut = held.Faces[0].Pieces.Where(piece => piece.Kind != PieceKind.Full).Select(piece => piece.Smallest).Min();
            Assert.Equal(cut, said.Score.SmallestCut);
            Assert.Equal(cut, said.Edges.Min(edge => edge.Least));
            Assert.Equal(ProofKind.None, held.Proof.Kind);
            Assert.StartsWith("Chosen by hand", held.Proof.Words, StringComparison.Ordinal);
            Assert.Equal(plan.Best.Faces, held.Alternatives[0].Faces);
        }
    }

    [Theory]
    [MemberData(nameof(Bonds))]
    public void The_tiles_that_edges_run_through_are_those_the_pieces_are_cut_from(string bond)
    {
        var job = Wall(bond);
        var start = OneWall.Plan(job);
        var slide = RodSlide.Of(job, start);
        var place = slide.Moved(slide.Moved(start.Best.Faces, Axis.Level, Mm(91), 0), Axis.Plumb, Mm(-43), 0);
        var cells = Cut(slide, place).Select(cut => cut.Cell).ToList();
        var held = OneWall.Plan(job with { Runs = [job.Runs[0] with { Place = slide.Held(place) }] });
        var expected = held.Faces[0].Pieces.Where(piece => piece.Kind != PieceKind.Full).Select(piece => piece.Cell).ToHashSet();
        Assert.Equal(expected, cells.ToHashSet());
        Assert.Equal(expected.Count, cells.Count);
    }

    [Theory]
    [MemberData(nameof(Bonds))]
    public void A_lattice_drawn_once_and_moved_shows_every_other_place(string bond)
    {
        var job = Wall(bond);
        var plan = OneWall.Plan(job);
        var slide = RodSlide.Of(job, plan);
        var drawn = slide.Lattice(plan.Best.Faces, 0).Select(ring => ring.Bounds).ToHashSet();
        foreach (var (right, up) in new[] { (0, 0), (5, 0), (-5, 0), (0, 700), (2345, -1999), (-61, 61) })
        {
            var place = slide.Moved(slide.Moved(plan.Best.Faces, Axis.Level, Mm(right), 0), Axis.Plumb, Mm(up), 0);
            var (x, y) = slide.Shift(plan.Best.Faces, place, 0);
            Assert.All(Cut(slide, place).Select(cut => cut.Cell), cell => Assert.Contains(new Box(cell.Left - x, cell.Bottom - y, cell.Right - x, cell.Top - y), drawn));
        }
    }

    [Fact]
    public void The_top_of_a_curve_is_where_the_cuts_at_both_sides_are_alike()
    {
        // 1,000 mm between gaps, 300 mm tiles, no joint: two whole tiles and 400 mm left, 200 mm at either side.
        var job = OneWall.Job(Mm(1006), Mm(2406), Mm(3), Mm(300), JointRange.Only(Length.Zero), Tape.Millimetres);
        var plan = OneWall.Plan(job);
        var slide = RodSlide.Of(job, plan);
        var aside = slide.Moved(plan.Best.Faces, Axis.Level, Mm(41), 0);
        var curve = new Length[300];
        slide.Curve(aside, Axis.Level, 0, Length.Zero, Mm(1), curve);
        var at = Array.IndexOf(curve, curve.Max());
        var (_, smallest) = slide.Peak(aside, Axis.Level, 0, Mm(at), Mm(1));
        Assert.Equal(plan.Best.Score.SmallestCut, smallest);
        Assert.True(curve.Min() < smallest);
    }

    [Fact]
    public void A_rod_finds_the_way_to_a_wanted_line()
    {
        var wish = new Want.JointAtHeight("wall", Mm(1000), Must: false, 1);
        var job = OneWall.Job(Mm(1500), Mm(2400), Mm(3), Mm(300), JointRange.Only(Mm(2)), Tape.Millimetres, wants: [wish]);
        var start = OneWall.Plan(job);
        var slide = RodSlide.Of(job, start);
        var aside = slide.Moved(start.Best.Faces, Axis.Plumb, Mm(77), 0);
        Assert.False(Assert.Single(slide.At(aside).Wants).Held);
        var by = Assert.Single(slide.ToWants(aside, Axis.Plumb, 0));
        Assert.True(Assert.Single(slide.At(slide.Moved(aside, Axis.Plumb, by, 0)).Wants).Held);
        Assert.Empty(slide.ToWants(aside, Axis.Level, 0));
    }

    /// <summary>A wall as found, with everything on it that cuts a tile; the pieces, cut from their outlines, are the referee.</summary>
    [Theory]
    [MemberData(nameof(Bonds))]
    public void Every_cut_tile_is_of_the_kind_its_piece_is_of(string bond)
    {
        var job = Wall(bond, asFound: true);
        var start = OneWall.Plan(job);
        var slide = RodSlide.Of(job, start);
        var seen = new HashSet<PieceKind>();
        for (var i = 0; i < 40; i++)
        {
            var place = slide.Moved(slide.Moved(start.Best.Faces, Axis.Level, Mm(i * 17), 0), Axis.Plumb, Mm(i * -31), 0);
            var pieces = PieceCutter.Cut(FieldRings.Of(slide.Faces[0]), BondMaker.Straight(job.Runs[0].Bond, job.Products[0], Mm(3)), place[0], job.Products[0], job.Tape, "A")
                .Where(piece => piece.Kind != PieceKind.Full).ToLookup(piece => piece.Cell);
            var cells = Cut(slide, place);
            Assert.Equal(pieces.Select(cell => cell.Key).ToHashSet(), cells.Select(cut => cut.Cell).ToHashSet());
            Assert.Equal(pieces.Count, cells.Count);
            foreach (var (kind, cell) in cells)
            {
                Assert.True(pieces[cell].Any(piece => piece.Kind == kind), $"{kind} at {cell}, where the pieces are {string.Join(", ", pieces[cell].Select(piece => $"{piece.Kind} {string.Join(" / ", piece.Outline.Points)}"))}");
                seen.Add(kind);
            }
        }

        // The test has seen every kind.
        Assert.Superset(new HashSet<PieceKind> { PieceKind.Straight, PieceKind.Corner, PieceKind.Notch, PieceKind.Slot, PieceKind.Hole, PieceKind.Taper, PieceKind.Shaped }, seen);
    }

    private static List<(PieceKind Kind, Box Cell)> Cut(RodSlide slide, Sequence<Placing> place)
    {
        var cells = new CutCells();
        slide.Cut(place, 0, cells);
        var (width, height) = (slide.Tiles[0].Bounds.Width, slide.Tiles[0].Bounds.Height);
        var all = new List<(PieceKind, Box)>();
        foreach (var kind in Enum.GetValues<PieceKind>())
        {
            var corners = cells.Of(kind);
            for (var i = 0; i < corners.Length; i += 3)
            {
                var (left, bottom) = (Length.FromSteps(corners[i]), Length.FromSteps(corners[i + 1]));
                all.Add((kind, new(left, bottom, left + width, bottom + height)));
            }
        }

        return all;
    }

    private static Job Wall(string bond, bool asFound = false)
    {
        var window = new Opening("window", Ring.Of(new(Mm(610), Mm(905), Mm(1220), Mm(1610))), [.. new[] { "bottom", "right", "top", "left" }.Select(name => new Edge(name, EdgeKind.Fixture))]);
        var job = OneWall.Job(
            Mm(1987), Mm(2411), Mm(3), Mm(300), JointRange.Only(Mm(3)), Tape.Millimetres, openings: [window], depth: Mm(150),
            bond: bond switch
            {
                "grid" => new BondRequest.Grid(Lay.Level),
                "half" => new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay),
                "third there and back" => new BondRequest.Running(Lay.Level, 1, 3, Stepping.BackAndForth),
                "third upright" => new BondRequest.Running(Lay.Upright, 1, 3, Stepping.OneWay),
                _ => new BondRequest.Running(Lay.Level, 1, 4, Stepping.OneWay),
            });
        return asFound ? job with { Faces = [AsFound(window)] } : job;
    }

    /// <summary>Out of plumb and of level, a bench at the foot, a raking ceiling, a pipe's chase and a valve.</summary>
    private static Face AsFound(Opening window)
    {
        var ring = new Ring([new(Mm(0), Mm(0)), new(Mm(1500), Mm(2)), new(Mm(1500), Mm(450)), new(Mm(1985), Mm(453)), new(Mm(1981), Mm(1800)), new(Mm(1500), Mm(2411)), new(Mm(6), Mm(2405))]);
        Sequence<Edge> edges =
        [
            new("foot", EdgeKind.Floor), new("bench.left", EdgeKind.Fixture), new("bench", EdgeKind.Fixture), new("right", EdgeKind.InsideCorner),
            new("rake", EdgeKind.Ceiling), new("head", EdgeKind.Ceiling), new("left", EdgeKind.InsideCorner),
        ];
        var chase = window with { Name = "chase", Ring = Ring.Of(new(Mm(300), Mm(300), Mm(390), Mm(520))) };
        return new("wall", new FaceShape.Outline(ring, edges, Length.Zero), [window, chase], [new("valve", new(Mm(1500), Mm(1100)), Mm(110)), new("spout", new(Mm(1500), Mm(2000)), Mm(30))]);
    }

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);
}
