using Gaugerod.Plane;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>The lot of something that was used, as it stands on its box or bag.</summary>
/// <param name="Of">The name of a tile, a trim, a board or a supply of the job.</param>
/// <param name="Lot">The lot; null where nobody noted it.</param>
/// <param name="Colour">The colour; null where nobody noted it.</param>
/// <param name="Caliber">The caliber of a tile; null where nobody noted it.</param>
/// <param name="Note">What else the setter says of it; null for nothing.</param>
public sealed record LotNote(string Of, string? Lot, string? Colour, string? Caliber, string? Note);

/// <summary>A photograph, or several of one thing.</summary>
/// <param name="Of">A face, or in words what is in it.</param>
/// <param name="What">What it shows, such as pipes before boards.</param>
/// <param name="Where">Where it is kept: a file's name, an album; null where nobody noted it.</param>
public sealed record Photograph(string Of, string What, string? Where);

/// <summary>A test of what was built.</summary>
/// <param name="What">Which, such as a flood test.</param>
/// <param name="On">When it was done; null where it was not, or nobody noted it.</param>
/// <param name="By">By whom; null where nobody noted it.</param>
/// <param name="Result">What was found; null where nobody noted it.</param>
/// <param name="Again">When it is due again; null for not.</param>
public sealed record TestNote(string What, DateOnly? On, string? By, string? Result, DateOnly? Again);

/// <summary>What the setter notes for the hand-over. All of it is his own; nothing is reckoned.</summary>
public sealed record HandOverRequest
{
    /// <summary>How tile and joints are cared for, a line each. Default none.</summary>
    public Sequence<string> Care { get; init; } = [];

    /// <summary>The lots used. A thing of which several lots were used stands here as often. Default none.</summary>
    public Sequence<LotNote> Lots { get; init; } = [];

    /// <summary>Where the spares are kept; null, the default, where nobody said.</summary>
    public string? Kept { get; init; }

    /// <summary>The photographs. Default none.</summary>
    public Sequence<Photograph> Photographs { get; init; } = [];

    /// <summary>After how many years the setter renews soft joints, 1 to 50; null, the default, where he gives no figure.</summary>
    public int? Renew { get; init; }

    /// <summary>The tests. Default none.</summary>
    public Sequence<TestNote> Tests { get; init; } = [];
}
