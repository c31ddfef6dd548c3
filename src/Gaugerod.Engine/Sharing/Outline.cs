using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Sharing;

/// <summary>A corner of an outline, in steps from the tile's lower left corner.</summary>
internal readonly record struct Spot(long X, long Y);

/// <summary>What is cut out of a blank that does not stay a rectangle, where it lies in the tile: corners counter-clockwise, the lowest first.</summary>
internal sealed class Outline : IEquatable<Outline>
{
    private readonly Spot[] _corners;

    /// <param name="corners">The corners, counter-clockwise from any.</param>
    public Outline(ReadOnlySpan<Spot> corners)
    {
        var first = 0;
        for (var i = 1; i < corners.Length; i++)
        {
            if (Compare(corners[i], corners[first]) < 0) first = i;
        }

        _corners = [.. corners[first..], .. corners[..first]];
    }

    /// <summary>The outline of a ring that runs counter-clockwise.</summary>
    public static Outline Of(Ring ring) => new([.. ring.Points.Select(point => new Spot(point.X.Steps, point.Y.Steps))]);

    /// <summary>A fixed order of outlines, none before any.</summary>
    public static Comparer<Outline?> Order { get; } = Comparer<Outline?>.Create(Compare);

    public ReadOnlySpan<Spot> Corners => _corners;

    /// <summary>Whether it bends inwards nowhere.</summary>
    public bool IsConvex => _corners.Length >= 3 && !Enumerable.Range(0, _corners.Length).Any(Reenters);

    /// <summary>Its area in square steps.</summary>
    public double Area
    {
        get
        {
            Int128 twice = 0;
            for (var i = 0; i < _corners.Length; i++)
            {
                var (a, b) = (_corners[i], Next(i));
                twice += ((Int128)a.X * b.Y) - ((Int128)b.X * a.Y);
            }

            return (double)twice / 2;
        }
    }

    /// <summary>The corners at which it bends inwards.</summary>
    public IEnumerable<Spot> Inner => Enumerable.Range(0, _corners.Length).Where(Reenters).Select(i => Next(i));

    /// <summary>Turned so many quarters counter-clockwise together with its tile.</summary>
    public Outline Turned(int quarters, Stock stock) => new(Array.ConvertAll(_corners, c => quarters switch
    {
        0 => c,
        1 => new Spot(stock.Height - c.Y, c.X),
        2 => new Spot(stock.Width - c.X, stock.Height - c.Y),
        _ => new Spot(c.Y, stock.Width - c.X),
    }));

    public bool Equals(Outline? other) => other is not null && _corners.AsSpan().SequenceEqual(other._corners);

    public override bool Equals(object? obj) => Equals(obj as Outline);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var corner in _corners) hash.Add(corner);
        return hash.ToHashCode();
    }

    private static int Compare(Outline? one, Outline? other)
    {
        if (one is null || other is null) return (one is null ? 0 : 1) - (other is null ? 0 : 1);
        for (var i = 0; i < Math.Min(one._corners.Length, other._corners.Length); i++)
        {
            if (Compare(one._corners[i], other._corners[i]) is not 0 and var order) return order;
        }

        return one._corners.Length.CompareTo(other._corners.Length);
    }

    // From below up, then from left to right.
    private static int Compare(Spot one, Spot other) => (one.Y, one.X).CompareTo((other.Y, other.X));

    private Spot Next(int i) => _corners[(i + 1) % _corners.Length];

    // Whether it turns right after its corner i, at the next.
    private bool Reenters(int i)
    {
        var (a, b, c) = (_corners[i], Next(i), Next(i + 1));
        return ((Int128)(b.X - a.X) * (c.Y - b.Y)) - ((Int128)(b.Y - a.Y) * (c.X - b.X)) < 0;
    }
}
