using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Patterns;

/// <summary>Where a search begins: what a setter tries first, and what wants ask for.</summary>
internal static class PatternStarts
{
    private const int MostStretches = 48;
    private const int MostPlaces = 400;

    /// <summary>A tile's middle, or a crossing of joints, on the middle of every face and opening.</summary>
    public static IEnumerable<(double X, double Y)> Of(PatternModel model)
    {
        var points = BondPoints.Middles(model.Judged).Concat(BondPoints.Crossings(model.Judged, model.Problem.Joint.Steps)).Distinct().Take(64).ToList();
        foreach (var field in model.Fields)
        {
            foreach (var bounds in field.Field.Face.Openings.Select(opening => opening.Ring.Bounds).Prepend(field.Field.Face.Field.Outer.Bounds))
            {
                var middle = field.Lay(new(Half(bounds.Left, bounds.Right), Half(bounds.Bottom, bounds.Top)));
                foreach (var (x, y) in points) yield return (middle.X.Steps - x, middle.Y.Steps - y);
            }
        }
    }

    /// <summary>The stretches of places that may hold a want, and the places where two such meet.</summary>
    public static IEnumerable<Shifts> Stretches(PatternModel model)
    {
        var families = model.Checks.Select(check => check.Through).OfType<PointsOnLine>().ToList();
        foreach (var family in families)
        {
            foreach (var off in Some(family))
            {
                if (model.Domain.On(family.SquareX, family.SquareY, off) is { } stretch) yield return stretch;
            }
        }

        foreach (var check in model.Checks.OfType<PatternCheck.StandsOn>())
        {
            foreach (var (x, y) in check.Points.Moves.Take(MostPlaces)) yield return Shifts.Only(x, y);
        }

        for (var i = 0; i < families.Count; i++)
        {
            for (var j = i + 1; j < families.Count; j++)
            {
                foreach (var meeting in Meetings(families[i], families[j])) yield return meeting;
            }
        }
    }

    /// <summary>
    /// Places in a part, or near it, that may hold wants of which there are too many stretches to search each: the nearest to its
    /// middle on a stretch, and where two stretches meet.
    /// </summary>
    public static IEnumerable<(double X, double Y)> Near(PatternModel model, Shifts part)
    {
        var near = new List<(PointsOnLine Family, double Off)>();
        foreach (var check in model.Checks)
        {
            if (check.Through is { } family && family.Nearest(part) is { } off) near.Add((family, off));
        }

        for (var i = 0; i < near.Count; i++)
        {
            var (family, off) = near[i];
            if (IsDense(family) && To(family, off, part) is { } place) yield return place;
            for (var j = i + 1; j < near.Count; j++)
            {
                var (other, otherOff) = near[j];
                if ((IsDense(family) || IsDense(other)) && Meeting(family, off, other, otherOff) is { } meeting) yield return meeting;
            }
        }
    }

    private static bool IsDense(PointsOnLine family) => family.Offs.Length > MostStretches;

    /// <summary>From the middle of a part square to a stretch, or of a part that is a stretch itself along it; null where it never meets the other.</summary>
    private static (double X, double Y)? To(PointsOnLine family, double off, in Shifts part)
    {
        var by = off - (part.X * family.SquareX) - (part.Y * family.SquareY);
        if (part.OtherX != 0 || part.OtherY != 0) return (part.X + (by * family.SquareX), part.Y + (by * family.SquareY));
        var along = (part.OneX * family.SquareX) + (part.OneY * family.SquareY);
        return Math.Abs(by) >= Math.Abs(along) ? null : (part.X + (part.OneX * by / along), part.Y + (part.OneY * by / along));
    }

    private static IEnumerable<Shifts> Meetings(PointsOnLine one, PointsOnLine other)
    {
        foreach (var p in Some(one))
        {
            foreach (var q in Some(other))
            {
                if (Meeting(one, p, other, q) is not var (x, y)) yield break;
                yield return Shifts.Only(x, y);
            }
        }
    }

    private static (double X, double Y)? Meeting(PointsOnLine one, double off, PointsOnLine other, double otherOff)
    {
        var across = (one.SquareX * other.SquareY) - (one.SquareY * other.SquareX);
        // Lines nearly in line meet nowhere in particular.
        if (Math.Abs(across) < 1e-6) return null;
        return (((off * other.SquareY) - (otherOff * one.SquareY)) / across, ((one.SquareX * otherOff) - (other.SquareX * off)) / across);
    }

    private static double[] Some(PointsOnLine family) => family.Offs.Length <= MostStretches ? family.Offs.ToArray() : family.Offs[..MostStretches].ToArray();

    private static Length Half(Length one, Length other) => Length.FromSteps((one.Steps + other.Steps) / 2);
}
