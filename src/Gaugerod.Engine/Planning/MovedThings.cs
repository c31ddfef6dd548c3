using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// Moves what a job leaves open, within its ranges, to where its edges meet the joints of a placing. Where a thing then stands
/// hangs on the placing and on what was asked, and on nothing else.
/// </summary>
/// <param name="model">The run with its things where they were asked.</param>
/// <param name="placing">The placing.</param>
/// <param name="may">Which things of a face, by the face's place on the run and their names, may be moved.</param>
internal sealed class MovedThings(RunModel model, RunPlacing placing, Func<int, string, bool> may)
{
    /// <summary>How many edges that may be moved stand off every joint all the same.</summary>
    public int Missed { get; private set; }

    /// <summary>How far things were moved or resized, added up.</summary>
    public Length Moved { get; private set; }

    /// <summary>The face with its things moved.</summary>
    /// <param name="face">The face.</param>
    /// <param name="index">Its place on the run.</param>
    public Face Move(Face face, int index)
    {
        var moved = face with
        {
            Openings = face.Openings.Select(opening => opening.Range is { } range && may(index, opening.Name) ? Put(opening, range, index) : opening).ToSequence(),
            Zones = Bands(face.Zones, index),
        };
        return moved.Shape is FaceShape.Read read
            ? moved with { Shape = read with { Fixtures = read.Fixtures.Select(fixture => fixture.Range is { } range && may(index, fixture.Name) ? Put(fixture, range, index) : fixture).ToSequence() } }
            : moved;
    }

    private Sequence<Zone> Bands(Sequence<Zone> zones, int index)
    {
        var moved = zones.ToList();
        for (var i = 0; i < moved.Count; i++)
        {
            if (moved[i] is not Zone.Strip { Range: { } range } strip || !may(index, strip.Name)) continue;
            var by = Nearest(strip.Name, strip.From, range, level: true, index) - strip.From;
            var head = strip.To;
            moved[i] = strip with { From = strip.From + by, To = head + by };
            // What begins at the band's head goes with it.
            for (var k = 0; k < moved.Count; k++)
            {
                if (k != i && moved[k] is Zone.Strip { Range: null } above && above.From == head) moved[k] = above with { From = above.From + by };
            }
        }

        return moved.ToSequence();
    }

    private Fixture Put(Fixture fixture, FixtureRange range, int index)
    {
        var up = range.Height is { } height ? Nearest(fixture.Name, fixture.HeightLeft, height, level: true, index) - fixture.HeightLeft : Length.Zero;
        return fixture with
        {
            HeightLeft = fixture.HeightLeft + up,
            HeightRight = fixture.HeightRight + up,
            From = range.From is { } from ? Nearest(fixture.Name + ".left", fixture.From, from, level: false, index) : fixture.From,
            To = range.To is { } to && fixture.To is { } end ? Nearest(fixture.Name + ".right", end, to, level: false, index) : fixture.To,
        };
    }

    private Opening Put(Opening opening, OpeningRange range, int index)
    {
        var box = opening.Ring.Bounds;
        var (left, width) = Along(opening.Name, box.Left, box.Width, range.Sideways, range.Width, range.Studs, level: false, index);
        var (bottom, height) = Along(opening.Name, box.Bottom, box.Height, range.Bottom, range.Height, null, level: true, index);
        return opening with { Ring = Ring.Of(new(left, bottom, left + width, bottom + height)) };
    }

