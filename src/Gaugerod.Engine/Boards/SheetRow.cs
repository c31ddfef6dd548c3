using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>From where to where a row of sheets reaches, in steps up.</summary>
internal readonly record struct Band(long Bottom, long Top)
{
    public long Height => Top - Bottom;
}

/// <summary>What comes of a stretch of a row between two seams.</summary>
/// <param name="Fits">Whether every piece comes out of a sheet.</param>
/// <param name="Cost">What it costs.</param>
internal readonly record struct Cell(bool Fits, SeamCost Cost);

/// <summary>A sheet as it lies where studs run up.</summary>
/// <param name="Across">How far it reaches across the studs.</param>
/// <param name="Up">How far it reaches along them.</param>
/// <param name="Gap">The gap between two.</param>
internal readonly record struct SheetLies(long Across, long Up, long Gap)
{
    /// <summary>How far left of a seam's middle the sheet before it ends.</summary>
    public long Before => Gap / 2;

    /// <summary>How far right of it the next one begins.</summary>
    public long After => Gap - Before;
}

/// <summary>One row of sheets: what may become of it between any two of its seams.</summary>
internal sealed class SheetRow
{
    private readonly SheetLies _sheet;
    private readonly long[] _at;
    private readonly Dictionary<(int, int), Cell> _cells = [];
    private readonly IReadOnlyList<TaggedCorner[]> _rings;

    // From where to where sides of the area run that are no part of the row's own level sides.
    private readonly List<Stretch> _sides = [];

    /// <param name="field">What board covers.</param>
    /// <param name="band">Where the row lies.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="at">Where seams may stand, between a place left of everything and one right of it.</param>
    public SheetRow(BoardField field, Band band, SheetLies sheet, long[] at)
    {
        (_sheet, _at, Band) = (sheet, at, band);
        _rings = BoxClip.Clip(field.Rings, Box(field.Bounds.Left.Steps - 1, field.Bounds.Right.Steps + 1));
        foreach (var ring in _rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[i + 1 == ring.Length ? 0 : i + 1]);
                if (a.Y != b.Y || (a.Y != band.Bottom && a.Y != band.Top)) _sides.Add(new(Math.Min(a.X, b.X), Math.Max(a.X, b.X)));
            }
        }
    }

    public Band Band { get; }

    /// <summary>Where the line of a seam runs through board.</summary>
    public List<Stretch> Seam(int place) => Chords.Of(_rings, plumb: true, _at[place], Band.Bottom, Band.Top);

    /// <summary>What comes of the row from one seam to another, each given by its place.</summary>
    public Cell Between(int from, int to)
    {
        if (_cells.TryGetValue((from, to), out var known)) return known;
        var cell = new Cell(true, default);
        var (left, right) = Ends(from, to);
        if (_sides.Exists(side => side.From < right && side.To > left))
        {
            foreach (var ring in Rings(from, to))
            {
                // A hole takes nothing from the box around its piece.
                if (!IsOutline(ring)) continue;
                var box = Plane.Shapes.Box.Around(ring.Select(corner => corner.Point));
                cell = With(cell, box.Width.Steps, box.Height.Steps);
            }
        }
        else if (right > left && Chords.Of(_rings, plumb: true, (left + right) / 2, Band.Bottom, Band.Top).Count > 0)
        {
            // No side comes between: all of it is board.
            cell = With(cell, right - left, Band.Height);
        }

        return _cells[(from, to)] = cell;
    }

    private Cell With(Cell cell, long width, long height) => new(
        cell.Fits && width <= _sheet.Across && height <= _sheet.Up,
        cell.Cost + new SeamCost(0, 0, Math.Min(width, height) < BoardLimits.Narrow ? 1 : 0, SeamCost.Sheet / (Like(_sheet.Across, width) * Like(_sheet.Up, height)), 1, 0, 0));

    private (long Left, long Right) Ends(int from, int to) => (_at[from] + (from == 0 ? 0 : _sheet.After), _at[to] - (to == _at.Length - 1 ? 0 : _sheet.Before));

    /// <summary>The pieces from one seam to another: outlines counter-clockwise, holes clockwise.</summary>
    public IReadOnlyList<TaggedCorner[]> Rings(int from, int to)
    {
        var (left, right) = Ends(from, to);
        return right > left ? BoxClip.Clip(_rings, Box(left, right)) : [];
    }

    public static bool IsOutline(TaggedCorner[] ring)
    {
        Int128 twice = 0;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[i + 1 == ring.Length ? 0 : i + 1]);
            twice += Math.BigMul(a.X, b.Y) - Math.BigMul(b.X, a.Y);
        }

        return twice > 0;
    }

    /// <summary>How many alike come out of a side.</summary>
    private static long Like(long side, long part) => Math.Clamp(side / Math.Max(part, 1), 1, 10);

    private Box Box(long left, long right) => new(Length.FromSteps(left), Length.FromSteps(Band.Bottom), Length.FromSteps(right), Length.FromSteps(Band.Top));
}
