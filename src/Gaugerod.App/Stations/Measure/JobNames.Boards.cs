using System.Text.Json.Nodes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Follows a board to the faces that are boarded with it.</summary>
internal static partial class JobNames
{
    public static void Board(JsonObject root, string old, string name)
    {
        Bought(root, old, name);
        foreach (var board in Boarded(root)) Put(board, "of", old, name);
    }

    /// <summary>Whether a face is boarded with it.</summary>
    public static bool UsesBoard(JsonObject root, string name) => Boarded(root).Any(board => Is(board["of"], name));

    private static IEnumerable<JsonObject> Boarded(JsonObject root) => JobLists.List(root, "faces").Select(face => face?["board"]).OfType<JsonObject>();
}
