namespace Gaugerod.Plane.Measure;

/// <summary>What a job is measured in; a bare number is read as this. The default is <see cref="Millimetre"/>.</summary>
public enum LengthUnit
{
    /// <summary>Whole and decimal millimetres.</summary>
    Millimetre,

    /// <summary>Inches and their fractions.</summary>
    Inch,
}
