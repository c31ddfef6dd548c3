namespace Gaugerod.Plane.Shapes;

/// <summary>A corner of a ring whose sides are told apart: its place in steps, and the tag of the side that leaves it.</summary>
/// <param name="X">Steps to the right.</param>
/// <param name="Y">Steps up.</param>
/// <param name="Tag">What the side from here to the next corner is; zero or more for a side of what was clipped, see <see cref="BoxClip"/> for the rest.</param>
public readonly record struct TaggedCorner(long X, long Y, int Tag)
{
    /// <summary>The corner's place.</summary>
    public Point Point => Point.FromSteps(X, Y);

    /// <summary>The corner and side after a quarter turn clockwise about the origin.</summary>
    internal TaggedCorner QuarterTurned() => new(Y, -X, Tag);
}
