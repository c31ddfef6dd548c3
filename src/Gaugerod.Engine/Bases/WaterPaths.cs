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
            // Beside it water runs into the channel; only past its ends it runs to them.
            var left = channel.Way.Left.Angle;
            _outlets.Add(new(channel.From, 0, left, Math.PI, true));
            _outlets.Add(new(channel.To, 0, left + Math.PI, Math.PI, true));
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
