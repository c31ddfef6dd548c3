using System.Globalization;
using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Trims;

/// <summary>How far off square a saw is set for the mitres of two trims of one field.</summary>
internal static class MitreAngle
{
    // Further than this a saw's fence is not turned, and the point would be a splinter. Common practice, no source.
    public const double Most = 60;

    /// <summary>Degrees off square for a mitre that takes so much of a trim so wide.</summary>
    public static double Of(StripEnd mitre, TrimProduct product) => double.RadiansToDegrees(Math.Atan2(mitre.Takes, product.Width.Steps));

    /// <summary>Whether both can be sawn.</summary>
    public static bool CanBeSawn(StripEnd mitre, TrimProduct first, StripEnd mitreNext, TrimProduct second) => Math.Max(Of(mitre, first), Of(mitreNext, second)) <= Most;

    /// <summary>The setting in words, to the half degree that a fence shows.</summary>
    public static string Say(double degrees) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(degrees * 2, MidpointRounding.AwayFromZero) / 2:0.#}°");
}
