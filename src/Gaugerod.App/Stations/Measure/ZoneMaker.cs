using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Measure;

/// <summary>
/// Makes a zone that could be laid as it stands: as wide as the wall's own tile, in the middle of the wall, with a run of its
/// own. All of it is then typed over; what cannot be known waits to be read.
/// </summary>
internal static class ZoneMaker
{
    /// <summary>The kinds of zones as keys offer them; "above" is a band that goes all the way up.</summary>
    public static IReadOnlyList<(string Kind, string Key)> Kinds { get; } = [("border", "+ Border"), ("rug", "+ Rug"), ("band", "+ Band"), ("above", "+ Other tile above")];

    /// <summary>A name that neither a face nor a zone has.</summary>
    public static string Free(JsonObject root, string stem)
    {
        var taken = JobNames.FacesAndZones(root).ToHashSet(StringComparer.Ordinal);
        for (var i = 1; ; i++)
        {
            var name = i == 1 ? stem : string.Create(CultureInfo.InvariantCulture, $"{stem} {i}");
            if (!taken.Contains(name)) return name;
        }
    }

    /// <summary>A zone of a kind.</summary>
    /// <param name="desk">The job.</param>
    /// <param name="face">Where the face stands in the job.</param>
    /// <param name="kind">The kind, as a key offers it.</param>
    public static JsonObject Make(JobDesk desk, string face, string kind)
    {
        var (tile, joint) = (TileHeight(desk, face), Joint(desk, face));
        var zone = new JsonObject { ["kind"] = kind is "above" ? "band" : kind, ["name"] = Free(desk.Root, kind is "above" ? "upper" : kind) };
        var around = FaceMeasures.Around(desk, face);
        var middle = around is { } all ? all.Bottom + Part(all.Height, 2) : default(Length?);
        switch (kind)
        {
            case "border":
                // From the tile's edge to the middle of the joint inside it.
                zone["width"] = Exact(desk, tile + (FaceMeasures.Read(desk, joint) is { } wide ? Part(wide, 2) : default(Length?)));
                break;
            case "rug":
                zone["left"] = FaceMeasures.Typed(desk, around is { } a ? a.Left + Part(a.Width, 4) : null);
                zone["bottom"] = FaceMeasures.Typed(desk, around is { } b ? b.Bottom + Part(b.Height, 4) : null);
                zone["width"] = FaceMeasures.Typed(desk, around is { } w ? Part(w.Width, 2) : null);
                zone["height"] = FaceMeasures.Typed(desk, around is { } h ? Part(h.Height, 2) : null);
                break;
            default:
                zone["from"] = FaceMeasures.Typed(desk, middle);
                if (kind is "band") zone["to"] = Exact(desk, middle is { } from ? Tapes.Of(desk).Nearest(from) + tile + FaceMeasures.Read(desk, joint) : null);
                break;
        }

        // In one plane it is grouted like the rest; the job's soft joint is for changes of plane.
        if (FaceMeasures.Read(desk, joint) is not null) zone["joint"] = joint!.DeepClone();
        return zone;
    }

    /// <summary>What lies above a band, which parts the wall: a zone too, laid as the wall is.</summary>
    public static JsonObject Above(JobDesk desk, JsonObject band)
    {
        var above = new JsonObject { ["kind"] = "band", ["name"] = Free(desk.Root, "above " + JobLists.Name(band)), ["from"] = band["to"]!.DeepClone() };
        if (band["joint"] is { } joint) above["joint"] = joint.DeepClone();
        return above;
    }

    /// <summary>What begins where a band ended goes on beginning where it ends.</summary>
    /// <param name="root">The job's nodes.</param>
    /// <param name="band">Where the band stands in the job.</param>
    /// <param name="was">Where it ended, as typed.</param>
    /// <param name="value">Where it ends.</param>
    public static void Follow(JsonObject root, string band, string was, JsonNode? value)
    {
        if (was.Length == 0 || value is null || JobPath.Get(root, band) is not JsonObject changed) return;
        foreach (var zone in JobLists.List(root, band[..band.LastIndexOf('[')]).OfType<JsonObject>())
        {
            var alike = string.Equals(zone["from"]?.ToString(), was, StringComparison.Ordinal) && string.Equals(zone["heightsFrom"]?.ToString(), changed["heightsFrom"]?.ToString(), StringComparison.Ordinal);
            if (alike && !ReferenceEquals(zone, changed)) zone["from"] = value.DeepClone();
        }
    }

