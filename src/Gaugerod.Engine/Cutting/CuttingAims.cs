using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Cutting;

/// <summary>What a cut plan is judged by.</summary>
public enum CuttingAim
{
    /// <summary>Few tiles.</summary>
    Tiles,

    /// <summary>A part seldom waits until the fence stands elsewhere.</summary>
    LaidBy,

    /// <summary>Few cuts.</summary>
    Cuts,

    /// <summary>Few offcuts, and those large.</summary>
    Offcuts,

    /// <summary>Pieces of one course from one tile.</summary>
    Courses,
}

/// <summary>What is asked of the cutting.</summary>
/// <param name="Order">The aims, the most important first, each once.</param>
/// <param name="Fence">Pieces that differ by no more may be cut at one setting of the fence, the smallest of them; zero for none but alike ones.</param>
/// <param name="Keep">An offcut is kept when it is at least so wide and so high.</param>
public sealed record CuttingAims(Sequence<CuttingAim> Order, Length Fence, Length Keep)
{
    /// <summary>Fewest tiles first; no tolerance at the fence; offcuts kept from 50 mm (common practice, no source).</summary>
    public static CuttingAims Usual { get; } = new(
        [CuttingAim.Tiles, CuttingAim.LaidBy, CuttingAim.Cuts, CuttingAim.Courses, CuttingAim.Offcuts], Length.Zero, Length.FromMillimetres(50));

    /// <summary>Whether a part is laid by only where that is the way of one piece alone.</summary>
    public bool IsSimple => Order.ToList().IndexOf(CuttingAim.LaidBy) < Order.ToList().IndexOf(CuttingAim.Tiles);
}
