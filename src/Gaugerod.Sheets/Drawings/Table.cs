namespace Gaugerod.Sheets.Drawings;

/// <summary>A column of a table.</summary>
/// <param name="Head">What stands above it.</param>
/// <param name="Share">Its share of the table's width.</param>
/// <param name="Right">Whether its text ends at its right side.</param>
/// <param name="Bold">Whether it is bold.</param>
internal readonly record struct Column(string Head, double Share, bool Right = false, bool Bold = false);

/// <summary>Rows of text under heads; a row is never split, the heads are said again on each page.</summary>
internal static class Table
{
    private const double Pad = 0.9;

    public static (Block Head, List<Block> Rows) Of(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows, double width, double size = 9)
    {
        var shares = columns.Sum(c => c.Share);
        var widths = columns.Select(c => width * c.Share / shares).ToArray();
        var headSize = Math.Min(size, 8);
        var headHeight = columns.Select((c, i) => Pen.ParagraphHeight(c.Head, headSize, bold: true, Inner(widths[i]))).Max() + (2 * Pad);
        var head = new Block(headHeight, (pen, x, y) =>
        {
            pen.Area(new Frame(x, y, width, headHeight - 0.4), Fill.Band);
            Cells(pen, x, y, columns, widths, columns.Select(c => c.Head).ToArray(), headSize, _ => true);
        });
        return (head, [.. rows.Select(cells => Row(columns, widths, cells, width, size))]);
    }

    private static double Inner(double width) => width - (2 * Pad);

    private static Block Row(IReadOnlyList<Column> columns, double[] widths, IReadOnlyList<string> cells, double width, double size)
    {
        var height = cells.Select((c, i) => Pen.ParagraphHeight(c, size, columns[i].Bold, Inner(widths[i]))).Max() + (2 * Pad);
        return new(height, (pen, x, y) =>
        {
            Cells(pen, x, y, columns, widths, cells, size, i => columns[i].Bold);
            pen.Line(x, y + height, x + width, y + height, Stroke.Rule);
        });
    }

    private static void Cells(
        Pen pen, double x, double y, IReadOnlyList<Column> columns, double[] widths, IReadOnlyList<string> cells, double size, Func<int, bool> bold)
    {
        for (var i = 0; i < cells.Count; i++)
        {
            if (!columns[i].Right)
            {
                pen.Paragraph(x + Pad, y + Pad, Inner(widths[i]), cells[i], size, bold(i));
            }
            else
            {
                var lines = Lettering.Wrap(Fractions.Set(cells[i]), size, bold(i), Inner(widths[i]));
                for (var n = 0; n < lines.Count; n++)
                {
                    var baseline = y + Pad + Lettering.Cap(size) + (n * Lettering.Leading(size)) + (0.15 * size * Lettering.Point);
                    pen.Text(x + widths[i] - Pad, baseline, lines[n], size, bold(i), Anchor.End);
                }
            }

            x += widths[i];
        }
    }
}
