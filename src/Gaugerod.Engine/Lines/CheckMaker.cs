using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Lines;

/// <summary>Makes a run's wants and limits ready to be checked for one joint width.</summary>
internal static class CheckMaker
{
    /// <summary>The checks of a run. Wants that name a face or an edge the run does not have are left out; the job check refuses them before.</summary>
    public static Check[] Make(RunModel model)
    {
        var (wants, limits, frames, courses) = (model.Problem.Wants, model.Problem.Limits, model.Frames, model.Courses);
        var checks = new List<Check>();
        for (var i = 0; i < wants.Count; i++)
        {
            checks.AddRange(Of(wants[i], i, model));
        }

        for (var f = 0; f < frames.Length; f++)
        {
            if (limits.Smallest is { } smallest) checks.Add(new Check.AtLeast(-1, f, true, 1, AllEdges(frames[f]), smallest.Steps - model.Relax.Side, smallest.Steps - model.Relax.Level));
            if (limits.HalfTile) checks.Add(HalfTile(f, frames[f], courses, model.Relax) with { IsLate = MovesThings(wants) });
        }

        return [.. checks];
    }

    /// <summary>Whether things may be moved: then the tool's wishes for their edges and its guidance of half a tile, both unasked, weigh against each other after slivers.</summary>
    public static bool MovesThings(Sequence<Want> wants) => wants.Any(want => want is Want.JointOnEdge { OfMovable: true });

    /// <summary>The half-tile guidance as a wish on all edges of a face.</summary>
    public static Check.AtLeast HalfTile(int face, FaceFrame frame, Courses courses, Relax relax) =>
        new(-1, face, false, 1, AllEdges(frame), ((courses.Length + 1) / 2) - relax.Side, ((courses.Depth + 1) / 2) - relax.Level);

    private static int[] AllEdges(FaceFrame frame) => [.. Enumerable.Range(0, frame.Face.Edges.Count)];

    /// <summary>The edges of a face with a name: an edge that a fixture cut in two has two.</summary>
    public static int[] Edges(FinishedFace face, string name) =>
        [.. Enumerable.Range(0, face.Edges.Count).Where(i => string.Equals(face.Edges[i].Name, name, StringComparison.Ordinal))];

    private static IEnumerable<Check> Of(Want want, int index, RunModel model) => want switch
    {
        Want.JointOnEdge on when Find(model.Frames, on.Edge.Face) is { } f => OnEdge.Joint(on, index, f, model),
        // What rakes has no course along it.
        Want.FullCourse full when Find(model.Frames, full.Edge.Face) is { } f =>
            [OnEdge.Aim(Edges(model.Frames[f].Face, full.Edge.Edge), index, f, want, model) ?? new Check.Stands(index, f, want.Must, want.Weight, CheckAxis.Across, [])],
        _ => Other(want, index, model) is { } check ? [check] : [],
    };

    private static Check? Other(Want want, int index, RunModel model)
    {
        var (frames, courses, joint) = (model.Frames, model.Courses, model.Joint);
        switch (want)
        {
            case Want.JointAtHeight at when Find(frames, at.Face) is { } f:
            {
                // The middle of the joint under a tile lies half a joint under the tile's lower side.
                var target = at.Height.Steps + (joint.Steps / 2);
                return new Check.Stands(index, f, want.Must, want.Weight, frames[f].Lay == Lay.Level ? CheckAxis.Across : CheckAxis.Along, [target]);
            }

            case Want.AtLeast least when Find(frames, least.Edge.Face) is { } f:
            {
                var (side, level) = least.PartOfTile is { } part
                    ? (Part(courses.Length, part), Part(courses.Depth, part))
                    : (least.Size!.Value.Steps, least.Size.Value.Steps);
                return new Check.AtLeast(
                    index, f, want.Must, want.Weight, Edges(frames[f].Face, least.Edge.Edge), side - model.Relax.Side, level - model.Relax.Level);
            }

            case Want.Centred centred when Find(frames, centred.Face) is { } f:
                return Centre(centred, index, f, frames[f], courses, joint.Steps);
            case Want.HoleOn hole when Find(frames, hole.Face) is { } f:
                return PointCheck.Of(hole, index, f, frames[f], courses, joint.Steps);
            case Want.InLine line when Find(frames, line.Face) is { } f:
            {
                // The middle of the joint before a tile lies half a joint left of the tile's left side.
                long[] targets = line.At is { } at ? [at.Steps + (joint.Steps / 2)] : [];
                return new Check.Stands(index, f, want.Must, want.Weight, frames[f].Lay == Lay.Level ? CheckAxis.Along : CheckAxis.Across, targets);
            }

            case Want.EqualCuts equal when Find(frames, equal.One.Face) is { } f && Find(frames, equal.Other.Face) is { } g:
            {
                var (one, other) = (Edges(frames[f].Face, equal.One.Edge), Edges(frames[g].Face, equal.Other.Edge));
                return new Check.Equal(
                    index, f, want.Must, want.Weight, one, g, other,
                    WholeSize(frames[f], one, courses), WholeSize(frames[g], other, courses), model.Problem.Tape.Mark.Steps + Relaxed(frames[f], one, model.Relax) + Relaxed(frames[g], other, model.Relax));
            }

            default:
                return null;
        }
    }

    private static Check.Stands Centre(Want.Centred want, int index, int face, FaceFrame frame, Courses courses, long joint)
    {
        var bounds = want.Opening is null
            ? frame.Face.Field.Outer.Bounds
            : frame.Face.Openings.First(o => string.Equals(o.Name, want.Opening, StringComparison.Ordinal)).Ring.Bounds;
        var middle = (bounds.Left.Steps + bounds.Right.Steps) / 2;
        var size = frame.Lay == Lay.Level ? courses.Length : courses.Depth;
        var onTile = middle - (size / 2);
        var onJoint = middle + (joint / 2);
        long[] targets = want.On switch { CentreOn.Tile => [onTile], CentreOn.Joint => [onJoint], _ => [onTile, onJoint] };
        return new(index, face, want.Must, want.Weight, frame.Lay == Lay.Level ? CheckAxis.Along : CheckAxis.Across, targets);
    }

    private static long WholeSize(FaceFrame frame, int[] edges, Courses courses) => AreSides(frame, edges) ? courses.Length : courses.Depth;

    private static long Relaxed(FaceFrame frame, int[] edges, Relax relax) => AreSides(frame, edges) ? relax.Side : relax.Level;

    private static bool AreSides(FaceFrame frame, int[] edges) => edges.Length > 0 && frame.Sides.Any(e => e.Edge == edges[0]);

    private static long Part(long size, (int Numerator, int Denominator) part) => ((size * part.Numerator) + part.Denominator - 1) / part.Denominator;

    private static int? Find(IReadOnlyList<FaceFrame> frames, string face)
    {
        for (var i = 0; i < frames.Count; i++)
        {
            if (string.Equals(frames[i].Face.Name, face, StringComparison.Ordinal)) return i;
        }

        return null;
    }
}
