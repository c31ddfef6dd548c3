using Gaugerod.App.Desk;
using Gaugerod.Files;

namespace Gaugerod.App.Parts;

/// <summary>Tells what is still to be read from what was typed wrongly: the one is asked for quietly, the other is marked.</summary>
internal static class Unread
{
    /// <summary>Whether a fault only says that nothing stands there yet. Asked of the fault, for the job may have moved on meanwhile.</summary>
    public static bool Is(FileFault fault) => fault.Path.Length > 0 && (fault.Found is "nothing" || string.IsNullOrWhiteSpace(fault.Found.Trim('"')));

    /// <summary>What was typed wrongly, in all the job or at a place in it.</summary>
    public static IEnumerable<FileFault> Wrong(JobDesk desk, string path = "") => desk.Faults.Where(f => In(path, f) && !Is(f));

    /// <summary>What is still to be read.</summary>
    public static IEnumerable<FileFault> Missing(JobDesk desk, string path = "") => desk.Faults.Where(f => In(path, f) && Is(f));

    private static bool In(string path, FileFault fault) => path.Length == 0 || FieldId.Holds(path, fault.Path);
}