    /// <summary>A band that is made of trim is as high as the trim and laid by no run; what begins where it ended follows.</summary>
    /// <param name="desk">The job.</param>
    /// <param name="root">Its nodes, which are changed.</param>
    /// <param name="band">Where the band stands in the job.</param>
    /// <param name="trim">The trim's name; null where it is taken away.</param>
    public static void Trimmed(JobDesk desk, JsonObject root, string band, string? trim)
    {
        if (trim is null || JobPath.Get(root, band) is not JsonObject zone) return;
        JobNames.ForgetZone(root, JobLists.Name(zone));
        var was = zone["to"]?.ToString() ?? "";
        zone.Remove("to");
        var width = FaceMeasures.Read(desk, JobLists.List(root, "trims").FirstOrDefault(one => string.Equals(JobLists.Name(one), trim, StringComparison.Ordinal))?["width"]);
        var joint = FaceMeasures.Read(desk, zone["joint"] ?? root["edgeJoint"]) ?? (desk.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3));
        Follow(root, band, was, FaceMeasures.Read(desk, zone["from"]) + width + joint is { } to ? Exact(desk, to) : null);
    }

    /// <summary>A run for a zone: the tile and the joint of the face's own run, to be changed.</summary>
    /// <param name="desk">The job.</param>
    /// <param name="face">Where the face stands in the job.</param>
    /// <param name="zone">The zone's name.</param>
    /// <param name="alike">Whether its bond is the face's own too.</param>
    public static JsonObject Run(JobDesk desk, string face, string zone, bool alike = false)
    {
        var names = JobLists.List(desk.Root, "runs").Select(JobLists.Name).ToHashSet(StringComparer.Ordinal);
        return new()
        {
            ["name"] = names.Contains(zone) ? JobLists.Free(JobLists.List(desk.Root, "runs"), zone) : zone,
            ["product"] = Own(desk, face)?["product"]?.DeepClone() ?? JobLists.Name(JobLists.List(desk.Root, "products").FirstOrDefault()),
            ["faces"] = new JsonArray(JsonValue.Create(zone)),
            ["bond"] = (alike ? Own(desk, face)?["bond"]?.DeepClone() : null) ?? new JsonObject { ["kind"] = "grid" },
            ["joint"] = Joint(desk, face)?.DeepClone() ?? "",
        };
    }

    private static JsonObject? Own(JobDesk desk, string face) =>
        FaceMeasures.RunOf(desk.Root, JobLists.Name(JobPath.Get(desk.Root, face))) is >= 0 and var run ? JobLists.List(desk.Root, "runs")[run] as JsonObject : null;

    private static JsonNode? Joint(JobDesk desk, string face) => Own(desk, face)?["joint"] is { } joint ? joint is JsonObject range ? range["wanted"] : joint : null;

    private static Length? TileHeight(JobDesk desk, string face)
    {
        var name = Own(desk, face)?["product"]?.ToString();
        return FaceMeasures.Read(desk, JobLists.List(desk.Root, "products").FirstOrDefault(tile => name is null || string.Equals(JobLists.Name(tile), name, StringComparison.Ordinal))?["height"]);
    }

    // Half a joint is finer than most tapes.
    private static JsonNode Exact(JobDesk desk, Length? length) => length is not { } known ? "" : Tapes.Of(desk).Nearest(known) == known ? FaceMeasures.Typed(desk, known) : LengthText.Finer(known, Tapes.Of(desk));

    private static Length Part(Length length, int of) => Length.FromSteps(length.Steps / of);
}
