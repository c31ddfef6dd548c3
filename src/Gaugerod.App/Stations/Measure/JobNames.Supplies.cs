using System.Text.Json.Nodes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Follows a supply to the faces, runs and boards that take it.</summary>
internal static partial class JobNames
{
    private static readonly string[] s_supplyFields = ["mortar", "grout", "sealant", "backer", "wedges", "filler", "band", "of", "screws", "tape"];

    public static void Supply(JsonObject root, string old, string name)
    {
        Bought(root, old, name);
        foreach (var group in Takers(root))
        {
            foreach (var field in s_supplyFields) Put(group, field, old, name);
        }
    }

    /// <summary>Whether a face, a run or a board takes it.</summary>
    public static bool UsesSupply(JsonObject root, string name) => Takers(root).Any(group => s_supplyFields.Any(field => Is(group[field], name)));

    private static IEnumerable<JsonObject> Takers(JsonObject root) =>
        Runs(root).Select(run => run["setting"]).Concat(JobLists.List(root, "faces").Select(face => face?["under"])).Concat(JobLists.List(root, "boards")).OfType<JsonObject>().SelectMany(group => group.Select(member => member.Value).OfType<JsonObject>().Prepend(group))
            .Concat(JobLists.List(root, "fills").OfType<JsonObject>());
}
