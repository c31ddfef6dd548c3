using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.Engine;
using Gaugerod.Plane.Measure;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Measure;

/// <summary>The faces: what was read on them, their edges, and what stands or opens in them.</summary>
public sealed partial class FacesPart : ComponentBase
{
    private static readonly string[] s_sides = ["foot", "right", "head", "left"];
    private static readonly string[] s_readings = ["width", "height", "levelLine", "lean"];
    private static readonly string[] s_groups = ["outline", "survey", "edges"];

    // Narrower than a hand or longer than a hall, a wall is more likely mistyped. Common practice, no source.
    private static readonly Length s_least = Length.FromMillimetres(100);
    private static readonly Length s_most = Length.FromMillimetres(30_000);
    private int _open;
    private string _taken = "";
    private bool _adds;

    [CascadingParameter]
    internal JobDesk Desk { get; set; } = null!;

    /// <summary>Which face to open first.</summary>
    [Parameter]
    public int First { get; set; }

    /// <summary>Called with the id of a field to go to; empty for the top of the part.</summary>
    [Parameter]
    public EventCallback<string> Go { get; set; }

    /// <summary>Called with a place of the job to go to, in another part.</summary>
    [Parameter]
    public EventCallback<string> To { get; set; }

    /// <summary>Called with the face that was opened, so that the station finds it open again.</summary>
    [Parameter]
    public EventCallback<int> Opened { get; set; }

    private string At => string.Create(CultureInfo.InvariantCulture, $"faces[{_open}]");

    private IReadOnlyList<string> Names => JobLists.Names(Desk.Root, "faces", "wall");

    private string Name => FieldId.Text(Desk, At + ".name");

    private bool Drawn => JobPath.Get(Desk.Root, At + ".outline") is not null;

    private bool Surveyed => JobPath.Get(Desk.Root, At + ".survey") is not null;

    private bool IsFloor => FaceWords.Of(Desk.Root, _open) is "floor";

    private IReadOnlyList<string> Corners => SurveyParts.Corners(Desk.Root, At);

    // What was assumed of the readings, and which do not fit the others.
    private IEnumerable<Finding> Findings =>
        !Surveyed && Desk.Fresh && Desk.Plan is { } plan ? plan.Findings.Where(f => string.Equals(f.Where, Name, StringComparison.Ordinal) && (f.Rule is "readings-agree" or "plumb" or "level-line")) : [];

    /// <summary>What is in question of a face's readings, in words; empty for nothing.</summary>
    private string Doubt(int face)
    {
        var at = string.Create(CultureInfo.InvariantCulture, $"faces[{face}]");
        var disagree = Desk.Survey(at) is { IsInDoubt: true }
            || (Desk.Fresh && Desk.Plan is { } plan && plan.Findings.Any(f => f.Rule is "readings-agree" && f.Level != FindingLevel.Note && string.Equals(f.Where, FieldId.Text(Desk, at + ".name"), StringComparison.Ordinal)));
        return disagree ? "its readings disagree" : "";
    }

    private string Upward => $"From {(Kind("foot") is "fixture" ? "the rim of what stands at its foot" : "the floor")} up to {(Kind("head") is "free" ? "where the tile ends" : "the ceiling")}.";

    private string Kind(string side) => FieldId.Text(Desk, $"{At}.edges.{side}.kind") is { Length: > 0 } kind ? kind : Words.Usual(side);

    private string Read(params string[] readings)
    {
        var read = readings.Sum(r => JobPath.Get(Desk.Root, $"{At}.readings.{r}") is JsonObject group ? group.Count : 0);
        return read == 0 ? "not read" : string.Create(CultureInfo.InvariantCulture, $"{read} of 4 read");
    }

    /// <inheritdoc />
    protected override void OnInitialized() => _open = First;

    /// <inheritdoc />
    protected override void OnParametersSet() => _open = Math.Clamp(_open, 0, Math.Max(0, Names.Count - 1));

    /// <summary>Opens the wall to the right. Where nothing was read of its height, that at the corner they share is taken over.</summary>
    public async Task NextAsync()
    {
        if (_open + 1 >= Names.Count) return;
        var (before, at) = (Name, _open + 1);
        var height = string.Create(CultureInfo.InvariantCulture, $"faces[{at}].readings.height.left");
        var taken = "";
        if (!Desk.ReadOnly && FieldId.Text(Desk, height).Length == 0 && JobPath.Get(Desk.Root, height) is not null
            && JobPath.Get(Desk.Root, At) is JsonObject wall && NextWall.HeightAtRight(wall) is { } read)
        {
            taken = $"The height at the left is {before}'s, from the corner they share. Type over it if it is not.";
            Desk.Change(JobWords.Of(Desk.Root, height), root => JobPath.Set(root, height, read));
        }

        await OpenAsync(at);
        _taken = taken;
        var foot = Surveyed ? At + ".survey.readings[0].is" : At + ".readings.width.foot";
        await Go.InvokeAsync(JobPath.Get(Desk.Root, foot) is not null && FieldId.Text(Desk, foot).Length == 0 ? FieldId.Of(foot) : "");
    }

