using Gaugerod.Engine;
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
    /// <param name="from">Where it begins.</param>
    /// <param name="through">What it goes through.</param>
    /// <param name="to">The corner.</param>
    /// <param name="corner">Where the corner stands in the file.</param>
    /// <param name="corners">How many corners the outline has.</param>
    /// <param name="values">Takes what is wrong.</param>
    public static Arc? ArcOf(Point from, Through through, Point to, string corner, int corners, Values values)
    {
        if (from == to)
        {
            values.Log.AddSaid(through.At, "an arc back to the corner it begins at", "an arc between two corners", "two arcs of half a circle each");
        }
        else if (through.Point == from || through.Point == to)
        {
            Straight($"one of the arc's own ends, {Said(through.Point, values)}", "a point on the arc between its two ends");
        }
        else if (Arc.Of(from, through.Point, to) is not { } arc)
        {
            Straight("a point on the straight line through the arc's two ends: an arc of no radius", "a point beside that line");
        }
        else if (arc.Radius > LargestRadius.Steps)
        {
            var radius = LengthText.Nearest(Length.FromSteps((long)Math.Min(arc.Radius, LengthRange.Position.Most.Steps * 1e6)), values.Tape);
            Straight($"an arc of a radius of {radius}", $"a radius of at most {LengthText.Nearest(LargestRadius, values.Tape)}");
        }
        else
        {
            return arc;
        }

        return null;

        // Two sides alone make nothing when one of them is straight: there the arc is to be half a circle.
        void Straight(string found, string expected)
        {
            if (corners > 2)
            {
                values.Log.AddSaid(through.At, found, expected, $"{Said(to, values)} alone: a straight side", [Mend.Of(corner, to.X, to.Y, values.Tape)]);
                return;
            }

            var (right, up) = (to.X - from.X, to.Y - from.Y);
            var half = new Point(Length.FromSteps((from.X + to.X + up).Steps / 2), Length.FromSteps((from.Y + to.Y - right).Steps / 2));
            values.Log.AddSaid(through.At, found, expected, $"{Said(half, values)}, half a circle", [Mend.Of(through.At.Path, half.X, half.Y, values.Tape)]);
        }
    }

    public static Point? Place(Entry? entry, Values values)
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
