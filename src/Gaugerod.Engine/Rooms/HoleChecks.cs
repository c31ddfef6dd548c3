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

    /// <summary>It takes all of the tile.</summary>
    Over,

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
        if (IsAllIn(field.Outer, round)) return OnTile.Over;
        Sequence<Ring> rings = [field.Outer, .. field.Inner];
        var crossed = rings.Any(ring => RingChecks.FirstMeeting(round, ring) is not null || RingChecks.Locate(round, ring.Points[0]) == Whereabouts.Inside);
        if (crossed) return OnTile.Partly;
        var inField = RingChecks.Locate(field.Outer, hole.Centre) == Whereabouts.Inside
            && field.Inner.All(ring => RingChecks.Locate(ring, hole.Centre) == Whereabouts.Outside);
        return inField ? OnTile.Wholly : OnTile.Nowhere;
    }

    private static bool IsAllIn(Ring ring, Ring round) => RingChecks.FirstMeeting(round, ring) is null && RingChecks.Locate(round, ring.Points[0]) == Whereabouts.Inside;

    /// <summary>Says what is not drilled, and refuses two holes that run into each other.</summary>
    public static void Check(DrawnFace face, Polygon field, Remarks remarks)
    {
        var drilled = new List<Hole>();
        for (var i = 0; i < face.Face.Holes.Count; i++)
        {
            var (hole, path) = (face.Face.Holes[i], string.Create(CultureInfo.InvariantCulture, $"{face.Path}.holes[{i}]"));
            switch (Of(hole, field))
            {
                case OnTile.Nowhere:
                    remarks.Find(FindingLevel.Note, "hole", face.Face.Name, $"The hole '{hole.Name}' lies where no tile is: nothing is drilled for it.");
                    continue;
                case OnTile.Over:
                    remarks.Faults.Add(Over(hole, path, face.Face.Name, field, remarks.Tape));
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
                    path,
                    $"the hole '{hole.Name}' running into '{met.Name}'", "holes with tile between them", "make them one hole, or an opening");
            }

            drilled.Add(hole);
        }
    }

    /// <summary>
    /// Looks where holes fall on a face's zones: one that reaches over a zone's edge is drilled in none of them, and one over all of
    /// a zone leaves nothing to lay there.
    /// </summary>
    /// <param name="face">The whole face.</param>
    /// <param name="path">Where it stands in the job.</param>
    /// <param name="zones">Its zones and what they leave.</param>
    /// <param name="remarks">Takes what there is to say.</param>
    public static void Check(FinishedFace face, string path, IReadOnlyList<ZonePart> zones, Remarks remarks)
    {
        for (var i = 0; i < face.Holes.Count; i++)
        {
            var hole = face.Holes[i];
            if (Of(hole, face.Field) != OnTile.Wholly) continue;
            var on = zones.Select(zone => (zone.Face, On: Of(hole, zone.Face.Field))).ToList();
            if (on.FirstOrDefault(part => part.On == OnTile.Over).Face is { } gone)
            {
                remarks.Faults.Add(Over(hole, string.Create(CultureInfo.InvariantCulture, $"{path}.holes[{i}]"), gone.Name, gone.Field, remarks.Tape));
                continue;
            }

            var parts = on.Where(part => part.On == OnTile.Partly).Select(part => $"'{part.Face.Name}'").ToList();
            if (parts.Count == 0) continue;
            remarks.Find(
                FindingLevel.Warn, "hole", face.Name,
                $"The hole '{hole.Name}' reaches over the edge of {string.Join(" and ", parts)} and is in no drawing or cut list: mark it by hand on the tiles it falls on.");
        }
    }

    /// <summary>A hole that leaves nothing of what it is drilled in, and the largest round its middle that does.</summary>
    private static Fault Over(Hole hole, string path, string of, Polygon field, Tape tape)
    {
        // What is drilled may have a clearance round it: that stays.
        var most = LargestOn(hole, field, tape);
        var bare = most - hole.Clearance * 2;
        return new(path + ".diameter", $"a hole of {LengthText.Finer(hole.Diameter, tape)} that takes all of \"{of}\"", $"a hole with tile of \"{of}\" round it", bare > Length.Zero ? LengthText.Finer(bare, tape) : null)
        {
            Mends = bare > Length.Zero ? [Mend.Of(path + ".diameter", bare, tape)] : [],
        };
    }

    private static Length LargestOn(Hole hole, Polygon field, Tape tape)
    {
        var (fits, most) = (Length.Zero, tape.Down(hole.Diameter));
        while (most - fits > tape.Mark)
        {
            var middle = tape.Down(Length.FromSteps((fits + most).Steps / 2));
            if (Of(hole with { Diameter = middle }, field) == OnTile.Wholly) fits = middle;
            else most = middle;
        }

        return fits;
    }

    private static bool Meet(Hole one, Hole other)
    {
        var (a, b) = (Round(one), Round(other));
        return RingChecks.FirstMeeting(a, b) is not null
            || RingChecks.Locate(a, b.Points[0]) == Whereabouts.Inside
            || RingChecks.Locate(b, a.Points[0]) == Whereabouts.Inside;
    }
}
