using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Checks a ring that was given by its corners, and turns it counter-clockwise with its edges.</summary>
internal static class RingDrawing
{
    private static readonly Length Largest = Length.FromMillimetres(100_000);

    public static DrawnRing? Draw(string name, string path, Ring ring, Sequence<Side> sides, Remarks remarks)
    {
        var count = ring.Points.Count;
        if (count < 3)
        {
            remarks.Refuse($"{path}.outline", Number(count, "corner"), "three corners or more");
            return null;
        }

        if (sides.Count != count)
        {
            remarks.Refuse(
                $"{path}.edges", Number(sides.Count, "edge"), $"{Number(count, "edge")}, one for each side of the outline",
                sides.Count < count ? "add the edges that are missing" : "take out the edges that are too many");
            return null;
        }

        var corners = EdgeSpans.CornersOf([.. sides.Select(side => side.Edge)]);
        for (var i = 0; i < count; i++)
        {
            var p = ring.Points[i];
            if (p.X.Abs() <= Largest && p.Y.Abs() <= Largest) continue;
            remarks.Refuse(Corner(path, corners[i]), $"{remarks.Say(p.X)}, {remarks.Say(p.Y)}", $"a corner within {remarks.Say(Largest)} of the origin");
            return null;
        }

        if (RingChecks.FirstCrossing(ring) is var (first, second))
        {
            remarks.Refuse(
                Corner(path, corners[second]),
                corners[first] == corners[second] ? $"the side '{sides[first].Name}', which crosses itself" : $"the side '{sides[second].Name}', from here on, which crosses or touches side '{sides[first].Name}'",
                "an outline that crosses itself nowhere", "the corners in order round the outline, each once, and an arc through a point that keeps it clear of the other sides");
            return null;
        }

        if (ring.DoubledArea > 0) return new(name, path, ring, sides);

        // The first corner stays the first. Run backwards, the side that led into a corner leads out of it.
        var points = new[] { ring.Points[0] }.Concat(ring.Points.Skip(1).Reverse()).ToSequence();
        return new(name, path, new(points), sides.Reverse().ToSequence());
    }

    private static string Corner(string path, int index) => string.Create(CultureInfo.InvariantCulture, $"{path}.outline[{index}]");

    private static string Number(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
