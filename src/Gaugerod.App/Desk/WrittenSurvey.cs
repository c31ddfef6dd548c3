using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Desk;

/// <summary>What can be read of a survey while it is being taken. What was not read yet is left out, not refused.</summary>
/// <param name="survey">Its corners, its spots and what was read.</param>
/// <param name="rows">For each reading its place in the job's list.</param>
/// <param name="open">Readings that wait for their figure, by their place in the job's list.</param>
internal sealed class WrittenSurvey(FaceSurvey survey, IReadOnlyList<int> rows, IReadOnlyList<(int Row, SurveyReading Reading)> open)
{
    private const string Place = "faces[0].survey.";

    /// <summary>Its corners, its spots and what was read.</summary>
    public FaceSurvey Survey => survey;

    /// <summary>For each reading its place in the job's list.</summary>
    public IReadOnlyList<int> Rows => rows;

    /// <summary>Readings that wait for their figure, by their place in the job's list.</summary>
    public IReadOnlyList<(int Row, SurveyReading Reading)> Open => open;

    /// <summary>Reads a survey of the job file; null where its corners cannot be read.</summary>
    /// <param name="written">The survey as it stands.</param>
    /// <param name="others">Other surveyed faces and their corners as they stand; sides shared with others than these do not count.</param>
    /// <param name="tape">The tape it is read with.</param>
    public static WrittenSurvey? Of(JsonObject written, IEnumerable<(string Face, JsonNode? Corners)> others, Tape tape)
    {
        var beside = others.ToArray();
        var survey = (JsonObject)written.DeepClone();
        var rows = Number(survey, tape, out var open);
        Shared(survey, beside);
        for (var tries = 0; tries < 4; tries++)
        {
            var readings = (JsonArray)survey["readings"]!;
            if (readings.Count == 0)
            {
                if (Nothing(survey["corners"]) is not { } nothing) return null;
                readings.Add((JsonNode)nothing);
                rows.Add(-1);
            }

            var reading = JobReader.Read(Encoding.UTF8.GetBytes(Alone(survey, beside, tape)), "this survey");
            if (reading is JobReading.Understood { Job.Faces: [{ Shape: FaceShape.Surveyed read }, ..] }) return Taken(read.Survey, rows, open, beside);
            if (reading is not JobReading.Refused refused || !Drop(survey, rows, beside, refused.Faults.Select(fault => fault.Path))) return null;
        }

        return null;
    }

    private static WrittenSurvey Taken(FaceSurvey survey, List<int> rows, HashSet<int> open, (string Face, JsonNode? Corners)[] others)
    {
        var all = survey.Readings.Select((reading, i) => (Row: rows[i], Reading: reading)).Where(one => one.Row >= 0).ToList();
        var taken = all.Where(one => !open.Contains(one.Row)).ToList();
        var same = survey.Same.Select(side => side with { Face = others[Standing(side.Face)].Face }).ToSequence();
        return new(survey with { Readings = taken.Select(one => one.Reading).ToSequence(), Same = same }, [.. taken.Select(one => one.Row)], [.. all.Where(one => open.Contains(one.Row))]);
    }

    // A reading without its figure still says between what it will be taken: it stands in with any length, and is not weighed.
    private static List<int> Number(JsonObject survey, Tape tape, out HashSet<int> open)
    {
        open = [];
        var rows = new List<int>();
        var kept = new JsonArray();
        var list = survey["readings"] as JsonArray ?? [];
        for (var row = 0; row < list.Count; row++)
        {
            if (list[row] is not JsonObject reading) continue;
            var one = (JsonObject)reading.DeepClone();
            if (LengthText.Read(one["is"]?.ToString() ?? "", tape.Unit) is not LengthReading.Understood)
            {
                open.Add(row);
                one["is"] = "1 m";
            }

            kept.Add((JsonNode)one);
            rows.Add(row);
        }

        survey["readings"] = kept;
        return rows;
    }

    // The other faces stand in by numbers: what they are called may be no name.
    private static void Shared(JsonObject survey, (string Face, JsonNode? Corners)[] others)
    {
        if (!survey.Remove("same", out var same) || same is not JsonArray sides) return;
        var kept = new JsonArray();
        foreach (var side in sides.OfType<JsonObject>())
        {
            var with = 0;
            while (with < others.Length && !string.Equals(others[with].Face, side["face"]?.ToString(), StringComparison.Ordinal)) with++;
            if (with == others.Length) continue;
            var one = (JsonObject)side.DeepClone();
            one["face"] = StandIn(with);
            kept.Add((JsonNode)one);
        }

        if (kept.Count > 0) survey["same"] = kept;
    }

