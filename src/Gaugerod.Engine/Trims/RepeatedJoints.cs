namespace Gaugerod.Engine.Trims;

/// <summary>Lines whose joints all stand as far past a joint of the field, so that the pieces span whole courses.</summary>
internal static class RepeatedJoints
{
    /// <summary>The best offset with the best arrangement at it; null where the field does not repeat evenly or nothing keeps what is asked.</summary>
    public static Arrangement? Best(TrimLine line, long twice)
    {
        if (Pitch(line) is not { } pitch) return null;
        var first = line.Beside.Min(joint => joint.Middle) - line.Joint;
        var ways = Offsets(line, first, pitch).Select(offset => (Offset: offset, Stagger: Stagger(first, offset, pitch))).Where(way => way.Stagger >= twice)
            .Select(way => (way.Offset, way.Stagger, Found: PlaceSearch.Find(JointPlacing.Problem(line, Places(line, way.Offset, pitch)))))
            .Where(way => way.Found is not null).OrderBy(way => way.Found!.Cost).ThenByDescending(way => way.Stagger).ToList();
        return ways.TakeWhile(way => way.Found!.Cost == ways[0].Found!.Cost && way.Stagger == ways[0].Stagger)
            .Select(way => JointPlacing.Along(line, _ => Places(line, way.Offset, pitch), 0, stagger: false)!)
            .MaxBy(way => way.Shortest(line));
    }

    /// <summary>How far apart the field's joints stand; null where they are fewer than two or not evenly apart.</summary>
    public static long? Pitch(TrimLine line)
    {
        var middles = line.Beside.Select(joint => joint.Middle).Distinct().Order().ToList();
        if (middles.Count < 2) return null;
        var twice = middles[1] - middles[0];
        return twice % 2 == 0 && middles.Zip(middles.Skip(1), (one, next) => next - one).All(apart => apart == twice) ? twice / 2 : null;
    }

    /// <summary>
    /// Where a joint may begin for the best offset: an end piece whole, just trimmed or the least, or half a course from the field's joints; each also as far to the other
    /// side of them.
    /// </summary>
    private static IEnumerable<long> Offsets(TrimLine line, long first, long pitch)
    {
        var last = line.Length - line.Joint;
        long[] places =
        [
            line.Stock, line.Stock - 1, line.LeastFirst, last - line.Stock, last - line.Stock + 1, last - line.LeastLast,
            TrimLine.Half(first + pitch), TrimLine.Half(first + pitch + 1),
        ];
        return places.SelectMany(place => new[] { place, first - place }).Select(place => Within(place, pitch)).Distinct().Order();
    }

    private static Ranges Places(TrimLine line, long offset, long pitch)
    {
        var places = new List<(long, long)>();
        for (var place = offset; place < line.Length; place += pitch) places.Add((place, place));
        return Ranges.Of(places);
    }

    /// <summary>Twice the distance to the nearest joint, as if the field went on for ever.</summary>
    private static long Stagger(long first, long place, long pitch)
    {
        var past = Within((2 * place) - first, 2 * pitch);
        return Math.Min(past, (2 * pitch) - past);
    }

    private static long Within(long place, long pitch) => ((place % pitch) + pitch) % pitch;
}