    private Task OpenAsync(int at)
    {
        (_open, _taken) = (at, "");
        return Opened.InvokeAsync(at);
    }

    private string? Rename(string name) =>
        JobNames.Refusal(JobLists.List(Desk.Root, "faces"), _open, name, FaceWords.Of(Desk.Root, _open)) ?? JobNames.ZoneRefusal(Desk.Root, Name, name) ?? JobNames.Give(Desk, "faces", _open, name, FaceWords.Of(Desk.Root, _open), JobNames.Face);

    private async Task Add()
    {
        var (before, wall) = (Name, NextWall.After(JobPath.Get(Desk.Root, At) as JsonObject ?? []));
        var said = $"Taken over from {before}: what the foot and the head meet{(NextWall.HasHeight(wall) ? ", the height at the corner they share" : "")}{(wall.ContainsKey("fixtures") ? ", and what stands in that corner" : "")}. Type over what differs.";
        await AddAsync("wall", wall);
        _taken = said;
    }

    // A square to begin with, in sizes of the job's unit; its corners are then typed over.
    private Task AddDrawn()
    {
        var (wide, high) = Desk.Unit == Plane.Measure.LengthUnit.Inch ? ("60", "96") : ("1500", "2400");
        return AddAsync("wall", new JsonObject
        {
            ["outline"] = new JsonArray(new JsonArray("0", "0"), new JsonArray(wide, "0"), new JsonArray(wide, high), new JsonArray("0", high)),
            ["edges"] = new JsonArray(Edge("foot", "floor"), Edge("right", "inside corner"), Edge("head", "ceiling"), Edge("left", "inside corner")),
        });

        static JsonNode Edge(string name, string kind) => new JsonObject { ["name"] = name, ["kind"] = kind };
    }

    private Task AddSurvey(int corners)
    {
        _adds = false;
        return AddAsync("floor", SurveyParts.New(corners));
    }

    // The new face stands to the right of the open one, also on its run; one that was measured corner to corner is most likely in another plane.
    private async Task AddAsync(string stem, JsonObject face)
    {
        var (list, before, at) = (JobLists.List(Desk.Root, "faces"), Name, _open + 1);
        var name = JobLists.Free(list, stem);
        var made = new JsonObject { ["name"] = name };
        foreach (var (key, value) in face.ToList())
        {
            face.Remove(key);
            made[key] = value;
        }

        var run = made.ContainsKey("survey") ? ZoneMaker.Run(Desk, At, name) : null;
        Desk.Change($"new {FaceWords.Of(made)} {name}", root =>
        {
            JobLists.Add(root, "faces", made, at);
            if (run is null) Join(root, before, name);
            else JobLists.Add(root, "runs", run);
        });
        await OpenAsync(Math.Min(at, Names.Count - 1));
        await Go.InvokeAsync(FieldId.Of(At + (made.ContainsKey("readings") ? ".readings.width.foot" : run is not null ? ".survey.readings[0].is" : ".name")));
    }

    private static void Join(JsonObject root, string before, string name)
    {
        foreach (var faces in JobLists.List(root, "runs").OfType<JsonObject>().Select(run => run["faces"]).OfType<JsonArray>())
        {
            for (var i = 0; i < faces.Count; i++)
            {
                if (!string.Equals(faces[i]?.ToString(), before, StringComparison.Ordinal)) continue;
                faces.Insert(i + 1, (JsonNode)JsonValue.Create(name));
                return;
            }
        }

        if (JobPath.Get(root, "runs[0].faces") is JsonArray first) first.Add((JsonNode)JsonValue.Create(name));
    }

    private void Duplicate()
    {
        var before = Name;
        Desk.Change($"copy of {before}", root =>
        {
            JobLists.Duplicate(root, "faces", _open);
            // A copy stands elsewhere: it ends at no side of the faces that this one meets.
            (JobPath.Get(root, string.Create(CultureInfo.InvariantCulture, $"faces[{_open + 1}].survey")) as JsonObject)?.Remove("same");
            JobNames.FreeZones(root, string.Create(CultureInfo.InvariantCulture, $"faces[{_open + 1}].zones"));
            Join(root, before, JobLists.Name(JobPath.Get(root, string.Create(CultureInfo.InvariantCulture, $"faces[{_open + 1}]"))));
        });
        _ = OpenAsync(_open + 1);
    }

    private void Move(int by)
    {
        Desk.Change($"place of {Name}", root => JobLists.Move(root, "faces", _open, by));
        _ = OpenAsync(Math.Clamp(_open + by, 0, Names.Count - 1));
    }

    private void Remove()
    {
        var name = Name;
        Desk.Change($"removed {name}", root =>
        {
            foreach (var zone in JobLists.List(root, At + ".zones").Select(JobLists.Name).ToList()) JobNames.ForgetZone(root, zone);
            JobLists.Remove(root, "faces", _open);
            JobNames.ForgetFace(root, name);
        });
        _ = OpenAsync(Math.Max(0, _open - 1));
    }
}
