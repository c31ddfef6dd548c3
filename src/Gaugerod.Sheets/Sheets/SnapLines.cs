using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A line to snap, in words.</summary>
/// <param name="Face">On which face.</param>
/// <param name="Name">Level or plumb line.</param>
/// <param name="Where">Where it is measured from on the wall: <c>30 1/2 in up from the foot of the left corner</c>.</param>
/// <param name="Why">What it is for.</param>
public sealed record SnapWords(string Face, string Name, string Where, string Why);

/// <summary>The lines of a run to snap before the first tile, in the words of the sheets.</summary>
public static class SnapLines
{
    /// <summary>All lines of a run, face by face.</summary>
    public static IReadOnlyList<SnapWords> Of(Plan plan, RunPlan run)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(run);
        var figures = new Figures(plan.Job.Tape);
        var turned = run.Turned.Select(line => new SnapWords(line.Face, "Turned line", TurnedWords.Where(line, figures), line.Why));
        return [.. run.Lines.Select(line => new SnapWords(line.Face, line.Axis == Axis.Level ? "Level line" : "Plumb line", LinePlace.Of(line, run, figures).Words, line.Why)), .. turned];
    }
}
