namespace Gaugerod.Engine.Bases;

/// <summary>
/// What of a floor runs to which outlet, and what that comes to: area, and the sum of all ways to the drain. Between two ways
/// that end at one side both have a closed form; along a ridge they are reckoned by Gauss's rule of five places.
/// </summary>
internal sealed class Catchment
{
    // Where what ends the ways changes, both are alike: a hundred-millionth of a stretch is far below what is told. No stretch has so many changes.
    private const int Deepest = 40;
    private const double Near = 1e-8;

    // How often a stretch is looked at: nine times, and where its parts do not make up the floor, more often.
    private const int FewLooks = 8, ManyLooks = 512;
    private const double Whole = 1e-7;
    private static readonly double[] s_places = [-0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640];
    private static readonly double[] s_weights = [0.2369268850561891, 0.4786286704993665, 0.5688888888888889, 0.4786286704993665, 0.2369268850561891];

    private readonly Reach _reach;
    private readonly OpenFloor _floor;
    private readonly double[] _looks = [];

    public Catchment(WaterPaths paths)
    {
        (_floor, _reach) = (paths.Floor, new(paths));
        var area = _floor.Area;
        for (var looks = FewLooks; looks <= ManyLooks; looks *= 4)
        {
            _looks = [.. Enumerable.Range(0, looks + 1).Select(k => 0.999999 * (1 - (2.0 * k / looks)))];
            (Fanned, Beside, Hidden, Ways, Farthest, Nearest) = (0, 0, 0, 0, 0, (double.PositiveInfinity, -1));
            foreach (var outlet in paths.Outlets) Fan(outlet);
            foreach (var channel in paths.Channels)
            {
                Strip(channel, channel.Way.Left);
                Strip(channel, channel.Way.Left * -1);
            }

            // A ridge that comes and goes between two looks is missed there, and then the parts do not add up.
            if (Math.Abs(Fanned + Beside + Hidden - area) <= Whole * area) break;
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
        var (middle, half) = ((from + to) / 2, (to - from) / 2);
        var first = By(bundle, middle - (_looks[0] * half));
        for (var k = 1; !_reach.IsPlain && deep > 0 && k < _looks.Length; k++)
        {
            if (By(bundle, middle - (_looks[k] * half)) == first) continue;
            // What ends the ways changes between this look and the one before it.
            var (same, other) = (middle - (_looks[k - 1] * half), middle - (_looks[k] * half));
            while (other - same > Near * (to - from))
            {
                var between = (same + other) / 2;
                // Nothing is left between two numbers that are next to each other.
                if (between <= same || between >= other) break;
                if (By(bundle, between) == first) same = between;
                else other = between;
            }

            if (first != Reach.Nothing) Add(bundle, from, other, first);
            Part(bundle, other, to, deep - 1);
            return;
        }

        var by = _reach.IsPlain || deep > 0 ? first : By(bundle, middle);
        if (by != Reach.Nothing) Add(bundle, from, to, by);
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
        // A ridge that runs all but along the ways needs many places.
        const int Fewest = 2, Most = 4096;
        const double Alike = 1e-10;
        var sum = Gauss(bundle, from, to, by, Fewest);
        for (var pieces = 2 * Fewest; pieces <= Most; pieces *= 2)
        {
            var (before, now) = (sum, Gauss(bundle, from, to, by, pieces));
            sum = now;
            if (Math.Abs(now.Ways - before.Ways) <= Alike * now.Ways && Math.Abs(now.Area - before.Area) <= Alike * now.Area) break;
        }

        return sum;
    }

    private (double Area, double Ways) Gauss(Bundle bundle, double from, double to, int by, int pieces)
    {
        var (area, ways, half) = (0.0, 0.0, (to - from) / (2 * pieces));
        for (var piece = 0; piece < pieces; piece++)
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
