using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>A corner of an outline as the file gives it.</summary>
/// <param name="To">Where it is; null when that cannot be used.</param>
/// <param name="Arrives">What the arc that arrives here goes through; null where the side that arrives is straight.</param>
internal sealed record FileCorner(Point? To, Through? Arrives);

/// <summary>A place that an arc goes through, and where the file says so.</summary>
internal sealed record Through(Point Point, Entry At);

/// <summary>Reads a corner of an outline, and the arc that leads to it.</summary>
internal static class CornerReader
{
    private const string ACorner = "a corner [x, y]: so far from the left, so far up";

    private static readonly Length LargestRadius = Length.FromMillimetres(100_000);

    /// <summary>The corner; null, and a fault, when it cannot be used.</summary>
    public static FileCorner? Read(Entry entry, Values values)
    {
        if (entry is not Entry.Group group) return Place(entry, values) is { } plain ? new(plain, null) : null;
        if (Fields.Open(group, Forms.Arc, values) is not { } fields) return null;
        var (to, through) = (Place(fields["to"], values), Place(fields["through"], values));
        return to is { } end && through is { } point ? new(end, new(point, fields["through"]!)) : null;
    }

    /// <summary>The arc that arrives at a corner; null, and a fault, where there is none.</summary>
    public static Arc? ArcOf(Point from, Through through, Point to, Values values)
    {
        if (from == to)
        {
            values.Log.AddSaid(through.At, "an arc back to the corner it begins at", "an arc between two corners", "two arcs of half a circle each");
        }
        else if (through.Point == from || through.Point == to)
        {
            values.Log.AddSaid(through.At, $"one of the arc's own ends, {Said(through.Point, values)}", "a point on the arc between its two ends", "the middle of the arc");
        }
        else if (Arc.Of(from, through.Point, to) is not { } arc)
        {
            values.Log.AddSaid(through.At, "a point on the straight line through the arc's two ends: an arc of no radius", "a point beside that line", $"{Said(to, values)} alone: a straight side");
        }
        else if (arc.Radius > LargestRadius.Steps)
        {
            var radius = LengthText.Nearest(Length.FromSteps((long)Math.Min(arc.Radius, LengthRange.Position.Most.Steps * 1e6)), values.Tape);
            values.Log.AddSaid(through.At, $"an arc of a radius of {radius}", $"a radius of at most {LengthText.Nearest(LargestRadius, values.Tape)}", $"{Said(to, values)} alone: a straight side");
        }
        else
        {
            return arc;
        }

        return null;
    }

    private static Point? Place(Entry? entry, Values values)
    {
        if (entry is null) return null;
        if (entry is not Entry.List { Items: [var x, var y] })
        {
            values.Log.Add(entry, ACorner);
            return null;
        }

        return (values.Length(x, LengthRange.Position), values.Length(y, LengthRange.Position)) is ({ } right, { } up) ? new Point(right, up) : null;
    }

    private static string Said(Point point, Values values) => $"[{LengthText.Finer(point.X, values.Tape)}, {LengthText.Finer(point.Y, values.Tape)}]";
}
