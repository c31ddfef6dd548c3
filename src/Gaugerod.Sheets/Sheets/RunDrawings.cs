using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A run's picture.</summary>
/// <param name="Run">The run's name.</param>
/// <param name="Drawing">The picture, to the scale that its title states.</param>
public sealed record RunDrawing(string Run, Drawing Drawing);

/// <summary>One picture a run, unrolled, without a sheet around it.</summary>
public static class RunDrawings
{
    private const double WidestPaper = 297, HighestPaper = 210;

    /// <summary>The pictures of all runs, in the plan's order, each as large as fits an A4 sheet laid across.</summary>
    public static Sequence<RunDrawing> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Runs.Select(run => Steps(plan, run).Last()!).ToSequence();
    }

    /// <summary>The picture of one run, a little at a time, so that the caller may do something else between: nothing until the last.</summary>
    public static IEnumerable<RunDrawing?> Steps(Plan plan, RunPlan run)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(run);
        return LittleByLittle(plan, run);
    }

    private static IEnumerable<RunDrawing?> LittleByLittle(Plan plan, RunPlan run)
    {
        var figures = new Figures(plan.Job.Tape);
        var scale = FaceMap.Ladder.FirstOrDefault(
            s => s >= 2 && RunPicture.WidthAt(run, s) <= WidestPaper && RunPicture.HeightAt(run, s) <= HighestPaper, FaceMap.Ladder[^1]);
        var (width, height) = (RunPicture.WidthAt(run, scale), RunPicture.HeightAt(run, scale) + 2);
        var pen = new Pen();
        var first = FirstTile.All(run, figures);
        yield return null;
        foreach (var _ in RunPicture.Steps(pen, plan, run, scale, 0, 0, width, first, figures, numbered: true)) yield return null;

        yield return new(run.Request.Name, new(
            width, height, $"{plan.Job.Name}: {run.Request.Name}, 1:{Figures.Number(scale)}",
            $"The run {run.Request.Name} unrolled at 1 to {Figures.Number(scale)}. {FirstTile.Said(first)} {FirstSheet.Score(plan, run, figures)}", pen.Marks));
    }
}
