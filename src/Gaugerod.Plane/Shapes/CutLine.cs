namespace Gaugerod.Plane.Shapes;

/// <summary>Where a side crosses a cut: how far along the cut, an exact fraction of a step, and which way the side goes on from there.</summary>
/// <param name="Numerator">The place along the cut, over <paramref name="Denominator"/>.</param>
/// <param name="Denominator">More than zero.</param>
/// <param name="Rise">How the side goes on along the cut while it goes <paramref name="Denominator"/> inwards.</param>
/// <param name="At">The place brought to whole steps.</param>
/// <param name="Chain">The chain of sides it begins or ends.</param>
/// <param name="Entering">Whether the side comes in there.</param>
internal readonly record struct Crossing(Int128 Numerator, long Denominator, long Rise, (long X, long Y) At, int Chain, bool Entering)
{
    public static int FromBelow(Crossing one, Crossing other)
    {
        var place = (one.Numerator * other.Denominator).CompareTo(other.Numerator * one.Denominator);
        // Two sides that start from one point of the cut are in the order in which they fan out inwards.
        return place != 0 ? place : ((Int128)one.Rise * other.Denominator).CompareTo((Int128)other.Rise * one.Denominator);
    }
}

/// <summary>A straight cut; what lies to one side of it is kept. Along it, "below" is where the kept side lies to the right of one who looks up.</summary>
internal interface ICutLine
{
    /// <summary>Whether a corner lies on the kept side, not on the line itself.</summary>
    bool Keeps(in TaggedCorner corner);

    /// <summary>Where a side from a corner that is not kept to one that is crosses the cut.</summary>
    Crossing Cross(in TaggedCorner outside, in TaggedCorner inside, int chain, bool entering);
}

/// <summary>A plumb or level cut; what lies to the right of it is kept, once all is turned clockwise by so many quarters.</summary>
internal readonly struct UprightCut : ICutLine
{
    private readonly long _at, _cos, _sin;

    /// <param name="at">Where it stands, after the turn.</param>
    /// <param name="quarters">The turn: none for a left side, one for a lower, two for a right, three for an upper.</param>
    public UprightCut(long at, int quarters) => (_at, (_cos, _sin)) = (at, quarters switch { 0 => (1, 0), 1 => (0, 1), 2 => (-1, 0), _ => (0, -1) });

    public bool Keeps(in TaggedCorner corner) => Right(corner) > _at;

    public Crossing Cross(in TaggedCorner outside, in TaggedCorner inside, int chain, bool entering)
    {
        var (right, up) = (Right(outside), Up(outside));
        var (run, rise) = (Right(inside) - right, Up(inside) - up);
        var numerator = Math.BigMul(up, run) + Math.BigMul(_at - right, rise);
        var crossed = Grid.NearestStep(numerator, run);
        return new(numerator, run, rise, ((_cos * _at) - (_sin * crossed), (_sin * _at) + (_cos * crossed)), chain, entering);
    }

    private long Right(in TaggedCorner corner) => (_cos * corner.X) + (_sin * corner.Y);

    private long Up(in TaggedCorner corner) => (_cos * corner.Y) - (_sin * corner.X);
}

/// <summary>
/// A cut from one place to another along a side of an outline; what lies to the left of it is kept. Places must lie within
/// 2^24 steps (5 m) of the origin: then the fractions, of up to 2^73 over 2^49, can be compared without loss.
/// </summary>
internal readonly struct SlantedCut : ICutLine
{
    private readonly (long X, long Y) _from, _to;
    private readonly long _run, _rise;
    private readonly int _before, _after;

    /// <param name="from">Where the outline's side begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="before">The tag of the outline's side before it.</param>
    /// <param name="after">The tag of the side after it.</param>
    public SlantedCut((long X, long Y) from, (long X, long Y) to, int before, int after)
    {
        (_from, _to, _before, _after) = (from, to, before, after);
        (_run, _rise) = (to.X - from.X, to.Y - from.Y);
    }

    public bool Keeps(in TaggedCorner corner) => Side(corner) > 0;

    public Crossing Cross(in TaggedCorner outside, in TaggedCorner inside, int chain, bool entering)
    {
        var (before, after) = (-Side(outside), Side(inside));
        var whole = before + after;
        var (run, rise) = (inside.X - outside.X, inside.Y - outside.Y);
        var (x, y) = (Math.BigMul(outside.X, whole) + Math.BigMul(run, before), Math.BigMul(outside.Y, whole) + Math.BigMul(rise, before));
        // The place along the cut is read off on the axis that the cut is nearer to, against the way it goes: so the kept side is to the right of one who looks up.
        var level = Math.Abs(_run) >= Math.Abs(_rise);
        var downwards = (level ? _run : _rise) > 0 ? -1 : 1;
        // Two sides of the outline meet in its corner, wherever rounding may have brought the one already cut.
        var crossed = entering ? outside.Tag : inside.Tag;
        var at = crossed == _before && Beside(outside, inside, _from) ? _from
            : crossed == _after && Beside(outside, inside, _to) ? _to
            : (Grid.NearestStep(x, whole), Grid.NearestStep(y, whole));
        return new((level ? x : y) * downwards, whole, (level ? run : rise) * downwards, at, chain, entering);
    }

    /// <summary>Whether a place lies neither before a side nor beyond it. Where two sides of the outline are almost in line, what is cut a second time by rounding alone ends far from their corner.</summary>
    private static bool Beside(in TaggedCorner a, in TaggedCorner b, (long X, long Y) place)
    {
        var (run, rise) = (b.X - a.X, b.Y - a.Y);
        var along = (run * (place.X - a.X)) + (rise * (place.Y - a.Y));
        return along >= 0 && along <= (run * run) + (rise * rise);
    }

    private long Side(in TaggedCorner corner) => (_run * (corner.Y - _from.Y)) - (_rise * (corner.X - _from.X));
}
