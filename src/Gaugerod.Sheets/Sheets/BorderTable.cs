using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Where the first tile of every strip of a border stands.</summary>
internal static class BorderTable
{
    private const string How = "Each strip is laid along its own side, from its first tile towards both ends. At the place given stands the corner of that tile where the two short lines cross in the picture; where its name has no room the tile is solid black.";

    public static void Add(Flow flow, RunPlan run, Figures figures)
    {
        var rows = run.Strips.Select(strip => Row(strip, figures));
        var (head, body) = Table.Of(
            [new("Strip", 50, Bold: true), new($"Up ({figures.Unit})", 55, Bold: true), new($"Across ({figures.Unit})", 40, Bold: true), new("Smallest cut", 24, Right: true), new("Tiles", 16, Right: true)],
            rows, flow.Width, 8.5);
        flow.Add(Block.Together(Block.Heading("First tiles", flow.Width), Block.Words(How, flow.Width, 9, after: 1.2), head), body, head);
        flow.Add(Block.Gap(0.8));
        flow.Add(Block.Words("All from the foot of the left corner, where nothing else is said.", flow.Width, 8, ink: Ink.Quiet, after: 1.5));
    }

    private static IReadOnlyList<string> Row(RunPlan strip, Figures figures) =>
    [
        strip.Faces[0].Face.Name, Place(strip, Axis.Level, figures), Place(strip, Axis.Plumb, figures),
        figures.Narrowest(strip.Best.Score.SmallestCut), Figures.Number(strip.Best.Score.Tiles),
    ];

    /// <summary>A level line's height; a plumb line's distance along the floor, wherever the strip lies.</summary>
    private static string Place(RunPlan strip, Axis axis, Figures figures)
    {
        if (strip.Lines.FirstOrDefault(line => line.Axis == axis) is not { } line) return "as it falls";
        var at = LinePlace.Of(line, strip, figures);
        return axis == Axis.Level && strip.Faces[0].Face.LevelLine is not null ? at.Words : at.Else;
    }
}
