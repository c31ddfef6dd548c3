using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Parts;

/// <summary>Says a place of the job as a person would: "width at the foot of north" for <c>faces[1].readings.width.foot</c>.</summary>
internal static class JobWords
{
    private static readonly Dictionary<string, string> s_things = new(StringComparer.Ordinal)
    {
        ["products"] = "tile", ["trims"] = "trim", ["supplies"] = "supply", ["boards"] = "board", ["fills"] = "curb or bench", ["faces"] = "wall", ["runs"] = "run", ["openings"] = "opening", ["holes"] = "hole", ["fixtures"] = "fixture", ["wants"] = "want", ["zones"] = "zone", ["lines"] = "fold", ["drains"] = "drain", ["beds"] = "bed", ["items"] = "price", ["labour"] = "task", ["cut"] = "piece cut already",
    };

    private static readonly Dictionary<string, string> s_readings = new(StringComparer.Ordinal)
    {
        ["width.foot"] = "width at the foot", ["width.middle"] = "width in the middle", ["width.top"] = "width at the top",
        ["height.left"] = "height at the left", ["height.right"] = "height at the right",
        ["levelLine.left"] = "level line at the left", ["levelLine.right"] = "level line at the right",
        ["lean.left"] = "lean of the left corner", ["lean.right"] = "lean of the right corner",
    };

    private static readonly Dictionary<string, string> s_fields = new(StringComparer.Ordinal)
    {
        ["edgeJoint"] = "soft joint", ["bondCoat"] = "bond coat", ["perBox"] = "tiles in a box", ["turn"] = "turning", ["flatPercent"] = "flat share",
        ["heightsFrom"] = "where heights count from", ["heightLeft"] = "height at the left", ["heightRight"] = "height at the right",
        ["between"] = "line between the corners", ["toward"] = "edge it falls to", ["lowest"] = "lowest place of the bed", ["cuts"] = "what smallest cuts are compared by", ["x"] = "distance from the left", ["y"] = "height", ["levelLine"] = "level line", ["edge"] = "edges", ["side"] = "upright edges",
        ["screwsApart"] = "how far screws stand apart", ["inset"] = "how far screws stand from the edge", ["potLife"] = "pot life", ["openTime"] = "open time", ["halfTile"] = "half tiles", ["taxOn"] = "what tax is paid on", ["taxName"] = "name of the tax", ["validUntil"] = "last day of the offer", ["per"] = "what the rate is for", ["sealed"] = "sealing", ["backButter"] = "mortar on backs", ["jointDepth"] = "depth of joints", ["sealantDepth"] = "depth of sealant", ["covers"] = "what a pack covers", ["dry"] = "film when dry", ["setting"] = "what it is set with", ["under"] = "what goes under the tile", ["aside"] = "how far aside joints stand", ["setOut"] = "how far a snapped line may be off", ["perimeter"] = "edge of the bed", ["yield"] = "what a bag makes", ["falls"] = "falls", ["from"] = "beginning", ["to"] = "end", ["least"] = "least joint", ["wanted"] = "wanted joint", ["most"] = "widest joint",
    };

    /// <summary>A thing by its kind and its name, which may say the kind already: the hole drain, hole 1.</summary>
    public static string Thing(string kind, string name) => name.StartsWith(kind, StringComparison.OrdinalIgnoreCase) ? name : $"the {kind} {name}";

    /// <summary>The place in words; "the job" for the whole.</summary>
    public static string Of(JsonObject root, string path)
    {
        if (path.Length == 0) return "the job";
        var (said, at, steps) = (new List<string>(), "", path.Split('.'));
        for (var i = 0; i < steps.Length; i++)
        {
            at = at.Length == 0 ? steps[i] : at + "." + steps[i];
            var open = steps[i].IndexOf('[', StringComparison.Ordinal);
            var key = open < 0 ? steps[i] : steps[i][..open];
            // What stands there says itself that it is a price.
            if (key is "prices" && i + 1 < steps.Length) continue;
            if (key is "survey")
            {
                said.Add(ReadingWords.Place(JobPath.Get(root, at) as JsonObject, string.Join('.', steps[(i + 1)..])));
                break;
            }

            if (key is "board" or "work" or "handover")
            {
                var rest = string.Join('.', steps[(i + 1)..]);
                said.Add(key switch { "board" => BoardWords.Place(rest), "work" => WorkPlaces.Place(rest), _ => HandOverWords.Place(rest) });
                break;
            }

            if (key is "flatness")
            {
                said.Add(FlatWords.Place(string.Join('.', steps[(i + 1)..])));
                break;
            }

            if (key is "readings")
            {
                var rest = string.Join('.', steps[(i + 1)..]);
                said.Add(s_readings.TryGetValue(rest, out var reading) ? reading : rest.StartsWith("levelLine.between", StringComparison.Ordinal) ? "level line between the corners" : rest.Length == 0 ? "readings" : rest);
                break;
            }

            if (key is "edges" && open < 0)
            {
                if (i + 1 < steps.Length) said.Add(steps[++i] + " edge");
                at += i < steps.Length ? "." + steps[i] : "";
                continue;
            }

            if (open >= 0) said.Add(Listed(root, at, key, steps[i][open..]));
            else if (key is "least" && path.Contains(".falls", StringComparison.Ordinal)) said.Add("thickness at the drain");
            else if (key is "yield" && path.StartsWith("supplies", StringComparison.Ordinal)) said.Add("what a pack makes");
            else if (key is "least" && path.StartsWith("trims", StringComparison.Ordinal)) said.Add("shortest piece");
            else said.Add(s_fields.TryGetValue(key, out var field) ? field : key);
        }

        said.Reverse();
        return said.Count < 3 ? string.Join(" of ", said) : string.Join(" of ", said[..^1]) + " on " + said[^1];
    }

    private static string Listed(JsonObject root, string at, string key, string place)
    {
        var number = int.Parse(place[1..place.IndexOf(']', StringComparison.Ordinal)], CultureInfo.InvariantCulture) + 1;
        if (key is "range" or "left" or "bottom" or "width" or "height") return $"{(number == 1 ? "least" : "most")} {key}";
        if (key is "to" or "through") return key is "to" ? "arc's end" : "point on the arc";
        if (key is "outline") return string.Create(CultureInfo.InvariantCulture, $"corner {number}");
        if (key is "items" or "labour" && JobPath.Get(root, at + (key is "items" ? ".item" : ".task")) is JsonValue priced && priced.ToString() is { Length: > 0 } what) return what;
        if (key is "set") return $"courses set on {JobPath.Get(root, at + ".face")}";
        var name = JobPath.Get(root, at + ".name") is JsonValue value ? value.ToString() : "";
        if (key is "edges" && FaceWords.Of(JobPath.Get(root, at[..at.LastIndexOf('.')])) is "floor") return "side " + (name.Length > 0 ? name : string.Create(CultureInfo.InvariantCulture, $"{number}"));
        if (key is "edges") return (name.Length > 0 ? name : string.Create(CultureInfo.InvariantCulture, $"side {number}")) + " edge";
        if (name.Length == 0 && key is "faces") return string.Create(CultureInfo.InvariantCulture, $"{FaceWords.Of(JobPath.Get(root, at))} {number}");
        return name.Length > 0 ? name : string.Create(CultureInfo.InvariantCulture, $"{(s_things.TryGetValue(key, out var thing) ? thing : key)} {number}");
    }
}
