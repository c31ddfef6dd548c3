using System.Globalization;

namespace Gaugerod.Engine.Planning;

/// <summary>Says how often something is put on.</summary>
internal static class CoatsWords
{
    public static string Of(int coats) => coats == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", in {coats} coats");
}
