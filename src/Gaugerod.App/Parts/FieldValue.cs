using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Parts;

/// <summary>Sets a field of the job. With the last field of a group goes the group, which may not stand empty.</summary>
internal static class FieldValue
{
    // Asked for by standing there, whatever is in it.
    private const string MayBeEmpty = "handover";

    public static void Put(JsonObject root, string path, JsonNode? value)
    {
        JobPath.Set(root, path, value);
        if (value is not null) return;
        for (var dot = path.LastIndexOf('.'); dot > 0; dot = path.LastIndexOf('.'))
        {
            path = path[..dot];
            if (path[^1] == ']' || path is MayBeEmpty || JobPath.Get(root, path) is not JsonObject { Count: 0 }) return;
            JobPath.Set(root, path, null);
        }
    }
}
