using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>A round hole as it is cut from the field, as the courses see it.</summary>
internal readonly struct Drilled
{
    private readonly (long Along, long Across)[] _corners;

    public Drilled(TaggedCorner[] ring, Lay lay)
    {
        _corners = [.. ring.Select(corner => lay == Lay.Level ? (corner.X, corner.Y) : (corner.Y, corner.X))];
        (LeastAlong, MostAlong) = (_corners.Min(corner => corner.Along), _corners.Max(corner => corner.Along));
        (LeastAcross, MostAcross) = (_corners.Min(corner => corner.Across), _corners.Max(corner => corner.Across));
    }

    public long LeastAlong { get; }

    public long MostAlong { get; }

    public long LeastAcross { get; }

    public long MostAcross { get; }

    /// <summary>Whether a side of the hole runs through the inside of a box: a box wholly in the hole has nothing left to cut.</summary>
    public bool RunsThrough(long left, long bottom, long right, long top)
    {
        var from = _corners[^1];
        foreach (var to in _corners)
        {
            if (Math.Max(from.Along, to.Along) > left && Math.Min(from.Along, to.Along) < right
                && Math.Max(from.Across, to.Across) > bottom && Math.Min(from.Across, to.Across) < top)
            {
                // All four corners on one side of the line, or on it: it passes by.
                var (a, b) = (to.Along - from.Along, to.Across - from.Across);
                var (one, two, three, four) = (
                    (a * (bottom - from.Across)) - (b * (left - from.Along)), (a * (bottom - from.Across)) - (b * (right - from.Along)),
                    (a * (top - from.Across)) - (b * (left - from.Along)), (a * (top - from.Across)) - (b * (right - from.Along)));
                if (Math.Min(Math.Min(one, two), Math.Min(three, four)) < 0 && Math.Max(Math.Max(one, two), Math.Max(three, four)) > 0) return true;
            }

            from = to;
        }

        return false;
    }
}
