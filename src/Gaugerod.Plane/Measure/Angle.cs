using System.Globalization;

namespace Gaugerod.Plane.Measure;

/// <summary>
/// How far something is turned, counter-clockwise, in whole thousandths of a degree: over the 30 m of a hall that is half
/// a millimetre, finer than any line can be snapped. The default value is <see cref="Zero"/>.
/// </summary>
public readonly record struct Angle
{
    /// <summary>How many thousandths of a degree make a quarter turn.</summary>
    public const int QuarterTurn = 90_000;

    private Angle(int thousandths) => Thousandths = thousandths;

    /// <summary>Not turned.</summary>
    public static Angle Zero => default;

    /// <summary>Thousandths of a degree.</summary>
    public int Thousandths { get; }

    /// <summary>Degrees, exactly.</summary>
    public decimal Degrees => Thousandths / 1000m;

    /// <summary>Whether it is a whole number of quarter turns.</summary>
    public bool IsSquare => Thousandths % QuarterTurn == 0;

    /// <summary>An angle of so many thousandths of a degree.</summary>
    public static Angle FromThousandths(int thousandths) => new(thousandths);

    /// <summary>An angle of so many whole degrees.</summary>
    public static Angle FromDegrees(int degrees) => new(checked(degrees * 1000));

    /// <summary>The angle the other way round.</summary>
    public static Angle operator -(Angle angle) => new(-angle.Thousandths);

    /// <summary>One angle and another on top of it.</summary>
    public static Angle operator +(Angle one, Angle other) => new(checked(one.Thousandths + other.Thousandths));

    /// <summary>The angle in degrees as one writes it, such as <c>22.5°</c>.</summary>
    public override string ToString() => Degrees.ToString("0.###", CultureInfo.InvariantCulture) + "°";
}
