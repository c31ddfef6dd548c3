using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A short arrow with a head at either end: this way the grain runs. Where there is no room for it, there is none.</summary>
internal static class GrainArrow
{
    private const double Air = 1.2, Head = 1.6, HalfHead = 0.45, Least = 4.5;

    /// <summary>Draws one in an area, at its middle or near it.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="rings">The area on the paper.</param>
    /// <param name="way">Which way the grain runs there, counter-clockwise from level.</param>
    /// <param name="longest">How long it may be, in millimetres.</param>
    public static void Draw(Pen pen, Sequence<Sequence<Spot>> rings, Angle way, double longest)
    {
        var heading = Heading.Of(way);
        var (x, y) = (heading.Cos, -heading.Sin);
        var frame = Frame.Around(rings[0]);
        for (var length = longest; length >= Least; length -= 1.5)
        {
            foreach (var (right, down) in Places)
            {
                var middle = new Spot(frame.Middle.X + (right * frame.Width), frame.Middle.Y + (down * frame.Height));
                Spot from = new(middle.X - (x * length / 2), middle.Y - (y * length / 2)), to = new(middle.X + (x * length / 2), middle.Y + (y * length / 2));
                if (!Region.Holds(rings, Frame.Around([from, to]).Grown(Air))) continue;
                pen.Line(from, to, Stroke.Dimension);
                Point(pen, from, x, y);
                Point(pen, to, -x, -y);
                return;
            }
        }
    }

    private static readonly (double Right, double Down)[] Places =
        [(0, 0), (0, 0.2), (0, -0.2), (0.2, 0), (-0.2, 0), (0.3, 0.3), (-0.3, 0.3), (0.3, -0.3), (-0.3, -0.3)];

    private static void Point(Pen pen, Spot tip, double x, double y)
    {
        var back = new Spot(tip.X + (x * Head), tip.Y + (y * Head));
        pen.Area(new[] { tip, new(back.X - (y * HalfHead), back.Y + (x * HalfHead)), new(back.X + (y * HalfHead), back.Y - (x * HalfHead)) }.ToSequence(), Fill.Ink);
    }
}
