namespace Gaugerod.Engine.Takeoffs;

/// <summary>An edge of a face.</summary>
/// <param name="Face">The face's name.</param>
/// <param name="Edge">The edge's name on it.</param>
internal readonly record struct EdgeOfFace(string Face, string Edge);

/// <summary>Of edges that are one corner of the room, read on two faces, picks the one by which it is counted.</summary>
internal static class EdgesOnce
{
    /// <summary>The edges to count. Of those alike it is the one that measures more in all; of two that measure the same, the first.</summary>
    /// <param name="edges">The edges with how much of them there is; an edge may come in parts.</param>
    /// <param name="alike">Edges of two faces that are one corner.</param>
    public static HashSet<EdgeOfFace> Of(IEnumerable<(EdgeOfFace At, double Length)> edges, IEnumerable<(EdgeOfFace One, EdgeOfFace Other)> alike)
    {
        var first = new Dictionary<EdgeOfFace, EdgeOfFace>();
        foreach (var (one, other) in alike)
        {
            var (from, to) = (First(one), First(other));
            if (from != to) first[to] = from;
        }

        return edges.GroupBy(edge => First(edge.At)).Select(group => group.GroupBy(edge => edge.At).MaxBy(side => side.Sum(edge => edge.Length))!.Key).ToHashSet();

        EdgeOfFace First(EdgeOfFace edge)
        {
            while (first.TryGetValue(edge, out var before)) edge = before;
            return edge;
        }
    }
}
