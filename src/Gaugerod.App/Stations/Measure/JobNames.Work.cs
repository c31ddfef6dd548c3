using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Sequencing;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Follows a face into the order of work: floors, what waits for something made elsewhere, and tasks that are called after it.</summary>
internal static partial class JobNames
{
    private static void WorkFace(JsonObject root, string old, string? name)
    {
        if (JobPath.Get(root, "work") is not JsonObject work) return;
        var made = JobLists.List(root, "work.made").OfType<JsonObject>().ToList();
        foreach (var group in made.Prepend(work))
        {
            foreach (var field in new[] { "floors", "faces" })
            {
                Listed(group, field, one => string.Equals(one, old, StringComparison.Ordinal) ? name : one);
            }
        }

        WorkTasks(root, task => Task(task, old, name));
    }

    /// <summary>A task of the setter's own, in what waits for it; without a new name it goes.</summary>
    public static void OwnTask(JsonObject root, string old, string? name) => WorkTasks(root, task => string.Equals(task, old, StringComparison.Ordinal) ? name : task);

    /// <summary>What is made elsewhere, in what waits until it is in.</summary>
    public static void Made(JsonObject root, string old, string? name) => OwnTask(root, TaskNames.In(old), name is null ? null : TaskNames.In(name));

    // What own tasks and things made elsewhere wait for, by the tasks' names; what is told as nothing goes.
    private static void WorkTasks(JsonObject root, Func<string, string?> told)
    {
        foreach (var group in JobLists.List(root, "work.made").Concat(JobLists.List(root, "work.tasks")).OfType<JsonObject>())
        {
            if (group["after"] is JsonValue one)
            {
                if (told(one.ToString()) is { } after) group["after"] = after;
                else group.Remove("after");
            }

            foreach (var field in new[] { "after", "before" }) Listed(group, field, told);
        }
    }

    // An own task may be called as it likes; only what the plan calls after a face is followed.
    private static string? Task(string task, string old, string? name)
    {
        foreach (var kind in new[] { "set ", "returns on ", "level ", "bed of " })
        {
            if (string.Equals(task, kind + old, StringComparison.Ordinal)) return name is null ? null : kind + name;
            if (kind is "set " && task.StartsWith(kind + old + ",", StringComparison.Ordinal)) return name is null ? null : kind + name + task[(kind.Length + old.Length)..];
        }

        return task;
    }

    // What goes leaves no empty list.
    private static void Listed(JsonObject group, string field, Func<string, string?> told)
    {
        if (group[field] is not JsonArray list) return;
        var kept = list.Select(one => told(one?.ToString() ?? "")).OfType<string>().Select(one => (JsonNode)JsonValue.Create(one)!).ToArray();
        if (kept.Length == 0) group.Remove(field);
        else group[field] = new JsonArray(kept);
    }
}
