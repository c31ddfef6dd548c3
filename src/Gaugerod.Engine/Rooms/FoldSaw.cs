using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// Takes a joint along every fold out of an area. What hangs together after that is one plane, however its folds meet: at a drain,
/// in a fork, at an edge.
/// </summary>
internal sealed class FoldSaw
{
    /// <summary>A hundredth of a millimetre to either side of a fold: no joint is narrower, or a slit would have no sides.</summary>
    public const double Least = 32;

    // Beyond an edge there is nothing to cut, but a bullnose may reach over it.
    private static readonly Length s_beyond = Length.FromMillimetres(20), s_most = Length.FromMillimetres(400), s_near = Length.FromMillimetres(1);

    private readonly FinishedFace _whole;
    private readonly IReadOnlyList<Fold> _folds;
    private readonly Box _box;
    private readonly double _mark;

    public FoldSaw(FinishedFace whole, IReadOnlyList<Fold> folds, Tape tape)
    {
        (_whole, _folds, _mark) = (whole, folds, tape.Mark.Steps);
        var bounds = whole.Outline.Bounds;
        _box = new(bounds.Left - s_beyond, bounds.Bottom - s_beyond, bounds.Right + s_beyond, bounds.Top + s_beyond);
    }

    /// <summary>Whether a floor is small enough to be cut.</summary>
    public static bool Reaches(Box bounds) => (Length.Max(bounds.Width, bounds.Height) + (s_beyond * 2)).Steps <= ConvexClip.MostSteps;

    /// <summary>The parts of an area, each its outline and then its holes.</summary>
    /// <param name="rings">The area.</param>
    /// <param name="half">Half of what is taken out along a fold, in steps.</param>
    /// <param name="tag">The tag of a side along the first fold; of one along the next, one more.</param>
    public IReadOnlyList<IReadOnlyList<TaggedCorner[]>> Parts(IReadOnlyList<TaggedCorner[]> rings, double half, int tag)
    {
        for (var k = 0; k < _folds.Count; k++)
        {
            if (Strip(_folds[k], half) is not { } strip) continue;
            var of = tag + k;
            rings = [.. ConvexCut.Without(rings, strip).Select(ring => Array.ConvertAll(ring, node => node.Tag < 0 ? node with { Tag = of } : node))];
        }

        var plain = rings.Select(ring => (Corners: ring, Ring: Plain(ring))).Where(ring => !IsCrumb(ring.Ring)).ToList();
        var outlines = plain.Where(ring => ring.Ring.DoubledArea > 0).OrderBy(ring => ring.Ring.DoubledArea).ToList();
        var holes = plain.Where(ring => ring.Ring.DoubledArea < 0).ToLookup(hole => outlines.FindIndex(outline => RingChecks.Locate(outline.Ring, hole.Ring.Points[0]) == Whereabouts.Inside));
        return [.. outlines.Select((outline, i) => (IReadOnlyList<TaggedCorner[]>)[outline.Corners, .. holes[i].Select(hole => hole.Corners)])];
    }

    /// <summary>A place in a part, beside its longest side along a fold; beside its longest side where it has none.</summary>
    public static Point InsideOf(IReadOnlyList<TaggedCorner[]> part, int tag)
    {
        var sides = part.SelectMany(ring => ring.Select((node, i) => (node.Tag, From: Nearby.Of(node.Point), To: Nearby.Of(ring[(i + 1) % ring.Length].Point)))).ToList();
        var (_, from, to) = sides.MaxBy(side => (side.Tag >= tag, Nearby.Distance(side.From, side.To)));
        var aside = Least / 2 / Nearby.Distance(from, to);
        return Nearby.Of((((from.X + to.X) / 2) - ((to.Y - from.Y) * aside), ((from.Y + to.Y) / 2) + ((to.X - from.X) * aside)));
    }

    public static Ring Plain(TaggedCorner[] ring) => new(ring.Select(node => node.Point).ToSequence());

    /// <summary>What rounding leaves: no wider than a hair.</summary>
    private static bool IsCrumb(Ring ring) => Int128.Abs(ring.DoubledArea) <= (Int128)Least * (ring.Bounds.Width + ring.Bounds.Height).Steps / 8;

    private (long X, long Y)[]? Strip(Fold fold, double half)
    {
        var (from, to) = (fold.From, fold.To);
        var (run, rise) = (to.X - from.X, to.Y - from.Y);
        return ConvexRegion.OnGrid(
            _box,
            [
                new(from, to, -half), new(to, from, -half),
                new(from, from.Moved(rise, -run), -Beyond(to, from, half)), new(to, to.Moved(-rise, run), -Beyond(from, to, half)),
            ]);
    }

    /// <summary>How far the cut goes on at the end of a fold: past the whole edge there, past the joint where folds meet.</summary>
    private double Beyond(Point from, Point end, double half)
    {
        var (points, length) = (_whole.Outline.Points, Nearby.Distance(Nearby.Of(from), Nearby.Of(end)));
        var sides = Enumerable.Range(0, points.Count).Select(i => (From: points[i], To: points[(i + 1) % points.Count])).Where(side => Nearby.Off(side.From, side.To, end) <= _mark).ToList();
        if (sides.Count == 0) return _whole.Openings.Any(opening => RingChecks.Locate(opening.Ring, end) != Whereabouts.Outside || Nearby.Off(opening.Ring, end).Distance <= _mark) ? half + _mark : half;
        var next = end.Moved(Grid.Nearest((end.X - from.X).Steps * s_near.Steps / length), Grid.Nearest((end.Y - from.Y).Steps * s_near.Steps / length));
        if (sides.Count > 1 && RingChecks.Locate(_whole.Outline, next) != Whereabouts.Outside) return half;
        var slant = sides.Max(side => Math.Abs((double)Segments.Dot(from, end, side.From, side.To) / (double)Segments.Cross(from, end, side.From, side.To)));
        return s_beyond.Steps + Math.Min(s_most.Steps, half * slant);
    }
}
