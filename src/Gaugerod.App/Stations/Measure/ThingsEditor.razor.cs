using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Measure;

/// <summary>The fixtures, openings or holes of one face.</summary>
public sealed partial class ThingsEditor : ComponentBase
{
    private static readonly string[] s_sides = ["bottom", "right", "top", "left"];
    private static readonly Dictionary<string, string> s_ends = new(StringComparer.Ordinal) { ["foot"] = "at the foot", ["head"] = "hangs at the head" };
    private static readonly Dictionary<string, string> s_bases = new(StringComparer.Ordinal) { ["floor"] = "the floor", ["level line"] = "the level line, minus below" };
    private int _fresh = -1;

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

    private string All => FacePath + "." + List;

    private string FaceName => FieldId.Text(Desk, FacePath + ".name");

    private IReadOnlyList<string> Names => JobLists.Names(Desk.Root, All, Thing);

    private string Place(int at) => string.Create(CultureInfo.InvariantCulture, $"{All}[{at}]");

    private string KindOfAll(string path) => FieldId.Text(Desk, path + ".edge.kind") is { Length: > 0 } kind ? kind : "fixture";

    private bool Slopes(string path) => JobPath.Get(Desk.Root, path) is JsonObject thing && (thing.ContainsKey("heightLeft") || thing.ContainsKey("heightRight"));

    private void Slope(string path, bool on) => Desk.Change($"heights of {FieldId.Text(Desk, path + ".name")}", root =>
    {
        var height = JobPath.Get(root, path + (on ? ".height" : ".heightLeft"))?.DeepClone() ?? JsonValue.Create("");
        JobPath.Set(root, path + ".height", on ? null : height);
        JobPath.Set(root, path + ".heightLeft", on ? height : null);
        JobPath.Set(root, path + ".heightRight", on ? height.DeepClone() : null);
    });

    private string? Rename(int at, string name)
    {
        if (JobNames.Refusal(JobLists.List(Desk.Root, All), at, name, Thing) is { } why) return why;
        var (old, face) = (FieldId.Text(Desk, Place(at) + ".name"), FaceName);
        Desk.Change($"name of {name}", root =>
        {
            JobPath.Set(root, Place(at) + ".name", JsonValue.Create(name));
            if (old.Length > 0) JobNames.OnFace(root, face, old, name);
        });
        return null;
    }

    private void Add()
    {
        var thing = new JsonObject { ["name"] = JobLists.Free(JobLists.List(Desk.Root, All), Thing) };
        string[] needed = List switch
        {
            "fixtures" => ["height"],
            "openings" => ["left", "bottom", "width", "height"],
            _ => ["x", "y", "diameter"],
        };
        foreach (var key in needed) thing[key] = "";
        _fresh = Names.Count;
        Desk.Change($"new {Thing} on {FaceName}", root => JobLists.Add(root, All, thing));
    }

    private void Duplicate(int at)
    {
        _fresh = at + 1;
        Desk.Change($"copy of {Names[at]}", root => JobLists.Duplicate(root, All, at));
    }

    private void Move(int at, int by) => Desk.Change($"place of {Names[at]}", root => JobLists.Move(root, All, at, by));

    private void Remove(int at)
    {
        _fresh = -1;
        var (name, face) = (Names[at], FaceName);
        Desk.Change($"removed {name}", root =>
        {
            JobLists.Remove(root, All, at);
            JobNames.ForgetOnFace(root, face, name);
        });
    }
}
