using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>A place on a floor, or a way across it, in millimetres.</summary>
internal readonly record struct Place(double X, double Y)
{
    public static Place Of(Point point) => new(point.X.Steps / 3200.0, point.Y.Steps / 3200.0);

    public static Place Towards(double angle) => new(Math.Cos(angle), Math.Sin(angle));

    // Said by itself a place would tell its unit, and that its own, without end.
    public override string ToString() => FormattableString.Invariant($"{X}, {Y}");

    public double Length => Math.Sqrt((X * X) + (Y * Y));

    public double Angle => Math.Atan2(Y, X);

    /// <summary>The way a quarter turn to the left.</summary>
    public Place Left => new(-Y, X);

    /// <summary>The same way, one millimetre long; none stays none.</summary>
    public Place Unit => Length is > 0 and var length ? new(X / length, Y / length) : this;

    public static Place operator +(Place a, Place b) => new(a.X + b.X, a.Y + b.Y);

    public static Place operator -(Place a, Place b) => new(a.X - b.X, a.Y - b.Y);

    public static Place operator *(Place a, double times) => new(a.X * times, a.Y * times);

    public double Along(Place way) => (X * way.X) + (Y * way.Y);

    public double Across(Place way) => (way.X * Y) - (way.Y * X);

    public double To(Place other) => (other - this).Length;
}
