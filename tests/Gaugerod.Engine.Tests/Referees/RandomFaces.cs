using CsCheck;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>
/// Random faces by their corners: a foot and a head in one to three stretches (benches, baths, soffits, raking ceilings),
/// corners out of plumb, windows of three and four sides, round holes. Lengths fall on a grain: every step, a hundredth
/// of a millimetre, half a millimetre, 1/16 in or a centimetre, so that odd numbers and coincidences both come up.
/// </summary>
internal static class RandomFaces
{
    /// <summary>A stretch of a foot or a head: where it ends and how high it stands, in hundredths, and how it slopes.</summary>
    private readonly record struct Stretch(int End, int Height, int Slope, bool Rising);

    private readonly record struct Pane(bool Here, int Corners, int Left, int Width, int[] Jitter);

    public static Gen<Face> Square(int least, int most) => Given(true, least, most);

    public static Gen<Face> Crooked(int least, int most) => Given(false, least, most);

    /// <summary>A wall given by readings, out of plumb and level, with a bath, a bench or a soffit, and a niche.</summary>
    public static Gen<Face> Read { get; } =
        from width in Gen.Long[1200, 2600]
        from slips in Gen.Long[-20, 20].Nullable().Array[5]
        from fixture in Gen.Int[0, 3]
        from height in Gen.Long[100, 500]
        from niche in Gen.Select(Gen.Long[300, 500], Gen.Long[900, 1200], Gen.Long[100, 400])
        select Read(
            "wall", readings: Wall(
                Mm(width), Mm(1900), slips[0] is { } m ? Mm(width + m) : null, slips[1] is { } t ? Mm(width + t) : null, level: (Mm(1000), Mm(1000 + (slips[2] ?? 0))),
                leanLeft: slips[3] is { } l ? Mm(l) : null, leanRight: slips[4] is { } r ? Mm(r) : null),
            fixtures: fixture switch
            {
                0 => [],
                1 => [Box("bath", 0, 700, height)],
                2 => [Box("bench", 300, 800, height), Box("bath", 800, null, height + 50)],
                _ => [Box("soffit", 500, null, 1900 - height, true)],
            },
            openings: [Window("niche", niche.Item1, niche.Item2, niche.Item1 + niche.Item3, niche.Item2 + niche.Item3)]);

    /// <summary>A gable: a triangle, or one on a wall, its top anywhere over its foot, with a round window.</summary>
    public static Gen<Face> Gable(int least, int most) =>
        from size in Gen.Select(Gen.Long[least, most], Gen.Long[least, most])
        from eaves in Gen.OneOf(Gen.Const(0L), Gen.Long[50, 600])
        from top in Gen.Int[0, 100]
        from pipe in Gen.Long[20, 120]
        select Rooms.Walls.Given(
            "gable", eaves == 0
                ? [(0, 0), (size.Item1, 0), (size.Item1 * top / 100, size.Item2)]
                : [(0, 0), (size.Item1, 0), (size.Item1, eaves), (size.Item1 * top / 100, eaves + size.Item2), (0, eaves)],
            Enumerable.Range(0, eaves == 0 ? 3 : 5).Select(i => Stop($"side {i}")).ToArray()) with
        {
            Holes = [new("pipe", At(size.Item1 * (33 + top) / 300, (eaves / 2) + (size.Item2 / 3)), Mm(pipe))],
        };

    private static Gen<Stretch[]> Chain(bool square) =>
        from count in Gen.Int[1, 3]
        from ends in Gen.Select(Gen.Int[20, 45], Gen.Int[55, 80])
        from heights in Gen.OneOf(Gen.Const(0), Gen.Int[5, 35]).Array[3]
        from slopes in (square ? Gen.Const(0) : Gen.Frequency((3, Gen.Const(0)), (3, Gen.Const(1)), (1, Gen.Const(2)))).Array[3]
        from rising in Gen.Bool.Array[3]
        select Enumerable.Range(0, count)
            .Select(i => new Stretch(i == count - 1 ? 100 : i == 0 ? ends.Item1 : ends.Item2, heights[i], slopes[i], rising[i])).ToArray();

    private static readonly Gen<Pane> Panes =
        from here in Gen.Bool
        from corners in Gen.Int[3, 4]
        from left in Gen.Int[0, 15]
        from width in Gen.Int[8, 18]
        from jitter in Gen.Int[-1, 1].Array[8]
        select new Pane(here, corners, left, width, jitter);

