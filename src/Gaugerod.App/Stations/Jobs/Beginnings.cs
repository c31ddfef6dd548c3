using System.Text.Json;
using System.Text.Json.Nodes;
using Gaugerod.App.Stations.Measure;

namespace Gaugerod.App.Stations.Jobs;

/// <summary>What a new job begins with.</summary>
internal enum Beginning
{
    /// <summary>One wall from the floor to the ceiling.</summary>
    Wall,

    /// <summary>Three walls over a bath or tray, open above and in front.</summary>
    Alcove,

    /// <summary>A floor of four corners, measured corner to corner.</summary>
    Floor,

    /// <summary>A floor in an L, six corners.</summary>
    Ell,
}

/// <summary>New jobs.</summary>
internal static class Beginnings
{
    private static readonly JsonSerializerOptions s_plain = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A new job: no figure in it but the usual joint, so that none has to be typed over and none is taken for a reading.</summary>
    /// <param name="name">The job's name.</param>
    /// <param name="inches">Whether it is measured in inches.</param>
    /// <param name="begins">What it begins with.</param>
    public static string Job(string name, bool inches, Beginning begins)
    {
        string[] faces = begins switch { Beginning.Alcove => ["left wall", "back wall", "right wall"], Beginning.Wall => ["wall 1"], _ => ["floor"] };
        var job = new JsonObject
        {
            ["format"] = "gaugerod-job/1",
            ["name"] = name,
            ["units"] = inches ? "in" : "mm",
            ["products"] = new JsonArray(new JsonObject { ["name"] = "tile", ["width"] = "", ["height"] = "" }),
            ["faces"] = new JsonArray([.. faces.Select((face, i) => begins is Beginning.Floor or Beginning.Ell ? Floor(face, begins is Beginning.Ell ? 6 : 4) : Wall(face, begins is Beginning.Alcove, i == 0, i == faces.Length - 1))]),
            ["runs"] = new JsonArray(new JsonObject
            {
                ["name"] = "run 1",
                ["product"] = "tile",
                ["faces"] = new JsonArray([.. faces.Select(face => (JsonNode)JsonValue.Create(face))]),
                ["bond"] = new JsonObject { ["kind"] = "grid" },
                ["joint"] = inches ? "1/8" : "3",
            }),
        };
        return job.ToJsonString(s_plain) + "\n";
    }

    // Measured corner to corner: its sides and diagonals, all still to be read.
    private static JsonNode Floor(string name, int corners)
    {
        var (floor, survey) = (new JsonObject { ["name"] = name }, SurveyParts.New(corners));
        foreach (var (key, value) in survey) floor[key] = value?.DeepClone();
        return floor;
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
