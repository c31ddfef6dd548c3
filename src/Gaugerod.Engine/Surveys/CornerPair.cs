using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>How the two corners of a wall stand.</summary>
/// <param name="Left">The left corner.</param>
/// <param name="Right">The right corner.</param>
internal sealed record CornerPair(CornerLine Left, CornerLine Right);

/// <summary>
/// One corner of a wall from foot to top, perhaps bent at half its height. Both corners are told by how far they stand
/// in from their own foot, so that a wall and its mirror image are reckoned alike.
/// </summary>
/// <param name="Foot">The height of its foot above y = 0.</param>
/// <param name="Height">Its height, straight up.</param>
/// <param name="Lean">How far its top stands in.</param>
/// <param name="Bend">How far its middle stands in from the straight line between foot and top.</param>
internal sealed record CornerLine(Length Foot, Length Height, Length Lean, Length Bend)
{
    public Length Top => Foot + Height;

    public Length MiddleHeight => Foot + Grid.HalfDown(Height);

    public Length MiddleInset => Grid.HalfDown(Lean) + Bend;

    public bool IsBent => Bend != Length.Zero;

    /// <summary>How far in it stands at a height; beyond its ends it goes straight on.</summary>
    public Length InsetAt(Length height)
    {
        if (!IsBent) return Grid.Between(Foot, Length.Zero, Top, Lean, height);
        return height <= MiddleHeight
            ? Grid.Between(Foot, Length.Zero, MiddleHeight, MiddleInset, height)
            : Grid.Between(MiddleHeight, MiddleInset, Top, Lean, height);
    }
}
