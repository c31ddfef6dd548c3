using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Gives things new names and follows them to where runs and wants use them.</summary>
internal static partial class JobNames
{
    /// <summary>Why a name cannot be had; null when it can.</summary>
    public static string? Refusal(JsonArray list, int at, string name, string thing)
    {
        if (name.Length == 0) return $"A {thing} needs a name; it keeps the one it had.";
        if (thing is not ("run" or "tile" or "trim" or "supply" or "board" or "wall" or "task" or "thing") && name.Contains('.', StringComparison.Ordinal)) return "A name here holds no full stop.";
        for (var i = 0; i < list.Count; i++)
        {
            if (i != at && string.Equals(JobLists.Name(list[i]), name, StringComparison.Ordinal)) return $"Another {thing} is called {name}; this one keeps the name it had.";
        }

        return null;
    }

    /// <summary>Gives a thing of a list another name, and has what calls it by the old one follow.</summary>
    /// <returns>Why it cannot be had; null when it was taken.</returns>
    public static string? Give(JobDesk desk, string list, int at, string name, string thing, Action<JsonObject, string, string> follow)
    {
        if (Refusal(JobLists.List(desk.Root, list), at, name, thing) is { } why) return why;
        var path = JobLists.Place(list, at) + ".name";
        var old = JobPath.Get(desk.Root, path) is JsonValue value ? value.ToString() : "";
        desk.Change($"name of {name}", root =>
        {
            JobPath.Set(root, path, JsonValue.Create(name));
            if (old.Length > 0) follow(root, old, name);
        });
        return null;
    }

    public static void Product(JsonObject root, string old, string name)
    {
        Bought(root, old, name);
        foreach (var run in Runs(root)) Put(run, "product", old, name);
    }

    public static void Face(JsonObject root, string old, string name)
    {
        Floor(root, old, name);
        WorkFace(root, old, name);
        SharedFace(root, old, name);
        foreach (var picture in JobLists.List(root, "handover.photographs").OfType<JsonObject>()) Put(picture, "of", old, name);
        foreach (var run in Runs(root))
        {
            Put(run, "through", old, name);
            if (run["faces"] is JsonArray faces)
            {
                for (var i = 0; i < faces.Count; i++)
                {
                    if (Is(faces[i], old)) faces[i] = name;
                }
            }

            foreach (var set in (run["set"] as JsonArray ?? []).OfType<JsonObject>()) Put(set, "face", old, name);
            foreach (var part in WantParts(run))
            {
                Put(part, "face", old, name);
                // The strips of a border are called after it, and what lies beyond an edge of a zone names the edge.
                if (part["face"] is JsonValue strip && strip.ToString().StartsWith(old + " ", StringComparison.Ordinal)) part["face"] = name + strip.ToString()[old.Length..];
                Put(part, "edge", old, name);
            }
        }
    }

    /// <summary>An opening, a fixture, a hole or an edge of a face; wants call them by name, and their edges by theirs: <c>bench.left</c>.</summary>
    public static void OnFace(JsonObject root, string face, string old, string name)
    {
        if (Named(root, face)?["falls"] is JsonObject falls) Drain(falls, old, name);
        BedEdge(root, face, old, name);
        foreach (var part in PartsOn(root, face))
        {
            Put(part, "opening", old, name);
            Put(part, "hole", old, name);
            Put(part, "edge", old, name);
            if (part["edge"] is JsonValue edge && edge.ToString().StartsWith(old + ".", StringComparison.Ordinal)) part["edge"] = name + edge.ToString()[old.Length..];
        }
    }

    /// <summary>Takes a face out of the runs, and the wants that speak of it; with it a run that laid nothing else, save the last.</summary>
    public static void ForgetFace(JsonObject root, string face)
    {
        Floor(root, face, null);
        WorkFace(root, face, null);
        SharedFace(root, face, null);
        foreach (var run in Runs(root))
        {
            if (Is(run["through"], face)) run.Remove("through");
            if (run["faces"] is JsonArray faces)
            {
                for (var i = faces.Count - 1; i >= 0; i--)
                {
                    if (Is(faces[i], face)) faces.RemoveAt(i);
                }
            }

            ForgetSet(run, face);
            Drop(run, part => Is(part["face"], face));
        }

        if (root["runs"] is not JsonArray runs) return;
        for (var i = runs.Count - 1; i >= 0 && runs.Count > 1; i--)
        {
            if (runs[i]?["faces"] is JsonArray { Count: 0 }) runs.RemoveAt(i);
        }
    }

    /// <summary>Takes out the wants that speak of an opening or a fixture.</summary>
    public static void ForgetOnFace(JsonObject root, string face, string name)
    {
        if (Named(root, face) is { } whole && whole["falls"] is JsonObject falls)
        {
            Drain(falls, name, null);
            if (falls.Count == 0) whole.Remove("falls");
        }

        BedEdge(root, face, name, null);
        var parts = PartsOn(root, face).ToHashSet();
        foreach (var run in Runs(root))
        {
            Drop(run, part => parts.Contains(part)
                && (Is(part["opening"], name) || Is(part["hole"], name) || Is(part["edge"], name) || (part["edge"] is JsonValue e && e.ToString().StartsWith(name + ".", StringComparison.Ordinal))));
        }
    }

    private static JsonObject? Named(JsonObject root, string face) => JobLists.List(root, "faces").OfType<JsonObject>().FirstOrDefault(one => Is(one["name"], face));

    private static IEnumerable<JsonObject> Runs(JsonObject root) => JobLists.List(root, "runs").OfType<JsonObject>();

    private static IEnumerable<JsonObject> WantParts(JsonObject run) =>
        run["wants"] is JsonArray wants ? wants.OfType<JsonObject>().SelectMany(Parts) : [];

    private static IEnumerable<JsonObject> Parts(JsonObject want)
    {
        yield return want;
        if (want["and"] is JsonObject other) yield return other;
    }

    // The other edge of a want is on the want's own face where it names none.
    private static IEnumerable<JsonObject> PartsOn(JsonObject root, string face)
    {
        foreach (var want in Runs(root).Select(run => run["wants"]).OfType<JsonArray>().SelectMany(wants => wants.OfType<JsonObject>()))
        {
            if (Is(want["face"], face)) yield return want;
            if (want["and"] is JsonObject other && Is(other["face"] ?? want["face"], face)) yield return other;
        }
    }

    private static void Drop(JsonObject run, Func<JsonObject, bool> gone)
    {
        if (run["wants"] is not JsonArray wants) return;
        for (var i = wants.Count - 1; i >= 0; i--)
        {
            if (wants[i] is JsonObject want && Parts(want).Any(gone)) wants.RemoveAt(i);
        }
    }

    private static bool Is(JsonNode? node, string text) => node is JsonValue value && string.Equals(value.ToString(), text, StringComparison.Ordinal);

    // Without a new name the old one goes.
    private static void Put(JsonObject group, string key, string old, string? name)
    {
        if (!Is(group[key], old)) return;
        if (name is null) group.Remove(key);
        else group[key] = name;
    }
}
