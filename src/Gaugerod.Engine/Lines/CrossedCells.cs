using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// Finds the tiles of a face that an edge of the field runs through or a hole is drilled in, and how each is cut, without
/// making any piece: quick enough for a tiling that slides. One instance serves one thread: it keeps its working arrays.
/// </summary>
internal sealed class CrossedCells
{
    private readonly FaceFrame _frame;
    private readonly Courses _courses;
    private readonly RingWays _ring;
    private readonly long _mark;
    private readonly FrameEdge[] _edges;
    private readonly Drilled[] _drilled;
    private readonly CellCuts[] _cells;
    private readonly int[] _touched;
    private int _count;
    private long _firstColumn;

    public CrossedCells(FaceFrame frame, Courses courses, Tape tape)
    {
        (_frame, _courses, _mark) = (frame, courses, tape.Mark.Steps);
        _ring = new(frame.Face, frame.Lay);
        _edges = [.. frame.Sides, .. frame.Levels, .. frame.Raking];
        Array.Sort(_edges, (one, other) => one.Edge.CompareTo(other.Edge));
        var rings = FieldRings.Of(frame.Face);
        _drilled = [.. rings.All.Where(ring => rings.IsDrilled(ring[0].Tag)).Select(ring => new Drilled(ring, frame.Lay))];
        _cells = new CellCuts[((frame.MostAlong - frame.LeastAlong) / courses.Period) + 3];
        _touched = new int[_cells.Length];
    }

    /// <summary>The cut tiles, each once.</summary>
    /// <param name="u">Where a tile of course 0 begins, along, on the face.</param>
    /// <param name="v">Where course 0 begins, across, on the face.</param>
    /// <param name="cells">Takes the tiles in place of what it had.</param>
    public void Find(long u, long v, CutCells cells)
    {
        cells.Clear();
        for (var k = Grid.FloorDiv(_frame.LeastAcross - v - _courses.Depth, _courses.Rise) + 1; v + (k * _courses.Rise) < _frame.MostAcross; k++)
        {
            var (start, bottom) = (u + _courses.Offset(k), v + (k * _courses.Rise));
            _firstColumn = Grid.FloorDiv(_frame.LeastAlong - start - _courses.Length, _courses.Period) + 1;
            foreach (ref readonly var edge in _edges.AsSpan()) Cross(edge, bottom, start);
            foreach (var hole in _drilled) Drill(hole, bottom, start);
            for (var i = 0; i < _count; i++)
            {
                var column = _touched[i];
                var left = start + ((_firstColumn + column) * _courses.Period);
                var kind = _cells[column].Kind(new(left, bottom, left + _courses.Length, bottom + _courses.Depth, _frame.Lay), _edges, _ring, _mark);
                if (_frame.Lay == Lay.Level) cells.Add(kind, left, bottom, 0);
                else cells.Add(kind, bottom, left, 0);
                _cells[column] = default;
            }

            _count = 0;
        }
    }

    private void Cross(in FrameEdge edge, long bottom, long start)
    {
        var top = bottom + _courses.Depth;
        long from, to;
        if (edge.Class == EdgeClass.Side)
        {
            var (low, high) = (Math.Max(bottom, edge.LeastAcross), Math.Min(top, edge.MostAcross));
            if (low >= high) return;
            var (one, other) = (edge.AlongAt(low), edge.AlongAt(high));
            (from, to) = (Math.Min(one, other), Math.Max(one, other));
        }
        else
        {
            if (edge.MostAcross <= bottom || edge.LeastAcross >= top) return;
            (from, to) = (edge.LeastAlong, edge.MostAlong);
            if (edge.B0 != edge.B1)
            {
                var (one, other) = (edge.AlongAtAcross(Math.Max(bottom, edge.LeastAcross)), edge.AlongAtAcross(Math.Min(top, edge.MostAcross)));
                (from, to) = (Math.Min(one, other), Math.Max(one, other));
            }
        }

        // A side that just touches a tile's own side does not run through it.
        var column = Grid.FloorDiv(from - start - _courses.Length, _courses.Period) + 1;
        for (var left = start + (column * _courses.Period); left < to; left += _courses.Period, column++)
        {
            ref var cell = ref Touch(column);
            cell.Add(edge.Edge);
        }
    }

    private void Drill(in Drilled hole, long bottom, long start)
    {
        var top = bottom + _courses.Depth;
        if (hole.MostAcross <= bottom || hole.LeastAcross >= top) return;
        var column = Grid.FloorDiv(hole.LeastAlong - start - _courses.Length, _courses.Period) + 1;
        for (var left = start + (column * _courses.Period); left < hole.MostAlong; left += _courses.Period, column++)
        {
            if (hole.RunsThrough(left, bottom, left + _courses.Length, top)) Touch(column).Drilled = true;
        }
    }

    private ref CellCuts Touch(long column)
    {
        ref var cell = ref _cells[column - _firstColumn];
        if (cell.Count == 0 && !cell.Drilled) _touched[_count++] = (int)(column - _firstColumn);
        return ref cell;
    }
}
