using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A wall or a floor of several parts in one picture: its zones, strips and planes together, every cut piece numbered.</summary>
internal static class WholeWallSheet
{
    /// <summary>The room kept for figures on either side of the picture.</summary>
    public const double Beside = 12;

    /// <summary>Draws the parts, and how large they were measured.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="wall">The wall.</param>
    /// <param name="map">Where it goes on the paper.</param>
    /// <param name="room">Where numbers may stand.</param>
    /// <param name="figures">How lengths are said.</param>
    /// <param name="elsewhere">The zones whose pieces are numbered on sheets of their own.</param>
    public static void Draw(Pen pen, Plan plan, WallPlan wall, FaceMap map, Frame room, Figures figures, HashSet<string> elsewhere)
    {
        var pictures = wall.Parts.Select(part => new FacePicture(part.Face, map, pen)).ToList();
        var trims = new TrimPicture(map, pen, wall.Trims);
        FacePicture.DrawTogether(pictures, [], trims);
        var whole = wall.Runs.Count == 1;
        foreach (var picture in whole ? FacePicture.SetOut(pictures) : [])
        {
            picture.Lines(wall.Parts[0].Run.Lines, 2.5, onTile: wall.Parts[0].Run.IsBorder);
            picture.Lines(wall.Parts[0].Run.Turned);
        }

        var numbers = new PieceNumbers(pictures[0], pen, room, figures);
        Dimensions(pen, map, wall, numbers, figures);
        BuiltThings.Dimension(pen, pictures[0], plan, numbers, figures);
        foreach (var opening in wall.Parts.SelectMany(part => part.Face.Face.Openings).Distinct())
        {
            numbers.Keep(Pen.BoxAround(Frame.Around(map.Ring(opening.Ring)).Middle, opening.Name, 8, bold: false, upright: false));
        }

        trims.Number(numbers);
        numbers.Draw(wall.Parts.Where(part => !elsewhere.Contains(part.Face.Face.Name)).SelectMany(part => part.Face.Pieces));
    }

    /// <summary>What stands beneath the picture.</summary>
    public static string Words(WallPlan wall)
    {
        var others = wall.Runs.Count == 1 ? $"Where its lines are is said on the sheet of the run {wall.Runs[0]}." : $"The lines to snap are on the sheets of the runs {NameList.Of(wall.Runs)}.";
        return others + " Sizes on pieces are what to cut.";
    }

    /// <summary>What it shows, for a person who cannot see it.</summary>
    public static string Describe(WallPlan wall, int scale)
    {
        var parts = wall.Parts.Select(part => $"{part.Face.Face.Name} with {Figures.Count(part.Face.Pieces.Count, "piece", "pieces")}, {Figures.Number(part.Face.Pieces.Count(piece => piece.Kind != PieceKind.Full))} of them cut");
        return $"{wall.Name} at 1 to {Figures.Number(scale)}, all that is laid on it: {string.Join("; ", parts)}.";
    }

    private static void Dimensions(Pen pen, FaceMap map, WallPlan wall, PieceNumbers numbers, Figures figures)
    {
        var (measured, clear) = (map.Frame(wall.Measured), map.Frame(wall.Bounds));
        numbers.Keep(Measures.Level(pen, measured.X, measured.Right, clear.Bottom + 6, $"bare {figures.Near(wall.Measured.Width)}"));
        numbers.Keep(Measures.Upright(pen, clear.X - 6, measured.Y, measured.Bottom, $"bare {figures.Near(wall.Measured.Height)}"));
    }
}
