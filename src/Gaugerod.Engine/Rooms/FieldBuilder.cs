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
    /// <param name="edgeJoint">The joint of edges that state none.</param>
    public Sequence<FieldEdge> Edges(Length edgeJoint) =>
        Edges(Face.Outline, Outer, edgeJoint).Concat(Openings.SelectMany((sides, i) => Edges(Face.Openings[i], sides, edgeJoint))).ToSequence();

    private static IEnumerable<FieldEdge> Edges(DrawnRing ring, Sequence<MovedSide> sides, Length edgeJoint)
    {
        var round = EdgeSpans.Round(ring);
        foreach (var moved in sides)
        {
            var (edge, trimmed) = (moved.Side.Edge, moved.IsJog ? null : moved.Side.Edge.Trimmed);
            yield return new(moved.From, moved.To, moved.Side.Name, edge.Kind)
            {
                Trim = trimmed is null ? Length.Zero : edge.Trim,
                Joint = trimmed is null ? Length.Zero : edge.Joint ?? edgeJoint,
                Trimmed = trimmed,
                Soft = moved.IsJog ? Length.Zero : EdgeTakes.Soft(edge, edgeJoint),
                Shows = Shows(edge),
                Hand = moved.Side.Hand,
                IsRound = round.Contains(edge),
                IsJog = moved.IsJog,
            };
        }
    }

    private static bool Shows(Edge edge) =>
        edge.Trimmed is null && ((edge.Kind == EdgeKind.Free && edge.Trim == Length.Zero) || (edge.Kind == EdgeKind.OutsideCorner && edge.Finish == CornerFinish.BullnoseOver));
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
        var inner = openings.Select(o => Plain(o.Sides).CounterClockwise()).ToSequence();
        var shape = new Polygon(Plain(outer), inner);
        HoleChecks.Check(face, shape, remarks);
        if (remarks.Faults.Count > before) return null;
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
}
