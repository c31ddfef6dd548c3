using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// Moves what a job leaves open, within its ranges, to where its edges meet the joints of a placing. Where a thing may then stand
/// hangs on the placing and on what was asked, and on nothing else: usually where most of its edges meet joints, and of such
/// places at the one nearest to what was asked.
/// </summary>
/// <param name="model">The run with its things where they were asked.</param>
/// <param name="placing">The placing.</param>
/// <param name="may">Which things of a face, by the face's place on the run and their names, may be moved.</param>
/// <param name="picks">For each choice, in order, which way is taken; the first where nothing is said.</param>
internal sealed class MovedThings(RunModel model, RunPlacing placing, Func<int, string, bool> may, IReadOnlyList<int> picks)
{
    /// <summary>So many ways that bring most edges to joints and move things least come before those that leave the widest cuts.</summary>
    private const int NearestFirst = 6;

    private readonly List<int> _choices = [];

    /// <summary>How many ways there were at each choice.</summary>
    public IReadOnlyList<int> Choices => _choices;

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

    /// <summary>Where an opening begins and how large it is, one way.</summary>
    private (Length From, Length Size) Along(string name, Length from, Length size, Span? place, Span? sizes, Span? within, bool level, int index)
    {
        if (place is null && sizes is null) return (from, size);
        var near = place is null ? null : Edge(level ? name + ".bottom" : name + ".left", level, index);
        var far = Edge(level ? name + ".top" : name + ".right", level, index);
        var ways = new List<Way> { Cost(from, size) };
        foreach (var at in Places().Distinct())
        {
            foreach (var much in Sizes(at).Distinct())
            {
                if (within is null || (at >= within.Least && at + much <= within.Most)) ways.Add(Cost(at, much));
            }
        }

        var way = Pick(ways);
        return (way.From, way.Size);

        // As asked; at joints; at either end; and where the cuts at both sides are alike.
        IEnumerable<Length> Places() => Lines(from, place, near, Length.Zero).Concat(Lines(from, place, far, Length.Zero))
            .Concat(Ends(place)).Concat(place is not null && within is not null ? [within.Most - size] : [])
            .Concat(place is not null && near is not null && far is not null ? Alike(near, far).SelectMany(at => Within(from, place, at, far.Step)) : [])
            .Where(at => place is null || place.Holds(at)).Prepend(from);

        IEnumerable<Length> Sizes(Length at) => Lines(size, sizes, far, at - from).Concat(Ends(sizes))
            .Concat(sizes is not null && within is not null && sizes.Holds(within.Most - at) ? [within.Most - at] : []).Prepend(size);

        Way Cost(Length at, Length much)
        {
            var (one, other) = (at - from, (at - from) + (much - size));
            var missed = (near?.IsOn(one) ?? true ? 0 : 1) + (far?.IsOn(other) ?? true ? 0 : 1);
            return new(missed, one.Abs() + (much - size).Abs(), at, much, Math.Min(near?.Leg(one) ?? long.MaxValue, far?.Leg(other) ?? long.MaxValue));
        }
    }

    /// <summary>A measure within a range that brings the edge to a joint; what was asked where none does.</summary>
    private Length Nearest(string name, Length asked, Span range, bool level, int index)
    {
        if (Edge(name, level, index) is not { } edge) return asked;
        return Pick(Lines(asked, range, edge, Length.Zero).Concat(Ends(range)).Prepend(asked)
            .Select(at => new Way(edge.IsOn(at - asked) ? 0 : 1, (at - asked).Abs(), at, Length.Zero, edge.Leg(at - asked)))).From;
    }

    private Way Pick(IEnumerable<Way> ways)
    {
        var byNearness = ways.Distinct().OrderBy(way => way.Missed).ThenBy(way => way.Off).ThenBy(way => way.From).ThenBy(way => way.Size).ToList();
        // Only the first few are tried: after the nearest those that leave the widest cuts.
        var sliver = model.Problem.Limits.Sliver.Steps;
        var inOrder = byNearness.Take(NearestFirst).Concat(byNearness.Skip(NearestFirst).OrderBy(way => way.Leg < sliver).ThenBy(way => way.Missed).ThenByDescending(way => way.Leg)).ToList();
        var way = inOrder[_choices.Count < picks.Count ? Math.Min(picks[_choices.Count], inOrder.Count - 1) : 0];
        _choices.Add(inOrder.Count);
        Missed += way.Missed;
        Moved += way.Off;
        return way;
    }

