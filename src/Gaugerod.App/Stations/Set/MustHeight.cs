using Gaugerod.Engine.Lines;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Set;

/// <summary>A height at which a course has to stand because something was asked for as a must.</summary>
/// <param name="What">What is to be met there, in words: <c>a joint on the top of the niche</c>.</param>
/// <param name="At">The height, above the face's lower left corner.</param>
/// <param name="Course">The course that meets it as planned; 0 for none.</param>
/// <param name="ByTop">Whether it meets it with its top; else with its lower side.</param>
internal sealed record MustHeight(string What, Length At, int Course, bool ByTop)
{
    /// <summary>What has to be met on a face, the lowest first.</summary>
    public static IReadOnlyList<MustHeight> Of(FaceSet face) =>
        [.. face.Run.Best.Wants.Where(outcome => outcome is { Held: true, Want.Must: true }).SelectMany(outcome => Of(face, outcome.Want)).Distinct().OrderBy(must => must.At)];

    private static IEnumerable<MustHeight> Of(FaceSet face, Want want)
    {
        switch (want)
        {
            // The joint's middle: the course below ends half a joint under it.
            case Want.JointAtHeight joint when IsOf(face, joint.Face):
                yield return new("the middle of a joint", joint.Height, face.Courses.Where(course => course.Top <= joint.Height).Select(course => course.Number).DefaultIfEmpty(0).Max(), ByTop: true);
                break;
            case Want.JointOnEdge joint when IsOf(face, joint.Edge.Face):
                foreach (var must in OnEdge(face, joint.Edge.Edge, "a joint on")) yield return must;
                break;
            case Want.FullCourse full when IsOf(face, full.Edge.Face):
                foreach (var must in OnEdge(face, full.Edge.Edge, "a full course at")) yield return must;
                break;
        }
    }

    // Only what lies level is met by a course; where tile lies above the edge its lower side meets it. Of an edge that is out it is met where it stands furthest out.
    private static IEnumerable<MustHeight> OnEdge(FaceSet face, string name, string what)
    {
        foreach (var edge in face.Plan.Face.Edges.Where(edge => string.Equals(edge.Name, name, StringComparison.Ordinal)))
        {
            if ((edge.To.X - edge.From.X).Abs() <= (edge.To.Y - edge.From.Y).Abs()) continue;
            var isUnder = edge.To.X > edge.From.X;
            var height = isUnder ? Length.Min(edge.From.Y, edge.To.Y) : Length.Max(edge.From.Y, edge.To.Y);
            var nearest = face.Courses.OrderBy(course => ((isUnder ? course.Bottom : course.Top) - height).Abs()).First();
            yield return new($"{what} {EdgeWords.Of(name)}", height, nearest.Number, !isUnder);
        }
    }

    private static bool IsOf(FaceSet face, string name) => string.Equals(name, face.Name, StringComparison.Ordinal) || string.Equals(name, face.Plan.Face.SetOut.Name, StringComparison.Ordinal);
}
