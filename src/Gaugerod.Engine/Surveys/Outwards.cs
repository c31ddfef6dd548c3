using Gaugerod.Plane;

namespace Gaugerod.Engine.Surveys;

/// <summary>Moves a shape's sides out by what still comes off them.</summary>
internal static class Outwards
{
    /// <summary>The places with the corners where the moved sides meet; in mm.</summary>
    public static double[] Move(double[] places, int corners, Sequence<ComesOff> off)
    {
        if (off.Count == 0) return places;
        var by = new double[corners];
        foreach (var side in off) by[side.Side] += SurveyNetwork.Millimetres(side.Thickness);
        var moved = (double[])places.Clone();
        for (var at = 0; at < corners; at++)
        {
            var before = (at + corners - 1) % corners;
            var (ax, ay) = Heading(places, before, at);
            var (bx, by2) = Heading(places, at, (at + 1) % corners);
            var turn = (ax * by2) - (ay * bx);

            // Outwards is to the right of a side that runs counter-clockwise. Where two sides are one line, both move as the second does.
            var (one, other) = (by[before], by[at]);
            var (x, y) = Math.Abs(turn) < 1e-6
                ? (other * by2, -other * bx)
                : (((other * ax) - (one * bx)) / turn, ((other * ay) - (one * by2)) / turn);
            (moved[2 * at], moved[(2 * at) + 1]) = (places[2 * at] + x, places[(2 * at) + 1] + y);
        }

        return moved;
    }

    private static (double X, double Y) Heading(double[] places, int from, int to)
    {
        var (dx, dy) = (places[2 * to] - places[2 * from], places[(2 * to) + 1] - places[(2 * from) + 1]);
        var length = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
        return (dx / length, dy / length);
    }
}
