using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What a run is set and grouted with.</summary>
public sealed record SettingRequest
{
    /// <summary>The mortar's name; null, the default, where it is not reckoned.</summary>
    public string? Mortar { get; init; }

    /// <summary>The trowel it is combed with; null where the product's bond coat says how thick it lies. Default null.</summary>
    public Trowel? Trowel { get; init; }

    /// <summary>What is spread on the back of every tile, beside that: its thickness. Default none.</summary>
    public Length BackButter { get; init; }

    /// <summary>The grout's name; null, the default, where it is not reckoned.</summary>
    public string? Grout { get; init; }

    /// <summary>How deep joints are filled; null, the default, for as deep as the tile is thick.</summary>
    public Length? JointDepth { get; init; }
}
