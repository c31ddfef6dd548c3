using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>
/// A face's field as a turned bond sees it: moved to where the face stands on its run, then turned back by as much as the
/// bond is turned, so that the bond lies straight.
/// </summary>
internal sealed class TurnedField
{
    private readonly Length _right;
    private readonly Length _up;

    public TurnedField(FieldRings field, Heading heading)
    {
        (Field, Heading, _right, _up) = (field, heading, field.Face.Unrolled, field.Face.Raised);
        Rings = [.. field.All.Select(ring => Array.ConvertAll(ring, node =>
        {
            var at = Lay(node.Point);
            return node with { X = at.X.Steps, Y = at.Y.Steps };
        }))];
        Bounds = Box.Around(Rings[0].Select(node => node.Point));
        var edges = new List<EdgeLine>();
        var tags = new List<int>();
        foreach (var ring in Rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (a.X == b.X && a.Y == b.Y) continue;
                edges.Add(EdgeLine.Of(a.X, a.Y, b.X, b.Y));
                tags.Add(a.Tag);
            }
        }

        (Edges, Tags) = ([.. edges], [.. tags]);
    }

    public FieldRings Field { get; }

    /// <summary>How the bond is turned.</summary>
    public Heading Heading { get; }

    /// <summary>The field's rings and drilled holes, as the bond lies.</summary>
    public TaggedCorner[][] Rings { get; }

    /// <summary>The box around the field, as the bond lies.</summary>
    public Box Bounds { get; }

    /// <summary>The sides of the rings.</summary>
    public EdgeLine[] Edges { get; }

    /// <summary>Each side's tag.</summary>
    public int[] Tags { get; }

    /// <summary>From a place on the face to where it lies when the bond lies straight.</summary>
    public Point Lay(Point onFace) => Heading.Back(onFace.Moved(_right, _up));

    /// <summary>From there back to the face.</summary>
    public Point OnFace(Point laid) => Heading.Turn(laid).Moved(-_right, -_up);

    /// <summary>A ring turned to the face.</summary>
    public Ring OnFace(Ring laid) => new(Sequence.Make(laid.Points.Count, (Field: this, laid.Points), static (from, i) => from.Field.OnFace(from.Points[i])));
}
