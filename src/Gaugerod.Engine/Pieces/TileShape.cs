using Gaugerod.Engine.Bonds;

namespace Gaugerod.Engine.Pieces;

/// <summary>A side of a field as the bond lies: a place on it, its direction, its length, in steps; tile lies to its left.</summary>
internal readonly record struct EdgeLine(double X, double Y, double AlongX, double AlongY, double Length)
{
    public static EdgeLine Of(long fromX, long fromY, long toX, long toY)
    {
        var (x, y) = ((double)(toX - fromX), (double)(toY - fromY));
        var length = Math.Sqrt((x * x) + (y * y));
        return new(fromX, fromY, x / length, y / length, length);
    }

    /// <summary>How far square to the side, into the field, a place lies.</summary>
    public double Inwards(double x, double y) => ((y - Y) * AlongX) - ((x - X) * AlongY);

    /// <summary>How far along the side a place lies.</summary>
    public double Along(double x, double y) => ((x - X) * AlongX) + ((y - Y) * AlongY);

    /// <summary>Whether another side faces this one, the two no further from parallel than <see cref="Rake"/>.</summary>
    public bool Faces(in EdgeLine other) => (AlongX * other.AlongX) + (AlongY * other.AlongY) < -Rake.Cosine;
}

/// <summary>A stretch of a side of the field, from and to along it, that lies in a tile.</summary>
internal readonly record struct Chord(double From, double To);

/// <summary>
/// A convex tile as the half-planes whose common part it is, for the question how much of it a straight side of the field
/// leaves. The leg at a side is the greatest depth of tile square to the side anywhere along where the side runs
/// through the tile: of a straight cut what is left of the width, of a triangle its height over the cut.
/// </summary>
internal sealed class TileShape
{
    private readonly double[] _x, _y, _reach;
    private readonly double[] _cornersX, _cornersY;

    public TileShape(BondTile tile)
    {
        var points = tile.Shape.Points;
        (_x, _y, _reach) = (new double[points.Count], new double[points.Count], new double[points.Count]);
        _cornersX = [.. points.Select(point => (double)point.X.Steps)];
        _cornersY = [.. points.Select(point => (double)point.Y.Steps)];
        for (var k = 0; k < _x.Length; k++)
        {
            var next = (k + 1) % _x.Length;
            var (run, rise) = (_cornersX[next] - _cornersX[k], _cornersY[next] - _cornersY[k]);
            var length = Math.Sqrt((run * run) + (rise * rise));
            (_x[k], _y[k]) = (rise / length, -run / length);
            _reach[k] = (_x[k] * _cornersX[k]) + (_y[k] * _cornersY[k]);
        }
    }

    public int Sides => _x.Length;

    /// <summary>Where side k looks, outwards; of length 1.</summary>
    public (double X, double Y) Outwards(int k) => (_x[k], _y[k]);

    /// <summary>How far the tile reaches in a direction of length 1, in the motif's own place.</summary>
    public double Reach(double x, double y)
    {
        var most = double.MinValue;
        for (var k = 0; k < _cornersX.Length; k++) most = Math.Max(most, (_cornersX[k] * x) + (_cornersY[k] * y));
        return most;
    }

    /// <summary>How far into the field the tile's corners lie from a side, least and most, the tile's motif moved to a place.</summary>
    public (double Least, double Most) Span(in EdgeLine edge, double x, double y)
    {
        var (least, most) = (double.MaxValue, double.MinValue);
        for (var k = 0; k < _cornersX.Length; k++)
        {
            var inwards = edge.Inwards(_cornersX[k] + x, _cornersY[k] + y);
            (least, most) = (Math.Min(least, inwards), Math.Max(most, inwards));
        }

        return (least, most);
    }

    /// <summary>Where a side runs through the tile's inside; from not less than to when it does not.</summary>
    /// <param name="edge">The side.</param>
    /// <param name="x">How far right of the motif's own place the tile lies.</param>
    /// <param name="y">How far above it.</param>
    /// <param name="out">By how much each of the tile's sides is let out; let in below zero.</param>
    public Chord Through(in EdgeLine edge, double x, double y, ReadOnlySpan<double> @out)
    {
        var (from, to) = (0.0, edge.Length);
        var (startX, startY) = (edge.X - x, edge.Y - y);
        for (var k = 0; k < _x.Length; k++)
        {
            var room = _reach[k] + @out[k] - ((_x[k] * startX) + (_y[k] * startY));
            var along = (_x[k] * edge.AlongX) + (_y[k] * edge.AlongY);
            if (along > Level) to = Math.Min(to, room / along);
            else if (along < -Level) from = Math.Max(from, room / along);
            else if (room <= 0) return new(0, 0);
        }

        return new(from, to);
    }

    /// <summary>Where a side cuts the tile; null when it takes off, or leaves, less than a hair.</summary>
    public Chord? Crossed(in EdgeLine edge, double x, double y, ReadOnlySpan<double> exact)
    {
        var (least, most) = Span(edge, x, y);
        if (least >= -PatternCutter.Hair || most <= PatternCutter.Hair) return null;
        var chord = Through(edge, x, y, exact);
        return chord.To - chord.From > PatternCutter.Hair ? chord : null;
    }

    /// <summary>The greatest depth of tile square to the side, anywhere along a chord.</summary>
    public double Leg(in EdgeLine edge, double x, double y, in Chord chord, ReadOnlySpan<double> @out)
    {
        Span<double> depth = stackalloc double[_x.Length], slope = stackalloc double[_x.Length];
        var count = 0;
        var (startX, startY) = (edge.X - x, edge.Y - y);
        for (var k = 0; k < _x.Length; k++)
        {
            // Into the field is a quarter turn left of along.
            var inwards = (_y[k] * edge.AlongX) - (_x[k] * edge.AlongY);
            if (inwards <= Level) continue;
            depth[count] = (_reach[k] + @out[k] - ((_x[k] * startX) + (_y[k] * startY))) / inwards;
            slope[count++] = ((_x[k] * edge.AlongX) + (_y[k] * edge.AlongY)) / -inwards;
        }

        depth = depth[..count];
        slope = slope[..count];
        var most = Math.Max(Least(depth, slope, chord.From), Least(depth, slope, chord.To));
        for (var i = 0; i < count; i++)
        {
            for (var j = i + 1; j < count; j++)
            {
                // The lower of all straight lines is highest where one that climbs meets one that falls.
                if (slope[i] * slope[j] >= 0) continue;
                var at = (depth[j] - depth[i]) / (slope[i] - slope[j]);
                if (at > chord.From && at < chord.To) most = Math.Max(most, Least(depth, slope, at));
            }
        }

        return most;
    }

    // A side so nearly in line with another that they do not meet within 30 m by more than a step.
    private const double Level = 1e-9;

    private static double Least(ReadOnlySpan<double> depth, ReadOnlySpan<double> slope, double at)
    {
        var least = double.MaxValue;
        for (var k = 0; k < depth.Length; k++) least = Math.Min(least, depth[k] + (slope[k] * at));
        return least;
    }
}
