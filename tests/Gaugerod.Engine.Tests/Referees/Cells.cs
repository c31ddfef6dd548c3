using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>Where a bond lays its tiles, by the words of the trade alone: so many tiles and joints along, so many up, each course set off from the last.</summary>
internal static class Cells
{
    /// <summary>Every tile that has some of a box in its inside.</summary>
    public static List<Box> Around(Box around, RandomRun run, long x, long y)
    {
        var upright = run.Bond.Lay == Lay.Upright;
        var (left, low, right, top) = upright
            ? (around.Bottom.Steps, around.Left.Steps, around.Top.Steps, around.Right.Steps)
            : (around.Left.Steps, around.Bottom.Steps, around.Right.Steps, around.Top.Steps);
        var (u, v) = upright ? (y, x) : (x, y);
        var (w, h, j) = (run.Product.Width.Steps, run.Product.Height.Steps, run.Joint.Steps);
        var cells = new List<Box>();
        var courses = Math.Max(Math.Abs(low - v), Math.Abs(top - v)) / (h + j);
        for (var k = -courses - 2; k <= courses + 2; k++)
        {
            var bottom = v + (k * (h + j));
            if (bottom + h <= low || bottom >= top) continue;
            var start = u + Offset(run.Bond, w + j, k);
            var columns = Math.Max(Math.Abs(left - start), Math.Abs(right - start)) / (w + j);
            for (var c = -columns - 2; c <= columns + 2; c++)
            {
                var at = start + (c * (w + j));
                if (at + w <= left || at >= right) continue;
                cells.Add(upright ? Of(bottom, at, bottom + h, at + w) : Of(at, bottom, at + w, bottom + h));
            }
        }

        return cells;
    }

    /// <summary>What course k is set off by: k parts of a tile and its joint, or none and one by turns.</summary>
    public static long Offset(BondRequest bond, long period, long k)
    {
        if (bond is not BondRequest.Running running) return 0;
        var part = (long)Math.Floor((((decimal)period * running.Numerator) / running.Denominator) + 0.5m);
        return running.Stepping == Stepping.OneWay ? k * part : (k % 2 == 0 ? 0 : part);
    }

    private static Box Of(long left, long bottom, long right, long top) =>
        new(Length.FromSteps(left), Length.FromSteps(bottom), Length.FromSteps(right), Length.FromSteps(top));
}
