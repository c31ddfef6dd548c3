using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Bases;

/// <summary>How high a bed stands over its drain, in millimetres, anywhere on its floor.</summary>
internal sealed class BedSurface
{
    // What is looked at beside a way that runs along a wall or through a corner, where a hair decides.
    private const double Aside = 1e-8;

    private readonly WaterPaths _paths;
    private readonly Reach _reach;
    private readonly bool _isLevel;
    private readonly double _fall;

    public BedSurface(WaterPaths paths, Perimeter perimeter, Fall fall)
    {
        (_paths, _reach, _isLevel, _fall) = (paths, new(paths), perimeter == Perimeter.Level, fall.Part);
        Catchment = new(paths);
    }

    public WaterPaths Paths => _paths;

    public Catchment Catchment { get; }

    /// <summary>How high its highest place stands over the drain.</summary>
    public double Rise => _fall * Catchment.Farthest;

    /// <summary>How much lies above the drain's level, in cubic millimetres.</summary>
    public double Volume => _isLevel
        // A level edge over a place makes a cone upside down, over a line a wedge.
        ? Rise * ((2 * Catchment.Fanned / 3) + (Catchment.Beside / 2))
        : _fall * Catchment.Ways;

    /// <summary>The gentlest and the steepest fall.</summary>
    public (double Least, double Most) Falls => (_fall, _isLevel ? Rise / Catchment.Nearest.Length : _fall);

    /// <summary>How high it stands over the drain at a place of the floor.</summary>
    public double At(Place place)
    {
        place = _paths.Floor.Onto(place);
        if (!_isLevel) return _fall * _paths.From(place);
        var (length, last) = _paths.FromDrain(place);
        if (length <= OpenFloor.Hair) return 0;
        if (double.IsInfinity(length)) return Rise;
        var way = (place - last).Unit;
        var reach = Math.Max(Beside(Aside), Beside(-Aside));
        return reach <= 0 ? Rise : Rise * Math.Min(1, length / reach);

        double Beside(double aside)
        {
            // Beside a channel ways keep side by side, at its ends and at a drain they turn.
            var channel = _paths.Channels.FirstOrDefault(channel => channel.Nearest(place).To(last) <= OpenFloor.Hair && (last - channel.From).Along(channel.Way) is var at && at > OpenFloor.Hair && at < channel.Length - OpenFloor.Hair);
            return channel is not null
                ? _reach.Of(last + (channel.Way * (aside * 100)), 0, way).Length
                : _reach.Of(last, 0, (way + (way.Left * aside)).Unit).Length;
        }
    }
}