    private static string StandIn(int other) => string.Create(CultureInfo.InvariantCulture, $"face {other + 1}");

    private static int Standing(string face) => int.Parse(face[5..], CultureInfo.InvariantCulture) - 1;

    private static JsonObject? Nothing(JsonNode? corners)
    {
        var names = (corners as JsonArray ?? []).Select(corner => corner is JsonObject group ? group["name"]?.ToString() : corner?.ToString()).ToList();
        return names.Count < 2 ? null : new() { ["from"] = names[0], ["to"] = names[1], ["is"] = "1 m" };
    }

    // What cannot be read is said at its field; the rest is drawn.
    private static bool Drop(JsonObject survey, List<int> rows, (string Face, JsonNode? Corners)[] others, IEnumerable<string> faults)
    {
        var (readings, sides, dropped) = (new SortedSet<int>(), new SortedSet<int>(), false);
        var same = survey["same"] as JsonArray ?? [];
        foreach (var path in faults)
        {
            if (At(path, Place + "readings[") is { } row) readings.Add(row);
            if (At(path, Place + "same[") is { } side) sides.Add(side);
            // A face of which not even the corners can be read shares nothing.
            if (At(path, "faces[") is > 0 and { } other && path.Contains("].survey.corners", StringComparison.Ordinal))
            {
                others[other - 1].Corners = null;
                sides.UnionWith(Enumerable.Range(0, same.Count).Where(i => string.Equals(same[i]!["face"]?.ToString(), StandIn(other - 1), StringComparison.Ordinal)));
            }

            foreach (var part in new[] { "accuracy", "comesOff" })
            {
                if (path.StartsWith(Place + part, StringComparison.Ordinal)) dropped |= survey.Remove(part);
            }
        }

        foreach (var row in readings.Reverse())
        {
            ((JsonArray)survey["readings"]!).RemoveAt(row);
            rows.RemoveAt(row);
        }

        foreach (var side in sides.Reverse()) same.RemoveAt(side);
        return dropped || readings.Count > 0 || sides.Count > 0;
    }

    private static int? At(string path, string list) =>
        path.StartsWith(list, StringComparison.Ordinal) ? int.Parse(path[list.Length..path.IndexOf(']', list.Length)], CultureInfo.InvariantCulture) : null;

    // The reader reads jobs: one of this face, with no more to it than it needs, and of those it shares sides with no more than their corners.
    private static string Alone(JsonObject survey, (string Face, JsonNode? Corners)[] others, Tape tape)
    {
        var faces = new JsonArray(Face("face", (JsonObject)survey.DeepClone()));
        for (var i = 0; i < others.Length; i++)
        {
            var corners = others[i].Corners?.DeepClone() ?? new JsonArray("A", "B", "C", "D");
            faces.Add((JsonNode)Face(StandIn(i), new() { ["corners"] = corners, ["readings"] = new JsonArray(Nothing(corners)) }));
        }

        return new JsonObject
        {
            ["format"] = "gaugerod-job/1", ["name"] = "survey", ["units"] = tape.Unit == LengthUnit.Inch ? "in" : "mm", ["tape"] = LengthText.ExactMillimetres(tape.Mark) + " mm",
            ["products"] = new JsonArray(new JsonObject { ["name"] = "tile", ["width"] = "300 mm", ["height"] = "300 mm" }),
            ["faces"] = faces,
            ["runs"] = new JsonArray(new JsonObject { ["name"] = "run", ["product"] = "tile", ["faces"] = new JsonArray("face"), ["bond"] = new JsonObject { ["kind"] = "grid" }, ["joint"] = "3 mm" }),
        }.ToJsonString();
    }

    private static JsonObject Face(string name, JsonObject survey) => new()
    {
        ["name"] = name, ["survey"] = survey,
        ["edges"] = new JsonArray([.. Enumerable.Range(0, (survey["corners"] as JsonArray)?.Count ?? 0).Select(_ => (JsonNode)new JsonObject { ["kind"] = "free" })]),
    };
}
