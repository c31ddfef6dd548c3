namespace Gaugerod.Engine.Bases;

/// <summary>Heights along a straight line, read one after another.</summary>
/// <param name="Places">Where they were read.</param>
/// <param name="Along">How far each is along the line, rising.</param>
/// <param name="Out">How far the face stands out at each.</param>
internal sealed record Profile(Place[] Places, double[] Along, double[] Out);

/// <summary>The worst place under a straightedge, or over a string, and the two places that hold it.</summary>
internal readonly record struct Sag(double By, Place From, Place To, Place At);

/// <summary>
/// Lays a straightedge of a length along a profile wherever it can lie. It rests on two places such that nothing between stands higher: a
/// side of the hull over the readings that it reaches. The longer the reach the higher the hull, so every reading is tried as one end only.
/// </summary>
internal static class Straightedge
{
    // Readings are set out by tape: what is half a millimetre beyond its end is still under it.
    public const double Reach = 0.5;

    /// <summary>The widest gap; null where no three readings lie within its length.</summary>
    public static Sag? Worst(Profile profile, double length)
    {
        var (count, worst) = (profile.Along.Length, (Sag?)null);
        var hull = new List<int>();
        var last = -1;
        for (var first = 0; first + 2 < count; first++)
        {
            var end = first;
            while (end + 1 < count && profile.Along[end + 1] - profile.Along[first] <= length + Reach) end++;
            // What the one before it reached already says no more.
            if (end - first < 2 || end == last) continue;
            last = end;
            hull.Clear();
            for (var i = first; i <= end; i++)
            {
                while (hull.Count > 1 && Over(profile, hull[^2], i, hull[^1]) >= 0) hull.RemoveAt(hull.Count - 1);
                hull.Add(i);
            }

            for (var k = 0; k + 1 < hull.Count; k++)
            {
                for (var i = hull[k]; i <= hull[k + 1]; i++)
                {
                    var gap = Over(profile, hull[k], hull[k + 1], i);
                    if (worst is null || gap > worst.Value.By) worst = new(gap, profile.Places[hull[k]], profile.Places[hull[k + 1]], profile.Places[i]);
                }
            }
        }

        return worst;
    }

    /// <summary>How far the straight line between two readings stands over a third.</summary>
    public static double Over(Profile profile, int from, int to, int at)
    {
        var (along, heights) = (profile.Along, profile.Out);
        return heights[from] + ((heights[to] - heights[from]) * (along[at] - along[from]) / (along[to] - along[from])) - heights[at];
    }
}
