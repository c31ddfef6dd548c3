using Gaugerod.Engine.Patterns;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A line that is neither level nor plumb, in words: it is snapped between two places that are measured.</summary>
internal static class TurnedWords
{
    /// <summary>Its row in the table of lines.</summary>
    public static IReadOnlyList<string> Row(TurnedLine line, Figures figures) => [line.Face, "turned", Where(line, figures), "", line.Why];

    /// <summary>From where to where: <c>from 12 right, 0 up to 48 right, 36 up</c>.</summary>
    public static string Where(TurnedLine line, Figures figures) => $"from {Place(line.From, figures)} to {Place(line.To, figures)}";

    private static string Place(Point point, Figures figures) => $"{figures.Near(point.X)} right, {figures.Near(point.Y)} up";
}
