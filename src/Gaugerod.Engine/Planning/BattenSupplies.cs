using System.Globalization;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Sharing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>A batten along a wall, under its first whole course.</summary>
/// <param name="Run">The run.</param>
/// <param name="Face">The wall, or the zone of one.</param>
/// <param name="Wall">The whole wall.</param>
/// <param name="Stretches">How long it is from edge to edge of the field; an opening parts it.</param>
internal sealed record Batten(string Run, string Face, string Wall, Sequence<Length> Stretches);

/// <summary>What holds up walls whose first whole course stands over a cut one.</summary>
internal static class BattenSupplies
{
    /// <summary>The battens of a run, wall by wall in its order. A floor carries its first course itself, and what lies below a strip's line is the strip.</summary>
    public static IEnumerable<Batten> Along(Job job, RunPlan run)
    {
        if (run.IsBorder) yield break;
        foreach (var plan in run.Faces)
        {
            if (IsFloor(job, plan.Face.Wall)) continue;
            var stretches = run.Lines.Where(line => line.Axis == Axis.Level && string.Equals(line.Face, plan.Face.Name, StringComparison.Ordinal)).SelectMany(line => Under(run, line, plan)).ToSequence();
            if (stretches.Count > 0) yield return new(run.Request.Name, plan.Face.Name, plan.Face.Wall, stretches);
        }
    }

    /// <summary>What one run takes: each supply's name with its use.</summary>
    public static IEnumerable<(string Of, SupplyUse Use)> Of(Job job, RunPlan run)
    {
        if (run.Request.Setting?.Batten is not { } asked || Along(job, run).ToList() is not { Count: > 0 } battens) yield break;
        var bar = BarOf(job.Supplies.First(supply => string.Equals(supply.Name, asked.Of, StringComparison.Ordinal)));
        var parts = battens.SelectMany(batten => batten.Stretches).SelectMany(stretch => Bars.Parts(bar.Steps, stretch.Steps)).Select(Length.FromSteps).ToSequence();
        var walls = string.Join(", ", battens.Select(batten => $"{string.Join(" and ", batten.Stretches.Select(Said))} on {batten.Face}"));
        yield return (asked.Of, new(run.Request.Name, parts.Sum(Metres), $"under the first whole course, {walls}") { Pieces = parts });
        if (asked.Screws is not { } screws) yield break;
        var count = parts.Sum(part => Screws(part, asked.Every));
        var pieces = parts.Count == 1 ? "1 piece" : string.Create(CultureInfo.InvariantCulture, $"{parts.Count} pieces");
        yield return (screws, new(run.Request.Name, count, string.Create(CultureInfo.InvariantCulture, $"{count} in {pieces} of batten, at both ends and {LengthText.Nearest(asked.Every, job.Tape)} apart at the most")));

        string Said(Length length) => Amounts.Distance(1000 * Metres(length), job.Tape);
    }

    /// <summary>What is to be minded of screws through a wall that is made watertight.</summary>
    public static IEnumerable<Finding> Findings(Job job, RunPlan run)
    {
        if (run.Request.Setting?.Batten?.Screws is null) yield break;
        var wet = Along(job, run).Select(batten => batten.Wall).Distinct(StringComparer.Ordinal).Where(wall => HasMembrane(job, wall)).ToList();
        if (wet.Count == 0) yield break;
        yield return new(FindingLevel.Warn, "batten", run.Request.Name, BattenWords.Through(wet), "", "", "common practice, no source");
    }

    /// <summary>Whether a membrane goes on a wall.</summary>
    public static bool HasMembrane(Job job, string wall) => job.Faces.Any(face => string.Equals(face.Name, wall, StringComparison.Ordinal) && face.Under?.Membrane is not null);

    /// <summary>How long a bar of a supply is.</summary>
    public static Length BarOf(Supply supply) => Length.FromSteps((long)Math.Round(supply.Makes * 1000 * Length.StepsPerMillimetre));

    /// <summary>How many screws a piece takes: one at each end, the others between them.</summary>
    public static int Screws(Length piece, Length every) => (int)((piece.Steps + every.Steps - 1) / every.Steps) + 1;

    private static bool IsFloor(Job job, string name) => job.Work?.Floors.Contains(name, StringComparer.Ordinal) == true || job.Faces.Any(face => string.Equals(face.Name, name, StringComparison.Ordinal) && FloorFaces.Is(face));

    // As high as the cut course's tops stand, just within it: what stands there in place of tile carries the course above itself.
    private static IEnumerable<Length> Under(RunPlan run, SnapLine line, FacePlan plan)
    {
        var below = plan.Pieces.Where(piece => HangingCourse.Holds(run, line, piece)).ToList();
        if (below.Count == 0) return [];
        TaggedCorner[][] rings = [.. plan.Face.Field.Inner.Prepend(plan.Face.Field.Outer).Select(ring => ring.Points.Select(at => new TaggedCorner(at.X.Steps, at.Y.Steps, 0)).ToArray())];
        return Chords.Of(rings, plumb: false, below.Max(piece => piece.Cell.Top).Steps - 1, long.MinValue, long.MaxValue).Select(stretch => Length.FromSteps(stretch.Length));
    }

    private static double Metres(Length length) => (double)length.Millimetres / 1000;
}
