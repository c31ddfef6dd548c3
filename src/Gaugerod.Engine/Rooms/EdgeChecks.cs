using System.Globalization;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>Checks what a face's edges state, each edge once, and that no two share a name.</summary>
internal static class EdgeChecks
{
    private static readonly Length WidestJoint = Length.FromMillimetres(25);
    private static readonly Length Thickest = Length.FromMillimetres(300);

    public static void Check(Face face, string path, Remarks remarks)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (edge, name, at) in EdgesOf(face, path))
        {
            if (edge.Joint is { } joint) Within(joint, WidestJoint, $"{at}.joint", remarks);
            Within(edge.Trim, Thickest, $"{at}.trim", remarks);
            if (edge.Cover is { } cover) Within(cover, Thickest, $"{at}.cover", remarks);
            if (!names.Add(name)) remarks.Refuse(at, $"a second edge '{name}'", "a name for each edge of the face", "give one of them another name");
        }
    }

    private static void Within(Length value, Length most, string path, Remarks remarks)
    {
        if (value >= Length.Zero && value <= most) return;
        remarks.Refuse(path, remarks.Say(value), $"zero or more, at most {remarks.Say(most)}", value.IsNegative ? remarks.Say(value.Abs()) : null);
    }

    private static IEnumerable<(Edge Edge, string Name, string Path)> EdgesOf(Face face, string path)
    {
        switch (face.Shape)
        {
            case FaceShape.Surveyed surveyed:
                for (var i = 0; i < surveyed.Edges.Count; i++) yield return (surveyed.Edges[i], surveyed.Edges[i].Name, $"{path}.{Numbered("edges", i)}");
                break;
            case FaceShape.Outline outline:
                var own = EdgeSpans.Once(outline.Edges);
                for (var i = 0; i < own.Count; i++) yield return (own[i], own[i].Name, $"{path}.{Numbered("edges", i)}");
                break;
            case FaceShape.Read read:
                yield return (read.Foot, read.Foot.Name, $"{path}.edges.foot");
                yield return (read.Right, read.Right.Name, $"{path}.edges.right");
                yield return (read.Head, read.Head.Name, $"{path}.edges.head");
                yield return (read.Left, read.Left.Name, $"{path}.edges.left");
                for (var i = 0; i < read.Fixtures.Count; i++)
                {
                    var (fixture, at) = (read.Fixtures[i], $"{path}.{Numbered("fixtures", i)}");
                    yield return (fixture.Edge, fixture.Name, $"{at}.edge");
                    yield return (fixture.Side, $"{fixture.Name}.left", $"{at}.side");
                }

                break;
        }

        for (var i = 0; i < face.Openings.Count; i++)
        {
            foreach (var edge in EdgeSpans.Once(face.Openings[i].Edges))
            {
                yield return (edge, $"{face.Openings[i].Name}.{edge.Name}", $"{path}.{Numbered("openings", i)}.edges.{edge.Name}");
            }
        }
    }

    private static string Numbered(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");
}
