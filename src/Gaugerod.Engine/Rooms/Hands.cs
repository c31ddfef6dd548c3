using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Finds which sides of an outline look to the left and right neighbours of its face.</summary>
internal static class Hands
{
    /// <summary>
    /// A corner or a free edge that stands steeper than it lies looks to a neighbour when nothing of the face stands
    /// between them, level out from its middle. An arc looks to none: walls meet along a straight line.
    /// </summary>
    public static DrawnRing Of(DrawnRing drawn)
    {
        var sides = drawn.Sides.Select((side, i) => side with { Hand = EdgeSpans.IsChord(drawn, i) ? Hand.Neither : Of(drawn.Ring, side, i) });
        return drawn with { Sides = sides.ToSequence() };
    }

    private static Hand Of(Ring ring, Side side, int index)
    {
        if (!side.IsCorner && side.Edge.Kind != EdgeKind.Free) return Hand.Neither;
        var (a, b) = (ring.Points[index], ring.Points[(index + 1) % ring.Points.Count]);
        if ((b.Y - a.Y).Abs() <= (b.X - a.X).Abs()) return Hand.Neither;
        var hand = b.Y > a.Y ? Hand.Right : Hand.Left;
        return IsHidden(ring, index, hand) ? Hand.Neither : hand;
    }

    private static bool IsHidden(Ring ring, int index, Hand hand)
    {
        var n = ring.Points.Count;
        var (a, b) = (ring.Points[index], ring.Points[(index + 1) % n]);
        var height = Grid.HalfDown(a.Y + b.Y);
        var at = Grid.Between(a.Y, a.X, b.Y, b.X, height);
        for (var i = 0; i < n; i++)
        {
            var (c, d) = (ring.Points[i], ring.Points[(i + 1) % n]);
            if (i == index || c.Y > height == d.Y > height) continue;
            var there = Grid.Between(c.Y, c.X, d.Y, d.X, height);
            if (hand == Hand.Right ? there > at : there < at) return true;
        }

        return false;
    }
}
