using System.Globalization;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Which way a grain runs on a face, in words.</summary>
public static class GrainWords
{
    /// <summary><c>level</c>, <c>plumb</c>, or how it slopes, to the degree: <c>rising to the right at 45°</c>.</summary>
    /// <param name="way">From 0 to under 180 degrees, counter-clockwise from level.</param>
    public static string Of(Angle way)
    {
        var degrees = (way.Thousandths + 500) / 1000 % 180;
        return degrees switch
        {
            0 => "level",
            90 => "plumb",
            < 90 => string.Create(CultureInfo.InvariantCulture, $"rising to the right at {degrees}°"),
            _ => string.Create(CultureInfo.InvariantCulture, $"falling to the right at {180 - degrees}°"),
        };
    }
}
