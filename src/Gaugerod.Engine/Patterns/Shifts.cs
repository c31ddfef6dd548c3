namespace Gaugerod.Engine.Patterns;

/// <summary>
/// Ways to move a bond: all that differ from the middle one by no more than two ways either way; with one of the two
/// nothing, a stretch; with both nothing, one way alone. In steps.
/// </summary>
/// <param name="X">The middle way, to the right.</param>
/// <param name="Y">The middle way, up.</param>
/// <param name="OneX">The first of the two ways, to the right.</param>
/// <param name="OneY">The first, up.</param>
/// <param name="OtherX">The second, to the right.</param>
/// <param name="OtherY">The second, up.</param>
internal readonly record struct Shifts(double X, double Y, double OneX, double OneY, double OtherX, double OtherY)
{
    /// <summary>One way alone.</summary>
    public static Shifts Only(double x, double y) => new(x, y, 0, 0, 0, 0);

    /// <summary>Whether it is one way alone.</summary>
    public bool IsOne => OneX == 0 && OneY == 0 && OtherX == 0 && OtherY == 0;

    /// <summary>How far any of them may lie from the middle one, in a direction of length 1.</summary>
    public double Reach(double x, double y) => Math.Abs((x * OneX) + (y * OneY)) + Math.Abs((x * OtherX) + (y * OtherY));

    /// <summary>The two halves, across the longer of the two ways.</summary>
    public (Shifts Near, Shifts Far) Halves()
    {
        var one = (OneX * OneX) + (OneY * OneY) >= (OtherX * OtherX) + (OtherY * OtherY);
        var (x, y) = one ? (OneX / 2, OneY / 2) : (OtherX / 2, OtherY / 2);
        var half = one ? this with { OneX = x, OneY = y } : this with { OtherX = x, OtherY = y };
        return (half with { X = X - x, Y = Y - y }, half with { X = X + x, Y = Y + y });
    }
}
