using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// Makes wants that name an edge ready to be checked. A joint on an edge is held only where tiles' sides lie along the whole of it.
/// Where no placing can do that, since the edge is out or courses begin by turns, the want is missed at all of them, and the
/// search is given what it can still do for it: to meet the edge where it stands furthest out, or in some courses.
/// </summary>
internal static class OnEdge
{
    public static IEnumerable<Check> Joint(Want.JointOnEdge want, int index, int face, RunModel model)
    {
        var frame = model.Frames[face];
        var named = CheckMaker.Edges(frame.Face, want.Edge.Edge);
        var aim = Aim(named, index, face, want, model);
        var all = All(frame).Where(edge => named.Contains(edge.Edge)).ToList();
        if (aim is null || ArcLegs.Chords(frame.Face)[all[0].Edge] > 0)
        {
            yield return (aim ?? new Check.Stands(index, face, want.Must, want.Weight, CheckAxis.Across, [])) with { IsLate = want.OfMovable };
            yield break;
        }

        var across = aim.Axis == CheckAxis.Across;
        var isStraight = all.TrueForAll(edge => edge.Class == all[0].Class) && Out(all, across) <= model.Problem.Tape.Mark.Steps;
        if (isStraight && (across || model.Offsets.Length == 1))
        {
            yield return aim with { IsLate = want.OfMovable };
        }
        else if (isStraight && FitsACourse(all, model))
        {
            yield return Every(aim, all) with { IsLate = want.OfMovable };
            // A thing that may be moved is brought to some courses at least.
            if (want.OfMovable) yield return aim with { Want = -1, AimOf = index, IsLate = true };
        }
        else
        {
            yield return new Check.Stands(index, face, want.Must, want.Weight, aim.Axis, []) { IsLate = want.OfMovable };
            yield return aim with { Want = -1, AimOf = index, IsLate = want.OfMovable };
        }
    }

    /// <summary>A tile's side on an edge, at the place where the edge stands furthest out, so that no gap is left.</summary>
    public static Check.Stands? Aim(int[] named, int index, int face, Want want, RunModel model)
    {
        var (frame, courses) = (model.Frames[face], model.Courses);
        var levels = frame.Levels.Where(e => named.Contains(e.Edge)).ToList();
        if (levels.Count > 0)
        {
            var chords = ArcLegs.Chords(frame.Face);
            if (chords[levels[0].Edge] > 0) return new(index, face, want.Must, want.Weight, CheckAxis.Across, [Crown(levels, frame, named) - (levels[0].TileAfter ? 0 : courses.Depth)]);
            var target = levels[0].TileAfter ? levels.Min(e => e.LeastAcross) : levels.Max(e => e.MostAcross) - courses.Depth;
            return new(index, face, want.Must, want.Weight, CheckAxis.Across, [target]);
        }

        var sides = frame.Sides.Where(e => named.Contains(e.Edge)).ToList();
        if (sides.Count == 0) return null;
        var end = sides[0].TileAfter ? sides.Min(e => e.LeastAlong) : sides.Max(e => e.MostAlong) - courses.Length;
        return new(index, face, want.Must, want.Weight, CheckAxis.Along, [end]);
    }

    /// <summary>Of an upright edge that is met by courses that begin by turns: whether all that meet it do so whole.</summary>
    public static bool IsMetByAll(EdgeRef edge, Check.Stands aim, RunModel model, RunPlacing placing)
    {
        if (aim.Axis == CheckAxis.Across || model.Offsets.Length == 1) return true;
        var named = CheckMaker.Edges(model.Frames[aim.Face].Face, edge.Edge);
        return Every(aim, [.. model.Frames[aim.Face].Sides.Where(one => named.Contains(one.Edge))]).IsHeld(placing.U[aim.Face], placing.V[aim.Face], model.Courses);
    }

    private static Check.EveryCourse Every(Check.Stands aim, List<FrameEdge> sides) =>
        new(aim.Want, aim.Face, aim.Must, aim.Weight, aim.Targets[0], [.. sides.Select(edge => (edge.LeastAcross, edge.MostAcross))]);

    private static IEnumerable<FrameEdge> All(FaceFrame frame) => frame.Levels.Concat(frame.Sides).Concat(frame.Raking);

    /// <summary>From the least to the most that edges of one class stand, that way.</summary>
    private static long Out(List<FrameEdge> edges, bool across) => across
        ? edges.Max(edge => edge.MostAcross) - edges.Min(edge => edge.LeastAcross)
        : edges.Max(edge => edge.MostAlong) - edges.Min(edge => edge.LeastAlong);

    /// <summary>Whether upright edges may stand in courses that begin alike: within one course and the joints beside it, or where neighbouring courses do so.</summary>
    private static bool FitsACourse(List<FrameEdge> sides, RunModel model)
    {
        var courses = model.Courses;
        for (var k = 0; k < model.OwnRows; k++)
        {
            var off = Plane.Shapes.Grid.Mod(courses.Offset(k + 1) - courses.Offset(k), courses.Period);
            if (Math.Min(off, courses.Period - off) <= Check.Tolerance) return true;
        }

        return sides.Max(edge => edge.MostAcross) - sides.Min(edge => edge.LeastAcross) < (2 * courses.Rise) - courses.Depth + (2 * Check.Tolerance);
    }

    /// <summary>Where an arc lies level: at the highest of its chords, or, in a hollow, at the lowest. Of an arc with tile above and below, above or below as its first.</summary>
    private static long Crown(List<FrameEdge> levels, FaceFrame frame, int[] named)
    {
        var all = All(frame).Where(e => named.Contains(e.Edge)).ToList();
        var alike = levels.Where(e => e.TileAfter == levels[0].TileAfter).ToList();
        var (least, most) = (alike.Min(e => e.LeastAcross), alike.Max(e => e.MostAcross));
        return most == all.Max(e => e.MostAcross) ? most : least;
    }
}
