using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;

namespace Gaugerod.App.Stations.Set;

/// <summary>What to mind at each kind of task: what it asks for, and the plan's cautions that belong to it.</summary>
internal static class WorkMind
{
    /// <summary>The kinds that something is to be said of, in the trade's order.</summary>
    public static IEnumerable<(string Name, IReadOnlyList<string> Words)> Of(Plan plan)
    {
        foreach (var tasks in plan.Work!.Tasks.OrderBy(task => task.Kind).GroupBy(task => (task.Kind, IsBelow: task.Stage == SetStage.Below)))
        {
            var (kind, below) = tasks.Key;
            IReadOnlyList<string> words = [.. WorkNotes.Of(tasks.First()), .. below ? [] : Cautions(plan, kind)];
            if (words.Count > 0) yield return (below ? "setting, below the line" : TaskNames.Word(kind), words);
        }
    }

    private static IEnumerable<string> Cautions(Plan plan, WorkKind kind) => WorkNotes.Cautions(plan.Job, kind).Select(words => "▲ " + words);
}
