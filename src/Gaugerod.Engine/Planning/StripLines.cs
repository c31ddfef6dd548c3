using Gaugerod.Engine.Lines;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// The lines of a strip of a border. Along it a line is snapped at its inner side, which is out on the wall: at its outer side,
/// a joint off the corner, no line can be snapped.
/// </summary>
internal static class StripLines
{
    /// <summary>The strip's plan with the line along it at its inner side; as it is where the strip runs askew.</summary>
    public static RunPlan Snapped(RunPlan strip)
    {
        var face = strip.Faces[0].Face;
        var inner = face.Edges[2];
        if ((inner.From.X == inner.To.X) == (inner.From.Y == inner.To.Y)) return strip;
        var (axis, at) = inner.From.Y == inner.To.Y ? (Axis.Level, inner.From.Y) : (Axis.Plumb, inner.From.X);
        var across = strip.Lines.Where(line => line.Axis != axis).Take(1).Select(line => strip.IsPattern ? line with { Why = Corner(axis) } : line);
        var along = new SnapLine(axis, face.Name, at, strip.IsPattern ? "The strip's inner side. " + Corner(axis == Axis.Level ? Axis.Plumb : Axis.Level) : "The strip's inner side: its tiles come up to it.");
        var lines = axis == Axis.Level ? across.Prepend(along) : across.Append(along);
        // A rod across one course has a mark and no more.
        var rods = strip.Rods.Where(rod => rod.Axis == axis || rod.Marks.Count > 1).Select(rod => rod.Axis == axis ? rod : Moved(rod, at));
        return strip with { Lines = lines.ToSequence(), Rods = rods.ToSequence() };

        static string Corner(Axis other) => $"Where this line and the {(other == Axis.Level ? "level" : "plumb")} line cross stands a corner of the first tile.";
    }

    private static Rod Moved(Rod rod, Length to) => rod with { Start = to, Marks = rod.Marks.Select(mark => mark + rod.Start - to).ToSequence() };
}
