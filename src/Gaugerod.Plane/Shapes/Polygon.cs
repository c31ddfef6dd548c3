namespace Gaugerod.Plane.Shapes;

/// <summary>An area with one outline and any number of holes that lie inside it and do not meet.</summary>
/// <param name="Outer">The outline, counter-clockwise.</param>
/// <param name="Inner">The holes, each counter-clockwise as well.</param>
public sealed record Polygon(Ring Outer, Sequence<Ring> Inner)
{
    /// <summary>Twice the area, in square steps.</summary>
    public Int128 DoubledArea
    {
        get
        {
            var area = Outer.DoubledArea;
            foreach (var hole in Inner) area -= hole.DoubledArea;
            return area;
        }
    }
}
