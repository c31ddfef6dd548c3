using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>The field of one face, and its sides with all that is known of them.</summary>
/// <param name="Face">The face it is on.</param>
/// <param name="Shape">What tile covers.</param>
/// <param name="Outer">The outer ring's sides.</param>
/// <param name="Openings">Each opening's sides.</param>
internal sealed record Field(DrawnFace Face, Polygon Shape, Sequence<MovedSide> Outer, Sequence<Sequence<MovedSide>> Openings)
{
    public Sequence<FieldEdge> Edges() => Outer.Concat(Openings.SelectMany(o => o))
        .Select(s => new FieldEdge(s.From, s.To, s.Side.Name, s.Side.Edge.Kind) { Trim = s.Side.Edge.Kind is EdgeKind.Free or EdgeKind.OutsideCorner ? s.Side.Edge.Trim : Length.Zero })
        .ToSequence();
}

/// <summary>Takes joints, trims, laps and openings off a face.</summary>
internal static class FieldBuilder
{
    /// <summary>The field; null when it has faults, which are then among the remarks.</summary>
    public static Field? Build(DrawnFace face, Take[] takes, Length edgeJoint, Remarks remarks)
    {
        var before = remarks.Faults.Count;
        var outer = EdgeMoves.Move(face.Outline, tileInside: true, i => takes[i], remarks);
        var openings = new List<(DrawnRing Ring, Sequence<MovedSide> Sides)>();
        foreach (var opening in face.Openings)
        {
            var sides = EdgeMoves.Move(opening, tileInside: false, i => EdgeTakes.Of(opening.Sides[i], default, edgeJoint), remarks);
            if (sides is null || outer is null) continue;
            OpeningChecks.LeavesTileAround(opening, sides, outer, openings, remarks);
            openings.Add((opening, sides));
        }

        if (outer is null || remarks.Faults.Count > before) return null;
        HolesApart(face, remarks);
        if (remarks.Faults.Count > before) return null;
        var inner = openings.Select(o => Plain(o.Sides).CounterClockwise()).ToSequence();
        var shape = new Polygon(Plain(outer), inner);
        NoteHoles(face, shape, remarks);
        return new(face, shape, outer, openings.Select(o => o.Sides).ToSequence());
    }

    /// <summary>The ring of the sides, without corners at which it goes straight on.</summary>
    private static Ring Plain(Sequence<MovedSide> sides)
    {
        var points = new List<Point>();
        for (var i = 0; i < sides.Count; i++)
        {
            var before = sides[(i + sides.Count - 1) % sides.Count];
            if (Segments.Turn(before.From, before.To, sides[i].To) != 0) points.Add(sides[i].From);
        }

        return new(points.ToSequence());
    }

    /// <summary>Refuses a hole that meets another: each is drilled by itself.</summary>
    private static void HolesApart(DrawnFace face, Remarks remarks)
    {
        var holes = face.Face.Holes;
        for (var i = 0; i < holes.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var apart = (double)Segments.Dot(holes[i].Centre, holes[j].Centre, holes[i].Centre, holes[j].Centre);
                // What is drilled is drawn up to half a hundredth wider than the hole.
                var reach = (holes[i].Diameter + holes[j].Diameter).Steps * 0.505;
                if (apart > reach * reach) continue;
                var path = string.Create(CultureInfo.InvariantCulture, $"{face.Path}.holes[{i}]");
                remarks.Refuse(path, $"the hole '{holes[i].Name}' meets '{holes[j].Name}'", "holes with tile between them", "make them one hole, or an opening");
            }
        }
    }

    private static void NoteHoles(DrawnFace face, Polygon field, Remarks remarks)
    {
        foreach (var hole in face.Face.Holes)
        {
            var inField = RingChecks.Locate(field.Outer, hole.Centre) == Whereabouts.Inside
                && field.Inner.All(ring => RingChecks.Locate(ring, hole.Centre) == Whereabouts.Outside);
            if (inField) continue;
            remarks.Find(FindingLevel.Note, "hole", face.Face.Name, $"The hole '{hole.Name}' lies where no tile is: nothing is drilled for it.");
        }
    }
}
