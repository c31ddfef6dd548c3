using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>
/// Where a line to snap is measured from on the wall. The floor's corner is often gone under a tray or a screed, and a corner
/// may lean: so heights are said from the struck level line where there is one, and widths at the height they are measured at.
/// </summary>
/// <param name="Short">The figure and its direction: <c>42 below</c>.</param>
/// <param name="From">What it is measured from.</param>
/// <param name="Else">The same place from the foot of the left corner.</param>
internal sealed record LinePlace(string Short, string From, string Else)
{
    public string Words => $"{Short} {From}";

    public static LinePlace Of(SnapLine line, RunPlan run, Figures figures)
    {
        var face = LineFace.Of(run, line.Face);
        return line.Axis == Axis.Level ? Level(face, line.At, figures) : Plumb(face, line.At, run, figures);
    }

    /// <summary>How far a height lies above or below the struck level line; null where none was struck.</summary>
    public static string? FromStruck(FinishedFace face, Length at, Figures figures)
    {
        if (face.LevelLine is not { } struck) return null;
        var off = at - struck;
        return figures.Tape.Nearest(off) == Length.Zero ? "on" : $"{figures.Near(off.Abs())} {(off.IsNegative ? "below" : "above")}";
    }

    private static LinePlace Level(FinishedFace face, Length at, Figures figures)
    {
        var up = figures.Near(at);
        return FromStruck(face, at, figures) is { } from
            ? new(from, "the struck level line", $"{up} up")
            : new(up, "up from the foot of the left corner", $"{up} up");
    }

    private static LinePlace Plumb(FinishedFace face, Length at, RunPlan run, Figures figures)
    {
        var snapped = run.Lines.FirstOrDefault(l => l.Axis == Axis.Level && string.Equals(l.Face, face.Name, StringComparison.Ordinal));
        if ((face.LevelLine ?? snapped?.At) is not { } height || LeftAt(face.Outline, height) is not { } left) return new(figures.Near(at), "from left", $"{figures.Near(at)} right");
        var (here, foot) = (figures.Near(at - left), figures.Near(at));
        return new(here, $"from left, on the {(face.LevelLine is null ? "snapped" : "struck")} level line", $"{foot} right");
    }

    /// <summary>Where a ring's leftmost side crosses a height.</summary>
    private static Length? LeftAt(Ring ring, Length height)
    {
        Length? left = null;
        for (var i = 0; i < ring.Points.Count; i++)
        {
            var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
            if (a.Y == b.Y || height < Length.Min(a.Y, b.Y) || height > Length.Max(a.Y, b.Y)) continue;
            var x = Grid.Between(a.Y, a.X, b.Y, b.X, height);
            if (left is not { } known || x < known) left = x;
        }

        return left;
    }
}
