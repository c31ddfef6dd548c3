using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Surveys;

/// <summary>What the hand sketches of these tests are drawn with.</summary>
internal static class Sketch
{
    public static readonly ReadingPlace Metric = new("north", "faces[0]", Tape.Millimetres);
    public static readonly ReadingPlace Inches = new("north", "faces[0]", Tape.Sixteenths);

    public static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    public static Length In(long whole, long numerator = 0, long denominator = 1) => Length.FromInches(whole, numerator, denominator);

    public static Point At(long x, long y) => new(Mm(x), Mm(y));

    public static Ring RingMm(params (long X, long Y)[] points) => new(points.Select(p => At(p.X, p.Y)).ToSequence());

    public static FaceReadings Wall(
        Length width, Length height, Length? middle = null, Length? top = null, Length? right = null,
        (Length Left, Length Right)? level = null, Length? leanLeft = null, Length? leanRight = null) =>
        new(new(width, middle, top), new(height, right), level is { } l ? new(l.Left, l.Right) : null, new(leanLeft, leanRight));

    /// <summary>A metric wall with its level line struck and its corners plumbed: nothing is assumed of it.</summary>
    public static FaceReadings TrueWall(long width, long height) =>
        Wall(Mm(width), Mm(height), level: (Mm(1000), Mm(1000)), leanLeft: default(Length), leanRight: default(Length));
}
