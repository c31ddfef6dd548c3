using System.Text.Json.Nodes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Follows what is bought into prices and lots, and runs into labour and the order of work.</summary>
internal static partial class JobNames
{
    private static readonly string[] s_runTasks = ["lines of ", "trims of ", "grout ", "soft joints of ", "seal "];

    /// <summary>What tiles, trims, boards and supplies of the job are called.</summary>
    public static IReadOnlyList<string> AllBought(JsonObject root) =>
        [.. new[] { "products", "trims", "boards", "supplies" }.SelectMany(list => JobLists.List(root, list)).Select(JobLists.Name).Where(name => name.Length > 0).Distinct(StringComparer.Ordinal)];

    /// <summary>A tile, a trim, a board or a supply in prices and among the lots; without a new name what is said of it goes.</summary>
    private static void Bought(JsonObject root, string old, string? name)
    {
        foreach (var (list, field) in new[] { ("prices.items", "item"), ("handover.lots", "of") })
        {
            var all = JobLists.List(root, list);
            for (var i = all.Count - 1; i >= 0; i--)
            {
                if (all[i] is not JsonObject one || !Is(one[field], old)) continue;
                if (name is null) JobLists.Remove(root, list, i);
                else one[field] = name;
            }
        }
    }

    /// <summary>Takes out what prices and lots say of a tile, a trim, a board or a supply that goes.</summary>
    public static void ForgetBought(JsonObject root, string name) => Bought(root, name, null);

    /// <summary>A run: labour that is paid by it, and tasks that are called after it. Without a new name it goes.</summary>
    public static void Run(JsonObject root, string old, string? name)
    {
        foreach (var task in JobLists.List(root, "prices.labour").OfType<JsonObject>()) Put(task, "run", old, name);
        WorkTasks(root, task => s_runTasks.FirstOrDefault(kind => string.Equals(task, kind + old, StringComparison.Ordinal)) is { } kind ? name is null ? null : kind + name : task);
    }
}
