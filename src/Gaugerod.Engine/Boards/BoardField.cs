using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>A stretch of a line, in steps.</summary>
internal readonly record struct Stretch(long From, long To)
{
    public long Length => To - From;
}

/// <summary>
/// What board covers of a face, turned so that studs run up: its rings with the area to the left, outlines and holes mixed.
/// </summary>
internal sealed class BoardField
{
    // Flatter bends are chords of an arc, at which nothing cracks.
    private const double LeastBend = 0.5;

    private readonly bool _turned;

    private BoardField(IEnumerable<Ring> outward, bool turned)
    {
        _turned = turned;
        // Right and up exchanged, a ring runs the other way round.
        Rings = [.. outward.Select(ring => (turned ? ring.Points.Reverse().Select(p => p.Transposed()) : ring.Points).Select(p => new TaggedCorner(p.X.Steps, p.Y.Steps, 0)).ToArray())];
        Corners = [.. Rings.SelectMany(Inwards)];
        Bounds = Box.Around(Rings[0].Select(corner => corner.Point));
    }

    public TaggedCorner[][] Rings { get; }

    public Box Bounds { get; }

    /// <summary>The corners that point into the board: of openings, of a bath. Seams keep away from them.</summary>
    public IReadOnlyList<Point> Corners { get; }

    /// <summary>The field of a face; null, with a remark, where the gaps leave none.</summary>
    public static BoardField? Of(DrawnFace face, BoardRequest request, Remarks remarks)
    {
        var own = new Remarks(remarks.Tape);
        if (EdgeMoves.Move(face.Outline, tileInside: true, i => new(Gap(face.Outline.Sides[i], request), Length.Zero), own) is not { } moved)
        {
            remarks.Refuse(face.Path + ".board", "gaps that leave no board", "gaps that leave board between them", "smaller gaps");
            return null;
        }

        var outer = Plain(moved);
        foreach (var opening in face.Openings)
        {
            if (RingChecks.LiesInside(opening.Ring, outer)) continue;
            remarks.Refuse(face.Path + ".board", $"a gap that reaches the opening '{opening.Name}'", "gaps that leave board around openings", "smaller gaps");
            return null;
        }

        return new(face.Openings.Select(opening => opening.Ring.Reversed()).Prepend(outer), request.Studs?.RunLevel ?? false);
    }

    /// <summary>What an edge keeps free: over what stands at the face, and elsewhere; an open edge nothing.</summary>
    internal static Length Gap(Side side, BoardRequest request) => side.Edge.Kind switch
    {
        EdgeKind.Floor or EdgeKind.Fixture or EdgeKind.Threshold => request.Foot,
        EdgeKind.InsideCorner or EdgeKind.Ceiling => request.Edges,
        _ => Length.Zero,
    };

    /// <summary>A place of the face as it lies here, and back: both are the same exchange.</summary>
    public Point Turned(Point point) => _turned ? point.Transposed() : point;

    public Box Turned(Box box) => _turned ? new(box.Bottom, box.Left, box.Top, box.Right) : box;

    /// <summary>A ring as it lies on the face, counter-clockwise.</summary>
    public Ring OnFace(TaggedCorner[] ring) => new Ring(ring.Select(corner => Turned(corner.Point)).ToSequence()).CounterClockwise();

    private static Ring Plain(Sequence<MovedSide> sides)
    {
        var points = new List<Point>();
        for (var i = 0; i < sides.Count; i++)
        {
            if (Segments.Turn(sides[(i + sides.Count - 1) % sides.Count].From, sides[i].From, sides[i].To) != 0) points.Add(sides[i].From);
        }

        return new(points.ToSequence());
    }

    private static IEnumerable<Point> Inwards(TaggedCorner[] ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b, c) = (ring[(i + ring.Length - 1) % ring.Length], ring[i], ring[(i + 1) % ring.Length]);
            var (x, y, run, rise) = ((double)(b.X - a.X), (double)(b.Y - a.Y), (double)(c.X - b.X), (double)(c.Y - b.Y));
            var bend = ((x * rise) - (y * run)) / Math.Sqrt(((x * x) + (y * y)) * ((run * run) + (rise * rise)));
            if (bend < -LeastBend) yield return b.Point;
        }
    }
}