    private static Gen<Face> Given(bool square, int least, int most) =>
        from grain in RandomRooms.Pick(1L, 32L, 1600L, 5080L, 32_000L)
        from size in Gen.Select(Gen.Int[least, most], Gen.Int[least, most])
        from foot in Chain(square)
        from head in Chain(square)
        from leans in (square ? Gen.Const(0) : Gen.Frequency((2, Gen.Const(0)), (4, Gen.Int[-2, 2]), (1, Gen.Const(15)))).Array[2]
        from joints in Gen.Long[0, 6].Array[16]
        from panes in Panes.Array[2]
        from holes in Gen.Select(Gen.Int[0, 100], Gen.Int[0, 100], Gen.Long[8, 40]).Array[0, 2]
        from level in Gen.Long[900, 1100]
        select Draw(grain, square, Mm(size.Item1).Steps, Mm(size.Item2).Steps, foot, head, leans, joints, panes, holes, Mm(level));

    private static Face Draw(
        long grain, bool square, long width, long height, Stretch[] foot, Stretch[] head, int[] leans, long[] joints, Pane[] panes,
        (int X, int Y, long D)[] holes, Length level)
    {
        long On(long value) => (value + (grain / 2)) / grain * grain;
        var corners = new List<(Point At, string Leaves)>();
        var at = 0L;
        for (var i = 0; i < foot.Length; i++)
        {
            // A sloping foot falls below its height and a sloping head rises above it, so that the two never meet.
            var (end, drop) = (width * foot[i].End / 100, Drop(foot[i], (width * foot[i].End / 100) - at));
            var high = height * foot[i].Height / 100;
            corners.Add((Point.FromSteps(On(at), On(high - (foot[i].Rising ? drop : 0))), $"foot {i}"));
            corners.Add((Point.FromSteps(On(end), On(high - (foot[i].Rising ? 0 : drop))), i == foot.Length - 1 ? "right" : $"step {i}"));
            at = end;
        }

        for (var i = head.Length - 1; i >= 0; i--)
        {
            var (begin, end) = (i == 0 ? width * leans[0] / 100 : width * head[i - 1].End / 100, i == head.Length - 1 ? width * (100 - leans[1]) / 100 : width * head[i].End / 100);
            var (rise, low) = (Drop(head[i], end - begin), height * (100 - head[i].Height) / 100);
            corners.Add((Point.FromSteps(On(end), On(low + (head[i].Rising ? rise : 0))), $"head {i}"));
            corners.Add((Point.FromSteps(On(begin), On(low + (head[i].Rising ? 0 : rise))), i == 0 ? "left" : $"drop {i}"));
        }

        // Where two stretches stand at one height nothing lies between them.
        var kept = corners.Where((c, i) => c.At != corners[(i + 1) % corners.Count].At).ToList();
        var edges = kept.Select((c, i) => new Edge(c.Leaves, c.Leaves is "left" or "right" ? EdgeKind.InsideCorner : EdgeKind.Fixture)
        {
            Joint = joints[i] == 6 ? null : Mm(joints[i]),
        });
        return new(
            "wall", new FaceShape.Outline(new(kept.Select(c => c.At).ToSequence()), edges.ToSequence(), level),
            panes.Select((pane, i) => (pane, i)).Where(p => p.pane.Here).Select(p => Cut(p.pane, p.i, square, On, width, height)).ToSequence(),
            holes.Select((h, i) => new Hole($"pipe {i}", Point.FromSteps(On(width * h.X / 100), On(height * h.Y / 100)), Mm(h.D))).ToSequence());
    }

    /// <summary>Level; out of level by 1 in 50; or raking by 1 in 3.</summary>
    private static long Drop(Stretch stretch, long run) => stretch.Slope switch { 0 => 0, 1 => run / 50, _ => run / 3 };

    private static Opening Cut(Pane pane, int index, bool square, Func<long, long> on, long width, long height)
    {
        var (left, right) = (width * (12 + (45 * index) + pane.Left) / 100, width * (12 + (45 * index) + pane.Left + pane.Width) / 100);
        var (low, high) = (height * 44 / 100, height * 56 / 100);
        var slip = square ? 0 : height / 100;
        var points = new (long X, long Y)[] { (left, low), (right, low), (right, high), (left, high) }
            .Take(square ? 4 : pane.Corners)
            .Select((p, i) => Point.FromSteps(on(p.X + (slip * pane.Jitter[2 * i])), on(p.Y + (slip * pane.Jitter[(2 * i) + 1]))))
            .ToSequence();
        return new($"window {index}", new(points), points.Select((_, i) => new Edge($"side {i}", EdgeKind.Fixture)).ToSequence());
    }
}
