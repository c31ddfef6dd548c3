using CsCheck;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>A floor with a drain, made so that it is known where its sides meet at an angle.</summary>
/// <param name="Face">The floor; its sides are called <c>side 0</c> and so on.</param>
/// <param name="Corners">The corners given, from which the sides of the same numbers leave.</param>
/// <param name="Bends">By how much, as an angle, it turns at each.</param>
internal sealed record FallingFloor(Face Face, Point[] Corners, double[] Bends)
{
    public Point Drain => Face.Holes[0].Centre;
}

/// <summary>Random floors round a drain: corners at any angle, sides straight, bowed out or in; rounds, stadiums and rounded rectangles among them.</summary>
internal static class FallingFloors
{
    private const long Middle = 1600;

    public static Gen<FallingFloor> Any { get; } = Gen.Frequency((8, Stars()), (1, Rounded()), (1, Lens), (1, Drop), (1, Gen.Select(Gen.Long[300, 1200], Gen.Long[-200, 200], Gen.Long[-200, 200]).Select((radius, x, y) =>
        Drawn([At(Middle - radius, Middle), At(Middle + radius, Middle)], [At(Middle, Middle - radius), At(Middle, Middle + radius)], At(Middle + (x * radius / 300), Middle + (y * radius / 300))))));

    /// <summary>Two rounds, or a round and nearly a side, that meet at two corners beside the drain: one plane spans more than half a turn.</summary>
    private static Gen<FallingFloor> Lens =>
        from half in Gen.Long[300, 1000]
        from off in Gen.Long[30, 200]
        from bows in Gen.Select(Gen.Long[20, 150], Gen.Long[300, 900])
        select Drawn([At(Middle - half, Middle - off), At(Middle + half, Middle - off)], [At(Middle, Middle - off - bows.Item1), At(Middle, Middle - off + bows.Item2)], At(Middle, Middle));

    /// <summary>A round with the two tangents to it from one corner.</summary>
    private static Gen<FallingFloor> Drop =>
        from radius in Gen.Long[300, 800]
        from away in Gen.Long[130, 300]
        let cosine = 100.0 / away
        let right = Middle + (long)(radius * cosine)
        let beside = (long)(radius * Math.Sqrt(1 - (cosine * cosine)))
        select Drawn(
            [At(Middle + (radius * away / 100), Middle), At(right, Middle + beside), At(right, Middle - beside)], [null, At(Middle - radius, Middle), null], At(Middle + (radius / 10), Middle - 20));

    private static Gen<FallingFloor> Stars() =>
        from count in Gen.Int[3, 7]
        from jitter in Gen.Double[-0.3, 0.3].Array[count]
        from radii in Gen.Long[400, 1500].Array[count]
        from bows in Gen.Frequency((3, Gen.Const(0.0)), (2, Gen.Double[0.03, 0.5]), (1, Gen.Double[-0.1, -0.03])).Array[count]
        select Star(count, jitter, radii, bows);

    private static FallingFloor Star(int count, double[] jitter, long[] radii, double[] bows)
    {
        var corners = Enumerable.Range(0, count).Select(i => (i + jitter[i]) * 2 * Math.PI / count)
            .Select((angle, i) => At(Middle + (long)(radii[i] * Math.Cos(angle)), Middle + (long)(radii[i] * Math.Sin(angle)))).ToArray();
        var through = corners.Select((from, i) =>
        {
            var to = corners[(i + 1) % count];
            if (bows[i] == 0) return (Point?)null;
            var (dx, dy) = ((to.X - from.X).Steps, (to.Y - from.Y).Steps);
            return Point.FromSteps(((from.X + to.X).Steps / 2) + (long)(dy * bows[i]), ((from.Y + to.Y).Steps / 2) - (long)(dx * bows[i]));
        }).ToArray();
        return Drawn(corners, through, At(Middle, Middle));
    }

    /// <summary>A rectangle with its corners rounded, or two half rounds and two sides: no corner anywhere.</summary>
    private static Gen<FallingFloor> Rounded() =>
        from size in Gen.Select(Gen.Long[400, 1200], Gen.Long[400, 1200])
        from radius in Gen.Long[20, 390]
        let across = (long)(radius * (1 - Math.Sqrt(0.5)))
        let right = Middle + size.Item1
        let top = Middle + size.Item2
        select Drawn(
            [
                At(Middle + radius, Middle), At(right - radius, Middle), At(right, Middle + radius), At(right, top - radius), At(right - radius, top),
                At(Middle + radius, top), At(Middle, top - radius), At(Middle, Middle + radius),
            ],
            [null, At(right - across, Middle + across), null, At(right - across, top - across), null, At(Middle + across, top - across), null, At(Middle + across, Middle + across)],
            At(Middle + (size.Item1 / 2), Middle + (size.Item2 / 2)));

    private static FallingFloor Drawn(Point[] corners, Point?[] through, Point drain)
    {
        var (points, edges, count) = (new List<Point>(), new List<Edge>(), corners.Length);
        for (var i = 0; i < count; i++)
        {
            var arc = through[i] is { } on ? Arc.Of(corners[i], on, corners[(i + 1) % count]) : null;
            points.AddRange([corners[i], .. arc?.Corners() ?? []]);
            edges.AddRange(Enumerable.Repeat(Stop($"side {i}"), arc?.Chords ?? 1));
        }

        var bends = corners.Select((corner, i) =>
        {
            var before = (i + count - 1) % count;
            // Two straight sides meet at an angle where the corner stands a mark off the line past it.
            var straight = (X: (double)(corners[(i + 1) % count].X - corners[before].X).Steps, Y: (double)(corners[(i + 1) % count].Y - corners[before].Y).Steps);
            var off = Math.Abs((straight.X * (corner.Y - corners[before].Y).Steps) - (straight.Y * (corner.X - corners[before].X).Steps)) / Math.Sqrt((straight.X * straight.X) + (straight.Y * straight.Y));
            if (through[i] is null && through[before] is null) return off > 3200 ? Math.PI : 0;
            return Math.Abs(Math.IEEERemainder(Leaving(corner, through[i], corners[(i + 1) % count]) - Leaving(corner, through[before], corners[before]) - Math.PI, 2 * Math.PI));
        }).ToArray();
        var face = new Face("floor", new FaceShape.Outline(new(points.ToSequence()), edges.ToSequence(), default), [], [new("drain", drain, Mm(60))]);
        return new(face, corners, bends);
    }

    /// <summary>Which way one sets out along a side: along an arc, as far aside of its chord as its other end is aside of the way to the place between.</summary>
    private static double Leaving(Point from, Point? through, Point to)
    {
        var chord = Way(from, to);
        return through is { } on ? chord + Way(from, on) - Way(on, to) : chord;
    }

    private static double Way(Point from, Point to) => Math.Atan2((to.Y - from.Y).Steps, (to.X - from.X).Steps);
}
