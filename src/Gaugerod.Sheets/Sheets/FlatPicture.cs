using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A face with its highs and lows: shaded and hatched, lines of one height, each reading with a mark and a figure, and where each straightedge is worst.</summary>
internal sealed class FlatPicture(FlatFace flat, Ring outline, IEnumerable<Ring> openings, FlatReadings? read, Figures figures)
{
    private const double Size = 8, MarkSize = 1.1;

    private readonly List<Frame> _taken = [];

    /// <summary>How many readings have no figure, for it would cover another.</summary>
    public int Bare { get; private set; }

    /// <summary>How far the lines of one height are apart, in height.</summary>
    public Length Step { get; } = StepOf(flat, figures.Tape);

    public void Draw(Pen pen, FaceMap map)
    {
        var edge = map.Ring(outline);
        pen.Area(edge, Fill.Paper, name: flat.Face);
        Shade(pen, map, Fill.High, Step);
        Shade(pen, map, Fill.Low, -Step);
        Lines(pen, map);
        foreach (var (from, to) in Relief.Rim(flat)) pen.Line(map.At(from), map.At(to), Stroke.Rule);
        pen.Area(edge, Fill.None, Stroke.Outline);
        foreach (var opening in openings) pen.Area(map.Ring(opening), Fill.Opening, Stroke.FixtureEdge);
        Worst(pen, map);
        Readings(pen, map, Frame.Around(edge));
        foreach (var laid in read?.Laid ?? []) Laid(pen, map, laid, Frame.Around(edge));
    }

    /// <summary>A high is a filled mark that points up, a low an open one that points down, what lies in the plane a dot.</summary>
    public void Mark(Pen pen, Spot at, Length off)
    {
        if (off.Abs() < Step)
        {
            pen.Area(Pen.Circle(at, 0.6), Fill.Ink);
            return;
        }

        var up = off > Length.Zero ? -1 : 1;
        Sequence<Spot> tip = [new(at.X, at.Y + (up * MarkSize)), new(at.X + MarkSize, at.Y - (0.8 * up * MarkSize)), new(at.X - MarkSize, at.Y - (0.8 * up * MarkSize))];
        pen.Area(tip, up < 0 ? Fill.Ink : Fill.Paper, Stroke.CutEdge, up < 0 ? "high" : "low");
    }

    /// <summary>The numbers of all straightedges that are worst where one is, which is drawn with the first of them; empty for the others.</summary>
    public static string Numbers(FlatFace flat, int at)
    {
        var same = Enumerable.Range(0, flat.Gaps.Count).Where(i => (flat.Gaps[i].From, flat.Gaps[i].To) == (flat.Gaps[at].From, flat.Gaps[at].To)).ToList();
        return same[0] == at ? string.Join(", ", same.Select(i => Figures.Number(i + 1))) : "";
    }

    private static Length StepOf(FlatFace flat, Tape tape)
    {
        const int Most = 7;
        var (low, high) = flat.Spots.Count == 0 ? (Length.Zero, Length.Zero) : (flat.Spots.Min(spot => spot.Off), flat.Spots.Max(spot => spot.Off));
        var steps = tape.Unit == LengthUnit.Inch
            ? new[] { 64, 32, 16, 8, 4, 2, 1 }.Select(part => Length.FromInches(0, 1, part))
            : new[] { 0.5m, 1, 2, 5, 10, 20, 50 }.Select(millimetres => Length.FromSteps((long)(millimetres * Length.StepsPerMillimetre)));
        return steps.FirstOrDefault(step => (high - low).Steps <= Most * step.Steps, steps.Last());
    }

    // One area of many rings, so that no seams show between facets.
    private void Shade(Pen pen, FaceMap map, Fill fill, Length level)
    {
        var parts = Relief.Beyond(flat, level).Select(part => part.Select(map.At).ToSequence()).ToList();
        if (parts.Count > 0) pen.Area(parts, fill);
    }

