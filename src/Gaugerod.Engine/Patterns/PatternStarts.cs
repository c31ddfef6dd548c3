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

    private static IEnumerable<Shifts> Meetings(PointsOnLine one, PointsOnLine other)
    {
        var across = (one.SquareX * other.SquareY) - (one.SquareY * other.SquareX);
        // Lines nearly in line meet nowhere in particular.
        if (Math.Abs(across) < 1e-6) yield break;
        foreach (var p in Some(one))
        {
            foreach (var q in Some(other))
            {
                var x = ((p * other.SquareY) - (q * one.SquareY)) / across;
                var y = ((one.SquareX * q) - (other.SquareX * p)) / across;
                yield return Shifts.Only(x, y);
            }
        }
    }

    private static double[] Some(PointsOnLine family) => family.Offs.Length <= MostStretches ? family.Offs.ToArray() : family.Offs[..MostStretches].ToArray();

    private static Length Half(Length one, Length other) => Length.FromSteps((one.Steps + other.Steps) / 2);
}
