using System.Globalization;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules.Published;

/// <summary>A number as it is printed, with its unit.</summary>
/// <param name="Number">The number.</param>
/// <param name="Unit">Its unit, such as <c>in</c>, <c>mm</c>, <c>%</c>.</param>
public readonly record struct Figure(double Number, string Unit)
{
    private static readonly Tape s_fine = new(LengthUnit.Inch, Length.FromInches(0, 1, 64));

    /// <summary>The length it is, to the nearest step.</summary>
    /// <exception cref="InvalidOperationException">It is none.</exception>
    public Length Length => Steps is { } steps ? Length.FromSteps((long)Math.Round(steps)) : throw new InvalidOperationException($"{this} is no length.");

    /// <summary>The area it is, in square millimetres.</summary>
    /// <exception cref="InvalidOperationException">It is none.</exception>
    public double Area => Unit switch { "in²" => Number * 645.16, "ft²" => Number * 92_903.04, "m²" => Number * 1e6, _ => throw new InvalidOperationException($"{this} is no area.") };

    /// <summary>The part of one it is: of a share, or of a fall.</summary>
    /// <exception cref="InvalidOperationException">It is none.</exception>
    public double Part => Unit switch { "%" => Number / 100, "in per ft" => Number / 12, "1:" => 1 / Number, _ => throw new InvalidOperationException($"{this} is no part.") };

    private double? Steps => Unit switch { "in" => Number * Length.StepsPerInch, "ft" => Number * 12 * Length.StepsPerInch, "mm" => Number * Length.StepsPerMillimetre, "m" => Number * 1000 * Length.StepsPerMillimetre, _ => null };

    /// <summary>As it is printed: <c>1/4 in</c>, <c>1:80</c>, <c>80 %</c>.</summary>
    public override string ToString() => Unit switch
    {
        "1:" => string.Create(CultureInfo.InvariantCulture, $"1:{Number}"),
        "in" when s_fine.Nearest(Length) == Length => LengthText.Nearest(Length, s_fine),
        "in per ft" => $"{new Figure(Number, "in")} per ft",
        "times" => string.Create(CultureInfo.InvariantCulture, $"{Number} times"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Number} {Unit}"),
    };
}
