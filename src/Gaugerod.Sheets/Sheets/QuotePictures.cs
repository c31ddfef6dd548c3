using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The tiled walls and floors as a client looks at them: all to one scale, side by side, without numbers and lines.</summary>
internal static class QuotePictures
{
    private const double Between = 8, Under = 6, Least = 12;

    /// <summary>The rows of pictures, as high as they need and together no higher than asked.</summary>
    public static List<Block> Of(SheetBook book, double width, double height)
    {
        var walls = WallPlan.All(book.Plan).Where(wall => wall.Parts.Any(part => part.Face.Pieces.Count > 0)).ToList();
        foreach (var scale in FaceMap.Ladder.Where(scale => scale >= 5))
        {
            var rows = Rows(walls, scale, width);
            if (rows is not null && rows.Sum(row => row.Max(wall => High(wall, scale)) + Under) <= height) return rows.ConvertAll(row => Row(row, scale));
        }

        // A house full of walls: as small as they tell anything, over as many rows as it takes.
        var smallest = FaceMap.Ladder[^1];
        return (Rows(walls, smallest, width) ?? walls.ConvertAll(wall => new List<WallPlan> { wall })).ConvertAll(row => Row(row, smallest));
    }

    private static double Wide(WallPlan wall, int scale) => Math.Max(FaceMap.OnPaper(wall.Bounds.Width, scale), Least);

    private static double High(WallPlan wall, int scale) => FaceMap.OnPaper(wall.Bounds.Height, scale);

    /// <summary>The walls in rows, in their order; null where one is wider than a row.</summary>
    private static List<List<WallPlan>>? Rows(List<WallPlan> walls, int scale, double width)
    {
        var (rows, used) = (new List<List<WallPlan>>(), 0.0);
        foreach (var wall in walls)
        {
            if (Wide(wall, scale) > width) return null;
            if (rows.Count == 0 || used + Between + Wide(wall, scale) > width)
            {
                rows.Add([]);
                used = -Between;
            }

            rows[^1].Add(wall);
            used += Between + Wide(wall, scale);
        }

        return rows;
    }

    private static Block Row(List<WallPlan> row, int scale)
    {
        var high = row.Max(wall => High(wall, scale));
        return new(high + Under, (pen, x, y) =>
        {
            foreach (var wall in row)
            {
                var box = wall.Bounds;
                var map = new FaceMap(scale, new(x - FaceMap.OnPaper(box.Left, scale), y + high - High(wall, scale) + FaceMap.OnPaper(box.Top, scale)));
                FacePicture.DrawTogether([.. wall.Parts.Select(part => new FacePicture(Plain(part.Face), map, pen))], [], new TrimPicture(map, pen, wall.Trims));
                pen.Text(x, y + high + 3.6, Shortened(wall.Name, Wide(wall, scale) + Between - 2), 8, ink: Ink.Quiet);
                x += Wide(wall, scale) + Between;
            }
        });
    }

    // Which tiles are cut, and how, is the setter's business.
    private static FacePlan Plain(FacePlan face) => face with { Pieces = face.Pieces.Select(piece => piece with { Kind = PieceKind.Full }).ToSequence() };

    private static string Shortened(string name, double width)
    {
        if (Lettering.Width(name, 8) <= width) return name;
        while (name.Length > 1 && Lettering.Width(name + "…", 8) > width) name = name[..^1];
        return name.TrimEnd() + "…";
    }
}
