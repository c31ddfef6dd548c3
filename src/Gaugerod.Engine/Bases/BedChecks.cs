using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bases;

/// <summary>Looks whether a bed can lie as it was asked for.</summary>
internal static class BedChecks
{
    // What of a floor may be hidden by a hair only.
    private const double Whole = 1e-6;

    // A drain that stands so near, in millimetres, touches.
    private const double Clear = 0.4;

    public static bool Hold(DrawnFace face, Falls falls, WaterPaths paths, BedSurface surface, Remarks remarks)
    {
        var (before, bed, path) = (remarks.Faults.Count, falls.Bed!, face.Path + ".falls");
        if (bed.Perimeter == Perimeter.Level && surface.Catchment.Hidden > Whole * paths.Floor.Area)
        {
            // A drain that folds run to says so itself.
            if (falls.Drain is null || paths.Floor.HasStanding) Hidden(face, path, paths, remarks);
            return false;
        }

        if (bed.Perimeter == Perimeter.Level && surface.Catchment.Nearest is { Length: < Clear, Side: var side })
        {
            var wall = side >= 0 && side < face.Outline.Sides.Count ? $"the edge \"{face.Outline.Sides[side].Name}\"" : "what stands on the floor";
            remarks.Faults.Add(Unlevel(path, $"a level edge, and a drain that meets {wall}", "a level edge where every drain stands clear of it: where both meet, nothing is left to fall"));
            return false;
        }

        if (bed.Curb is { } curb && Highest(face, surface, _ => true) is var (rise, highest) && curb <= rise) TooLow("curb", curb, rise, highest);
        if (bed.Threshold is { } threshold)
        {
            if (!face.Outline.Sides.Any(IsThreshold))
            {
                remarks.Faults.Add(new(path + ".threshold", "a threshold's height on a face without a threshold", "an edge of the kind \"threshold\", or no height", "leave it out") { Mends = [new(path + ".threshold", "null")] });
            }
            else if (Highest(face, surface, IsThreshold) is var (at, door) && threshold < at)
            {
                TooLow("threshold", threshold, at, door);
            }
        }

        return remarks.Faults.Count == before;

        void TooLow(string what, Length height, Length rise, string wall)
        {
            var tape = remarks.Tape;
            var nearest = tape.Down(rise) + tape.Mark;
            remarks.Faults.Add(new(
                $"{path}.{what}", $"a {what} {LengthText.Finer(height, tape)} over the drain", $"more than the bed, which stands {LengthText.Finer(rise, tape)} over the drain at \"{wall}\", before any tile",
                LengthText.Finer(nearest, tape)) { Mends = [Mend.Of($"{path}.{what}", nearest, tape)] });
        }
    }

    private static bool IsThreshold(Side side) => side.Edge.Kind == EdgeKind.Threshold;

    /// <summary>How high the bed stands at its edge where it is highest, and at which.</summary>
    private static (Length Over, string Wall)? Highest(DrawnFace face, BedSurface surface, Func<Side, bool> which)
    {
        var points = face.Outline.Ring.Points;
        // Between two corners a wall is highest where the water parts.
        const int Parts = 32;
        return Enumerable.Range(0, points.Count).Where(i => which(face.Outline.Sides[i]))
            .Select(i => (From: Place.Of(points[i]), Way: Place.Of(points[(i + 1) % points.Count]) - Place.Of(points[i]), face.Outline.Sides[i].Name))
            .Select(side => (BedMaker.Of(Enumerable.Range(0, Parts + 1).Max(k => surface.At(side.From + (side.Way * (k / (double)Parts))))), side.Name))
            .Select(at => ((Length Over, string Wall)?)at).MaxBy(at => at!.Value.Over);
    }

    private static void Hidden(DrawnFace face, string path, WaterPaths paths, Remarks remarks)
    {
        var points = face.Outline.Ring.Points;
        var corner = Enumerable.Range(0, points.Count).Where(i => double.IsInfinity(paths.FromDrain(Place.Of(points[i])).Length)).Select(i => (int?)i).FirstOrDefault();
        var what = corner is { } hidden ? $"the corner of \"{face.Outline.Sides[(hidden + points.Count - 1) % points.Count].Name}\" and \"{face.Outline.Sides[hidden].Name}\" at {DrainChecks.Say(points[hidden], remarks)}" : "part of the floor";
        remarks.Faults.Add(Unlevel(path, $"a level edge, and {what} that no drain sees", "a level edge where a drain sees all that falls to it: behind a corner nothing is left to fall"));
    }

    private static Fault Unlevel(string path, string found, string expected) => new(path + ".perimeter", found, expected, "\"constant\", a bed that falls alike along the way of the water")
    {
        Mends = [Mend.Of(path + ".perimeter", "constant")],
    };
}