    private void Lines(Pen pen, FaceMap map)
    {
        if (flat.Spots.Count == 0) return;
        var (first, last) = (flat.Spots.Min(spot => spot.Off).Steps / Step.Steps, flat.Spots.Max(spot => spot.Off).Steps / Step.Steps);
        for (var k = first; k <= last; k++)
        {
            foreach (var line in Relief.Along(flat, Step * (int)k)) pen.Line(line.Select(map.At).ToSequence(), k == 0 ? Stroke.Ghost : Stroke.Leader);
        }
    }

    /// <summary>A straightedge where it shows the most, on its two rests, with its number at the worst place.</summary>
    private void Worst(Pen pen, FaceMap map)
    {
        for (var i = 0; i < flat.Gaps.Count; i++)
        {
            var gap = flat.Gaps[i];
            if (gap.Worst == Length.Zero || Numbers(flat, i) is not { Length: > 0 } numbers) continue;
            var (from, to) = (map.At(gap.From), map.At(gap.To));
            pen.Line(from, to, Stroke.SnapLine);
            foreach (var end in new[] { from, to }) pen.Area(Pen.Circle(end, 1.7), Fill.None, Stroke.SnapLine);
            var box = Pen.BoxAround(default, numbers, Size, bold: true, upright: false);
            var at = map.At(gap.At);
            // Beside the worst place, on that side of it where no other number stands.
            foreach (var (dx, dy) in new[] { (1, -1), (-1, -1), (1, 1), (-1, 1), (2, -1), (-2, -1) })
            {
                var spot = new Spot(at.X + (dx * ((box.Width / 2) + 1.6)), at.Y + (dy * ((box.Height / 2) + 1.2)));
                var covers = Pen.BoxAround(spot, numbers, Size, bold: true, upright: false);
                if (_taken.Exists(covers.Meets)) continue;
                _taken.Add(covers);
                pen.TextAround(spot, numbers, Size, bold: true, ink: Ink.SnapLine, onPaper: true);
                break;
            }
        }
    }

    // The farthest off have their figures first; where figures would cover each other the list has them.
    private void Readings(Pen pen, FaceMap map, Frame face)
    {
        foreach (var spot in flat.Spots.OrderByDescending(spot => spot.Off.Abs()))
        {
            var at = map.At(spot.At);
            Mark(pen, at, spot.Off);
            var words = figures.Signed(spot.Off);
            var box = Pen.BoxAround(default, words, Size, bold: false, upright: false);
            Spot[] around = [new(at.X, at.Y + 3.4), new(at.X, at.Y - 3.4), new(at.X + (box.Width / 2) + 1.8, at.Y), new(at.X - (box.Width / 2) - 1.8, at.Y)];
            if (!Write(pen, around, words, face)) Bare++;
        }
    }

    private void Laid(Pen pen, FaceMap map, LaidStraightedge laid, Frame face)
    {
        var (from, to) = (map.At(laid.From), map.At(laid.To));
        pen.Line(from, to, Stroke.Dimension);
        for (var i = 0; i < laid.Gaps.Count; i++)
        {
            var part = i / (laid.Gaps.Count - 1.0);
            var at = new Spot(from.X + (part * (to.X - from.X)), from.Y + (part * (to.Y - from.Y)));
            pen.Area(Pen.Circle(at, 0.6), Fill.Ink);
            if (!Write(pen, [new(at.X, at.Y + 3), new(at.X, at.Y - 3), new(at.X + 5, at.Y), new(at.X - 5, at.Y)], figures.Fine(laid.Gaps[i]), face)) Bare++;
        }
    }

    private bool Write(Pen pen, IEnumerable<Spot> around, string words, Frame face)
    {
        foreach (var spot in around)
        {
            var box = Pen.BoxAround(spot, words, Size, bold: false, upright: false);
            if (_taken.Exists(box.Meets) || !face.Grown(1).Holds(box)) continue;
            _taken.Add(box);
            pen.TextAround(spot, words, Size, onPaper: true);
            return true;
        }

        return false;
    }
}
