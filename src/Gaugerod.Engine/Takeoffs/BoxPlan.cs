using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>A piece and the box that its tile is taken from.</summary>
/// <param name="Id">The piece's number.</param>
/// <param name="Box">The box's number, from 1 as they are opened.</param>
/// <param name="IsOffcut">Whether its tile was taken before, for another piece.</param>
public readonly record struct BoxedPiece(string Id, int Box, bool IsOffcut);

/// <summary>One course of one face, in stretches that no opening interrupts, each from the left or from the foot up.</summary>
/// <param name="Face">The face.</param>
/// <param name="Course">The course.</param>
/// <param name="Stretches">The stretches.</param>
public sealed record BoxCourse(string Face, int Course, Sequence<Sequence<BoxedPiece>> Stretches);

/// <summary>Which box every tile of one product is taken from; how, and what it guarantees, stands in docs/directions.md.</summary>
/// <param name="Product">The product's name.</param>
/// <param name="Open">How many boxes are open at a time; fewer where there are not so many.</param>
/// <param name="Boxes">How many boxes there are.</param>
/// <param name="PerBox">Tiles in a box.</param>
/// <param name="OfTile">The box of each tile of the cut plan, in its order.</param>
/// <param name="Courses">The courses in setting order.</param>
/// <param name="Joints">How many joints there are between two pieces of the product.</param>
/// <param name="Alike">How many of them lie between two pieces out of one box.</param>
public sealed record BoxPlan(
    string Product, int Open, int Boxes, int PerBox, Sequence<int> OfTile, Sequence<BoxCourse> Courses, int Joints, int Alike)
{
    /// <summary>How many tiles the cut plan leaves in the boxes, for breakage and spares.</summary>
    public int Left => (Boxes * PerBox) - OfTile.Count;

    /// <summary>The boxes that are opened together: the first and the last of each group.</summary>
    public IEnumerable<(int First, int Last)> Groups
    {
        get
        {
            for (var first = 1; first <= Boxes;)
            {
                var last = first + OpenBoxes.Together(Boxes - first + 1, Open) - 1;
                yield return (first, last);
                first = last + 1;
            }
        }
    }
}

/// <summary>A face as it is set: its pieces, of any product, and the joint between them.</summary>
internal readonly record struct SetFace(Sequence<Piece> Pieces, Length Joint);
