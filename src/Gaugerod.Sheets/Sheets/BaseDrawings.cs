using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What goes under a face's tile as pictures by themselves, for a screen: the same as on its sheets.</summary>
public static class BaseDrawings
{
    // As wide and high as leaves letters large enough to read on a phone.
    private const double Wide = 86, High = 96, Margin = 9;

    /// <summary>The highs and lows of a face that was read; null where it is not known how flat it is.</summary>
    /// <param name="view">The face.</param>
    /// <param name="job">The job.</param>
    public static Drawing? Flat(BaseView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        if (view.Flat is not { } flat) return null;
        var figures = new Figures(job.Tape);
        var picture = new FlatPicture(flat, view.Outline, view.Openings, job.Faces.First(face => string.Equals(face.Name, flat.Face, StringComparison.Ordinal)).Flatness, figures);
        var step = figures.FineWithUnit(picture.Step);
        var words = flat.Spots.Count == 0
            ? $"Gaps under a straightedge in {figures.Units}, where it was laid. Blue: where it shows the most."
            : $"Off the plane that fits best, in {figures.Units}. ▲ and slanting hatch: high by {step} or more; ▽ and broken hatch: low; a line every {step}. Blue: where a straightedge shows the most, on its two ringed rests.";
        return Around(view.Outline, 2, $"Highs and lows of {flat.Face}", words, picture.Draw);
    }

    /// <summary>A bed from above, with the height over the drain at each stake; null without a bed.</summary>
    /// <param name="view">The face.</param>
    /// <param name="job">The job.</param>
    public static Drawing? Bed(BaseView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        if (view.Bed is not { } bed) return null;
        var figures = new Figures(job.Tape);
        return Around(view.Outline, 2, $"Bed of {bed.Face}", $"Over {bed.Low} at each stake, in {figures.Units}, before any tile, and how steeply it falls along each line.", (pen, map) => BedPicture.Plan(pen, bed, view.Outline, view.Openings, map, figures));
    }

    /// <summary>A section along the shortest and the longest way to the drain; null without a bed.</summary>
    /// <param name="view">The face.</param>
    /// <param name="job">The job.</param>
    public static Drawing? BedSection(BaseView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        if (view.Bed is not { } bed) return null;
        var (figures, pen) = (new Figures(job.Tape), new Pen());
        BedPicture.Cut(pen, bed, figures, new(12, 0, Wide - 26, 40));
        return new(Wide, 40, $"Section of the bed of {bed.Face}", $"{BedPicture.CutTitle(bed)}: {figures.NearWithUnit(bed.Least)} thick at {bed.Low}, {figures.NearWithUnit(bed.Greatest)} at the most.", pen.Marks);
    }

    private static Drawing Around(Ring outline, int from, string title, string description, Action<Pen, FaceMap> draw)
    {
        var bounds = outline.Bounds;
        var scale = FaceMap.ScaleFor(bounds.Width, bounds.Height, Wide, High, from);
        var (width, height) = (FaceMap.OnPaper(bounds.Width, scale), FaceMap.OnPaper(bounds.Height, scale));
        var pen = new Pen();
        draw(pen, new(scale, new(Margin - FaceMap.OnPaper(bounds.Left, scale), Margin + FaceMap.OnPaper(bounds.Top, scale))));
        return new(width + (2 * Margin), height + (2 * Margin), title, description, pen.Marks);
    }
}
