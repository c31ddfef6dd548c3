using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Trims;

/// <summary>A face with its pieces, as trims see it.</summary>
/// <param name="Face">The face.</param>
/// <param name="Pieces">What is set on it.</param>
/// <param name="Joint">The joint between them.</param>
internal sealed record TrimmedFace(FinishedFace Face, Sequence<Piece> Pieces, Length Joint)
{
    /// <summary>Its bands that are made of trim.</summary>
    public Sequence<TrimmedBand> Bands { get; init; } = [];
}

/// <summary>A band that is made of trim.</summary>
/// <param name="Band">What there is of it between two fields.</param>
/// <param name="Joint">The joint below and above it.</param>
/// <param name="Trimmed">What is asked for there.</param>
/// <param name="Foot">The height it begins at, as the job says it.</param>
internal sealed record TrimmedBand(FinishedFace Band, Length Joint, TrimRequest Trimmed, Length Foot);

/// <summary>A strip beside one side of a field, before its joints are known; it runs so that the field lies to its left.</summary>
/// <param name="Face">The face it is on.</param>
/// <param name="Edge">The field's side.</param>
/// <param name="Product">What it is of.</param>
/// <param name="Begin">How it ends where the side begins.</param>
/// <param name="End">How it ends at the side's other end.</param>
internal sealed record Strip(TrimmedFace Face, FieldEdge Edge, TrimProduct Product, StripEnd Begin, StripEnd End)
{
    /// <summary>The side of another field that faces it from across, run as the first; null where there is none.</summary>
    public (Point From, Point To)? Across { get; init; }

    /// <summary>The joints of the fields beside it, from where its side begins.</summary>
    public IEnumerable<FieldJoint> Beside => Across is var (from, to)
        ? JointsBeside.Of(Face, Edge.From, Edge.To).Concat(JointsBeside.Of(Face, from, to)).Distinct().OrderBy(joint => joint.Middle)
        : JointsBeside.Of(Face, Edge.From, Edge.To);

    /// <summary>How long the field's side is, in steps.</summary>
    public long Side { get; } = LengthOf(Edge).Steps;

    /// <summary>Its length to its long points.</summary>
    public long Long => Begin.Long + Side + End.Long;

    /// <summary>The line its joints are put on.</summary>
    public TrimLine Line() => new(
        Long, Begin.End, End.End, Product.Stock.Steps, Product.Joint.Steps, Math.Max(1, Product.Least.Steps),
        Beside.Select(joint => new FieldJoint(joint.From + Begin.Long, joint.To + Begin.Long)).ToSequence())
    {
        BeginTakes = Begin.Long - Math.Min(Begin.Inner, Begin.Outer), EndTakes = End.Long - Math.Min(End.Inner, End.Outer),
        Leans = (Begin.Outer - Begin.Inner) * (End.Outer - End.Inner) < 0,
    };

    /// <summary>How long a side is, to the nearest step.</summary>
    public static Length LengthOf(FieldEdge edge) => Grid.Nearest(Math.Sqrt((double)Segments.Dot(edge.From, edge.To, edge.From, edge.To)));

    /// <summary>The outline of a piece on the face, counter-clockwise.</summary>
    public Ring Outline(Stretch piece)
    {
        var (near, far) = (Edge.Joint.Steps, (Edge.Joint + Product.Width).Steps);
        var (from, to) = (piece.From - Begin.Long, piece.To - Begin.Long);
        var (innerFrom, outerFrom) = piece.From == 0 ? (-Begin.Inner, -Begin.Outer) : (from, from);
        var (innerTo, outerTo) = piece.To == Long ? (Side + End.Inner, Side + End.Outer) : (to, to);
        // Seen along the strip the field is to the left: the far side first, then back along the near one.
        return new([At(outerFrom, far), At(outerTo, far), At(innerTo, near), At(innerFrom, near)]);
    }

    /// <summary>What a corner piece or a stop at one end covers along this strip alone.</summary>
    public Ring Beyond(bool atEnd)
    {
        var (near, far) = (Edge.Joint.Steps, (Edge.Joint + Product.Width).Steps);
        var (from, to) = Standing(atEnd);
        return new([At(from, far), At(to, far), At(to, near), At(from, near)]);
    }

    /// <summary>From where to where a corner piece or a stop at one end stands along the field's side.</summary>
    public (long From, long To) Standing(bool atEnd)
    {
        var end = atEnd ? End : Begin;
        var (from, to) = (end.Long + Product.Joint.Steps, end.Long + Product.Joint.Steps + end.Piece);
        return atEnd ? (Side + from, Side + to) : (-to, -from);
    }

    /// <summary>A place so far along the field's side and so far to its right.</summary>
    public Point At(long along, long off)
    {
        var (dx, dy) = ((Edge.To.X - Edge.From.X).Steps, (Edge.To.Y - Edge.From.Y).Steps);
        return Edge.From.Moved(Grid.Nearest(((Int128)along * dx) + ((Int128)off * dy), Side), Grid.Nearest(((Int128)along * dy) - ((Int128)off * dx), Side));
    }
}
