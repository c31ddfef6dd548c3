using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>One stretch of a fold across a floor.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Line">Which of the floor's own folds it is of, counted from zero; below zero for one from the drain.</param>
internal readonly record struct Fold(Point From, Point To, int Line)
{
    public const int Drains = -1;
}

/// <summary>
/// Finds where the folds that a job gives run across its floor. A fold ends at an edge or beyond it, at an opening, a drain or another
/// fold; one that does not, that lies along an edge or on another, is refused: nobody cuts along it.
/// </summary>
internal sealed class FoldLines
{
    // A tenth of a millimetre: what lies nearer to a line cannot be told from it.
    private const double Hair = 320;

    private readonly FinishedFace _whole;
    private readonly string _path;
    private readonly Remarks _remarks;
    private readonly List<Fold> _folds;
    private readonly double _mark;

    private FoldLines(FinishedFace whole, IEnumerable<Fold> drains, string path, Remarks remarks)
    {
        (_whole, _path, _remarks, _folds) = (whole, path, remarks, [.. drains]);
        // Ends are read to the tape.
        _mark = remarks.Tape.Mark.Steps;
    }

    /// <summary>The stretches of all folds, those from the drain first.</summary>
    public static IReadOnlyList<Fold> Of(FinishedFace whole, Sequence<FoldLine> lines, IReadOnlyList<Fold> drains, string path, Remarks remarks)
    {
        var folds = new FoldLines(whole, drains, path, remarks);
        for (var i = 0; i < lines.Count; i++) folds.Cross(lines[i], i);
        folds.RefuseDoubles();
        folds.EndAtSomething();
        return folds._folds;
    }

    private static string Called(int line) => line < 0 ? "a fold from the drain" : string.Create(CultureInfo.InvariantCulture, $"fold {line + 1}");

    private string PathOf(int line) => string.Create(CultureInfo.InvariantCulture, $"{_path}.falls.lines[{line}]");

    private string Say(Point place) => DrainChecks.Say(place, _remarks);

    /// <summary>Adds the stretches of a fold that lie on the floor.</summary>
    private void Cross(FoldLine line, int index)
    {
        var (points, length) = (_whole.Outline.Points, Nearby.Distance(Nearby.Of(line.From), Nearby.Of(line.To)));
        var parts = new List<double> { 0, 1 };
        for (var i = 0; i < points.Count; i++)
        {
            if (Hit(line, points[i], points[(i + 1) % points.Count]) is { } at && at is > 0 and < 1) parts.Add(at);
        }

        parts.Sort();
        var (before, along) = (_folds.Count, (string?)null);
        for (var i = 0; i + 1 < parts.Count; i++)
        {
            if ((parts[i + 1] - parts[i]) * length <= Hair) continue;
            var middle = At(line, (parts[i] + parts[i + 1]) / 2);
            var (off, side) = Nearby.Off(_whole.Outline, middle);
            if (off <= Hair) along ??= _whole.OutlineNames[side];
            else if (RingChecks.Locate(_whole.Outline, middle) == Whereabouts.Inside) Add(new(At(line, parts[i]), At(line, parts[i + 1]), index), before);
        }

        if (_folds.Count > before) return;
        var found = along is not null ? $"{Called(index)}, which runs along the edge \"{along}\"" : $"{Called(index)}, which nowhere crosses the floor \"{_whole.Name}\"";
        _remarks.Refuse(PathOf(index), found, "a fold across the floor, with tile to both sides of it", along is not null ? "leave it out: at an edge nothing bends" : "places on the floor, or leave it out");
    }

    /// <summary>Stretches that meet at a corner of the outline are one.</summary>
    private void Add(Fold fold, int before)
    {
        if (_folds.Count > before && _folds[^1].To == fold.From) _folds[^1] = _folds[^1] with { To = fold.To };
        else _folds.Add(fold);
    }

