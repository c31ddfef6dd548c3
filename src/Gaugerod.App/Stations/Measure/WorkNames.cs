using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Sequencing;

namespace Gaugerod.App.Stations.Measure;

/// <summary>What tasks of the order of work are called, to be chosen by name.</summary>
internal static class WorkNames
{
    private const string Own = "work.tasks", Made = "work.made";

    /// <summary>The setter's own tasks, what is made elsewhere, and the words that stand for all tasks of a kind.</summary>
    public static IReadOnlyList<string> Kinds(JsonObject root) =>
        [.. Named(root, Own), .. Named(root, Made).Select(TaskNames.In), .. TaskNames.Words.Select(kind => kind.Word)];

    /// <summary>Tasks on one wall or floor or of one run: as the plan has them, and without a plan the setting of each.</summary>
    public static IReadOnlyList<string> Single(JobDesk desk)
    {
        var kinds = Kinds(desk.Root);
        return desk.Plan?.Work is { } work
            ? [.. work.Tasks.Where(task => task.Stage != SetStage.Waiting && task.Kind is not (WorkKind.Own or WorkKind.Arrival or WorkKind.FirstUse)).Select(task => task.Name).Where(name => !kinds.Contains(name, StringComparer.Ordinal))]
            : [.. JobLists.List(desk.Root, "runs").SelectMany(run => run?["faces"] as JsonArray ?? []).Select(face => TaskNames.Set(face?.ToString() ?? ""))];
    }

    /// <summary>Why a task of the setter's own cannot be called so; null when it can. What waits for a task of that name would mean either.</summary>
    public static string? Refusal(JsonObject root, string name) =>
        TaskNames.Words.Any(kind => string.Equals(kind.Word, name, StringComparison.Ordinal)) || Named(root, Made).Any(made => string.Equals(TaskNames.In(made), name, StringComparison.Ordinal))
            ? $"Another task is called {name}; this one keeps the name it had." : null;

    /// <summary>A name that neither an own task nor a thing made elsewhere has.</summary>
    public static string Free(JsonObject root, string stem)
    {
        var taken = Named(root, Own).Concat(Named(root, Made)).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(1, taken.Count + 1).Select(i => string.Create(CultureInfo.InvariantCulture, $"{stem} {i}")).First(name => !taken.Contains(name));
    }

    private static IEnumerable<string> Named(JsonObject root, string list) => JobLists.List(root, list).Select(JobLists.Name).Where(name => name.Length > 0);
}
