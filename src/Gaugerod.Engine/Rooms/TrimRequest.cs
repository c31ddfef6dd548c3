using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>Where the joints of a trim fall beside those of the field.</summary>
public enum TrimJoints
{
    /// <summary>Anywhere.</summary>
    Free,

    /// <summary>On joints of the field.</summary>
    InLine,

    /// <summary>Clear of every joint of the field.</summary>
    Staggered,

    /// <summary>Each as far past a joint of the field as every other.</summary>
    Repeating,

    /// <summary>Alike from both ends.</summary>
    Centred,

    /// <summary>None: one piece from end to end.</summary>
    Unbroken,
}

/// <summary>How a trim meets the next one at a corner.</summary>
public enum TrimCorner
{
    /// <summary>Both on the mitre.</summary>
    Mitred,

    /// <summary>It runs over the end of the other.</summary>
    Covers,

    /// <summary>It ends against the other.</summary>
    Butts,

    /// <summary>At a corner piece.</summary>
    Piece,
}

/// <summary>What is asked for at one end of a trim.</summary>
/// <param name="Corner">How it meets another trim; null for a corner piece where there is one, else the mitre.</param>
/// <param name="Return">How far a mitred piece goes on round the end, into the depth of a niche or back to the wall; null for none.</param>
public readonly record struct TrimEnding(TrimCorner? Corner, Length? Return = null);

/// <summary>A trim asked for along an edge.</summary>
/// <param name="Of">The trim's name.</param>
/// <param name="Joints">Where its joints are wanted.</param>
public sealed record TrimRequest(string Of, TrimJoints Joints)
{
    /// <summary>How far joints stay from those of the field, middle to middle; null for as far as can be.</summary>
    public Length? Stagger { get; init; }

    /// <summary>Its left end, seen with its finished side up and the field below it.</summary>
    public TrimEnding Left { get; init; }

    /// <summary>Its right end.</summary>
    public TrimEnding Right { get; init; }
}
