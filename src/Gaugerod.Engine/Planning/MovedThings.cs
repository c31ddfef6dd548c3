using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>Moves what a job leaves open, within its ranges, to where its edges meet the joints of a placing.</summary>
internal sealed class MovedThings
{
    private readonly RunModel _model;
    private readonly RunPlacing _placing;

    public MovedThings(RunModel model, RunPlacing placing) => (_model, _placing) = (model, placing);

    /// <summary>The face with its things moved; itself where nothing is to be gained.</summary>
    /// <param name="face">The face.</param>
    /// <param name="index">Its place on the run.</param>
    public Face Move(Face face, int index)
    {
        var finished = _model.Frames[index].Face;
        var openings = face.Openings.Select(opening => opening.Range is { } range ? Moved(opening, range, finished, index) : opening).ToSequence();
        var zones = face.Zones.Select(zone => zone is Zone.Strip { Range: { } range } strip ? strip with { From = Nearest(strip.From, range, Edge(finished, strip.Name, strip.From, level: true), above: false, index) } : zone).ToSequence();
        var moved = face with { Openings = openings, Zones = zones };
        return moved.Shape is FaceShape.Read read && read.Fixtures.Any(fixture => fixture.Range is not null)
            ? moved with { Shape = read with { Fixtures = read.Fixtures.Select(fixture => Moved(fixture, finished, index)).ToSequence() } }
            : moved;
    }

    private Fixture Moved(Fixture fixture, FinishedFace finished, int index)
    {
        if (fixture.Range is not { } range || fixture.AtHead) return fixture;
        var by = Nearest(fixture.HeightLeft, range, Edge(finished, fixture.Name, fixture.HeightLeft, level: true), above: true, index) - fixture.HeightLeft;
        return fixture with { HeightLeft = fixture.HeightLeft + by, HeightRight = fixture.HeightRight + by };
    }

    private Opening Moved(Opening opening, OpeningRange range, FinishedFace finished, int index)
    {
        var box = opening.Ring.Bounds;
        var (left, width) = Along(box.Left, box.Width, range.Left, range.Width, level: false);
        var (bottom, height) = Along(box.Bottom, box.Height, range.Bottom, range.Height, level: true);
        return opening with { Ring = Ring.Of(new(left, bottom, left + width, bottom + height)) };

        // Where it begins and how large it is, one way: of all that bring most of its two edges to joints the nearest to what was asked.
        (Length From, Length Size) Along(Length from, Length size, Span? place, Span? sizes, bool level)
        {
            var (before, after) = level ? ("bottom", "top") : ("left", "right");
            var (near, far) = (Edge(finished, $"{opening.Name}.{before}", from, level), Edge(finished, $"{opening.Name}.{after}", from + size, level));
            var best = (Off: Cost(from, size), From: from, Size: size);
            var places = Aligned(from, place, near, above: false, level, index).Concat(Aligned(from, place, far, above: true, level, index)).Prepend(from).Distinct();
            foreach (var at in places)
            {
                var shift = at - from;
                foreach (var much in Aligned(size, sizes, far + shift, above: true, level, index).Prepend(size).Distinct())
                {
                    var cost = Cost(at, much);
                    if (cost.CompareTo(best.Off) < 0) best = (cost, at, much);
                }
            }

            return (best.From, best.Size);

            (int Missed, long Moved) Cost(Length at, Length much)
            {
                var missed = (OnJoint(near + (at - from), above: false, level, index) ? 0 : 1) + (OnJoint(far + (at - from) + (much - size), above: true, level, index) ? 0 : 1);
                return (missed, (at - from).Abs().Steps + (much - size).Abs().Steps);
            }
        }
    }

    /// <summary>The measure nearest to what was asked that brings the edge to a joint; what was asked where none does within the range.</summary>
    private Length Nearest(Length asked, Span range, Length edge, bool above, int index) =>
        Aligned(asked, range, edge, above, level: true, index).Select(at => ((at - asked).Abs(), at)).OrderBy(at => at.Item1.Steps).Select(at => at.at).FirstOrDefault(asked);

    /// <summary>The measures within a range that bring an edge to a joint.</summary>
    /// <param name="asked">The measure now.</param>
    /// <param name="range">What it may be; null when it is settled.</param>
    /// <param name="edge">Where the field's edge now is; it moves as the measure does.</param>
    /// <param name="above">Whether the tile lies above the edge, or right of it.</param>
    /// <param name="level">Whether the edge is a level one.</param>
    /// <param name="index">The face's place on the run.</param>
    private IEnumerable<Length> Aligned(Length asked, Span? range, Length edge, bool above, bool level, int index)
    {
        if (range is null) yield break;
        var (step, starts) = Joints(above, level, index);
        foreach (var start in starts)
        {
            var off = Grid.Mod(start - edge.Steps - (range.Least - asked).Steps, step);
            for (var at = range.Least + Length.FromSteps(off); at <= range.Most; at += Length.FromSteps(step)) yield return at;
        }
    }

    private bool OnJoint(Length edge, bool above, bool level, int index)
    {
        var (step, starts) = Joints(above, level, index);
        return starts.Any(start => Grid.Mod(start - edge.Steps + Check.Tolerance, step) <= 2 * Check.Tolerance);
    }

    /// <summary>Where tiles begin (above an edge) or end (below it), and how often.</summary>
    private (long Step, IEnumerable<long> Starts) Joints(bool above, bool level, int index)
    {
        var courses = _model.Courses;
        var across = level == (_model.Bond.Lay == Lay.Level);
        var (step, size, start) = across ? (courses.Rise, courses.Depth, _placing.V[index]) : (courses.Period, courses.Length, _placing.U[index]);
        var offsets = across ? [0L] : _model.Offsets;
        return (step, offsets.Select(offset => start + offset + (above ? 0 : size)));
    }

    /// <summary>Where the field's edge with a name runs; the measure itself where there is none.</summary>
    private static Length Edge(FinishedFace face, string name, Length measure, bool level)
    {
        foreach (var edge in face.Edges)
        {
            if (string.Equals(edge.Name, name, StringComparison.Ordinal)) return level ? edge.From.Y : edge.From.X;
        }

        return measure;
    }
}
