using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>How much of a round hole falls on tile.</summary>
internal enum OnTile
{
    /// <summary>Nothing of it.</summary>
    Nowhere,

    /// <summary>Some of it: it reaches over the field's edge or over an opening's.</summary>
    Partly,

    /// <summary>All of it: it is drilled.</summary>
    Wholly,
}

/// <summary>Looks where a face's round holes fall, and refuses those that cannot be drilled apart.</summary>
internal static class HoleChecks
{
    /// <summary>Corners of a hole's ring; it stands around the circle, 0.5 % of the radius outside it at the most.</summary>
    private const int RoundCorners = 32;

    /// <summary>The hole as it is cut from the field, clockwise.</summary>
    public static Ring Round(Hole hole)
    {
        var radius = hole.Diameter.Steps / 2.0 / Math.Cos(Math.PI / RoundCorners);
        return new(Enumerable.Range(0, RoundCorners).Select(i =>
        {
            var angle = -2 * Math.PI * i / RoundCorners;
            return new Point(
                hole.Centre.X + Length.FromSteps((long)Math.Round(radius * Math.Cos(angle))),
                hole.Centre.Y + Length.FromSteps((long)Math.Round(radius * Math.Sin(angle))));
        }).ToSequence());
    }

    /// <summary>How much of a hole falls on the field.</summary>
    public static OnTile Of(Hole hole, Polygon field)
    {
        var round = Round(hole);
        Sequence<Ring> rings = [field.Outer, .. field.Inner];
        var crossed = rings.Any(ring => RingChecks.FirstMeeting(round, ring) is not null || RingChecks.Locate(round, ring.Points[0]) == Whereabouts.Inside);
        if (crossed) return OnTile.Partly;
        var inField = RingChecks.Locate(field.Outer, hole.Centre) == Whereabouts.Inside
            && field.Inner.All(ring => RingChecks.Locate(ring, hole.Centre) == Whereabouts.Outside);
        return inField ? OnTile.Wholly : OnTile.Nowhere;
    }

    /// <summary>Says what is not drilled, and refuses two holes that run into each other.</summary>
    public static void Check(DrawnFace face, Polygon field, Remarks remarks)
    {
        var drilled = new List<Hole>();
        for (var i = 0; i < face.Face.Holes.Count; i++)
        {
            var hole = face.Face.Holes[i];
            switch (Of(hole, field))
            {
                case OnTile.Nowhere:
                    remarks.Find(FindingLevel.Note, "hole", face.Face.Name, $"The hole '{hole.Name}' lies where no tile is: nothing is drilled for it.");
                    continue;
                case OnTile.Partly:
                    remarks.Find(
                        FindingLevel.Warn, "hole", face.Face.Name,
                        $"The hole '{hole.Name}' reaches over the edge of the tile and is in no drawing or cut list: mark it by hand, or draw it as part of an opening.");
                    continue;
            }

            if (drilled.FirstOrDefault(other => Meet(hole, other)) is { } met)
            {
                remarks.Refuse(
                    string.Create(CultureInfo.InvariantCulture, $"{face.Path}.holes[{i}]"),
                    $"the hole '{hole.Name}' running into '{met.Name}'", "holes with tile between them", "make them one hole, or an opening");
            }

            drilled.Add(hole);
        }
    }

    private static bool Meet(Hole one, Hole other)
    {
        var (a, b) = (Round(one), Round(other));
        return RingChecks.FirstMeeting(a, b) is not null
            || RingChecks.Locate(a, b.Points[0]) == Whereabouts.Inside
            || RingChecks.Locate(b, a.Points[0]) == Whereabouts.Inside;
    }
}
