using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Desk;

/// <summary>A survey while it is being taken: what can be read of it, weighed. What was not read yet is left out, not refused.</summary>
/// <param name="survey">Its corners, its spots and what was read.</param>
/// <param name="shape">What that comes to.</param>
/// <param name="rows">For each reading its place in the job's list.</param>
/// <param name="open">Readings that wait for their figure, by their place in the job's list.</param>
internal sealed class SurveyLook(FaceSurvey survey, SurveyedOutline shape, IReadOnlyList<int> rows, IReadOnlyList<(int Row, SurveyReading Reading)> open)
{
    private const string Place = "faces[0].survey.";

    /// <summary>Its corners, its spots and what was read.</summary>
    public FaceSurvey Survey => survey;

    /// <summary>What that comes to.</summary>
    public SurveyedOutline Shape => shape;

    /// <summary>For each reading its place in the job's list.</summary>
    public IReadOnlyList<int> Rows => rows;

    /// <summary>Readings that wait for their figure, by their place in the job's list.</summary>
    public IReadOnlyList<(int Row, SurveyReading Reading)> Open => open;

    /// <summary>Where corners and spots stand, weighed or roughly.</summary>
    public Sequence<PlacedSpot> Places => Shape.Weighed?.Corners ?? Shape.Rough;

    /// <summary>What became of a reading, by its place in the job's list; null where it was not weighed.</summary>
    public WeighedReading? Weighed(int row) => Shape.Weighed is { } weighed && At(row) is >= 0 and var at ? weighed.Readings[at] : null;

    /// <summary>Whether a reading is one of those of which one must be in error.</summary>
    public bool IsDoubted(int row) => Shape.Weighed is { } weighed && At(row) is >= 0 and var at && weighed.Suspects.Contains(at);

    private int At(int row)
    {
        for (var i = 0; i < Rows.Count; i++)
        {
            if (Rows[i] == row) return i;
        }

        return -1;
    }

    /// <summary>Reads and weighs a survey of the job file; null where its corners cannot be read.</summary>
    public static SurveyLook? Of(JsonObject written, Tape tape)
    {
        var survey = (JsonObject)written.DeepClone();
        var rows = Number(survey, tape, out var open);
        for (var tries = 0; tries < 3; tries++)
        {
            var readings = (JsonArray)survey["readings"]!;
            if (readings.Count == 0)
            {
                if (Nothing(survey) is not { } nothing) return null;
                readings.Add((JsonNode)nothing);
                rows.Add(-1);
            }

            var reading = JobReader.Read(Encoding.UTF8.GetBytes(Alone(survey, tape)), "this survey");
            if (reading is JobReading.Understood { Job.Faces: [{ Shape: FaceShape.Surveyed read }] }) return Weigh(read.Survey, rows, open, tape);
            if (reading is not JobReading.Refused refused || !Drop(survey, rows, refused.Faults.Select(fault => fault.Path))) return null;
        }

        return null;
    }

    private static SurveyLook Weigh(FaceSurvey survey, List<int> rows, HashSet<int> open, Tape tape)
    {
        var all = survey.Readings.Select((reading, i) => (Row: rows[i], Reading: reading)).Where(one => one.Row >= 0).ToList();
        var taken = all.Where(one => !open.Contains(one.Row)).ToList();
        var read = survey with { Readings = taken.Select(one => one.Reading).ToSequence() };
        return new(read, SurveyView.Of(read, "", tape), [.. taken.Select(one => one.Row)], [.. all.Where(one => open.Contains(one.Row))]);
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

    private static JsonObject? Nothing(JsonObject survey)
    {
        var names = (survey["corners"] as JsonArray ?? []).Select(corner => corner is JsonObject group ? group["name"]?.ToString() : corner?.ToString()).ToList();
        return names.Count < 2 ? null : new() { ["from"] = names[0], ["to"] = names[1], ["is"] = "1 m" };
    }

    // What cannot be read is said at its field; the rest is drawn.
    private static bool Drop(JsonObject survey, List<int> rows, IEnumerable<string> faults)
    {
        const string Readings = Place + "readings[";
        var (gone, dropped) = (new List<int>(), false);
        foreach (var path in faults)
        {
            if (path.StartsWith(Readings, StringComparison.Ordinal))
            {
                var row = int.Parse(path[Readings.Length..path.IndexOf(']', Readings.Length)], CultureInfo.InvariantCulture);
                if (!gone.Contains(row)) gone.Add(row);
            }

            foreach (var part in new[] { "accuracy", "comesOff" })
            {
                if (path.StartsWith(Place + part, StringComparison.Ordinal)) dropped |= survey.Remove(part);
            }
        }

        gone.Sort();
        for (var i = gone.Count - 1; i >= 0; i--)
        {
            var row = gone[i];
            ((JsonArray)survey["readings"]!).RemoveAt(row);
            rows.RemoveAt(row);
        }

        return dropped || gone.Count > 0;
    }

    // The reader reads jobs: one of this face alone, with no more to it than it needs.
    private static string Alone(JsonObject survey, Tape tape)
    {
        var inches = tape.Unit == LengthUnit.Inch;
        var sides = (survey["corners"] as JsonArray)?.Count ?? 0;
        return new JsonObject
        {
            ["format"] = "gaugerod-job/1", ["name"] = "survey", ["units"] = inches ? "in" : "mm", ["tape"] = LengthText.ExactMillimetres(tape.Mark) + " mm",
            ["products"] = new JsonArray(new JsonObject { ["name"] = "tile", ["width"] = "300 mm", ["height"] = "300 mm" }),
            ["faces"] = new JsonArray(new JsonObject
            {
                ["name"] = "face", ["survey"] = survey.DeepClone(),
                ["edges"] = new JsonArray([.. Enumerable.Range(0, sides).Select(_ => (JsonNode)new JsonObject { ["kind"] = "free" })]),
            }),
            ["runs"] = new JsonArray(new JsonObject { ["name"] = "run", ["product"] = "tile", ["faces"] = new JsonArray("face"), ["bond"] = new JsonObject { ["kind"] = "grid" }, ["joint"] = "3 mm" }),
        }.ToJsonString();
    }
}
