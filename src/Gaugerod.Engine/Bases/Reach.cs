namespace Gaugerod.Engine.Bases;

/// <summary>How far what runs to one outlet, or into one channel, reaches: to a side of the floor, or to where another way is shorter.</summary>
/// <param name="paths">The ways along the floor.</param>
internal sealed class Reach(WaterPaths paths)
{
    /// <summary>Stands for no bound at all: the way leaves the floor at once.</summary>
    public const int Nothing = int.MinValue;

    private readonly OpenFloor _floor = paths.Floor;

    /// <summary>Whether only sides bound it: with one drain, and nothing standing on the floor, no two ways are equally long.</summary>
    public bool IsPlain { get; } = !paths.Floor.HasStanding && paths.Channels.Count == 0 && paths.Outlets.Count(outlet => outlet.IsDrain) == 1;

    /// <summary>How far a straight way away from the drain goes on being the shortest, and what ends it: a side, or below zero another outlet and then the channels.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="start">How far that is from the drain.</param>
    /// <param name="way">The way, a unit long.</param>
    public (double Length, int By) Of(Place from, double start, Place way)
    {
        var (most, side) = _floor.Run(from, way);
        // At the floor's edge a way may lead off it.
        if (side < 0 || (start == 0 && !_floor.Holds(from + (way * (most / 2))))) return (0, Nothing);
        if (IsPlain) return (most, side);
        var met = new List<(double Length, int By)>();
        for (var by = -1; by >= -(paths.Outlets.Count + paths.Channels.Count); by--)
        {
            if (To(by, from, start, way) is var at && at > OpenFloor.Hair && at < most && Faces(by, from + (way * at))) met.Add((at, by));
        }

        met.Sort();
        foreach (var (at, by) in met)
        {
            if (_floor.Sees(Nearest(by, from + (way * at)), from + (way * at))) return (at, by);
        }

        return (most, side);
    }

    /// <summary>How far along a way a bound lies; endless where it is never met.</summary>
    public double To(int by, Place from, double start, Place way)
    {
        if (by >= 0) return _floor.ToLine(by, from, way);
        if (-by <= paths.Outlets.Count)
        {
            var outlet = paths.Outlets[-by - 1];
            var (apart, more) = (outlet.At - from, start - outlet.Start);
            var (over, under) = (apart.Along(apart) - (more * more), 2 * (apart.Along(way) + more));
            // From an outlet that the way itself has come through, no way is shorter.
            return over <= 1e-9 * (1 + apart.Along(apart)) || under <= 0 ? double.PositiveInfinity : over / under;
        }

        var channel = paths.Channels[-by - 1 - paths.Outlets.Count];
        var (off, nearer) = ((from - channel.From).Across(channel.Way), way.Across(channel.Way));
        var hand = off < 0 ? -1 : 1;
        var (ahead, closing) = ((hand * off) - start, 1 - (hand * nearer));
        return ahead <= OpenFloor.Hair || closing <= 1e-12 ? double.PositiveInfinity : ahead / closing;
    }

    /// <summary>How much of a way goes square to what ends it.</summary>
    public double Square(int by, Place from, Place way, double length)
    {
        if (by >= 0) return _floor.Square(by, way);
        var end = from + (way * length);
        // The other way is as long there: between them the ridge halves the angle.
        var apart = way - (end - Nearest(by, end)).Unit;
        return apart.Length <= 1e-9 ? 1 : Math.Abs(way.Along(apart.Unit));
    }

    // Past its ends a channel is met as its ends are.
    private bool Faces(int by, Place place) => -by <= paths.Outlets.Count || paths.Channels[-by - 1 - paths.Outlets.Count].IsBeside(place);

    private Place Nearest(int by, Place place) => -by <= paths.Outlets.Count ? paths.Outlets[-by - 1].At : paths.Channels[-by - 1 - paths.Outlets.Count].Nearest(place);
}
