using System.Globalization;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>Says how far an edge that a want names is met: "held" and "missed" alone are half the truth of an edge that is out.</summary>
/// <param name="Edges">The sides of the field with the edge's name.</param>
/// <param name="IsArc">Whether they are chords of an arc.</param>
internal sealed record EdgeFit(IReadOnlyList<FieldEdge> Edges, bool IsArc)
{
    public static EdgeFit Of(FinishedFace face, string edge)
    {
        var named = CheckMaker.Edges(face, edge);
        return new([.. named.Select(i => face.Edges[i])], named.Length > 0 && ArcLegs.Chords(face)[named[0]] > 0);
    }

    /// <summary>What there is to say after <c>held</c> or <c>missed</c>; empty where that says it all.</summary>
    /// <param name="held">Whether the want is held.</param>
    /// <param name="meets">Whether the edge is met where it stands furthest out.</param>
    /// <param name="byTurns">Of how many courses one meets it, where they begin by turns; else 1.</param>
    /// <param name="tape">The tape.</param>
    public string Words(bool held, bool meets, int byTurns, Tape tape)
    {
        if (Edges.Count == 0) return "";
        if (IsArc) return held ? " where it lies level" : "";
        var kind = EdgeClasses.Of(Edges[0]);
        if (kind == EdgeClass.Raking || Edges.Any(edge => EdgeClasses.Of(edge) != kind)) return held ? "" : ", it is neither level nor plumb";
        var ends = Edges.SelectMany(edge => new[] { edge.From, edge.To }).ToList();
        Length Stands(Point point) => kind == EdgeClass.Level ? point.Y : point.X;
        var (least, most) = (ends.MinBy(Stands), ends.MaxBy(Stands));
        var (first, last) = TileAfter(Edges[0], kind) ? (least, most) : (most, least);
        var by = Stands(most) - Stands(least);
        var parts = byTurns > 1 && meets ? string.Create(CultureInfo.InvariantCulture, $"{(held ? " in" : ", it is met in")} one course of {byTurns}") : "";
        if (by <= tape.Mark) return parts;
        var @out = LengthText.Finer(by, tape);
        return meets
            ? $"{(parts.Length > 0 ? parts : held ? "" : ", it is met")} at its {End(first, ends, kind)}, {@out} out at its {End(last, ends, kind)}"
            : held ? "" : $", it is {@out} out of {(kind == EdgeClass.Level ? "level" : "plumb")}";
    }

    /// <summary>Whether tile lies on the side of the larger numbers: it lies to the left of the way the edge runs.</summary>
    private static bool TileAfter(FieldEdge edge, EdgeClass kind) => kind == EdgeClass.Level ? edge.To.X > edge.From.X : edge.To.Y < edge.From.Y;

    private static string End(Point point, List<Point> ends, EdgeClass kind) => kind == EdgeClass.Level
        ? point.X == ends.Min(end => end.X) ? "left end" : point.X == ends.Max(end => end.X) ? "right end" : "furthest place between"
        : point.Y == ends.Min(end => end.Y) ? "foot" : point.Y == ends.Max(end => end.Y) ? "head" : "furthest place between";
}
