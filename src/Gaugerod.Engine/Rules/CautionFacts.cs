using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What cautions go by.</summary>
/// <param name="Region">The job's region; null where it names none, and the American figures are shown as such.</param>
/// <param name="Tape">How they are said.</param>
/// <param name="Products">The tiles that are carried.</param>
internal sealed record CautionFacts(Region? Region, Tape Tape, Sequence<Product> Products)
{
    /// <summary>What else is carried. Default none.</summary>
    public Sequence<Supply> Supplies { get; init; } = [];

    /// <summary>How large the faces of the job are together, in square millimetres; null, the default, where nobody said.</summary>
    public double? Area { get; init; }
}
