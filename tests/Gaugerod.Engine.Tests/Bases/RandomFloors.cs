using CsCheck;
using Gaugerod.Engine.Bases;
using NetTopologySuite.Geometries;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bases;

/// <summary>A floor at random, as the engine has it and as NetTopologySuite does.</summary>
internal sealed record RandomFloor((long X, long Y)[] Outline, (long X, long Y)[][] Standing, ((long X, long Y) A, (long X, long Y) B)[] Drains)
{
    public OpenFloor Open { get; } = new(RingMm(Outline), [.. Standing.Select(ring => RingMm(ring))]);

    public Polygon Polygon { get; } = new(Ring(Outline), [.. Standing.Select(Ring)]);

    public WaterPaths Paths => new(
        Open, Drains.Where(drain => drain.A == drain.B).Select(drain => new Place(drain.A.X, drain.A.Y)),
        [.. Drains.Where(drain => drain.A != drain.B).Select(drain => new Channel(new(drain.A.X, drain.A.Y), new(drain.B.X, drain.B.Y)))]);

    public WalkedFloor Walked => new(Polygon, [.. Drains.Select(drain => (new Coordinate(drain.A.X, drain.A.Y), new Coordinate(drain.B.X, drain.B.Y)))]);

    private static LinearRing Ring((long X, long Y)[] ring) => new([.. ring.Append(ring[0]).Select(point => new Coordinate(point.X, point.Y))]);

    public override string ToString() =>
        $"outline {string.Join(' ', Outline)}; standing {string.Join(" | ", Standing.Select(ring => string.Join(' ', ring)))}; drains {string.Join(' ', Drains)}";
}

/// <summary>Floors with corners that point in, with things standing on them, with one drain or several anywhere.</summary>
internal static class RandomFloors
{
    /// <param name="standing">At most so many things stand on it.</param>
    /// <param name="drains">At most so many drains.</param>
    /// <param name="channels">Whether some are channels.</param>
    public static Gen<RandomFloor> Any(int standing, int drains, bool channels) =>
        from corners in Gen.Int[4, 9]
        from radii in Gen.Long[250, 1500].Array[corners]
        from turns in Gen.Double[0.15, 0.85].Array[corners]
        from things in Gen.Select(Gen.Long[-900, 900], Gen.Long[-900, 900], Gen.Long[30, 250], Gen.Long[30, 250]).Array[0, standing]
        from ends in Gen.Select(Gen.Long[-1200, 1200], Gen.Long[-1200, 1200], Gen.Long[-500, 500], Gen.Long[-500, 500], Gen.Bool).Array[1, 4 * drains]
        select Made(radii, turns, things, ends, drains, channels);

    private static RandomFloor Made(long[] radii, double[] turns, (long X, long Y, long W, long H)[] things, (long X, long Y, long Dx, long Dy, bool Channel)[] ends, int most, bool channels)
    {
        var outline = radii.Select((radius, i) => ((long)(radius * Math.Cos((i + turns[i]) * 2 * Math.PI / radii.Length)), (long)(radius * Math.Sin((i + turns[i]) * 2 * Math.PI / radii.Length)))).ToArray();
        var floor = new RandomFloor(outline, [], []);
        foreach (var t in things)
        {
            // Not all things stand square.
            var with = floor with { Standing = [.. floor.Standing, [(t.X, t.Y), (t.X + t.W, t.Y + (t.H / 7)), (t.X + t.W, t.Y + t.H), (t.X + (t.W / 3), t.Y + t.H)]] };
            if (new RandomFloor(with.Outline, with.Standing, []).Polygon.IsValid) floor = new(with.Outline, with.Standing, []);
        }

        var inside = floor.Polygon.InteriorPoint;
        var drains = new List<((long X, long Y) A, (long X, long Y) B)>();
        foreach (var end in ends.Append(((long)inside.X, (long)inside.Y, 0, 0, false)))
        {
            var drain = (A: (end.Item1, end.Item2), B: channels && end.Item5 ? (end.Item1 + end.Item3, end.Item2 + end.Item4) : (end.Item1, end.Item2));
            if (drains.Count < most && floor.Polygon.Covers(Of(drain)) && (Of(drain).Distance(floor.Polygon.Boundary) > 2 || drains.Count == 0) && drains.TrueForAll(other => Of(other).Distance(Of(drain)) > 5)) drains.Add(drain);
        }

        return new(floor.Outline, floor.Standing, [.. drains]);

        static Geometry Of(((long X, long Y) A, (long X, long Y) B) drain) => drain.A == drain.B
            ? new NetTopologySuite.Geometries.Point(drain.A.X, drain.A.Y)
            : new LineString([new(drain.A.X, drain.A.Y), new(drain.B.X, drain.B.Y)]);
    }
}
