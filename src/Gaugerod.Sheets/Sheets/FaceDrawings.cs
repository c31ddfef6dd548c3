using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A wall's picture.</summary>
/// <param name="Face">The wall's name.</param>
/// <param name="Drawing">The picture, to the scale that its title states.</param>
public sealed record FaceDrawing(string Face, Drawing Drawing);

/// <summary>One picture a wall or floor, with all that is laid on it, and one of every zone that is much smaller, without a sheet around it.</summary>
public static class FaceDrawings
{
    /// <summary>The pictures of all walls, in the order in which the runs come to them.</summary>
    public static Sequence<FaceDrawing> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var book = new SheetBook(plan);
        return WallPlan.All(plan).SelectMany(wall => FaceSheet.Nearer(book, wall).Prepend(wall))
            .Select(wall => new FaceDrawing(wall.Name, FaceSheet.Alone(plan, wall))).ToSequence();
    }
}
