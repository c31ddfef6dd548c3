using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Shapes;

/// <summary>A place on a face: so far to the right and so far up of the face's lower left corner.</summary>
/// <param name="X">Distance to the right.</param>
/// <param name="Y">Distance up.</param>
public readonly record struct Point(Length X, Length Y)
{
    /// <summary>A place given in steps of 1/3200 mm.</summary>
    public static Point FromSteps(long x, long y) => new(Length.FromSteps(x), Length.FromSteps(y));

    /// <summary>The place so far to the right and so far up from this one.</summary>
    public Point Moved(Length right, Length up) => new(X + right, Y + up);

    /// <summary>The place with right and up exchanged: what a bond laid upright is reckoned on.</summary>
    public Point Transposed() => new(Y, X);
}
