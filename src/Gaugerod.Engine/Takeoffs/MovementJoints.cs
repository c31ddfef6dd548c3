using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>A soft joint across a field that is too large to go without.</summary>
/// <param name="Run">The run.</param>
/// <param name="Face">The face.</param>
/// <param name="IsPlumb">Whether it stands upright on the face; else it lies level.</param>
/// <param name="At">Where its middle is: from the face's x = 0, or from its y = 0.</param>
/// <param name="Width">How wide it is: as the joints of the run.</param>
/// <param name="Long">How long it is, in mm.</param>
/// <param name="Cut">How many tiles it goes through, which are cut along it; none where it follows a joint all the way.</param>
public sealed record MovementJoint(string Run, string Face, bool IsPlumb, Length At, Length Width, double Long, int Cut);

/// <summary>
/// Places soft joints across a field so that no part of it is longer than allowed either way: as few as will do, on the joints of
/// the bond; of those the ones that go through fewest tiles; of those the ones that leave the longest part shortest.
/// </summary>
internal static class MovementJoints
{
    private const double Step = 3200;

    /// <param name="run">The run's name.</param>
    /// <param name="face">The face, set out as one.</param>
    /// <param name="pieces">All pieces on it.</param>
    /// <param name="joint">The width of the run's joints.</param>
    /// <param name="most">How long a part may be, more than zero.</param>
    public static IEnumerable<MovementJoint> Of(string run, FinishedFace face, IReadOnlyList<Piece> pieces, Length joint, Length most)
    {
        var box = face.Field.Outer.Bounds;
        foreach (var plumb in new[] { true, false })
        {
            var (from, to) = plumb ? (box.Left.Steps, box.Right.Steps) : (box.Bottom.Steps, box.Top.Steps);
            if (to - from <= most.Steps) continue;
            var spans = pieces.Select(piece => piece.Outline.Bounds).Select(at => plumb ? (Low: at.Left.Steps, High: at.Right.Steps) : (Low: at.Bottom.Steps, High: at.Top.Steps)).ToList();
            foreach (var (at, cut) in Chosen(Candidates(spans, joint.Steps, from, to), from, to, most.Steps))
            {
                yield return new(run, face.Wall, plumb, Length.FromSteps(at), joint, Across(face.Field, plumb, at) / Step, cut);
            }
        }
    }

    /// <summary>The middles of all joints that run this way, each with the tiles it would go through.</summary>
    internal static List<(long At, int Cut)> Candidates(IReadOnlyList<(long Low, long High)> spans, long joint, long from, long to)
    {
        var half = joint / 2;
        var places = spans.SelectMany(span => new[] { span.Low - half, span.High + half }).Where(at => at > from && at < to).Distinct().Order();
        return [.. places.Select(at => (at, spans.Count(span => span.Low < at - half && span.High > at + half)))];
    }

    /// <summary>
    /// The places. By dynamic programming over the candidates: for as many joints as are needed, the best way to come to each candidate
    /// is the best way to one before it within reach. The sum of tiles cut and the longest part both only grow, so the best way to a
    /// candidate is part of a best way on. None where no joints bring every part within the limit.
    /// </summary>
    internal static IReadOnlyList<(long At, int Cut)> Chosen(IReadOnlyList<(long At, int Cut)> candidates, long from, long to, long most)
    {
        if (Fewest(candidates, from, to, most) is not { } fewest) return [];
        var best = candidates.Select(candidate => candidate.At - from <= most ? new Way(candidate.Cut, candidate.At - from, null, candidate.At, candidate.Cut) : null).ToArray();
        for (var joints = 1; joints < fewest; joints++)
        {
            var next = new Way?[best.Length];
            for (var i = 0; i < best.Length; i++)
            {
                for (var k = i - 1; k >= 0 && candidates[i].At - candidates[k].At <= most; k--)
                {
                    if (best[k] is not { } way) continue;
                    var longer = new Way(way.Cuts + candidates[i].Cut, Math.Max(way.Longest, candidates[i].At - candidates[k].At), way, candidates[i].At, candidates[i].Cut);
                    if (next[i] is null || Way.ByCost.Compare(longer, next[i]) < 0) next[i] = longer;
                }
            }

            best = next;
        }

        return best.Where(way => way is not null && to - way.At <= most).Select(way => way! with { Longest = Math.Max(way!.Longest, to - way.At) }).Min(Way.ByCost)!.Places();
    }

    // By going as far as the limit allows each time, none can come further with as many. Null where a gap between candidates is too wide.
    private static int? Fewest(IReadOnlyList<(long At, int Cut)> candidates, long from, long to, long most)
    {
        var (count, reached) = (0, from);
        for (var i = 0; to - reached > most; count++)
        {
            var next = reached;
            for (; i < candidates.Count && candidates[i].At - reached <= most; i++) next = candidates[i].At;
            if (next == reached) return null;
            reached = next;
        }

        return count;
    }

    // How much of a straight line across lies in the field.
    private static double Across(Polygon field, bool plumb, long at)
    {
        var crossings = field.Inner.Prepend(field.Outer).SelectMany(ring => Crossings(ring, plumb, at)).Order().ToList();
        var sum = 0.0;
        for (var i = 0; i + 1 < crossings.Count; i += 2) sum += crossings[i + 1] - crossings[i];
        return sum;
    }

    private static IEnumerable<double> Crossings(Ring ring, bool plumb, long at)
    {
        for (var i = 0; i < ring.Points.Count; i++)
        {
            var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
            var (ax, ay, bx, by) = plumb ? (a.X.Steps, a.Y.Steps, b.X.Steps, b.Y.Steps) : (a.Y.Steps, a.X.Steps, b.Y.Steps, b.X.Steps);
            if (ax > at != bx > at) yield return ay + ((double)(by - ay) * (at - ax) / (bx - ax));
        }
    }

    private sealed record Way(int Cuts, long Longest, Way? Before, long At, int Cut)
    {
        public static readonly Comparer<Way?> ByCost = Comparer<Way?>.Create((one, other) => one is null || other is null ? (one is null).CompareTo(other is null) : (one.Cuts, one.Longest).CompareTo((other.Cuts, other.Longest)));

        public IReadOnlyList<(long At, int Cut)> Places()
        {
            var places = new List<(long, int)>();
            for (var way = this; way is not null; way = way.Before) places.Add((way.At, way.Cut));
            places.Reverse();
            return places;
        }
    }
}
