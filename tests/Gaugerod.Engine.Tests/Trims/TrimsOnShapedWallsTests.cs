using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Walls with steps, rakes and borders, trims of two widths round them. Source: NetTopologySuite (see <see cref="TrimReferee"/>).</summary>
public sealed class TrimsOnShapedWallsTests
{
    private static readonly string[] s_steps = ["foot", "bench side", "bench top", "right", "head", "left"];

    private static readonly Gen<(TrimProduct Wide, TrimProduct Narrow)> s_products =
        from stock in Gen.Int[140, 320]
        from width in Gen.Select(Gen.Int[15, 60], Gen.Int[15, 60])
        from joint in Gen.Int[0, 4]
        from pieces in Gen.Bool
        let one = Bullnose with { Stock = Mm(stock), Width = Mm(width.Item1), Joint = Mm(joint), Outside = pieces ? Mm(width.Item1 + 15) : null, Inside = pieces ? Mm(width.Item1) : null, Stop = pieces ? Mm(40) : null }
        select (one, one with { Name = "other", Width = Mm(width.Item2), Outside = null, Inside = null });

    private static readonly Gen<(int Of, TrimJoints Joints, TrimCorner Corner, bool Said)[]> s_asked = Gen.Select(Gen.Int[0, 2], Gen.Enum<TrimJoints>(), Gen.Enum<TrimCorner>(), Gen.Bool).Array[6];

    [Fact]
    public void On_60_walls_with_a_bench_or_a_curb_before_them_trims_of_two_widths_run_round_it()
    {
        var gen =
            from size in Gen.Select(Gen.Int[1200, 2600], Gen.Int[1100, 1800])
            from step in Gen.Select(Gen.Int[30, 70], Gen.Int[20, 45])
            from products in s_products
            from asked in s_asked
            let bench = (X: size.Item1 * step.Item1 / 100, Y: size.Item2 * step.Item2 / 100)
            let ring = new Ring([At(0, 0), At(bench.X, 0), At(bench.X, bench.Y), At(size.Item1, bench.Y), At(size.Item1, size.Item2), At(0, size.Item2)])
            select Walled(ring, [.. s_steps.Select((name, i) => Edge(name, products, asked[i]))], products);
        Look(gen, 60, least: 150);
    }

    [Fact]
    public void On_60_wainscots_with_a_raking_top_trims_follow_the_rake_and_no_corner_piece_is_bent_to_it()
    {
        var gen =
            from size in Gen.Select(Gen.Int[1200, 2600], Gen.Int[800, 1200], Gen.Int[800, 1500])
            from products in s_products
            from asked in s_asked
            let ring = new Ring([At(0, 0), At(size.Item1, 0), At(size.Item1, size.Item2), At(0, size.Item3)])
            select Walled(ring, [.. new[] { "foot", "right", "head", "left" }.Select((name, i) => Edge(name, products, asked[i]))], products);
        Look(gen, 60, least: 100);
    }

    [Fact]
    public void On_30_walls_with_a_border_trims_stand_beside_the_border_s_strips()
    {
        var gen =
            from size in Gen.Select(Gen.Int[1200, 2400], Gen.Int[1000, 1800])
            from mitred in Gen.Bool
            from products in s_products
            from asked in s_asked
            let job = Walled(Ring.Of(new Box(Length.Zero, Length.Zero, Mm(size.Item1), Mm(size.Item2))), [.. new[] { "foot", "right", "head", "left" }.Select((name, i) => Edge(name, products, asked[i]))], products)
            select job with
            {
                Faces = [job.Faces[0] with { Zones = [new Zone.Border("frame", Mm(120), mitred)] }],
                Runs = [job.Runs[0], job.Runs[0] with { Name = "frame", Faces = ["frame"] }],
            };
        Look(gen, 30, least: 50);
    }

    [Fact]
    public void A_trim_along_an_arc_is_said_not_to_be_planned_and_the_others_stand()
    {
        var (one, other) = (Bullnose, Bullnose with { Name = "other" });
        var head = Trimmed("head", one, TrimJoints.Free);
        // A flat arch of four chords.
        var ring = new Ring([At(0, 0), At(1600, 0), At(1600, 1000), At(1250, 1080), At(800, 1110), At(350, 1080), At(0, 1000)]);
        var job = Walled(ring, [new("foot", EdgeKind.Floor), Trimmed("right", one, TrimJoints.Free), head, head, head, head, Trimmed("left", one, TrimJoints.Free)], (one, other));
        Assert.Empty(JobCheck.Check(job));
        var plan = Planner.Plan(job);
        Assert.Equal(["left", "right"], plan.Trims.Lines.Where(line => line.Pieces.Count > 0).Select(line => line.Edge).Order());
        var finding = Assert.Single(plan.Findings, finding => finding.Rule == "trim");
        Assert.Equal(("wall, head", FindingLevel.Warn), (finding.Where, finding.Level));
        Assert.StartsWith("This edge is round: its trim is not planned.", finding.Text, StringComparison.Ordinal);
    }

    private static void Look(Gen<Job> gen, int count, int least)
    {
        var lines = 0;
        gen.Each(job =>
        {
            if (JobCheck.Check(job).Count > 0) return;
            var plan = Planner.Plan(job);
            TrimReferee.Look(job, plan);
            Interlocked.Add(ref lines, plan.Trims.Lines.Count(line => line.Pieces.Count > 0));
        }, count);
        Assert.True(lines > least, $"{lines} lines were looked at");
    }

    private static Job Walled(Ring ring, Sequence<Edge> edges, (TrimProduct Wide, TrimProduct Narrow) products) =>
        Job(ring, edges, [], products.Wide, new("tile", Mm(197), Mm(147), Mm(9)) { Kerf = Mm(2), BondCoat = Mm(3) }, Mm(3), new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay)) with { Trims = [products.Wide, products.Narrow] };

    private static Edge Edge(string name, (TrimProduct Wide, TrimProduct Narrow) products, (int Of, TrimJoints Joints, TrimCorner Corner, bool Said) asked) =>
        asked.Of == 2 ? new(name, EdgeKind.Free) : Trimmed(name, asked.Of == 0 ? products.Wide : products.Narrow, asked.Joints, null, asked.Said ? asked.Corner : null);

    private static Point At(long x, long y) => new(Mm(x), Mm(y));
}