    /// <summary>Where an opening begins and how large it is, one way: of all that bring most of its edges to joints the nearest to what was asked.</summary>
    private (Length From, Length Size) Along(string name, Length from, Length size, Span? place, Span? sizes, Span? within, bool level, int index)
    {
        if (place is null && sizes is null) return (from, size);
        var near = place is null ? null : Edge(level ? name + ".bottom" : name + ".left", level, index);
        var far = Edge(level ? name + ".top" : name + ".right", level, index);
        var best = (Off: Cost(from, size), From: from, Size: size);
        foreach (var at in Aligned(from, place, near, Length.Zero).Concat(Aligned(from, place, far, Length.Zero)).Prepend(from).Distinct())
        {
            foreach (var much in Aligned(size, sizes, far, at - from).Prepend(size).Distinct())
            {
                if (within is not null && (at < within.Least || at + much > within.Most)) continue;
                var cost = Cost(at, much);
                if (cost.CompareTo(best.Off) < 0) best = (cost, at, much);
            }
        }

        Missed += best.Off.Missed;
        Moved += Length.FromSteps(best.Off.Moved);
        return (best.From, best.Size);

        (int Missed, long Moved) Cost(Length at, Length much)
        {
            var missed = (near?.IsOn(at - from) ?? true ? 0 : 1) + (far?.IsOn((at - from) + (much - size)) ?? true ? 0 : 1);
            return (missed, (at - from).Abs().Steps + (much - size).Abs().Steps);
        }
    }

    /// <summary>The measure nearest to what was asked that brings the edge to a joint; what was asked where none does within the range.</summary>
    private Length Nearest(string name, Length asked, Span range, bool level, int index)
    {
        if (Edge(name, level, index) is not { } edge) return asked;
        var best = (Off: long.MaxValue, At: asked);
        foreach (var at in Aligned(asked, range, edge, Length.Zero))
        {
            if ((at - asked).Abs().Steps is var off && off < best.Off) best = (off, at);
        }

        if (!edge.IsOn(best.At - asked)) Missed++;
        else Moved += (best.At - asked).Abs();
        return best.At;
    }

    /// <summary>The measures within a range that bring an edge to a joint.</summary>
    /// <param name="asked">The measure now.</param>
    /// <param name="range">What it may be; null when it is settled.</param>
    /// <param name="edge">The field's edge, which moves as the measure does; null for none.</param>
    /// <param name="shift">How far the edge was moved already.</param>
    private static IEnumerable<Length> Aligned(Length asked, Span? range, EdgeAtJoints? edge, Length shift)
    {
        if (range is null || edge is null) yield break;
        foreach (var start in edge.Starts)
        {
            var off = Grid.Mod(start - edge.At - shift.Steps - (range.Least - asked).Steps, edge.Step);
            for (var at = range.Least + Length.FromSteps(off); at <= range.Most; at += Length.FromSteps(edge.Step)) yield return at;
        }
    }

    /// <summary>The field's edge with a name, and where tiles begin or end at it; null where there is none.</summary>
    private EdgeAtJoints? Edge(string name, bool level, int index)
    {
        var frame = model.Frames[index];
        var across = level == (frame.Lay == Lay.Level);
        var edges = (across ? frame.Levels : frame.Sides).Where(edge => string.Equals(frame.Face.Edges[edge.Edge].Name, name, StringComparison.Ordinal)).ToList();
        if (edges.Count == 0) return null;
        var (step, size, start) = across ? (model.Courses.Rise, model.Courses.Depth, placing.V[index]) : (model.Courses.Period, model.Courses.Length, placing.U[index]);
        // Where it is out of line its fullest point counts, as it does for the wish.
        var at = edges[0].TileAfter
            ? edges.Min(edge => across ? edge.LeastAcross : edge.LeastAlong)
            : edges.Max(edge => across ? edge.MostAcross : edge.MostAlong);
        var first = edges[0].TileAfter ? start : start + size;
        return new(at, step, across ? [first] : [.. model.Offsets.Select(offset => first + offset)]);
    }

    /// <summary>An edge, and the lines at which a tile's side would lie along it.</summary>
    /// <param name="At">Where it stands as asked, on the face.</param>
    /// <param name="Step">From one line to the next of its kind.</param>
    /// <param name="Starts">A line of each kind.</param>
    private sealed record EdgeAtJoints(long At, long Step, long[] Starts)
    {
        public bool IsOn(Length moved) => Array.Exists(Starts, start => Grid.Mod(start - At - moved.Steps + Check.Tolerance, Step) <= 2 * Check.Tolerance);
    }
}
