using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Changes the job's unit and keeps every length what it was: a bare number gets the unit it was meant in.</summary>
internal static class JobUnits
{
    private static readonly HashSet<string> s_lengths = new(StringComparer.Ordinal)
    {
        "edgeJoint", "width", "height", "thickness", "bondCoat", "variation", "warpage", "kerf", "foot", "middle", "top", "left", "right", "levelLine",
        "from", "to", "heightLeft", "heightRight", "bottom", "x", "y", "diameter", "clearance", "edgeClear", "joint", "trim", "cover", "least", "wanted", "most",
        "smallest", "sliver", "size", "point", "corner", "stagger", "fence", "keep", "leastStrip", "length", "outside", "inside", "stop", "return",
        "curb", "threshold", "step", "gap", "reading", "setOut", "lowest", "aside", "depth", "tooth", "backButter", "jointDepth", "sealantDepth", "every", "bands",
        "screwsApart", "inset", "spacing", "edges", "wet",
    };

    private static readonly HashSet<string> s_lists = new(StringComparer.Ordinal) { "outline", "range", "lines", "through", "heights", "gaps", "at", "between" };

    // Of a survey: its fields are called otherwise, and corners may have names that are lengths elsewhere.
    private static readonly HashSet<string> s_surveyed = new(StringComparer.Ordinal) { "is", "within", "at", "tape", "laser", "level", "plumb" };

    public static void Change(JsonObject root, string units)
    {
        var (old, now) = units is "in" ? (LengthUnit.Millimetre, LengthUnit.Inch) : (LengthUnit.Inch, LengthUnit.Millimetre);
        Walk(root, old, now);
        root["units"] = units;
        root.Remove("tape");
    }

    private static void Walk(JsonObject group, LengthUnit old, LengthUnit now)
    {
        foreach (var (key, value) in group.ToList())
        {
            if (key is "survey") Survey(value, old, now);
            // Days, hours and paces, which say their units.
            else if (key is "work") continue;
            // Drains are holes' names, and channels.
            else if (key is "drains" && value is JsonArray drains) Channels(drains, old, now);
            // From which course something is set is a number.
            else if (key is "from" && group.ContainsKey("courses")) continue;
            else if (value is JsonValue amount && (key is "density" or "yield" or "covers" or "dry")) group[key] = Stated(amount, key, group["kind"]?.ToString() ?? "", old);
            else if (value is JsonValue leaf && s_lengths.Contains(key)) group[key] = Kept(leaf, old, now);
            // Turns to choose among are degrees.
            else if (value is JsonObject inner && key is not "turned") Walk(inner, old, now);
            else if (value is JsonArray list)
            {
                if (s_lists.Contains(key) || s_lengths.Contains(key)) Places(list, old, now);
                foreach (var one in list.OfType<JsonObject>()) Walk(one, old, now);
            }
        }
    }

    private static void Channels(JsonArray drains, LengthUnit old, LengthUnit now)
    {
        foreach (var channel in drains.OfType<JsonArray>()) Places(channel, old, now);
    }

    // A bare number is in the job's unit.
    private static JsonNode Stated(JsonValue amount, string key, string kind, LengthUnit old)
    {
        if (!double.TryParse(amount.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out _)) return amount.DeepClone();
        var (inches, millimetres) = (key, kind) switch
        {
            ("density", _) => (" lb/ft3", " kg/m3"),
            ("dry", _) => (" mil", " mm"),
            ("covers", _) or ("yield", "primer" or "sealer") => (" ft2", " m2"),
            ("yield", "backer" or "band" or "tape" or "batten") => (" ft", " m"),
            ("yield", "spacers" or "clips" or "wedges" or "screws") => ("", ""),
            _ => (" ft3", " l"),
        };
        return amount + (old == LengthUnit.Inch ? inches : millimetres);
    }

    private static void Survey(JsonNode? at, LengthUnit old, LengthUnit now)
    {
        if (at is JsonArray list)
        {
            foreach (var one in list) Survey(one, old, now);
        }

        if (at is not JsonObject group) return;
        foreach (var (key, value) in group.ToList())
        {
            if (value is JsonValue leaf && s_surveyed.Contains(key)) group[key] = Kept(leaf, old, now);
            else if (value is JsonArray places && (key is "legs" or "near")) Places(places, old, now);
            else Survey(value, old, now);
        }

        // Where the marks of three-four-five stand else is another length in the other unit.
        if (group.ContainsKey("corner") && !group.ContainsKey("legs")) group["legs"] = old == LengthUnit.Inch ? new JsonArray("36 in", "48 in") : new JsonArray("900 mm", "1200 mm");
    }

    // Lengths in lists of lists: corners, folds, ranges. An arc's corner is a group of two places, which is walked by itself.
    private static void Places(JsonArray list, LengthUnit old, LengthUnit now)
    {
        for (var i = 0; i < list.Count; i++)
        {
            if (list[i] is JsonValue leaf) list[i] = Kept(leaf, old, now);
            else if (list[i] is JsonArray inner) Places(inner, old, now);
        }
    }

    private static JsonNode Kept(JsonValue leaf, LengthUnit old, LengthUnit now)
    {
        var text = leaf.ToString();
        if (LengthText.Read(text, old) is not LengthReading.Understood was) return leaf.DeepClone();

        // A fraction is inches in either job, but in one of millimetres it is better said.
        if (Same(text) && LengthText.Read(text, now) is not LengthReading.Understood { FractionAsInches: true }) return leaf.DeepClone();
        var stated = text + (old == LengthUnit.Inch ? " in" : " mm");
        return Same(stated) ? stated : LengthText.ExactMillimetres(was.Value) + " mm";

        bool Same(string other) => LengthText.Read(other, now) is LengthReading.Understood read && read.Value == was.Value;
    }
}
