namespace Gaugerod.Engine.Bases;

/// <summary>
/// What of a floor runs to which outlet, and what that comes to: area, and the sum of all ways to the drain. Between two ways
/// that end at one side both have a closed form; along a ridge they are reckoned by Gauss's rule of five places.
/// </summary>
internal sealed class Catchment
{
    // Where what ends the ways changes, both ends are alike: a part of a 2^-18th of the whole is far below what is told.
    private const int Deepest = 18;
    private static readonly double[] s_places = [-0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640];
    private static readonly double[] s_weights = [0.2369268850561891, 0.4786286704993665, 0.5688888888888889, 0.4786286704993665, 0.2369268850561891];

    private readonly Reach _reach;
    private readonly OpenFloor _floor;

    public Catchment(WaterPaths paths)
    {
        (_floor, _reach) = (paths.Floor, new(paths));
        foreach (var outlet in paths.Outlets) Fan(outlet);
        foreach (var channel in paths.Channels)
        {
            Strip(channel, channel.Way.Left);
            Strip(channel, channel.Way.Left * -1);
        }
    }

    /// <summary>The area whose ways end in one place, straight at a drain or a channel's end.</summary>
    public double Fanned { get; private set; }

    /// <summary>The area beside channels.</summary>
    public double Beside { get; private set; }

    /// <summary>The area whose ways go round a corner.</summary>
    public double Hidden { get; private set; }

    /// <summary>All ways to the drain, added up over the area.</summary>
    public double Ways { get; private set; }

    /// <summary>The longest way.</summary>
    public double Farthest { get; private set; }

    /// <summary>The shortest way from a wall or a ridge to the drain, taken square to it, and what wall it is from; below zero a ridge.</summary>
    public (double Length, int Side) Nearest { get; private set; } = (double.PositiveInfinity, -1);

    private void Fan(Outlet outlet)
    {
        if (outlet.Sweep <= 0) return;
        var ends = new List<double> { 0, outlet.Sweep };
        foreach (var corner in _floor.Corners)
        {
            if (corner.To(outlet.At) <= OpenFloor.Hair) continue;
            var turn = (corner - outlet.At).Angle - outlet.From;
            turn -= 2 * Math.PI * Math.Floor(turn / (2 * Math.PI));
            if (turn > 0 && turn < outlet.Sweep) ends.Add(turn);
        }

        // No way turns by more than an eighth at a time.
        for (var turn = Math.PI / 4; turn < outlet.Sweep; turn += Math.PI / 4) ends.Add(turn);
        ends.Sort();
        for (var i = 0; i + 1 < ends.Count; i++)
        {
            if (ends[i + 1] - ends[i] > 1e-12) Part(new(outlet, default, default), outlet.From + ends[i], outlet.From + ends[i + 1], Deepest);
        }
    }

    private void Strip(Channel channel, Place way)
    {
        var ends = new List<double> { 0, channel.Length };
        ends.AddRange(_floor.Corners.Select(corner => (corner - channel.From).Along(channel.Way)).Where(at => at > OpenFloor.Hair && at < channel.Length - OpenFloor.Hair));
        ends.Sort();
        for (var i = 0; i + 1 < ends.Count; i++)
        {
            if (ends[i + 1] - ends[i] > OpenFloor.Hair) Part(new(null, channel, way), ends[i], ends[i + 1], Deepest);
        }
    }

    /// <summary>A bundle of ways: turned about an outlet, or side by side along a channel.</summary>
    private readonly record struct Bundle(Outlet? Outlet, Channel? Channel, Place Across)
    {
        public double Start => Outlet?.Start ?? 0;

        public (Place From, Place Way) At(double at) => Outlet is { } outlet ? (outlet.At, Place.Towards(at)) : (Channel!.From + (Channel.Way * at), Across);
    }

    private void Part(Bundle bundle, double from, double to, int deep)
    {
        var middle = (from + to) / 2;
        var by = By(bundle, middle);
        var alike = _reach.IsPlain || deep == 0;
        if (!alike)
        {
            var step = (to - from) / 2;
            alike = By(bundle, middle - (0.9999 * step)) == by && By(bundle, middle - (0.5 * step)) == by && By(bundle, middle + (0.5 * step)) == by && By(bundle, middle + (0.9999 * step)) == by;
        }

        if (alike)
        {
            if (by != Reach.Nothing) Add(bundle, from, to, by);
            return;
        }

        Part(bundle, from, middle, deep - 1);
        Part(bundle, middle, to, deep - 1);
    }

    private int By(Bundle bundle, double at)
    {
        var (from, way) = bundle.At(at);
        return _reach.Of(from, bundle.Start, way).By;
    }

    private double Length(Bundle bundle, int by, double at)
    {
        var (from, way) = bundle.At(at);
        return _reach.To(by, from, bundle.Start, way);
    }

    private void Add(Bundle bundle, double from, double to, int by)
    {
        var (one, other) = (Length(bundle, by, from), Length(bundle, by, to));
        if (!double.IsFinite(one) || !double.IsFinite(other)) (one, other) = (Length(bundle, by, (from + to) / 2), Length(bundle, by, (from + to) / 2));
        var (area, ways) = by >= 0 ? ToSide(bundle, from, to, by, one, other) : ToRidge(bundle, from, to, by);
        if (bundle.Channel is not null) Beside += area;
        else if (bundle.Outlet is { IsDrain: true }) Fanned += area;
        else Hidden += area;
        Ways += ways + (bundle.Start * area);
        Farthest = Math.Max(Farthest, bundle.Start + Math.Max(one, other));
        foreach (var (at, length) in (ReadOnlySpan<(double, double)>)[(from, one), (to, other)])
        {
            var (place, way) = bundle.At(at);
            var square = bundle.Start + (length * _reach.Square(by, place, way, length));
            if (square < Nearest.Length) Nearest = (square, by);
        }
    }

    private (double Area, double Ways) ToSide(Bundle bundle, double from, double to, int side, double one, double other)
    {
        if (bundle.Outlet is not { } outlet) return ((to - from) * (one + other) / 2, (to - from) * ((one * one) + (one * other) + (other * other)) / 6);
        var off = _floor.OffLine(side, outlet.At);
        // Both ways from the foot of the square on the side's line, in parts of how far the line is.
        var area = one * other * Math.Sin(to - from) / 2;
        var (a, b) = (Foot(from), Foot(to));
        return (area, off * off * off / 6 * Math.Abs(Sum(b) - Sum(a)));

        double Foot(double at)
        {
            var (place, way) = bundle.At(at);
            return (way * _floor.ToLine(side, place, way)).Along(_floor.Along(side)) / off;
        }

        static double Sum(double t) => (t * Math.Sqrt(1 + (t * t))) + Math.Asinh(t);
    }

    private (double Area, double Ways) ToRidge(Bundle bundle, double from, double to, int by)
    {
        const int Pieces = 4;
        var (area, ways, half) = (0.0, 0.0, (to - from) / (2 * Pieces));
        for (var piece = 0; piece < Pieces; piece++)
        {
            for (var k = 0; k < s_places.Length; k++)
            {
                var length = Length(bundle, by, from + (half * ((2 * piece) + 1 + s_places[k])));
                var (ofArea, ofWays) = bundle.Channel is null ? (length * length / 2, length * length * length / 3) : (length, length * length / 2);
                area += half * s_weights[k] * ofArea;
                ways += half * s_weights[k] * ofWays;
            }
        }

        return (area, ways);
    }
}
