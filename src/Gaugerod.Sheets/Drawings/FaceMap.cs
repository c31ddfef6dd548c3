using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Drawings;

/// <summary>
/// The one place where lengths leave the grid of steps and become millimetres on paper: so many times smaller, the face's
/// origin at a spot of the paper, up the wall being up the sheet.
/// </summary>
/// <param name="Scale">How many times smaller: 10 for 1:10. More than zero.</param>
/// <param name="Origin">Where the face's (0, 0) lies on the paper.</param>
public readonly record struct FaceMap(int Scale, Spot Origin)
{
    /// <summary>The scales that sheets are drawn at, the largest picture first.</summary>
    public static Sequence<int> Ladder { get; } = [1, 2, 5, 8, 10, 12, 15, 16, 20, 24, 25, 30, 40, 50, 60, 75, 100, 150, 200];

    /// <summary>A length on the paper, in millimetres.</summary>
    public double Across(Length length) => OnPaper(length, Scale);

    /// <summary>A place on the paper.</summary>
    public Spot At(Point point) => new(Origin.X + Across(point.X), Origin.Y - Across(point.Y));

    /// <summary>A ring on the paper.</summary>
    public Sequence<Spot> Ring(Ring ring)
    {
        ArgumentNullException.ThrowIfNull(ring);
        var map = this;
        return ring.Points.Select(map.At).ToSequence();
    }

    /// <summary>An upright rectangle on the paper.</summary>
    public Frame Frame(Box box)
    {
        var corner = At(new(box.Left, box.Top));
        return new(corner.X, corner.Y, Across(box.Width), Across(box.Height));
    }

    /// <summary>The same scale with the origin further right on the face.</summary>
    public FaceMap Moved(Length right, Length up) => new(Scale, At(new(right, up)));

    /// <summary>The first scale of the ladder at which a size fits the paper given; the smallest there is when none does.</summary>
    public static int ScaleFor(Length width, Length height, double paperWidth, double paperHeight, int from = 2)
    {
        foreach (var scale in Ladder)
        {
            if (scale >= from && OnPaper(width, scale) <= paperWidth && OnPaper(height, scale) <= paperHeight) return scale;
        }

        return Ladder[^1];
    }

    internal static double OnPaper(Length length, int scale) => length.Steps / (double)Length.StepsPerMillimetre / scale;
}
