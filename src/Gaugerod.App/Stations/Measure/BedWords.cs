using System.Globalization;
using Gaugerod.Engine.Bases;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Measure;

/// <summary>What is said of a bed before the whole job is planned; its findings, each with its limit and source, come with the plan.</summary>
internal static class BedWords
{
    private const double CubicFoot = 28.316846592, Pound = 0.45359237;

    /// <summary>How much a bed takes, what it weighs, and how thick it is.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="tape">The job's tape: litres and kilograms for millimetres, cubic feet and pounds for inches.</param>
    public static string Takes(Bed bed, Tape tape)
    {
        var (litres, inches) = (bed.Volume / 1e6, tape.Unit == LengthUnit.Inch);
        var volume = inches ? Number(litres / CubicFoot, "0.00") + " ft³" : Number(litres, litres < 10 ? "0.00" : "0.0") + " l";
        var weight = inches ? Number(bed.Kilograms / Pound, "0") + " lb" : Number(bed.Kilograms, "0") + " kg";
        var bags = bed.Bags is { } count ? Number(count, "0") + (count == 1 ? " bag" : " bags") + ", " : "";
        return $"The bed takes {volume}, {bags}and weighs about {weight}. It is {LengthText.Nearest(bed.Least, tape)} thick at {bed.Low} and {LengthText.Nearest(bed.Greatest, tape)} at the most, over a level base.";
    }

    private static string Number(double value, string form) => value.ToString(form, CultureInfo.InvariantCulture);
}
