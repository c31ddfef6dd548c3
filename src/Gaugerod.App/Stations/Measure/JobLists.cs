using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Adds, copies, moves and takes out things of the job's lists, and keeps what refers to them right.</summary>
internal static class JobLists
{
    /// <summary>A list of the job; empty where there is none.</summary>
    public static JsonArray List(JsonObject root, string path) => JobPath.Get(root, path) as JsonArray ?? [];

    /// <summary>What a thing of a list is called.</summary>
    public static string Name(JsonNode? thing) => thing is JsonObject group && group["name"] is JsonValue value ? value.ToString() : "";

    /// <summary>The names of a list, with something to call those that have none.</summary>
    public static IReadOnlyList<string> Names(JsonObject root, string path, string thing) =>
        [.. List(root, path).Select((one, i) => Name(one) is { Length: > 0 } name ? name : string.Create(CultureInfo.InvariantCulture, $"{thing} {i + 1}"))];

    /// <summary>A name no other in the list has: "wall 2", "wall 3".</summary>
    public static string Free(JsonArray list, string stem)
    {
        for (var i = 1; ; i++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{stem} {i}");
            if (list.All(one => !string.Equals(Name(one), name, StringComparison.Ordinal))) return name;
        }
    }

    /// <summary>Adds to the list at a path, made where it is not there.</summary>
    public static void Add(JsonObject root, string path, JsonObject thing, int? at = null)
    {
        if (JobPath.Get(root, path) is not JsonArray list)
        {
            list = [];
            JobPath.Set(root, path, list);
        }

        list.Insert(Math.Min(at ?? list.Count, list.Count), thing);
    }

    /// <summary>The place of one in a list.</summary>
    public static string Place(string path, int at) => string.Create(CultureInfo.InvariantCulture, $"{path}[{at}]");

    /// <summary>Puts a copy behind the one copied. What is called by no name is copied as it is.</summary>
    /// <param name="unnamed">Whether things of this list have no names.</param>
    public static void Duplicate(JsonObject root, string path, int at, bool unnamed = false)
    {
        if (JobPath.Get(root, path) is not JsonArray list || list[at] is not { } thing) return;
        var copy = thing.DeepClone();
        var stem = Name(thing);
        if (!unnamed && copy is JsonObject group) group["name"] = Free(list, (stem.Length > 50 ? stem[..50].Trim() : stem) + " copy");
        list.Insert(at + 1, copy);
    }

    /// <summary>Moves one by one place, where there is room.</summary>
    public static void Move(JsonObject root, string path, int at, int by)
    {
        if (JobPath.Get(root, path) is not JsonArray list || at + by < 0 || at + by >= list.Count) return;
        var thing = list[at];
        list.RemoveAt(at);
        list.Insert(at + by, thing);
    }

    /// <summary>Takes one out; an empty list that may be left out goes too.</summary>
    public static void Remove(JsonObject root, string path, int at)
    {
        if (JobPath.Get(root, path) is not JsonArray list || at >= list.Count) return;
        list.RemoveAt(at);
        if (list.Count == 0) JobPath.Set(root, path, null);
    }
}
