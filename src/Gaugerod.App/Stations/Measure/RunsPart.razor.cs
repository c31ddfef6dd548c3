using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Measure;

/// <summary>The runs: which faces are tiled as one, with which tile, bond and joint.</summary>
public sealed partial class RunsPart : ComponentBase
{
    private static readonly Dictionary<string, string> s_cuts = new(StringComparer.Ordinal) { ["as planned"] = "as they are planned", ["at worst"] = "at their worst, everything off at once" };
    private static readonly Dictionary<string, string> s_corners = new(StringComparer.Ordinal) { ["wrap"] = "wraps round", ["restart"] = "begins anew on each" };

    private static readonly Dictionary<string, string> s_exposures = new(StringComparer.Ordinal) { ["sun"] = "in sun, heat or steady wet", ["outside"] = "outside" };

    private static readonly string[] s_groups = ["bond", "joint", "limits", "place"];

    private int _open;

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    /// <summary>Which run to open first.</summary>
    [Parameter]
    public int First { get; set; }

    private string At => string.Create(CultureInfo.InvariantCulture, $"runs[{_open}]");

    private IReadOnlyList<string> Names => JobLists.Names(Desk.Root, "runs", "run");

    private string Name => _open < Names.Count ? Names[_open] : "";

    private IReadOnlyList<string> Faces => [.. JobLists.List(Desk.Root, At + ".faces").Select(face => face?.ToString() ?? "")];

    // A face is in one run only, a zone too.
    private IReadOnlyList<string> Loose
    {
        get
        {
            var taken = JobLists.List(Desk.Root, "runs").OfType<JsonObject>().SelectMany(run => run["faces"] as JsonArray ?? []).Select(face => face?.ToString()).ToHashSet(StringComparer.Ordinal);
            return [.. JobNames.FacesAndZones(Desk.Root).Where(name => name.Length > 0 && !taken.Contains(name))];
        }
    }

    // What is named already, so that a closed fold tells.
    private string Taken => string.Join(", ", new[] { "mortar", "grout", "sealant" }.Select(name => FieldId.Text(Desk, $"{At}.setting.{name}")).Where(name => name.Length > 0));

    private bool Flexes => JobPath.Get(Desk.Root, At + ".joint") is JsonObject;

    /// <inheritdoc />
    protected override void OnInitialized() => _open = First;

    /// <inheritdoc />
    protected override void OnParametersSet() => _open = Math.Clamp(_open, 0, Math.Max(0, Names.Count - 1));

    private string? Rename(string name) => JobNames.Give(Desk, "runs", _open, name, "run", JobNames.Run);

    private void Add()
    {
        var (name, at) = (JobLists.Free(JobLists.List(Desk.Root, "runs"), "run"), Names.Count);
        var faces = Rest();
        var product = JobLists.Name(JobLists.List(Desk.Root, "products").FirstOrDefault());
        Desk.Change("new run", root => JobLists.Add(root, "runs", new JsonObject
        {
            ["name"] = name,
            ["product"] = product,
            ["faces"] = faces,
            ["bond"] = new JsonObject { ["kind"] = "grid" },
            ["joint"] = Desk.Unit == Plane.Measure.LengthUnit.Inch ? "1/8" : "3",
        }));
        _open = at;
    }

    // The faces stay with the first of the two: a face is in one run.
    private void Duplicate()
    {
        Desk.Change($"copy of {Name}", root =>
        {
            JobLists.Duplicate(root, "runs", _open);
            var copy = string.Create(CultureInfo.InvariantCulture, $"runs[{_open + 1}]");
            JobPath.Set(root, copy + ".faces", Rest());
            JobPath.Set(root, copy + ".through", null);
            JobPath.Set(root, copy + ".wants", null);
            JobPath.Set(root, copy + ".set", null);
        });
        _open++;
    }

    // What is in no run yet. Walls go round as one; a zone has a run of its own.
    private JsonArray Rest()
    {
        var walls = JobLists.List(Desk.Root, "faces").Select(JobLists.Name).ToHashSet(StringComparer.Ordinal);
        return new([.. (Loose.Any(walls.Contains) ? Loose.Where(walls.Contains) : Loose.Take(1)).Select(face => (JsonNode)JsonValue.Create(face))]);
    }

    private void Move(int by)
    {
        Desk.Change($"place of {Name}", root => JobLists.Move(root, "runs", _open, by));
        _open = Math.Clamp(_open + by, 0, Names.Count - 1);
    }

    private void Remove()
    {
        Desk.Change($"removed {Name}", root =>
        {
            if (Name.Length > 0) JobNames.Run(root, Name, null);
            JobLists.Remove(root, "runs", _open);
        });
        _open = Math.Max(0, _open - 1);
    }

    private void TakeFace(string face) => Desk.Change($"{face} into {Name}", root =>
    {
        if (JobPath.Get(root, At + ".faces") is JsonArray faces) faces.Add((JsonNode)JsonValue.Create(face));
        else JobPath.Set(root, At + ".faces", new JsonArray(JsonValue.Create(face)));
    });

    private void MoveFace(int at, int by) => Desk.Change($"order of the faces of {Name}", root => JobLists.Move(root, At + ".faces", at, by));

    private void DropFace(int at) => Desk.Change($"{Faces[at]} out of {Name}", root =>
    {
        if (FieldId.Text(Desk, At + ".through") is var through && string.Equals(through, Faces[at], StringComparison.Ordinal)) JobPath.Set(root, At + ".through", null);
        if (JobPath.Get(root, At) is JsonObject run) JobNames.ForgetSet(run, Faces[at]);
        if (JobPath.Get(root, At + ".faces") is JsonArray faces) faces.RemoveAt(at);
    });

    private void Flex(bool on) => Desk.Change($"joint of {Name}", root =>
    {
        var wanted = (on ? JobPath.Get(root, At + ".joint") : JobPath.Get(root, At + ".joint.wanted"))?.DeepClone() ?? JsonValue.Create("");
        JobPath.Set(root, At + ".joint", on
            ? new JsonObject { ["least"] = wanted.DeepClone(), ["wanted"] = wanted, ["most"] = wanted.DeepClone() }
            : wanted);
    });

    private void Half(bool on) => Desk.Change($"half tiles of {Name}", root => FieldValue.Put(root, At + ".limits.halfTile", on ? null : JsonValue.Create(false)));
}
