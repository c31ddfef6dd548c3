using System.Text.Json;
using System.Text.Json.Nodes;

namespace Gaugerod.App.Desk;

/// <summary>The jobs that come with the app, invented by us, and what a new job begins with.</summary>
internal static class Samples
{
    private static readonly JsonSerializerOptions s_plain = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static IReadOnlyList<string> Names { get; } = ["guest-shower", "cloakroom", "galley-splash", "porch-floor", "plain-wall"];

    public static string Title(string name) => name switch
    {
        "guest-shower" => "Guest shower, feet and inches",
        "galley-splash" => "Galley splash, herringbone, millimetres",
        "porch-floor" => "Porch floor, frame and rug, millimetres",
        "cloakroom" => "Cloakroom wall, millimetres",
        _ => "Plain wall, by hand",
    };

    public static string Text(string name)
    {
        using var stream = typeof(Samples).Assembly.GetManifestResourceStream($"samples/{name}.json")
            ?? throw new InvalidOperationException("No such sample: " + name);
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>A new job: no figure in it but the usual joint, so that none has to be typed over and none is taken for a reading.</summary>
    /// <param name="name">The job's name.</param>
    /// <param name="inches">Whether it is measured in inches.</param>
    /// <param name="alcove">Three walls over a bath or tray, open above and in front; else one wall from floor to ceiling.</param>
    public static string New(string name, bool inches, bool alcove)
    {
        string[] walls = alcove ? ["left wall", "back wall", "right wall"] : ["wall 1"];
        var job = new JsonObject
        {
            ["format"] = "gaugerod-job/1",
            ["name"] = name,
            ["units"] = inches ? "in" : "mm",
            ["products"] = new JsonArray(new JsonObject { ["name"] = "tile", ["width"] = "", ["height"] = "" }),
            ["faces"] = new JsonArray([.. walls.Select((wall, i) => Wall(wall, alcove, i == 0, i == walls.Length - 1))]),
            ["runs"] = new JsonArray(new JsonObject
            {
                ["name"] = "run 1",
                ["product"] = "tile",
                ["faces"] = new JsonArray([.. walls.Select(wall => (JsonNode)JsonValue.Create(wall))]),
                ["bond"] = new JsonObject { ["kind"] = "grid" },
                ["joint"] = inches ? "1/8" : "3",
            }),
        };
        return job.ToJsonString(s_plain) + "\n";
    }

    private static JsonNode Wall(string name, bool alcove, bool first, bool last)
    {
        var wall = new JsonObject
        {
            ["name"] = name,
            ["readings"] = new JsonObject { ["width"] = new JsonObject { ["foot"] = "" }, ["height"] = new JsonObject { ["left"] = "" } },
        };
        if (!alcove) return wall;
        var edges = new JsonObject { ["foot"] = Edge("fixture"), ["head"] = Edge("free") };
        if (first) edges["left"] = Edge("free");
        if (last) edges["right"] = Edge("free");
        wall["edges"] = edges;
        return wall;
    }

    private static JsonObject Edge(string kind) => new() { ["kind"] = kind };
}
