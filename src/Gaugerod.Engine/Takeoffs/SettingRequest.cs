using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What stands in the joints while the mortar is soft.</summary>
/// <param name="Of">The supply's name.</param>
/// <param name="Every">How far two of them stand apart at the most along a joint between two tiles; null for one at every crossing.</param>
public sealed record Between(string Of, Length? Every);

/// <summary>The batten under the first whole course.</summary>
/// <param name="Of">The supply's name.</param>
public sealed record BattenRequest(string Of)
{
    /// <summary>The screws that hold it; null, the default, where it is propped from below.</summary>
    public string? Screws { get; init; }

    /// <summary>How far two screws stand apart at the most; zero where it has none. No figure is published for it: the setter says it.</summary>
    public Length Every { get; init; }
}

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

    /// <summary>The sealant of its soft joints; null, the default, where it is not reckoned.</summary>
    public string? Sealant { get; init; }

    /// <summary>How deep the sealant lies; null, the default, for half as deep as it is wide, 1/8 in at the least.</summary>
    public Length? SealantDepth { get; init; }

    /// <summary>The cord behind the sealant; null, the default, for none.</summary>
    public string? Backer { get; init; }

    /// <summary>What keeps the joints open; null, the default, where it is not reckoned.</summary>
    public Between? Spacers { get; init; }

    /// <summary>What holds tiles flush; null, the default, for none.</summary>
    public Between? Clips { get; init; }

    /// <summary>What pulls the clips tight; null, the default, for none.</summary>
    public string? Wedges { get; init; }

    /// <summary>What is wiped on when the joints are dry; null, the default, for nothing.</summary>
    public Coated? Sealer { get; init; }

    /// <summary>What carries the first whole course over a cut one while the mortar is soft; null, the default, where it is not reckoned.</summary>
    public BattenRequest? Batten { get; init; }

    /// <summary>How deep joints are filled; null, the default, for as deep as the tile is thick.</summary>
    public Length? JointDepth { get; init; }
}
