using System.Globalization;
using System.Text.Json.Nodes;

namespace Gaugerod.App.Desk;

/// <summary>Finds and sets values of a job by the paths that faults name: <c>faces[1].openings[0].width</c>.</summary>
internal static class JobPath
{
    /// <summary>The value at a path; null where there is none.</summary>
    public static JsonNode? Get(JsonObject root, string path)
    {
        JsonNode? at = root;
        foreach (var step in Steps(path))
        {
            at = (step, at) switch
            {
                (string name, JsonObject group) => group[name],
                (int place, JsonArray list) when place < list.Count => list[place],
                _ => null,
            };
            if (at is null) return null;
        }

        return at;
    }

    /// <summary>Sets the value at a path, making the groups and lists on the way; null takes it out.</summary>
    public static void Set(JsonObject root, string path, JsonNode? value)
    {
        var steps = Steps(path).ToList();
        JsonNode at = root;
        for (var i = 0; i < steps.Count - 1; i++)
        {
            JsonNode fresh = steps[i + 1] is int ? new JsonArray() : new JsonObject();
            if (Child(at, steps[i]) is not { } child)
            {
                if (value is null) return;
                Put(at, steps[i], fresh);
                child = fresh;
            }
            else if (child is JsonObject != fresh is JsonObject)
            {
                Put(at, steps[i], fresh);
                child = fresh;
            }

            at = child;
        }

        if (value is not null) Put(at, steps[^1], value);
        else if (at is JsonObject group && steps[^1] is string name) group.Remove(name);
        else if (at is JsonArray list && steps[^1] is int place && place < list.Count) list.RemoveAt(place);
    }

    private static JsonNode? Child(JsonNode at, object step) => (step, at) switch
    {
        (string name, JsonObject group) => group[name],
        (int place, JsonArray list) when place < list.Count => list[place],
        _ => null,
    };

    private static void Put(JsonNode at, object step, JsonNode value)
    {
        if (at is JsonObject group && step is string name) group[name] = value;
        else if (at is JsonArray list && step is int place)
        {
            if (place < list.Count) list[place] = value;
            else list.Add(value);
        }
    }

    private static IEnumerable<object> Steps(string path)
    {
        foreach (var part in path.Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            var open = part.IndexOf('[', StringComparison.Ordinal);
            if (open != 0) yield return open < 0 ? part : part[..open];
            while (open >= 0)
            {
                var close = part.IndexOf(']', open);
                yield return int.Parse(part[(open + 1)..close], CultureInfo.InvariantCulture);
                open = part.IndexOf('[', close);
            }
        }
    }
}
