using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The gauge rods' marks, as running distances from a named line: the plumb rod read from the top down, the level rod from the left.</summary>
internal static class RodSheets
{
    private const int Across = 4;
    private const double Row = 6.2;

    public static void Add(SheetBook book, RunPlan run)
    {
        if (run.Rods.Count == 0) return;
        var flow = book.Flow($"Gauge rods: {run.Request.Name}", $"Marks of the gauge rods of the run {run.Request.Name}, as running distances from the starting line.", Across, 6);
        for (var i = 0; i < run.Rods.Count; i++)
        {
            var rod = run.Rods[i];
            if (i > 0 && run.Rods.Count <= Across) flow.Break();
            var title = $"{(rod.Axis == Axis.Level ? "Level" : "Plumb")} rod, {rod.Face}";
            var head = Block.Together(
                Block.Words(title, flow.Width, 11, bold: true, after: 0.4),
                Block.Words(From(rod, run, book.Figures), flow.Width, 8.5, ink: Ink.Quiet, after: 1.4));
            flow.Add(head, Rows(rod, flow.Width, book.Figures), Block.Words(title + ", continued", flow.Width, 9, bold: true, after: 1.4), whole: true);
            flow.Add(Block.Gap(6));
        }
    }

    /// <summary>What the rod is held to, where that is, and what its marks are.</summary>
    private static string From(Rod rod, RunPlan run, Figures figures)
    {
        var line = LinePlace.Of(new(rod.Axis == Axis.Level ? Axis.Plumb : Axis.Level, rod.Face, rod.Start, ""), run, figures).Words;
        var name = rod.From.Length > 0 ? char.ToLowerInvariant(rod.From[0]) + rod.From[1..] : "the line";
        var side = rod.Axis == Axis.Level ? "left" : "lower";
        // A pattern's rod says itself what its marks are.
        var marks = name.Contains("each mark", StringComparison.Ordinal) ? "" : $" Each mark is the {side} side of a tile.";
        return $"From {name}: {line}.{marks}";
    }

    private static List<Block> Rows(Rod rod, double width, Figures figures)
    {
        var marks = rod.Marks.Append(Length.Zero).Distinct().OrderBy(m => rod.Axis == Axis.Level ? m.Steps : -m.Steps).ToArray();
        var isMark = rod.Marks.ToHashSet();
        return [.. marks.Select(mark => new Block(Row, (pen, x, y) => Mark(pen, rod.Axis, mark, isMark.Contains(mark), new(x, y, width, Row), figures)))];
    }

    private static void Mark(Pen pen, Axis axis, Length mark, bool tile, Frame row, Figures figures)
    {
        pen.Line(row.X, row.Y, row.X, row.Bottom, Stroke.Outline);
        pen.Line(row.X + 5, row.Y, row.X + 5, row.Bottom, Stroke.Outline);
        var y = row.Y + (row.Height / 2);
        var line = mark == Length.Zero;
        pen.Line(row.X, y, row.X + (line ? 8 : 5), y, line ? Stroke.SnapLine : Stroke.Outline);
        if (line)
        {
            pen.Text(row.X + 9, y + 1.3, tile ? "the line, and a tile" : "the line, no tile", 9, bold: true, ink: Ink.SnapLine);
            return;
        }

        pen.Text(row.X + 25, y + 1.5, figures.Near(mark.Abs()), 11, bold: true, Anchor.End);
        pen.Text(row.X + 26.5, y + 1.4, (axis, mark.IsNegative) switch { (Axis.Plumb, false) => "up", (Axis.Plumb, true) => "down", (_, false) => "right", _ => "left" }, 8, ink: Ink.Quiet);
    }
}
