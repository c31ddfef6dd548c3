using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.Plane.Measure;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Measure;

/// <summary>The fixtures, openings or holes of one face.</summary>
public sealed partial class ThingsEditor : ComponentBase
{
    private static readonly string[] s_sides = ["bottom", "right", "top", "left"];
    private static readonly Dictionary<string, string> s_ends = new(StringComparer.Ordinal) { ["foot"] = "at the foot", ["head"] = "hangs at the head" };
    private static readonly (string Field, string What)[] s_ranges = [("left", "its place from the left"), ("bottom", "its bottom"), ("width", "its width"), ("height", "its height")];
    private static readonly string[] s_groups = ["outline", "edges"];

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    /// <summary>Where the face stands in the job.</summary>
    [Parameter, EditorRequired]
    public string FacePath { get; set; } = "";

    /// <summary>Which of its lists: <c>fixtures</c>, <c>openings</c> or <c>holes</c>.</summary>
    [Parameter, EditorRequired]
    public string List { get; set; } = "";

    /// <summary>What one of them is called.</summary>
    [Parameter, EditorRequired]
    public string Thing { get; set; } = "";

    /// <summary>What the key says that adds one.</summary>
    [Parameter, EditorRequired]
    public string Key { get; set; } = "";

    /// <summary>Called with the id of a field to go to.</summary>
    [Parameter]
    public EventCallback<string> Go { get; set; }

    private string All => FacePath + "." + List;

    private string FaceName => FieldId.Text(Desk, FacePath + ".name");

    private string KindOfAll(string path) => FieldId.Text(Desk, path + ".edge.kind") is { Length: > 0 } kind ? kind : "fixture";

    private bool Slopes(string path) => JobPath.Get(Desk.Root, path) is JsonObject thing && (thing.ContainsKey("heightLeft") || thing.ContainsKey("heightRight"));

    private string KindOf(string path, string side) =>
        JobPath.Get(Desk.Root, $"{path}.edges.{side}") is null ? "as all its edges" : FieldId.Text(Desk, $"{path}.edges.{side}.kind") is { Length: > 0 } kind ? kind : KindOfAll(path);

    private string Differing(string path) =>
        s_sides.Count(side => JobPath.Get(Desk.Root, $"{path}.edges.{side}") is not null) is > 0 and var count ? string.Create(CultureInfo.InvariantCulture, $"{count} of 4") : "all alike";

    private string Giving(string path) =>
        JobPath.Get(Desk.Root, path + ".range") is JsonObject { Count: > 0 } range
            ? string.Create(CultureInfo.InvariantCulture, $"{s_ranges.Count(one => range.ContainsKey(one.Field))} of 4{(range.ContainsKey("studs") ? ", between studs" : "")}") : "settled";

    // The studs are found on the wall: where they stand waits to be read.
    private void Stud(string path, bool on) => Desk.Change($"studs of {FieldId.Text(Desk, path + ".name")}", root => FieldValue.Put(root, path + ".range.studs", on ? new JsonArray("", "") : null));

    private JsonObject? Headed(string path) => JobPath.Get(Desk.Root, path) is JsonObject opening ? Rounding.Headed(Desk, opening) : null;

    private void RoundHead(string path)
    {
        if (Headed(path) is { } headed) Desk.Set(path, headed, $"head of {FieldId.Text(Desk, path + ".name")}");
    }

    private void Follow(string path, string side) => Desk.Change($"{side} edge of {FieldId.Text(Desk, path + ".name")}", root => FieldValue.Put(root, $"{path}.edges.{side}", null));

    // An outline's sides are a list, one for each corner; it begins with nothing but their names.
    private void Part(string path) => Desk.Change($"edges of {FieldId.Text(Desk, path + ".name")}", root =>
        JobPath.Set(root, path + ".edges", new JsonArray([.. JobLists.List(root, path + ".outline").Select((_, i) => (JsonNode)new JsonObject { ["name"] = string.Create(CultureInfo.InvariantCulture, $"side {i + 1}") })])));

    // Half of what the wall is wider at its foot; null while either width cannot be read, and no offer on a wall given by corners.
    private bool MaybeCentred(string path, out string? left)
    {
        left = null;
        if (JobPath.Get(Desk.Root, FacePath + ".readings") is null) return false;
        if (Read(FacePath + ".readings.width.foot") is { } wall && Read(path + ".width") is { } width && wall > width) left = LengthText.NearestBare(Length.FromSteps((wall.Steps - width.Steps) / 2), Tapes.Of(Desk));
        return true;
    }

    private void Centre(string path, string? left)
    {
        if (left is not null) Desk.Set(path + ".left", JsonValue.Create(left), JobWords.Of(Desk.Root, path + ".left"));
    }

    private Length? Read(string path) => FaceMeasures.Read(Desk, JobPath.Get(Desk.Root, path));

    // What is out of level does not give way.
    private void Slope(string path, bool on) => Desk.Change($"heights of {FieldId.Text(Desk, path + ".name")}", root =>
    {
        JobPath.Set(root, path + ".range", null);
        var height = JobPath.Get(root, path + (on ? ".height" : ".heightLeft"))?.DeepClone() ?? JsonValue.Create("");
        JobPath.Set(root, path + ".height", on ? null : height);
        JobPath.Set(root, path + ".heightLeft", on ? height : null);
        JobPath.Set(root, path + ".heightRight", on ? height.DeepClone() : null);
    });

    private IReadOnlyList<string> Spots => SurveyParts.Spots(Desk.Root, FacePath);

    // What the survey settles is not typed as well.
    private void AtSpot(string path, string? spot) => Desk.Change($"place of {FieldId.Text(Desk, path + ".name")}", root =>
    {
        JobPath.Set(root, path + ".spot", spot is null ? null : JsonValue.Create(spot));
        foreach (var field in new[] { ".x", ".y" }) JobPath.Set(root, path + field, spot is null ? JsonValue.Create("") : null);
        if (spot is not null) JobPath.Set(root, path + ".heightsFrom", null);
    });

    private string[] Needed => List switch
    {
        "fixtures" => ["height"],
        "openings" => ["width", "height", "bottom", "left"],
        _ => ["x", "y", "diameter"],
    };

    private JsonObject Make() => new([.. Needed.Select(field => KeyValuePair.Create(field, (JsonNode?)""))]);

    private void Follow(JsonObject root, string old, string? name)
    {
        if (name is null) JobNames.ForgetOnFace(root, FaceName, old);
        else JobNames.OnFace(root, FaceName, old, name);
    }
}
