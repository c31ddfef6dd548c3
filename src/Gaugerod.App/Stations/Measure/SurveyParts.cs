using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Gaugerod.Engine.Surveys;
using Microsoft.AspNetCore.Components;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Begins surveys, and keeps the names of their corners and spots right wherever readings use them.</summary>
internal static class SurveyParts
{
    /// <summary>What the level line is called where a reading goes to it.</summary>
    public const string LevelLine = "level line";

    private static readonly string[] s_naming = ["from", "to", "corner", "towards", "side", "strings"];

    /// <summary>A face to be measured corner to corner: its sides first, then the diagonals, all still to be read.</summary>
    /// <param name="corners">Four, or six of an L whose fourth corner points into the room.</param>
    public static JsonObject New(int corners)
    {
        var names = Enumerable.Range(0, corners).Select(i => ((char)('A' + i)).ToString()).ToList();
        var sides = names.Select((name, i) => (From: name, To: names[(i + 1) % corners])).ToList();
        // Those of the two parts of an L, and the one across both.
        (string From, string To)[] diagonals = corners == 6 ? [("A", "C"), ("B", "D"), ("D", "F"), ("E", "A"), ("A", "D")] : [("A", "C"), ("B", "D")];
        return new()
        {
            ["survey"] = new JsonObject
            {
                ["corners"] = new JsonArray([.. names.Select((name, i) => corners == 6 && i == 3 ? (JsonNode)new JsonObject { ["name"] = name, ["is"] = "outside corner" } : JsonValue.Create(name))]),
                ["readings"] = new JsonArray([.. sides.Concat(diagonals).Select(pair => (JsonNode)Between(pair.From, pair.To))]),
            },
            ["edges"] = new JsonArray([.. sides.Select(side => (JsonNode)new JsonObject { ["name"] = side.From + side.To, ["kind"] = "inside corner" })]),
        };
    }

    /// <summary>A reading between two spots, still to be read.</summary>
    public static JsonObject Between(string from, string to) => new() { ["from"] = from, ["to"] = to, ["is"] = "" };

    /// <summary>A reading that was asked for, as the job holds it, still to be read.</summary>
    public static JsonObject Asked(JobDesk desk, FaceSurvey survey, SurveyReading asked)
    {
        var made = asked.As switch
        {
            ReadAs.Strings => new JsonObject { ["strings"] = new JsonArray(new JsonArray(Name(asked.First.At), Name(asked.First.Towards)), new JsonArray(Spot(asked.Second), Spot(asked.Third))) },
            ReadAs.Off => new JsonObject { ["side"] = new JsonArray(Name(asked.First.At), Name(asked.First.Towards)), ["to"] = Spot(asked.Second) },
            _ => new JsonObject { ["from"] = Spot(asked.First), ["to"] = Spot(asked.Second) },
        };
        if (asked.As is ReadAs.Level or ReadAs.Plumb) made["held"] = asked.As is ReadAs.Level ? "level" : "plumb";
        made["is"] = "";
        return made;

        string Name(int at) => at < survey.Corners.Count ? survey.Corners[at].Name : at < survey.LevelLine ? survey.Spots[at - survey.Corners.Count] : LevelLine;

        JsonNode Spot(SurveySpot spot) => spot.At == spot.Towards
            ? JsonValue.Create(Name(spot.At))
            : new JsonObject { ["from"] = Name(spot.At), ["towards"] = Name(spot.Towards), ["at"] = FaceMeasures.Typed(desk, spot.Along) };
    }

    /// <summary>Goes to the reading that is asked for: one that waits already is gone to, else it is added.</summary>
    public static async Task AskAsync(JobDesk desk, string face, SurveyLook look, SurveyReading asked, EventCallback<string> go)
    {
        var waits = look.Open.Where(one => one.Reading.As == asked.As && Same(one.Reading, asked)).Select(one => one.Row).DefaultIfEmpty(-1).First();
        if (waits < 0)
        {
            waits = JobLists.List(desk.Root, face + ".survey.readings").Count;
            var made = Asked(desk, look.Survey, asked);
            desk.Change($"new reading {ReadingWords.Of(made)}", root => JobLists.Add(root, face + ".survey.readings", made));
        }

        await go.InvokeAsync(FieldId.Of(FormattableString.Invariant($"{face}.survey.readings[{waits}].is")));
    }

