using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What a field is exposed to.</summary>
public enum Exposure
{
    /// <summary>Nothing: inside, shaded, dry or wet at times.</summary>
    Inside,

    /// <summary>Sun through a window, heat, or steady wet.</summary>
    Sun,

    /// <summary>Weather.</summary>
    Outside,
}

/// <summary>How far soft joints across a run's fields may stand apart.</summary>
/// <param name="Exposure">What its fields are exposed to.</param>
/// <param name="Most">How far apart at the most; null for what is published for that.</param>
public sealed record MovementRequest(Exposure Exposure, Length? Most);
