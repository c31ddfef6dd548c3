using Gaugerod.Engine.Rooms;
using NetTopologySuite.Geometries;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>What an edge of a face is to its round.</summary>
internal enum RoundKind
{
    /// <summary>It is of none.</summary>
    Straight,

    /// <summary>Tile lies outside of the round, as at a column.</summary>
    Column,

    /// <summary>Tile lies within it, and it is where the round turns from rising to falling, or from going out to coming back.</summary>
    Crown,

    /// <summary>Tile lies within it, and it is anywhere else.</summary>
    Hollow,
}

/// <summary>The rounds of a face, told by the names that <see cref="RoundFaces"/> gives their edges and by how they turn.</summary>
internal sealed class RoundEdges
{
    private static readonly string[] Names = ["arch", "round", "column.side"];

    private readonly List<(LineString Line, string Name, RoundKind Kind)> _edges;
    private readonly HashSet<string> _rounds;

    public RoundEdges(FinishedFace face)
    {
        var edges = face.Edges;
        _rounds = [.. edges.GroupBy(edge => edge.Name).Where(group => Array.Exists(Names, name => group.Key.EndsWith(name, StringComparison.Ordinal)) && group.Count() > 2).Select(group => group.Key)];
        _edges = [.. edges.Select(edge => (Line(edge), edge.Name, Kind(edge, [.. edges.Where(other => other.Name == edge.Name)])))];
    }

    /// <summary>The edge of a round that a stretch of a piece's outline lies on; null where it lies on none.</summary>
    public (string Name, RoundKind Kind)? Of(Coordinate a, Coordinate b)
    {
        if (_rounds.Count == 0) return null;
        var middle = Judge.Factory.CreatePoint(new Coordinate((a.X + b.X) / 2, (a.Y + b.Y) / 2));
        var (_, name, kind) = _edges.MinBy(edge => edge.Line.Distance(middle));
        return (name, kind);
    }

    /// <summary>How far apart two named edges stand, a round taken as one.</summary>
    public double Apart(string one, string other)
    {
        var (some, others) = (Lines(one), Lines(other));
        return some.Min(line => others.Min(line.Distance));
    }

    private List<LineString> Lines(string name) => [.. _edges.Where(edge => edge.Name == name).Select(edge => edge.Line)];

    private RoundKind Kind(FieldEdge edge, List<FieldEdge> same)
    {
        if (!_rounds.Contains(edge.Name)) return RoundKind.Straight;
        var before = same.FindIndex(other => other.To == edge.From);
        var turn = before < 0 ? Turn(edge, same.Find(other => other.From == edge.To)) : Turn(same[before], edge);
        if (turn <= 0) return RoundKind.Column;
        // At the crown the arc's own tangent at the one end rises and at the other falls: half a turn before the chord, half after.
        var (x, y) = ((double)(edge.To.X - edge.From.X).Steps, (double)(edge.To.Y - edge.From.Y).Steps);
        var off = Math.Asin(Math.Min(Math.Abs(x), Math.Abs(y)) / Math.Sqrt((x * x) + (y * y)));
        return off <= Math.Min((turn / 2) + 1e-3, Math.Atan(1 / 8.0)) ? RoundKind.Crown : RoundKind.Hollow;
    }

    private static double Turn(FieldEdge one, FieldEdge next)
    {
        var (x, y) = ((double)(one.To.X - one.From.X).Steps, (double)(one.To.Y - one.From.Y).Steps);
        var (toX, toY) = ((double)(next.To.X - next.From.X).Steps, (double)(next.To.Y - next.From.Y).Steps);
        return Math.Atan2((x * toY) - (y * toX), (x * toX) + (y * toY));
    }

    private static LineString Line(FieldEdge edge) =>
        Judge.Factory.CreateLineString([new(edge.From.X.Steps, edge.From.Y.Steps), new(edge.To.X.Steps, edge.To.Y.Steps)]);
}
