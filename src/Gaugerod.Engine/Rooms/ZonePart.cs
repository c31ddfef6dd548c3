using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>A zone of a finished face, or what is left of the face.</summary>
/// <param name="Face">Its field under its own name.</param>
/// <param name="Zone">The name of the zone; of a border's strip the border's.</param>
/// <param name="Turn">How far the strip of a border is turned from level; not at all for anything else.</param>
/// <param name="IsStrip">Whether it is one strip of a border.</param>
internal sealed record ZonePart(FinishedFace Face, string Zone, Angle Turn, bool IsStrip);

/// <summary>Makes a face's field out of rings whose sides know which edge they are of.</summary>
internal static class ZoneField
{
    /// <summary>The face with another field; null when the rings are in no or in several pieces.</summary>
    /// <param name="whole">The face.</param>
    /// <param name="name">The new name.</param>
    /// <param name="rings">The rings: outlines counter-clockwise, holes clockwise.</param>
    /// <param name="edges">What each tag stands for.</param>
    public static FinishedFace? Of(FinishedFace whole, string name, IReadOnlyList<TaggedCorner[]> rings, IReadOnlyList<FieldEdge> edges)
    {
        var outlines = rings.Where(ring => Plain(ring).DoubledArea > 0).ToList();
        if (outlines.Count != 1) return null;
        var holes = rings.Where(ring => Plain(ring).DoubledArea < 0).ToList();
        var field = new Polygon(Plain(outlines[0]), holes.Select(hole => Plain(hole).CounterClockwise()).ToSequence());
        return whole with { Name = name, Field = field, Edges = outlines.Concat(holes).SelectMany(ring => Sides(ring, edges)).ToSequence() };
    }

    private static IEnumerable<FieldEdge> Sides(TaggedCorner[] ring, IReadOnlyList<FieldEdge> edges)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            yield return edges[ring[i].Tag] with { From = ring[i].Point, To = ring[(i + 1) % ring.Length].Point };
        }
    }

    /// <summary>The ring without corners at which it goes straight on.</summary>
    private static Ring Plain(TaggedCorner[] ring)
    {
        var points = new List<Point>();
        for (var i = 0; i < ring.Length; i++)
        {
            var (before, here, after) = (ring[(i + ring.Length - 1) % ring.Length].Point, ring[i].Point, ring[(i + 1) % ring.Length].Point);
            if (Segments.Turn(before, here, after) != 0) points.Add(here);
        }

        return new(points.ToSequence());
    }
}
