using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>An opening has tile all around it; what reaches the face's own edge is part of the face's outline.</summary>
internal static class OpeningChecks
{
    private const string Expected = "an opening wholly inside its face";

    /// <summary>Refuses an opening that, as measured, does not lie inside its face.</summary>
    public static void LiesInside(DrawnRing opening, DrawnRing outline, Remarks remarks)
    {
        if (RingChecks.FirstMeeting(opening.Ring, outline.Ring) is var (_, met))
        {
            var points = outline.Ring.Points;
            Reaches(opening, new(points[met], points[(met + 1) % points.Count], outline.Sides[met]), "reaching", remarks);
        }
        else if (RingChecks.Locate(outline.Ring, opening.Ring.Points[0]) != Whereabouts.Inside)
        {
            remarks.Refuse(opening.Path, $"'{opening.Name}' outside its face", Expected, "measure it again, to the right and up from the face's lower left corner");
        }
    }

    /// <summary>Refuses an opening that reaches the field's edge, or another opening, once joints and trims are taken off.</summary>
    public static void LeavesTileAround(
        DrawnRing opening, Sequence<MovedSide> sides, Sequence<MovedSide> outer, IEnumerable<(DrawnRing Ring, Sequence<MovedSide> Sides)> before, Remarks remarks)
    {
        if (FirstMet(sides, outer) is { } met)
        {
            Reaches(opening, met, "with its joints and trims reaching", remarks);
            return;
        }

        var (ring, field) = (RingOf(sides), RingOf(outer));
        if (RingChecks.Locate(field, ring.Points[0]) != Whereabouts.Inside)
        {
            remarks.Refuse(opening.Path, $"'{opening.Name}' where no tile is", "an opening with tile around it", "leave it out");
        }

        foreach (var (other, otherSides) in before)
        {
            var otherRing = RingOf(otherSides);
            var apart = FirstMet(sides, otherSides) is null
                && RingChecks.Locate(ring, otherRing.Points[0]) == Whereabouts.Outside
                && RingChecks.Locate(otherRing, ring.Points[0]) == Whereabouts.Outside;
            if (apart) continue;
            remarks.Refuse(opening.Path, $"'{opening.Name}' running into '{other.Name}'", "openings with tile between them", "make them one opening");
        }
    }

    public static Ring RingOf(Sequence<MovedSide> sides) => new(sides.Select(s => s.From).ToSequence());

    private static MovedSide? FirstMet(Sequence<MovedSide> sides, Sequence<MovedSide> others)
    {
        foreach (var side in sides)
        {
            foreach (var other in others)
            {
                if (Segments.Meet(side.From, side.To, other.From, other.To)) return other;
            }
        }

        return null;
    }

    private static void Reaches(DrawnRing opening, MovedSide met, string how, Remarks remarks)
    {
        var (right, up) = (met.To.X - met.From.X, met.To.Y - met.From.Y);
        var nearest = right.Abs() <= up.Abs() ? "end it short of that edge, or give the face by its corners, around it"
            : right.IsNegative ? "make it a fixture at the head" : "make it a fixture at the foot";
        remarks.Refuse(opening.Path, $"'{opening.Name}' {how} the edge '{met.Side.Name}'", Expected, nearest);
    }
}