    private void RefuseDoubles()
    {
        for (var j = 0; j < _folds.Count; j++)
        {
            for (var i = 0; i < j; i++)
            {
                var (one, other) = (_folds[i], _folds[j]);
                if (other.Line < 0 || one.Line == other.Line) continue;
                var (from, to) = (On(other, one.From), On(other, one.To));
                if (Nearby.Distance(Nearby.Of(from), Nearby.Of(to)) <= _mark || Nearby.Off(one.From, one.To, from) > Hair || Nearby.Off(one.From, one.To, to) > Hair) continue;
                var within = Nearby.Off(one.From, one.To, other.From) <= Hair && Nearby.Off(one.From, one.To, other.To) <= Hair;
                _remarks.Refuse(
                    PathOf(other.Line), $"{Called(other.Line)}, which lies on {Called(one.Line)} from {Say(from)} to {Say(to)}", "each fold once",
                    within ? $"leave {Called(other.Line)} out" : $"end {Called(other.Line)} where {Called(one.Line)} begins");
                break;
            }
        }
    }

    /// <summary>Brings the ends that meet another fold onto it, runs those at a drain to its middle, and refuses the others.</summary>
    private void EndAtSomething()
    {
        var given = _folds.Count;
        for (var k = 0; k < given; k++)
        {
            if (_folds[k].Line < 0) continue;
            if (End(k, _folds[k].From, _folds[k].To) is { } from) _folds[k] = _folds[k] with { From = from };
            if (End(k, _folds[k].To, _folds[k].From) is { } to) _folds[k] = _folds[k] with { To = to };
        }
    }

    private Point? End(int index, Point end, Point other)
    {
        var fold = _folds[index];
        if (Nearby.Off(_whole.Outline, end).Distance <= _mark) return null;
        if (_whole.Openings.Any(opening => RingChecks.Locate(opening.Ring, end) != Whereabouts.Outside || Nearby.Off(opening.Ring, end).Distance <= _mark)) return null;
        if (_whole.Holes.FirstOrDefault(hole => Nearby.Distance(Nearby.Of(hole.Centre), Nearby.Of(end)) <= (hole.Diameter.Steps / 2.0) + _mark) is { } drain)
        {
            if (drain.Centre != end) _folds.Add(new(end, drain.Centre, fold.Line));
            return null;
        }

        foreach (var met in _folds.Where((_, i) => i != index))
        {
            if (Nearby.Off(met.From, met.To, end) <= _mark) return On(met, end);
        }

        var nearest = Stops(index, other, end).OrderBy(stop => Nearby.Distance(Nearby.Of(stop), Nearby.Of(end))).Select(stop => (Point?)stop).FirstOrDefault();
        _remarks.Refuse(
            PathOf(fold.Line), $"{Called(fold.Line)}, which stops inside the floor at {Say(end)}", "a fold that runs to an edge, to another fold or to a drain: a plane bends along the whole of it",
            nearest is { } there ? $"{Say(there)} in place of {Say(end)}" : null);
        return null;
    }

    /// <summary>Where a fold, or what it would be if it ran on, meets an edge, an opening or another fold.</summary>
    private IEnumerable<Point> Stops(int index, Point from, Point end)
    {
        var line = new FoldLine(from, end);
        var rings = _whole.Openings.Select(opening => opening.Ring).Prepend(_whole.Outline);
        var sides = rings.SelectMany(ring => ring.Points.Select((point, i) => (point, ring.Points[(i + 1) % ring.Points.Count])));
        var folds = _folds.Where((fold, i) => i != index && fold.Line != _folds[index].Line).Select(fold => (fold.From, fold.To));
        foreach (var (a, b) in sides.Concat(folds))
        {
            if (Hit(line, a, b) is not { } at || at <= 0) continue;
            var stop = At(line, at);
            if (Nearby.Distance(Nearby.Of(stop), Nearby.Of(from)) > _mark) yield return stop;
        }
    }

    private static Point On(Fold fold, Point place) => Nearby.Of(Nearby.On(Nearby.Of(fold.From), Nearby.Of(fold.To), Nearby.Of(place)));

    private static Point At(FoldLine line, double part) => part switch
    {
        0 => line.From,
        1 => line.To,
        _ => line.From.Moved(Grid.Nearest((line.To.X - line.From.X).Steps * part), Grid.Nearest((line.To.Y - line.From.Y).Steps * part)),
    };

    /// <summary>At which part of a line, or of what it would be if it ran on, a side crosses it; null where it does not.</summary>
    private static double? Hit(FoldLine line, Point a, Point b)
    {
        var across = Segments.Cross(line.From, line.To, a, b);
        if (across == 0) return null;
        var on = (double)Segments.Cross(line.From, a, line.From, line.To) / (double)across;
        return on is < 0 or > 1 ? null : (double)Segments.Cross(line.From, a, a, b) / (double)across;
    }
}