    /// <summary>The names of its corners.</summary>
    public static IReadOnlyList<string> Corners(JsonObject root, string face) => [.. JobLists.List(root, face + ".survey.corners").Select(ReadingWords.Name)];

    /// <summary>The names of its other spots.</summary>
    public static IReadOnlyList<string> Spots(JsonObject root, string face) => [.. JobLists.List(root, face + ".survey.spots").Select(spot => spot?.ToString() ?? "")];

    /// <summary>Why a corner or a spot cannot be called so; null when it can.</summary>
    public static string? Refusal(JsonObject root, string face, string old, string name, string thing) =>
        name.Length == 0 ? $"A {thing} needs a name; it keeps the one it had."
        : string.Equals(name, LevelLine, StringComparison.Ordinal) || (!string.Equals(old, name, StringComparison.Ordinal) && Corners(root, face).Concat(Spots(root, face)).Contains(name, StringComparer.Ordinal)) ? $"{name} is taken already; this {thing} keeps the name it had."
        : null;

    /// <summary>A letter that no corner has.</summary>
    public static string FreeLetter(JsonObject root, string face)
    {
        var taken = Corners(root, face).Concat(Spots(root, face)).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(0, 26).Select(i => ((char)('A' + i)).ToString()).Concat(Enumerable.Range(1, 99).Select(i => FormattableString.Invariant($"corner {i}"))).First(name => !taken.Contains(name));
    }

    /// <summary>Follows a new name to the readings.</summary>
    public static void Rename(JsonObject root, string face, string old, string name)
    {
        foreach (var one in Using(root, face)) Put(one, old, name, naming: false);
        JobNames.SharedCorner(root, face, old, name);
        foreach (var hole in AtSpot(root, face, old)) hole["spot"] = name;
    }

    private static IEnumerable<JsonObject> AtSpot(JsonObject root, string face, string name) =>
        JobLists.List(root, face + ".holes").OfType<JsonObject>().Where(hole => hole["spot"] is JsonValue spot && string.Equals(spot.ToString(), name, StringComparison.Ordinal));

    /// <summary>Takes out the readings that name a corner or a spot which is gone; a hole that stood there is to be placed anew.</summary>
    public static void Forget(JsonObject root, string face, string name)
    {
        foreach (var hole in AtSpot(root, face, name))
        {
            hole.Remove("spot");
            (hole["x"], hole["y"]) = ("", "");
        }

        foreach (var list in new[] { "readings", "comesOff", "same" })
        {
            var all = JobLists.List(root, $"{face}.survey.{list}");
            for (var i = all.Count - 1; i >= 0; i--)
            {
                if (Names(all[i], name, naming: false)) all.RemoveAt(i);
            }

            if (list is not "readings" && all.Count == 0) JobPath.Set(root, $"{face}.survey.{list}", null);
        }

        JobNames.SharedCorner(root, face, name, null);
    }

    private static bool Same(SurveyReading one, SurveyReading other) =>
        one.Third == other.Third && ((one.First == other.First && one.Second == other.Second) || (one.As is ReadAs.Straight && one.First == other.Second && one.Second == other.First));

    private static IEnumerable<JsonNode?> Using(JsonObject root, string face) =>
        new[] { "readings", "comesOff", "same" }.SelectMany(list => JobLists.List(root, $"{face}.survey.{list}"));

    private static bool Names(JsonNode? at, string name, bool naming) => at switch
    {
        JsonObject group => group.Any(member => Names(member.Value, name, s_naming.Contains(member.Key))),
        JsonArray list => list.Any(one => Names(one, name, naming)),
        _ => naming && string.Equals(at?.ToString(), name, StringComparison.Ordinal),
    };

    private static void Put(JsonNode? at, string old, string name, bool naming)
    {
        if (at is JsonObject group)
        {
            foreach (var (key, value) in group.ToList())
            {
                if (value is not JsonValue) Put(value, old, name, s_naming.Contains(key));
                else if (s_naming.Contains(key) && Names(value, old, naming: true)) group[key] = name;
            }
        }
        else if (at is JsonArray list)
        {
            for (var i = 0; i < list.Count; i++)
            {
                if (list[i] is not JsonValue) Put(list[i], old, name, naming);
                else if (naming && Names(list[i], old, naming)) list[i] = name;
            }
        }
    }
}