    /// <summary>The measures within a range that bring an edge to a joint, or where it leaves a part of the tile that counts.</summary>
    /// <param name="asked">The measure now.</param>
    /// <param name="range">What it may be; null when it is settled.</param>
    /// <param name="edge">The field's edge, which moves as the measure does; null for none.</param>
    /// <param name="shift">How far the edge was moved already.</param>
    private static IEnumerable<Length> Lines(Length asked, Span? range, EdgeAtJoints? edge, Length shift)
    {
        if (range is null || edge is null) yield break;
        foreach (var start in edge.Starts.Concat(edge.Parts))
        {
            foreach (var at in Within(asked, range, start - edge.At - shift.Steps, edge.Step)) yield return at;
        }
    }

    /// <summary>The measures within a range that are off the one asked by so much and any number of repeats.</summary>
    private static IEnumerable<Length> Within(Length asked, Span range, long by, long step)
    {
        var off = Grid.Mod(by - (range.Least - asked).Steps, step);
        for (var at = range.Least + Length.FromSteps(off); at <= range.Most; at += Length.FromSteps(step)) yield return at;
    }

    /// <summary>By how much a thing is to be moved, so that what is cut at its two sides is alike: one grows as the other shrinks.</summary>
    private static IEnumerable<long> Alike(EdgeAtJoints near, EdgeAtJoints far)
    {
        if (near.TileAfter == far.TileAfter) yield break;
        foreach (var one in near.Starts)
        {
            foreach (var other in far.Starts)
            {
                var twice = one + other - near.At - far.At;
                yield return Grid.FloorDiv(twice, 2);
                yield return Grid.FloorDiv(twice + near.Step, 2);
            }
        }
    }

    private static IEnumerable<Length> Ends(Span? range) => range is null ? [] : [range.Least, range.Most];

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
        long[] offsets = across ? [0] : model.Offsets;
        // Half a tile left is as good as any cut may be, and short of a sliver is better than one.
        long[] parts = [(size + 1) / 2, Math.Min(size, model.Problem.Limits.Sliver.Steps)];
        return edges[0].TileAfter
            ? new(at, step, size, TileAfter: true, [.. offsets.Select(offset => start + offset)], [.. offsets.SelectMany(offset => parts.Select(part => start + offset + size - part))])
            : new(at, step, size, TileAfter: false, [.. offsets.Select(offset => start + offset + size)], [.. offsets.SelectMany(offset => parts.Select(part => start + offset + part))]);
    }

    /// <summary>A way in which a thing may stand.</summary>
    /// <param name="Missed">How many of its edges stand off every joint.</param>
    /// <param name="Off">How far it is from what was asked.</param>
    /// <param name="From">Where it begins.</param>
    /// <param name="Size">How large it is.</param>
    /// <param name="Leg">The narrowest leg that may then be left at its edges.</param>
    private readonly record struct Way(int Missed, Length Off, Length From, Length Size, long Leg);

    /// <summary>An edge, and the lines at which a tile's side would lie along it.</summary>
    /// <param name="At">Where it stands as asked, on the face.</param>
    /// <param name="Step">From one line to the next of its kind.</param>
    /// <param name="Size">A tile's size that way.</param>
    /// <param name="TileAfter">Whether tile lies to the right of it, or above.</param>
    /// <param name="Starts">A line of each kind.</param>
    /// <param name="Parts">The same for the lines at which a part of a tile that counts is left.</param>
    private sealed record EdgeAtJoints(long At, long Step, long Size, bool TileAfter, long[] Starts, long[] Parts)
    {
        /// <summary>The narrowest leg that courses of any beginning leave, the edge moved by so much; a tile's size where none is cut.</summary>
        public long Leg(Length moved)
        {
            var least = Size;
            foreach (var start in Starts)
            {
                var taken = TileAfter ? Grid.Mod(At + moved.Steps - start, Step) : Grid.Mod(start - At - moved.Steps, Step);
                if (taken < Size) least = Math.Min(least, Size - taken);
            }

            return least;
        }

        public bool IsOn(Length moved) => Array.Exists(Starts, start => Grid.Mod(start - At - moved.Steps + Check.Tolerance, Step) <= 2 * Check.Tolerance);
    }
}
