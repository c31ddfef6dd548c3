using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>Something that is put on all over, once or more.</summary>
/// <param name="Of">The supply's name.</param>
/// <param name="Coats">How often, 1 to 5.</param>
public sealed record Coated(string Of, int Coats);

/// <summary>A membrane that is rolled or brushed on a face.</summary>
/// <param name="Of">The supply's name.</param>
/// <param name="Coats">In how many coats, 1 to 5.</param>
public sealed record MembraneRequest(string Of, int Coats)
{
    /// <summary>How high it goes, above the face's y = 0; null, the default, for the whole face.</summary>
    public Length? To { get; init; }

    /// <summary>How far it goes out from corners, from the foot, from openings and from holes, where only those are coated; null, the default, where all of the face is.</summary>
    public Length? Bands { get; init; }

    /// <summary>What is laid into it along inside corners and the foot; null, the default, for nothing.</summary>
    public string? Band { get; init; }
}

/// <summary>What goes on a face before its tile.</summary>
public sealed record UnderTile
{
    /// <summary>What makes the rest stick; null, the default, for nothing.</summary>
    public Coated? Primer { get; init; }

    /// <summary>What keeps water out; null, the default, for nothing.</summary>
    public MembraneRequest? Membrane { get; init; }

    /// <summary>The filler that brings the face in where its readings say so; null, the default, where it is not reckoned.</summary>
    public string? Filler { get; init; }
}
