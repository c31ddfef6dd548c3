using Gaugerod.App.Desk;
using Gaugerod.Files;

namespace Gaugerod.App.Parts;

/// <summary>Tells what is still to be read from what was typed wrongly: the one is asked for quietly, the other is marked.</summary>
internal static class Unread
{
    /// <summary>Whether a fault only says that nothing stands there yet.</summary>
    public static bool Is(JobDesk desk, FileFault fault) =>
        fault.Path.Length > 0 && JobPath.Get(desk.Root, fault.Path) is var there
        && (there is null || (there is System.Text.Json.Nodes.JsonValue value && string.IsNullOrWhiteSpace(value.ToString())));

    /// <summary>What was typed wrongly, in all the job or at a place in it.</summary>
    public static IEnumerable<FileFault> Wrong(JobDesk desk, string path = "") => desk.Faults.Where(f => In(path, f) && !Is(desk, f));

    /// <summary>What is still to be read.</summary>
    public static IEnumerable<FileFault> Missing(JobDesk desk, string path = "") => desk.Faults.Where(f => In(path, f) && Is(desk, f));

    private static bool In(string path, FileFault fault) => path.Length == 0 || FieldId.Holds(path, fault.Path);
}
