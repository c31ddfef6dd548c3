using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Trims;

/// <summary>Stands corner pieces and stops at the ends of strips; a corner piece is one, though two strips end at it.</summary>
/// <param name="strips">All strips of the job.</param>
internal sealed class CornerPieces(IReadOnlyList<Strip> strips)
{
    private readonly Dictionary<(string Face, Point At, bool RoundWalls), CornerPiece> _corners = [];
    private int _count, _stops;

    /// <summary>What stands at one end of a strip; null for nothing.</summary>
    public CornerPiece? At(Strip strip, bool atEnd)
    {
        var end = atEnd ? strip.End : strip.Begin;
        if (end.Kind is not { } kind) return null;
        var reach = Length.FromSteps(end.Piece);
        var face = strip.Face.Face.Name;
        if (kind == CornerPieceKind.Stop) return new(Id("ts", ++_stops), kind, reach, [new(face, strip.Beyond(atEnd))]);
        // Of the two strips at a corner one ends there and the other begins.
        var other = Beyond(strip, end);
        var (one, next) = atEnd ? (strip, other) : (other, strip);
        var key = (one.Face.Face.Name, one.Edge.To, end.RoundWall is not null);
        if (_corners.TryGetValue(key, out var known)) return known;
        Sequence<CornerPart> parts = end.RoundWall is null
            ? [new(face, Corner(one, next))]
            : [new(one.Face.Face.Name, one.Beyond(atEnd: true)), new(next.Face.Face.Name, next.Beyond(atEnd: false))];
        return _corners[key] = new(Id("tc", ++_count), kind, reach, parts);
    }

    private Strip Beyond(Strip strip, StripEnd end) => end.RoundWall is var (face, edge)
        ? strips.First(other => string.Equals(other.Face.Face.Name, face, StringComparison.Ordinal) && other.Edge == edge)
        : strips.First(other => string.Equals(other.Face.Face.Name, strip.Face.Face.Name, StringComparison.Ordinal) && other.Edge == end.Meets);

    /// <summary>Round the corner of one field: along the far sides of both, and back along their sides that face the field.</summary>
    private static Ring Corner(Strip one, Strip next)
    {
        var bend = new Bend(one.Edge, next.Edge);
        var (near, far, nearNext, farNext) = (one.Edge.Joint.Steps, (one.Edge.Joint + one.Product.Width).Steps, next.Edge.Joint.Steps, (next.Edge.Joint + next.Product.Width).Steps);
        var (from, to) = (one.Standing(atEnd: true).From, next.Standing(atEnd: false).To);
        Point[] points =
        [
            one.At(from, far), one.At(one.Side + bend.Reach(far, farNext), far), next.At(to, farNext),
            next.At(to, nearNext), one.At(one.Side + bend.Reach(near, nearNext), near), one.At(from, near),
        ];
        // One that reaches no further than the trim is wide is a square.
        return new(points.Where((point, i) => point != points[(i + 1) % points.Length]).ToSequence());
    }

    private static string Id(string letters, int number) => string.Create(CultureInfo.InvariantCulture, $"{letters}{number}");
}
