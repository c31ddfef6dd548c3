using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Lines;

/// <summary>Two cuts that face each other with less than a tile between them, so that both may fall in one tile.</summary>
/// <param name="Before">The edge with tile after it.</param>
/// <param name="After">The edge with tile before it.</param>
internal readonly record struct FacingPair(int Before, int After);

/// <summary>A face's field as the courses of a bond see it.</summary>
internal sealed class FaceFrame
{
    private readonly EdgeLegs _legs;

    private FaceFrame(FinishedFace face, Lay lay, EdgeLegs legs)
    {
        FrameEdge[] edges = [.. face.Edges.Select((edge, i) => FrameEdge.Of(edge, i, lay, legs))];
        (_legs, Rounds) = (legs, legs.Rounds);
        Face = face;
        Lay = lay;
        Sides = [.. edges.Where(edge => edge.Class == EdgeClass.Side)];
        Levels = [.. edges.Where(edge => edge.Class == EdgeClass.Level)];
        Raking = [.. edges.Where(edge => edge.Class == EdgeClass.Raking)];
        (LeastAlong, MostAlong) = (edges.Min(edge => edge.LeastAlong), edges.Max(edge => edge.MostAlong));
        (LeastAcross, MostAcross) = (edges.Min(edge => edge.LeastAcross), edges.Max(edge => edge.MostAcross));
        var outer = face.OuterEdges;
        var sideways = face.Edges.Select((edge, i) => (Rise: edge.To.Y.Steps - edge.From.Y.Steps, Index: i))
            .Where(edge => edge.Index < outer && EdgeClasses.Of(face.Edges[edge.Index]) == EdgeClass.Side).ToList();
        LeftEdges = [.. sideways.Where(edge => edge.Rise < 0).Select(edge => edge.Index)];
        RightEdges = [.. sideways.Where(edge => edge.Rise > 0).Select(edge => edge.Index)];
    }

    public FinishedFace Face { get; }

    public Lay Lay { get; }

    /// <summary>Edges that end courses.</summary>
    public FrameEdge[] Sides { get; }

    /// <summary>Edges that lie along courses.</summary>
    public FrameEdge[] Levels { get; }

    /// <summary>Edges that do neither.</summary>
    public FrameEdge[] Raking { get; }

    public long LeastAlong { get; }

    public long MostAlong { get; }

    public long LeastAcross { get; }

    public long MostAcross { get; }

    /// <summary>The left edges of the field's outline, as places in the face's edges.</summary>
    public int[] LeftEdges { get; }

    /// <summary>Its right edges.</summary>
    public int[] RightEdges { get; }

    /// <summary>Where this face's zero lies on the run, along.</summary>
    public long RunAlong => Lay == Lay.Level ? Face.Unrolled.Steps : Face.Raised.Steps;

    /// <summary>Where this face's zero lies on the run, across.</summary>
    public long RunAcross => Lay == Lay.Level ? Face.Raised.Steps : Face.Unrolled.Steps;

    /// <summary>Whether every edge is square to the courses or in line with them.</summary>
    public bool IsSquare => Raking.Length == 0 && Sides.All(edge => edge.IsSquare) && Levels.All(edge => edge.IsSquare);

    /// <summary>How many rounds the face has.</summary>
    public int Rounds { get; }

    public static FaceFrame Of(FinishedFace face, Lay lay) => new(face, lay, new EdgeLegs(face));

    /// <summary>What stands between edges that face each other with less than a tile between them.</summary>
    public IEnumerable<long> Gaps(Courses courses) =>
        Pairs(Sides, courses.Length).Select(pair => Gap(Sides[pair.Before], Sides[pair.After], long.MinValue, long.MaxValue)!.Value.Least)
            .Concat(Pairs(Levels, courses.Depth).Select(pair => Gap(Levels[pair.Before], Levels[pair.After], long.MinValue, long.MaxValue)!.Value.Least));

    /// <summary>The pairs of edges of one class that face each other with less than a size between them.</summary>
    public FacingPair[] Pairs(FrameEdge[] edges, long under)
    {
        var pairs = new List<FacingPair>();
        for (var i = 0; i < edges.Length; i++)
        {
            for (var j = 0; j < edges.Length; j++)
            {
                if (!edges[i].TileAfter || edges[j].TileAfter || !_legs.HasStrip(edges[i].Edge, edges[j].Edge)) continue;
                if (Gap(edges[i], edges[j], long.MinValue, long.MaxValue) is { } gap && gap.Least < under) pairs.Add(new(i, j));
            }
        }

        return [.. pairs];
    }

    /// <summary>The distance between two facing edges where both are, within a stretch, least and most; null where they do not face.</summary>
    public static (long Least, long Most)? Gap(FrameEdge before, FrameEdge after, long from, long to)
    {
        var side = before.Class == EdgeClass.Side;
        var low = Math.Max(Math.Max(from, side ? before.LeastAcross : before.LeastAlong), side ? after.LeastAcross : after.LeastAlong);
        var high = Math.Min(Math.Min(to, side ? before.MostAcross : before.MostAlong), side ? after.MostAcross : after.MostAlong);
        if (low >= high) return null;
        var (one, other) = side
            ? (after.AlongAt(low) - before.AlongAt(low), after.AlongAt(high) - before.AlongAt(high))
            : (after.AcrossAt(low) - before.AcrossAt(low), after.AcrossAt(high) - before.AcrossAt(high));
        return one >= 0 && other >= 0 ? (Math.Min(one, other), Math.Max(one, other)) : null;
    }
}
