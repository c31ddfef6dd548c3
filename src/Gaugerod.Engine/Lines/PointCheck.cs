using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>A way to hold a point: where a tile may begin, along and across at once.</summary>
/// <param name="Along">Where a tile of one of the courses begins along, on the face.</param>
/// <param name="Across">Where a course begins across, on the face.</param>
/// <param name="Courses">Which courses the tile may be of, counted from the one that begins across: 0, or the one below it, -1.</param>
internal readonly record struct PointTarget(long Along, long Across, int[] Courses);

/// <summary>A tile's middle, or a crossing of joints, stands on a point: both ways at once, and so one want.</summary>
/// <param name="Targets">The ways to hold it.</param>
internal sealed record PointCheck(int Want, int Face, bool Must, int Weight, PointTarget[] Targets) : Check(Want, Face, Must, Weight)
{
    public override IEnumerable<long> TargetsOn(CheckAxis axis) => Targets.Select(target => axis == CheckAxis.Along ? target.Along : target.Across);

    /// <summary>Whether some start along may hold it with this one across.</summary>
    public bool MayHold(long v, Courses courses) => Array.Exists(Targets, target => IsNear(target.Across - v, courses.Rise));

    /// <summary>Whether it is held.</summary>
    /// <param name="u">Where a tile of course 0 begins along.</param>
    /// <param name="v">Where course 0 begins across.</param>
    /// <param name="courses">The bond's courses: which one stands at the point says where its tiles begin.</param>
    public bool IsHeld(long u, long v, Courses courses)
    {
        foreach (var target in Targets)
        {
            if (!IsNear(target.Across - v, courses.Rise)) continue;
            var course = Grid.FloorDiv(target.Across - v + (courses.Rise / 2), courses.Rise);
            foreach (var beside in target.Courses)
            {
                if (IsNear(target.Along - u - courses.Offset(course + beside), courses.Period)) return true;
            }
        }

        return false;
    }

    /// <summary>The check of a hole's middle.</summary>
    public static PointCheck Of(Want.HoleOn want, int index, int face, FaceFrame frame, Courses courses, long joint)
    {
        var middle = frame.Face.Holes.First(hole => string.Equals(hole.Name, want.Hole, StringComparison.Ordinal)).Centre;
        var (along, across) = frame.Lay == Lay.Level ? (middle.X.Steps, middle.Y.Steps) : (middle.Y.Steps, middle.X.Steps);
        var tile = new PointTarget(along - (courses.Length / 2), across - (courses.Depth / 2), [0]);

        // The head joint may be of the course over the bed joint or of the one under it: in a running bond either is a crossing.
        var crossing = new PointTarget(along + (joint / 2), across + (joint / 2), [0, -1]);
        PointTarget[] targets = want.On switch { CentreOn.Tile => [tile], CentreOn.Joint => [crossing], _ => [tile, crossing] };
        return new(index, face, want.Must, want.Weight, targets);
    }

    private static bool IsNear(long off, long repeat)
    {
        var rest = Grid.Mod(off, repeat);
        return rest <= Tolerance || repeat - rest <= Tolerance;
    }
}
