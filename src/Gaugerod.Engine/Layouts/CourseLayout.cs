using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Layouts;

/// <summary>A tile where the bond would lay it whole.</summary>
/// <param name="Course">Its course; 0 is the course the placing names.</param>
/// <param name="Column">Its place along the course; 0 is the tile the placing names, or its like in that course.</param>
/// <param name="Cell">Where it lies on the face.</param>
internal readonly record struct LaidTile(int Course, int Column, Box Cell);

/// <summary>Puts a straight bond on a face at a placing.</summary>
internal static class CourseLayout
{
    /// <summary>Every tile that touches a box, the lowest course first, each course from the left.</summary>
    /// <param name="bond">A straight bond.</param>
    /// <param name="placing">Where it sits, in the coordinates of the box.</param>
    /// <param name="around">The box.</param>
    public static IEnumerable<LaidTile> Tiles(Bond bond, Placing placing, Box around)
    {
        var courses = bond.Courses ?? throw new ArgumentException("Not a straight bond.", nameof(bond));
        var upright = bond.Lay == Lay.Upright;
        var area = upright ? Transposed(around) : around;
        var (u, v) = upright ? (placing.Y.Steps, placing.X.Steps) : (placing.X.Steps, placing.Y.Steps);

        var firstCourse = Grid.FloorDiv(area.Bottom.Steps - v - courses.Depth, courses.Rise) + 1;
        for (var k = firstCourse; v + (k * courses.Rise) < area.Top.Steps; k++)
        {
            var (start, bottom) = (u + courses.Offset(k), v + (k * courses.Rise));
            var firstColumn = Grid.FloorDiv(area.Left.Steps - start - courses.Length, courses.Period) + 1;
            for (var c = firstColumn; start + (c * courses.Period) < area.Right.Steps; c++)
            {
                var left = start + (c * courses.Period);
                var cell = new Box(
                    Length.FromSteps(left), Length.FromSteps(bottom),
                    Length.FromSteps(left + courses.Length), Length.FromSteps(bottom + courses.Depth));
                yield return new((int)k, (int)c, upright ? Transposed(cell) : cell);
            }
        }
    }

    private static Box Transposed(Box box) => new(box.Bottom, box.Left, box.Top, box.Right);
}
