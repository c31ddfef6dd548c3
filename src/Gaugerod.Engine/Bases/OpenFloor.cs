using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>What of a floor water can run over: inside its outline, round what stands on it. In millimetres.</summary>
internal sealed class OpenFloor
{
    /// <summary>Nearer than this nothing can be told apart.</summary>
    public const double Hair = 1e-6;

    private readonly Place[] _from, _to;
    private readonly int[] _next, _before;

    /// <param name="outline">Its outline, counter-clockwise.</param>
    /// <param name="standing">What stands on it.</param>
    public OpenFloor(Ring outline, IReadOnlyList<Ring> standing)
    {
        // Every ring is run with the floor to its left.
        var rings = standing.Select(ring => ring.CounterClockwise().Reversed()).Prepend(outline.CounterClockwise()).ToList();
        var count = rings.Sum(ring => ring.Points.Count);
        (_from, _to, _next, _before) = (new Place[count], new Place[count], new int[count], new int[count]);
        var first = 0;
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Points.Count; i++)
            {
                var (at, next) = (first + i, first + ((i + 1) % ring.Points.Count));
                (_from[at], _to[at], _next[at], _before[next]) = (Place.Of(ring.Points[i]), Place.Of(ring.Points[next - first]), next, at);
            }

            first += ring.Points.Count;
        }

        OfOutline = outline.Points.Count;
        HasStanding = standing.Count > 0;
    }

    /// <summary>Its corners, those of the outline first; a side runs from each to the next.</summary>
    public IReadOnlyList<Place> Corners => _from;

    /// <summary>How many of the corners, and sides, are the outline's.</summary>
    public int OfOutline { get; }

    /// <summary>Whether anything stands on it, so that water may take one way round or the other.</summary>
    public bool HasStanding { get; }

    public Place Before(int corner) => _from[_before[corner]];

    public Place Next(int corner) => _from[_next[corner]];

    /// <summary>Whether the floor goes round the corner: more than half of what lies about it is floor.</summary>
    public bool IsPassed(int corner) => (Next(corner) - _from[corner]).Across(_from[corner] - Before(corner)) < 0;

    public double Area
    {
        get
        {
            var sum = 0.0;
            var origin = _from[0];
            for (var i = 0; i < _from.Length; i++) sum += (_to[i] - origin).Across(_from[i] - origin) / 2;
            return sum;
        }
    }

    /// <summary>Whether a place is on the floor or at its edge.</summary>
    public bool Holds(Place place)
    {
        var inside = false;
        for (var i = 0; i < _from.Length; i++)
        {
            var (a, b) = (_from[i], _to[i]);
            if (Off(a, b, place) <= Hair) return true;
            if ((a.Y > place.Y) != (b.Y > place.Y) && place.X < a.X + ((place.Y - a.Y) * (b.X - a.X) / (b.Y - a.Y))) inside = !inside;
        }

        return inside;
    }

    /// <summary>The place itself; for one that the grid may have put just beyond a slanting side, the place on that side.</summary>
    public Place Onto(Place place)
    {
        // Three steps of 1/3200 mm. A hair beyond the side is enough to be hidden by it from where one looks along it.
        const double Step = 0.001;
        for (var i = 0; i < _from.Length; i++)
        {
            if (Off(_from[i], _to[i], place) <= Step) return On(_from[i], _to[i], place);
        }

        return place;
    }

    /// <summary>How far a place is from the nearest side.</summary>
    public double ToEdge(Place place)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < _from.Length; i++) least = Math.Min(least, Off(_from[i], _to[i], place));
        return least;
    }

    /// <summary>Whether the straight way between two places of the floor stays on it; it may touch corners and run along sides.</summary>
    public bool Sees(Place one, Place other)
    {
        var length = one.To(other);
        if (length <= Hair) return true;
        var way = (other - one) * (1 / length);
        List<double>? touched = null;
        for (var i = 0; i < _from.Length; i++)
        {
            var (a, b) = (_from[i] - one, _to[i] - one);
            var (offA, offB) = (a.Across(way), b.Across(way));
            if (Math.Abs(offA) <= Hair && a.Along(way) is var at && at > Hair && at < length - Hair) (touched ??= []).Add(at);
            if ((offA <= Hair || offB >= -Hair) && (offA >= -Hair || offB <= Hair)) continue;
            var crossed = a.Along(way) + ((b.Along(way) - a.Along(way)) * offA / (offA - offB));
            if (crossed > Hair && crossed < length - Hair) return false;
        }

        if (touched is null) return Holds(one + (way * (length / 2)));
        touched.Sort();
        touched.Add(length);
        var before = 0.0;
        foreach (var place in touched)
        {
            if (place - before > Hair && !Holds(one + (way * ((before + place) / 2)))) return false;
            before = place;
        }

        return true;
    }

    /// <summary>How far a straight way runs before it meets a side, and which.</summary>
    public (double Length, int Side) Run(Place from, Place way)
    {
        var (nearest, side) = (double.PositiveInfinity, -1);
        for (var i = 0; i < _from.Length; i++)
        {
            var (a, b) = (_from[i] - from, _to[i] - from);
            var (offA, offB) = (a.Across(way), b.Across(way));
            if ((offA > 0) == (offB > 0)) continue;
            var at = a.Along(way) + ((b.Along(way) - a.Along(way)) * offA / (offA - offB));
            if (at > Hair && at < nearest) (nearest, side) = (at, i);
        }

        return side < 0 ? (0, -1) : (nearest, side);
    }

    /// <summary>How far along a way the line of a side lies.</summary>
    public double ToLine(int side, Place from, Place way)
    {
        var along = Along(side);
        return (_from[side] - from).Across(along) / way.Across(along);
    }

    /// <summary>How far the line of a side is from a place.</summary>
    public double OffLine(int side, Place from) => Math.Abs((_from[side] - from).Across(Along(side)));

    /// <summary>The way a side runs, a unit long.</summary>
    public Place Along(int side) => (_to[side] - _from[side]).Unit;

    /// <summary>How much of a way goes square to a side.</summary>
    public double Square(int side, Place way) => Math.Abs(way.Across(Along(side)));

    private static double Off(Place a, Place b, Place place) => On(a, b, place).To(place);

    /// <summary>The place on a side that is nearest to another.</summary>
    private static Place On(Place a, Place b, Place place)
    {
        var along = b - a;
        var square = along.Along(along);
        var part = square == 0 ? 0 : Math.Clamp((place - a).Along(along) / square, 0, 1);
        return a + (along * part);
    }
}
