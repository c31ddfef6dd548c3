using Gaugerod.Engine.Takeoffs;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Which box each tile is taken from, course by course, as it is set.</summary>
internal static class BoxSheets
{
    private const string Before =
        "Before any is opened: read lot and caliber on every box; all must be the same. Number the boxes. Lay some courses out dry, step back and look before you set: this list spreads small differences of shade, it makes no wrong lot right.";

    private const string Key =
        "Each number is the box of one tile, from the left; in an upright course from the foot up. In brackets: an offcut of a tile that was taken before. A bar: an opening interrupts the course.";

    // So many letters of a course stand on one line of half a sheet.
    private const int Narrow = 36;

    public static void Add(SheetBook book, BoxPlan boxes)
    {
        var faces = boxes.Courses.GroupBy(course => course.Face, StringComparer.Ordinal).Select(face => (Name: face.Key, Rows: face.Select(Row).ToList())).ToList();
        var narrow = faces.TrueForAll(face => face.Rows.TrueForAll(row => row[1].Length <= Narrow));
        var flow = book.Flow($"Boxes: {boxes.Product}", $"The box that each tile of {boxes.Product} is taken from, for each course of each face in setting order.", narrow ? 2 : 1);
        var head = Block.Together(
            Block.Heading("Out of which box", flow.Width), Block.Words(Before, flow.Width, bold: true, after: 1.5),
            Block.Words(Opened(boxes), flow.Width, after: 1.5), Block.Words(Key, flow.Width, ink: Ink.Quiet, after: 2));
        flow.Add(head);
        foreach (var (name, lines) in faces)
        {
            var (columns, rows) = Table.Of([new("Course", 14, Bold: true), new("Boxes", flow.Width - 14)], lines, flow.Width, 10);
            flow.Add(Block.Together(Block.Heading(name, flow.Width), columns), rows, Block.Together(Block.Heading(name + ", continued", flow.Width), columns));
            flow.Add(Block.Gap(3));
        }
    }

    private static string Opened(BoxPlan boxes)
    {
        var groups = string.Join("; then ", boxes.Groups.Select(group => group.First == group.Last ? Figures.Number(group.First) : $"{Figures.Number(group.First)} to {Figures.Number(group.Last)}"));
        var left = boxes.Left == 0 ? "" : $" {Figures.Count(boxes.Left, "tile is", "tiles are")} left over in the last of them for breakage and spares: for a broken tile take one of those, and go on with the list.";
        return $"Open together: {groups}.{left} {Figures.Number(boxes.Alike)} of {Figures.Count(boxes.Joints, "joint lies", "joints lie")} between tiles of one box.";
    }

    private static IReadOnlyList<string> Row(BoxCourse course) =>
    [
        Figures.Number(course.Course),
        string.Join(" | ", course.Stretches.Select(stretch => string.Join(' ', stretch.Select(piece => piece.IsOffcut ? $"({Figures.Number(piece.Box)})" : Figures.Number(piece.Box))))),
    ];
}
