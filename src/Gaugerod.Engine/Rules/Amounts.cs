using System.Globalization;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Volumes, weights and falls in findings, in the tape's unit.</summary>
internal static class Amounts
{
    private const double CubicInch = 16_387.064, CubicFoot = CubicInch * 1728, Pound = 0.45359237;

    internal static string Volume(double cubicMillimetres, Tape tape)
    {
        if (tape.Unit == LengthUnit.Millimetre) return Number(cubicMillimetres / 1e6, "0.0", "0.00") + " l";
        return cubicMillimetres < CubicFoot / 10 ? Number(cubicMillimetres / CubicInch, "0", "0.0") + " in³" : Number(cubicMillimetres / CubicFoot, "0.00", "0.00") + " ft³";
    }

    internal static string Area(double squareMillimetres, Tape tape) => tape.Unit == LengthUnit.Inch
        ? Number(squareMillimetres / (CubicFoot / 304.8), "0.0", "0.00") + " ft²"
        : Number(squareMillimetres / 1e6, "0.0", "0.00") + " m²";

    /// <summary>A length that is bought or worked off, not cut: in feet or metres.</summary>
    internal static string Distance(double millimetres, Tape tape) => tape.Unit == LengthUnit.Inch
        ? Number(millimetres / 304.8, "0", "0.0") + " ft"
        : Number(millimetres / 1000, "0.0", "0.00") + " m";

    /// <summary>How thick something lies that no tape measures.</summary>
    internal static string Film(double millimetres, Tape tape) => tape.Unit == LengthUnit.Inch
        ? string.Create(CultureInfo.InvariantCulture, $"{millimetres / 25.4:0.000} in")
        : string.Create(CultureInfo.InvariantCulture, $"{millimetres:0.0} mm");

    /// <summary>How thick a film of a membrane is: in thousandths of an inch, as membranes are sold.</summary>
    internal static string Mil(double millimetres, Tape tape) => tape.Unit == LengthUnit.Inch
        ? string.Create(CultureInfo.InvariantCulture, $"{millimetres / 25.4 * 1000:0.#} mil")
        : string.Create(CultureInfo.InvariantCulture, $"{millimetres:0.00} mm");

    internal static string Weight(double kilograms, Tape tape) => tape.Unit == LengthUnit.Inch
        ? string.Create(CultureInfo.InvariantCulture, $"{kilograms / Pound:0} lb")
        : string.Create(CultureInfo.InvariantCulture, $"{kilograms:0} kg");

    /// <summary>A fall as it is said on site: so much in a foot or a metre, and in a hundred.</summary>
    internal static string Fall(double part, Tape tape)
    {
        var percent = string.Create(CultureInfo.InvariantCulture, $"{part * 100:0.00} %");
        if (tape.Unit == LengthUnit.Millimetre) return string.Create(CultureInfo.InvariantCulture, $"{part * 1000:0.#} mm per metre, {percent}");
        var inFoot = Length.FromSteps((long)Math.Floor((part * 12 * Length.StepsPerInch) + 0.5));
        return $"{Shown.Fine(inFoot, tape)} per foot, {percent}";
    }

    // Under ten one more place is of use.
    private static string Number(double value, string large, string small) => value.ToString(value < 10 ? small : large, CultureInfo.InvariantCulture);
}
