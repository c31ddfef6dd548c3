using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>The mortar that tape over seams is bedded in.</summary>
/// <param name="Of">The supply's name.</param>
/// <param name="Width">How wide it is drawn along a seam; more than zero.</param>
/// <param name="Thickness">How thick it lies; more than zero.</param>
public sealed record SeamMortar(string Of, Length Width, Length Thickness);

/// <summary>A sheet of backer board as it is bought. Sizes are the real ones.</summary>
/// <param name="Name">Its name, unique among the job's boards.</param>
/// <param name="Width">Its shorter side; 12 in or 300 mm to 4 m.</param>
/// <param name="Length">Its longer side; no less than the width.</param>
/// <param name="Thickness">How thick it is; zero, the default in the file, means unknown.</param>
public sealed record BoardProduct(string Name, Length Width, Length Length, Length Thickness)
{
    /// <summary>No side of a sheet is shorter.</summary>
    public static Length LeastSide { get; } = Length.FromMillimetres(300);

    /// <summary>The gap between two sheets; zero where they are closely abutted. Default 1/8 in or 3 mm in the file.</summary>
    public Length Gap { get; init; }

    /// <summary>How far two screws stand apart at the most. Default 8 in or 200 mm in the file.</summary>
    public Length ScrewsApart { get; init; }

    /// <summary>How far the outer screws stand from a sheet's edge. Default 1/2 in or 12 mm in the file.</summary>
    public Length Inset { get; init; }

    /// <summary>The name of the supply that its screws are bought as; null, the default, where they are only counted.</summary>
    public string? Screws { get; init; }

    /// <summary>The name of the supply that tape over its seams is bought as; null, the default, where it is only measured.</summary>
    public string? Tape { get; init; }

    /// <summary>What its tape is bedded in; null, the default, where that is not reckoned.</summary>
    public SeamMortar? TapeMortar { get; init; }

    /// <summary>Sheets allowed for breakage, beside those that the pieces take; default none.</summary>
    public int Breakage { get; init; }
}
