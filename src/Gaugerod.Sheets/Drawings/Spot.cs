using Gaugerod.Plane;

namespace Gaugerod.Sheets.Drawings;

/// <summary>A place on the paper.</summary>
/// <param name="X">Millimetres from the left edge of the drawing.</param>
/// <param name="Y">Millimetres down from its top.</param>
public readonly record struct Spot(double X, double Y);

/// <summary>An upright rectangle on the paper.</summary>
/// <param name="X">Its left side, in millimetres.</param>
/// <param name="Y">Its top, in millimetres.</param>
/// <param name="Width">How wide it is, in millimetres.</param>
/// <param name="Height">How high it is, in millimetres.</param>
public readonly record struct Frame(double X, double Y, double Width, double Height)
{
    /// <summary>Its right side.</summary>
    public double Right => X + Width;

    /// <summary>Its lower side.</summary>
    public double Bottom => Y + Height;

    internal Spot Middle => new(X + (Width / 2), Y + (Height / 2));

    internal Frame Grown(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));

    internal bool Meets(Frame other) =>
        X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;

    internal bool Holds(Frame other) =>
        X <= other.X && other.Right <= Right && Y <= other.Y && other.Bottom <= Bottom;

    internal Sequence<Spot> Corners() => [new(X, Y), new(Right, Y), new(Right, Bottom), new(X, Bottom)];

    internal static Frame Around(IEnumerable<Spot> spots)
    {
        var (left, top, right, bottom) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var s in spots)
        {
            (left, right) = (Math.Min(left, s.X), Math.Max(right, s.X));
            (top, bottom) = (Math.Min(top, s.Y), Math.Max(bottom, s.Y));
        }

        return new(left, top, right - left, bottom - top);
    }
}
