using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Layouts;

/// <summary>
/// Where the bond sits: the lower left corner of a tile of the bond's first course, and the joint width. Two placings
/// a whole repeat of the bond apart lay the same tiles.
/// </summary>
/// <param name="X">From the left: of the run unrolled, or of a face when it is a face's own placing.</param>
/// <param name="Y">From below: above the first face's y = 0, or the face's own.</param>
/// <param name="Joint">The joint's width.</param>
public readonly record struct Placing(Length X, Length Y, Length Joint)
{
    /// <summary>How far the bond is turned about that place, counter-clockwise; default not at all.</summary>
    public Angle Turn { get; init; }
}
