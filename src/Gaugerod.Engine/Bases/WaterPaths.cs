namespace Gaugerod.Engine.Bases;

/// <summary>
/// The shortest ways along a floor to its nearest drain: straight where the drain is seen, else round corners. Every corner
/// that the way goes round is an outlet of its own, as far from the drain as its own way is long (J. Mitchell, Shortest paths
/// among obstacles in the plane, 1996: the shortest path map; from memory).
/// </summary>
internal sealed class WaterPaths
{
    private readonly List<Outlet> _outlets = [];

    /// <param name="floor">The floor.</param>
    /// <param name="drains">Its round drains.</param>
    /// <param name="channels">Its channels.</param>
    public WaterPaths(OpenFloor floor, IEnumerable<Place> drains, IReadOnlyList<Channel> channels)
    {
        (Floor, Channels) = (floor, channels);
        foreach (var drain in drains) _outlets.Add(new(drain, 0, 0, 2 * Math.PI, true));
        foreach (var channel in channels)
        {
            var (left, onLeft) = (channel.Way.Left.Angle, channel.Way.Left);
            _outlets.Add(Past(channel.From, channel.Way, left, onLeft));
            _outlets.Add(Past(channel.To, channel.Way * -1, left + Math.PI, onLeft * -1));
        }

        var open = Enumerable.Range(0, floor.Corners.Count).Where(floor.IsPassed).ToList();
        var nearest = open.ConvertAll(corner => FromDrain(floor.Corners[corner]));
        while (open.Count > 0)
        {
            var next = Enumerable.Range(0, open.Count).MinBy(i => nearest[i].Length);
            var (corner, (length, last)) = (open[next], nearest[next]);
            open.RemoveAt(next);
            nearest.RemoveAt(next);
            if (double.IsInfinity(length)) break;
            if (Behind(corner, last, length) is { } outlet) _outlets.Add(outlet);
            var at = floor.Corners[corner];
            for (var i = 0; i < open.Count; i++)
            {
                var through = length + at.To(floor.Corners[open[i]]);
                if (through < nearest[i].Length && floor.Sees(at, floor.Corners[open[i]])) nearest[i] = (through, at);
            }
        }
    }

    /// <summary>
    /// What runs to the end of a channel: beside it water runs into the channel, and only past its end it runs to that. Where the channel lies
    /// along a wall the floor may go round its end to what is behind that wall.
    /// </summary>
    private Outlet Past(Place end, Place inward, double from, Place first)
    {
        const double In = 0.5, Aside = 0.01;
        var (before, after) = (Behind(first), Behind(first * -1));
        return new(end, 0, from - before, Math.PI + before + after, true);

        double Behind(Place aside) => Floor.Holds(end + (inward * In) + (aside * Aside)) ? 0 : (Math.PI / 2) - (Aside / In);
    }

    public OpenFloor Floor { get; }

    public IReadOnlyList<Outlet> Outlets => _outlets;

    public IReadOnlyList<Channel> Channels { get; }

    /// <summary>How far it is along the floor from a place to the nearest drain; endless where none can be reached.</summary>
    public double From(Place place)
    {
        var least = FromDrain(place).Length;
        foreach (var outlet in _outlets)
        {
            var through = outlet.Start + outlet.At.To(place);
            if (!outlet.IsDrain && through < least && Floor.Sees(outlet.At, place)) least = through;
        }

        return least;
    }

    /// <summary>How far a place is straight from the nearest drain that it sees, and where on that drain its way ends.</summary>
    public (double Length, Place Last) FromDrain(Place place)
    {
        var (least, last) = (double.PositiveInfinity, place);
        foreach (var outlet in _outlets)
        {
            if (outlet.IsDrain && outlet.At.To(place) is var length && length < least && Floor.Sees(outlet.At, place)) (least, last) = (length, outlet.At);
        }

        foreach (var channel in Channels)
        {
            var on = channel.Nearest(place);
            if (on.To(place) is var length && length < least && Floor.Sees(on, place)) (least, last) = (length, on);
        }

        return (least, last);
    }

    /// <summary>What lies in the shadow of a corner, seen from where its own way to the drain goes on; null where it throws none.</summary>
    private Outlet? Behind(int corner, Place last, double length)
    {
        var (at, before, next) = (Floor.Corners[corner], Floor.Before(corner), Floor.Next(corner));
        var way = (at - last).Unit;
        var (offBefore, offNext) = ((before - at).Unit.Across(way), (next - at).Unit.Across(way));
        const double Hair = 1e-9;
        // What stands to the right hides what lies between straight on and the side that leaves; to the left, that which arrives.
        if (offBefore <= Hair && offNext < -Hair) return Shadow((next - at).Angle, way.Angle);
        if (offBefore > Hair && offNext >= -Hair) return Shadow(way.Angle, (before - at).Angle);
        return null;

        Outlet? Shadow(double from, double to)
        {
            var sweep = to - from;
            sweep -= 2 * Math.PI * Math.Floor(sweep / (2 * Math.PI));
            return new(at, length, from, sweep, false);
        }
    }
}
