using CsCheck;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Boards;

/// <summary>Invented walls on studs, with raking heads and openings, in whole millimetres.</summary>
internal static class RandomWalls
{
    /// <param name="width">The widest.</param>
    /// <param name="height">The highest.</param>
    public static Gen<(Face Face, BoardProduct Board)> Of(int width, int height) =>
        from size in Gen.Select(Gen.Int[width / 2, width], Gen.Int[height / 2, height], Gen.Int[-120, 120])
        from studs in Gen.Select(Gen.Int[30, 400], Gen.Int[300, 420])
        from sheet in Gen.Select(Any(600, 813, 914), Any(914, 1200, 1524), Any(0, 3, 4))
        from windows in Gen.Select(Gen.Int[0, 100], Gen.Int[0, 100], Gen.Int[10, 60], Gen.Int[10, 60]).Array[0, 2]
        from lay in Any(BoardLay.Either, BoardLay.Across, BoardLay.Along)
        select (
            Boarding.Face(
                new("board") { Studs = new() { From = Mm(studs.Item1), Apart = Mm(studs.Item2), Width = Mm(38) }, Lay = lay, Foot = Mm(6), Edges = Mm(3) },
                [At(0, 0), At(size.Item1, 0), At(size.Item1, size.Item2 + size.Item3), At(0, size.Item2)],
                [.. windows.Select((w, i) => Window(size.Item1, size.Item2 - 140, windows.Length, i, w))]),
            Boarding.FourByEight with { Width = Mm(sheet.Item1), Length = Mm(sheet.Item2), Gap = Mm(sheet.Item3), ScrewsApart = Mm(200), Inset = Mm(12) });

    /// <summary>Holds a property to those that can be boarded; on a few studs stand too far apart for the sheets.</summary>
    public static void EachBoarded(this Gen<(Face Face, BoardProduct Board)> walls, Action<(Face Face, BoardProduct Board), BoardTask> check, int iter)
    {
        var held = 0;
        walls.Each(
            wall =>
            {
                var task = Boarding.Task(wall.Face, wall.Board);
                if (task.TooWide() is not null) return;
                check(wall, task);
                Interlocked.Increment(ref held);
            },
            iter);
        Assert.True(held > iter * 9 / 10, $"only {held} of {iter} walls were held");
    }

    /// <summary>The corners that point into the board.</summary>
    public static IEnumerable<Point> Corners(Face face) => face.Openings.SelectMany(opening => opening.Ring.Points);

    // Each in a strip of its own, so that they never meet.
    private static Box Window(int width, int height, int all, int i, (int X, int Y, int W, int H) w)
    {
        var strip = width / all;
        var (wide, high) = (strip * w.W / 100, height * w.H / 100);
        var (left, bottom) = ((i * strip) + 20 + ((strip - wide - 40) * w.X / 100), 20 + ((height - high - 40) * w.Y / 100));
        return new(Mm(left), Mm(bottom), Mm(left + wide), Mm(bottom + high));
    }

    private static Gen<T> Any<T>(params T[] of) => Gen.Int[0, of.Length - 1].Select(i => of[i]);

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);

    private static Point At(int x, int y) => new(Mm(x), Mm(y));
}
