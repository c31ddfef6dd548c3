using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Shapes;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How wide a border or a rug is that whole tiles fill: so many tiles with the joints between them, and its joint beside.</summary>
public static class WholeTiles
{
    /// <summary>The width of a border nearest to the one asked that keeps the tiles of its strips whole across; null where its bond has no courses along the strip.</summary>
    /// <param name="border">The border.</param>
    /// <param name="product">Its tile.</param>
    /// <param name="bond">Its bond.</param>
    /// <param name="joint">The joint between tiles.</param>
    /// <param name="edgeJoint">The joint beside it where it names none.</param>
    public static Length? Width(Zone.Border border, Product product, BondRequest bond, Length joint, Length edgeJoint)
    {
        ArgumentNullException.ThrowIfNull(border);
        ArgumentNullException.ThrowIfNull(product);
        ArgumentNullException.ThrowIfNull(bond);
        if (!bond.IsStraight) return null;
        var half = Grid.HalfDown(border.Joint ?? edgeJoint);
        return Filled(border.Width - half, bond.Lay == Lay.Level ? product.Height : product.Width, joint) + half;
    }

    /// <summary>The width and the height of a rug nearest to those asked that whole tiles fill; null where its bond does not run along its sides in a grid.</summary>
    /// <param name="rug">The rug.</param>
    /// <param name="product">Its tile.</param>
    /// <param name="bond">Its bond.</param>
    /// <param name="joint">The joint between tiles.</param>
    /// <param name="edgeJoint">The joint beside it where it names none.</param>
    public static (Length Width, Length Height)? Size(Zone.Rug rug, Product product, BondRequest bond, Length joint, Length edgeJoint)
    {
        ArgumentNullException.ThrowIfNull(rug);
        ArgumentNullException.ThrowIfNull(product);
        ArgumentNullException.ThrowIfNull(bond);
        if (!bond.IsStraight || bond is not BondRequest.Grid) return null;
        var around = Grid.HalfDown(rug.Joint ?? edgeJoint) * 2;
        var (wide, high) = bond.Lay == Lay.Level ? (product.Width, product.Height) : (product.Height, product.Width);
        return (Filled(rug.Box.Width - around, wide, joint) + around, Filled(rug.Box.Height - around, high, joint) + around);
    }

    /// <summary>The width that whole tiles fill nearest to one: one tile at the least.</summary>
    private static Length Filled(Length width, Length tile, Length joint)
    {
        var pitch = tile + joint;
        return (pitch * (int)Math.Max(1, Grid.FloorDiv((width + joint).Steps + (pitch.Steps / 2), pitch.Steps))) - joint;
    }
}
