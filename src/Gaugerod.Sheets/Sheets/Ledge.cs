using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What a whole course stands on while the cut course below it is not yet there.</summary>
internal static class Ledge
{
    /// <summary>What to do, and the usual caution; null when every run stands on something. The caution is common practice, no source.</summary>
    public static string? Words(RunPlan run)
    {
        var faces = run.Lines.Where(l => l.Axis == Axis.Level && HangingCourse.IsBelow(run, l)).Select(l => l.Face).Distinct(StringComparer.Ordinal).ToArray();
        // A strip's line is its inner side: what lies below it is the strip, not a course to come later.
        if (faces.Length == 0 || run.IsBorder) return null;
        return $"On {List(faces)} the course below a level line is cut. Screw a straight batten along the line, its top edge on it, and set the whole course on that. "
            + "Take it off when the adhesive has set as its instructions say, usually the next day; then cut the course below to what is measured and set it last. "
            + "Before you screw, find out what is behind the wall: pipes, cables. No screw through a waterproofed face: prop the batten from below. "
            + "The instructions of board, membrane and adhesive come first.";
    }

    /// <summary><c>west, north and east</c>.</summary>
    public static string List(IReadOnlyList<string> names) => names.Count == 1 ? names[0] : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";
}
