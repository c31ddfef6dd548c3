namespace Gaugerod.Sheets.Drawings;

/// <summary>Something that is not split over two columns.</summary>
/// <param name="Height">How high it is, in millimetres.</param>
/// <param name="Draw">Draws it from its upper left corner.</param>
internal sealed record Block(double Height, Action<Pen, double, double> Draw)
{
    /// <summary>Space.</summary>
    public static Block Gap(double height) => new(height, (_, _, _) => { });

    /// <summary>Running text.</summary>
    public static Block Words(string words, double width, double size = 9.5, bool bold = false, Ink ink = Ink.Body, double after = 1.2) =>
        new(Pen.ParagraphHeight(words, size, bold, width) + after, (pen, x, y) => pen.Paragraph(x, y, width, words, size, bold, ink));

    /// <summary>A heading with a thin line beneath it.</summary>
    public static Block Heading(string words, double width) => new(8.2, (pen, x, y) =>
    {
        pen.Text(x, y + 4.6, words, 12, bold: true);
        pen.Line(x, y + 6.4, x + width, y + 6.4, Stroke.Outline);
    });

    /// <summary>One above the other, kept together.</summary>
    public static Block Together(params ReadOnlySpan<Block> blocks)
    {
        var all = blocks.ToArray();
        return new(all.Sum(b => b.Height), (pen, x, y) =>
        {
            foreach (var block in all)
            {
                block.Draw(pen, x, y);
                y += block.Height;
            }
        });
    }
}

/// <summary>Where a flow puts its blocks: a pen and the columns of one page.</summary>
internal sealed record Columns(Pen Pen, Frame Area, int Count, double Gap)
{
    /// <summary>Whether it is what other words leave of a page: what is too high for it may fit the next page.</summary>
    public bool IsRest { get; init; }

    public double Width => (Area.Width - (Gap * (Count - 1))) / Count;

    public double Left(int column) => Area.X + (column * (Width + Gap));
}

/// <summary>Fills columns with blocks, then the next page's columns.</summary>
internal sealed class Flow(Columns first, Func<Columns> next)
{
    private Columns _columns = first;
    private int _column;
    private double _y = first.Area.Y;

    public double Width => _columns.Width;

    private bool Fits(double height) => _y + height <= _columns.Area.Bottom + 0.001;

    /// <summary>Whether going on elsewhere gives no more room than there is here.</summary>
    private bool AtTop => !_columns.IsRest && _y <= _columns.Area.Y;

    /// <summary>Puts a block where it fits whole.</summary>
    public void Add(Block block)
    {
        BreakUntil(block.Height);
        Put(block);
    }

    /// <summary>
    /// Puts rows under a head that is said again wherever they go on; the head never stands alone. Asked to keep them
    /// whole, it goes to the next column first when they fit there and not here.
    /// </summary>
    public void Add(Block head, IReadOnlyList<Block> rows, Block? headAgain = null, bool whole = false)
    {
        if (rows.Count == 0) return;
        var all = head.Height + rows.Sum(r => r.Height);
        if (whole && !AtTop && !Fits(all) && all <= _columns.Area.Height) Break();
        BreakUntil(head.Height + rows[0].Height);
        Put(head);
        foreach (var row in rows)
        {
            if (!Fits(row.Height))
            {
                Break();
                Put(headAgain ?? head);
            }

            Put(row);
        }
    }

    /// <summary>Goes on in the next column, or on the next page.</summary>
    public void Break()
    {
        _column++;
        if (_column == _columns.Count)
        {
            _columns = next();
            _column = 0;
        }

        _y = _columns.Area.Y;
    }

    /// <summary>What is left of the page below the last block, in columns of its own.</summary>
    public Columns Rest(int count, double gap) => new(_columns.Pen, _columns.Area with { Y = _y, Height = Math.Max(0, _columns.Area.Bottom - _y) }, count, gap) { IsRest = true };

    private void BreakUntil(double height)
    {
        while (!Fits(height) && !AtTop) Break();
    }

    private void Put(Block block)
    {
        block.Draw(_columns.Pen, _columns.Left(_column), _y);
        _y += block.Height;
    }
}
