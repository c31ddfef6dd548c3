using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>A corner of a facet.</summary>
/// <param name="At">Where it is.</param>
/// <param name="Off">How far it stands off the plane that fits best, plus towards the room or up.</param>
public readonly record struct FacetCorner(Point At, Length Off);

/// <summary>A triangle of a face between three of its readings, or two and the middle of a grid's cell.</summary>
/// <param name="A">A corner.</param>
/// <param name="B">The next.</param>
/// <param name="C">The last.</param>
public sealed record Facet(FacetCorner A, FacetCorner B, FacetCorner C);

/// <summary>Highs and lows of a face that was read, as they are drawn.</summary>
public static class Relief
{
    /// <summary>The parts of the face that stand as high as a level over the plane that fits best, or, for a level under it, as low; each of one facet.</summary>
    public static Sequence<Sequence<Point>> Beyond(FlatFace flat, Length level)
    {
        ArgumentNullException.ThrowIfNull(flat);
        var sign = level < Length.Zero ? 1 : -1;
        return flat.Facets
            .Select(facet => ReadSurface.Under([Stand(facet.A), Stand(facet.B), Stand(facet.C)], sign * (double)level.Millimetres))
            .Where(part => part.Count > 2 && part.Exists(stand => stand.Off < sign * (double)level.Millimetres))
            .Select(part => part.Select(stand => On(stand.At)).ToSequence()).ToSequence();

        Stand Stand(FacetCorner corner) => new(Place.Of(corner.At), sign * (double)corner.Off.Millimetres);
    }

    /// <summary>The lines along which the face stands at a level over the plane that fits best, each as long as it goes.</summary>
    public static Sequence<Sequence<Point>> Along(FlatFace flat, Length level)
    {
        ArgumentNullException.ThrowIfNull(flat);
        // A line crosses a facet over two of its sides; the facet beyond a side goes on from the same place.
        var crossed = new Dictionary<(Point, Point), List<int>>();
        var parts = new List<((Point, Point) From, (Point, Point) To)>();
        var places = new Dictionary<(Point, Point), Point>();
        foreach (var facet in flat.Facets)
        {
            var sides = new[] { (facet.A, facet.B), (facet.B, facet.C), (facet.C, facet.A) }.Where(side => side.Item1.Off < level != side.Item2.Off < level).Select(Cross).ToList();
            if (sides.Count != 2) continue;
            foreach (var side in sides)
            {
                if (!crossed.TryGetValue(side, out var at)) crossed[side] = at = [];
                at.Add(parts.Count);
            }

            parts.Add((sides[0], sides[1]));
        }

        var (lines, gone) = (new List<Sequence<Point>>(), new bool[parts.Count]);
        // From the face's rim first; what then is left closes upon itself.
        foreach (var (side, at) in crossed.OrderBy(pair => pair.Value.Count).ToList())
        {
            var first = at.FindIndex(part => !gone[part]);
            if (first < 0) continue;
            var (line, here, next) = (new List<Point> { places[side] }, side, at[first]);
            while (next >= 0)
            {
                gone[next] = true;
                here = parts[next].From == here ? parts[next].To : parts[next].From;
                line.Add(places[here]);
                var on = crossed[here].FindIndex(part => !gone[part]);
                next = on < 0 ? -1 : crossed[here][on];
            }

            lines.Add(line.ToSequence());
        }

        return lines.ToSequence();

        (Point, Point) Cross((FacetCorner, FacetCorner) side)
        {
            var (a, b) = (side.Item1.At.X, side.Item1.At.Y).CompareTo((side.Item2.At.X, side.Item2.At.Y)) < 0 ? (side.Item1, side.Item2) : (side.Item2, side.Item1);
            var (from, to) = (Place.Of(a.At), Place.Of(b.At));
            places[(a.At, b.At)] = On(from + ((to - from) * ((level - a.Off).Steps / (double)(b.Off - a.Off).Steps)));
            return (a.At, b.At);
        }
    }

    /// <summary>The sides of the part that was read: beyond them nothing is known.</summary>
    public static Sequence<(Point From, Point To)> Rim(FlatFace flat)
    {
        ArgumentNullException.ThrowIfNull(flat);
        return flat.Facets.SelectMany(facet => new[] { (facet.A.At, facet.B.At), (facet.B.At, facet.C.At), (facet.C.At, facet.A.At) })
            .GroupBy(side => (side.Item1.X, side.Item1.Y).CompareTo((side.Item2.X, side.Item2.Y)) < 0 ? side : (side.Item2, side.Item1))
            .Where(side => side.Count() == 1).Select(side => side.Key).ToSequence();
    }

    private static Point On(Place place) => Nearby.Of((place.X * Length.StepsPerMillimetre, place.Y * Length.StepsPerMillimetre));
}
