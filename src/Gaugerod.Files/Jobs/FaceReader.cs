using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>A face of the file: its name even when the rest could not be read, so that what refers to it is not blamed.</summary>
internal sealed record FaceEntry(string? Name, Face? Face)
{
    /// <summary>The names of its zones, which are called like faces.</summary>
    public IReadOnlyList<string?> Zones { get; init; } = [];
}

/// <summary>Reads a face, given by its outline, by readings or by a survey.</summary>
internal static class FaceReader
{
    private static readonly string[] Ways = ["outline", "readings", "survey"];

    public static FaceEntry Read(Entry entry, Values values, Uniques faceNames, SurveysReader surveys)
    {
        if (Fields.Group(entry, values) is not { } group) return new(null, null);
        var meant = group.Members.Where(m => m.Value.Value is not Entry.Nothing).Select(m => Near.Of(m.Key, [.. Ways, "openings"])).Where(m => Ways.Contains(m, StringComparer.Ordinal)).Distinct(StringComparer.Ordinal).ToList();
        if (meant is not [{ } way])
        {
            values.Log.AddSaid(
                group, meant.Count > 1 ? $"both {Values.AllOf(meant!)}" : "neither \"outline\", \"readings\" nor \"survey\"", "one of them",
                meant.Count > 1 ? "\"readings\" for a wall with four sides, \"survey\" where more was read, \"outline\" for any other shape" : null);
            return new(group.Members.TryGetValue("name", out var member) ? values.Name(member.Value) : null, null);
        }

        var form = way switch { "outline" => Forms.OutlineFace, "readings" => Forms.ReadFace, _ => Forms.SurveyedFace };
        if (Fields.Open(group, form, values) is not { } fields) return new(null, null);
        var name = faceNames.Take(fields["name"], values);
        var parts = new Uniques("the face's edges, fixtures, openings and holes", true, form == Forms.ReadFace ? ["foot", "right", "head", "left"] : []);
        var (shape, heights) = form == Forms.OutlineFace ? Outline(fields, parts) : form == Forms.ReadFace ? Readings(fields, parts) : Survey(fields, parts, surveys);
        var openings = fields.Items("openings").Select(n => OpeningReader.Read(n, values, parts, heights)).ToList();
        var holes = fields.Items("holes").Select(n => HoleReader.Read(n, values, parts, heights, shape)).ToList();
        var zones = fields.Items("zones").Select(n => ZoneReader.Read(n, values, faceNames, parts, heights)).ToList();
        var zoneNames = zones.ConvertAll(zone => zone?.Name);
        var (falls, understood) = FallsReader.Read(fields["falls"], values, holes);
        var (flatness, flat) = FlatnessReader.Read(fields["flatness"], values, isFloor: form != Forms.ReadFace);
        var beds = BedsReader.Read(fields);
        var (under, coated) = UnderReader.Read(fields);
        var (board, boarded) = BoardReader.Face(fields["board"], values);
        if (!understood || !coated || !flat || !boarded || beds is null || name is null || shape is null || openings.Contains(null) || holes.Contains(null) || zones.Contains(null)) return new(name, null) { Zones = zoneNames };
        var face = new Face(name, shape, openings.OfType<Opening>().ToSequence(), holes.OfType<Hole>().ToSequence()) { Zones = zones.OfType<Zone>().ToSequence(), Falls = falls, Beds = beds, Flatness = flatness, Under = under, Board = board };
        return new(name, face) { Zones = zoneNames };
    }

    private static (FaceShape? Shape, HeightBase Heights) Outline(Fields fields, Uniques parts)
    {
        var drawn = RingReader.Read(fields["outline"], fields.Values);
        var edges = EdgeListReader.Read(fields, drawn.Corners, Forms.FaceEdge, new Edge("", EdgeKind.Free), parts);
        var levelLine = fields.Length("levelLine", LengthRange.Position);
        var heights = new HeightBase(levelLine, fields["levelLine"] is null);
        return (drawn.Ring is null || edges is null || fields["edges"] is null ? null : new FaceShape.Outline(drawn.Ring, drawn.Each(edges), levelLine ?? Length.Zero), heights);
    }

    private static (FaceShape? Shape, HeightBase Heights) Survey(Fields fields, Uniques parts, SurveysReader surveys)
    {
        var (taken, room) = surveys.At(fields["survey"]);
        var edges = EdgeListReader.Read(fields, taken.Corners?.Count, Forms.FaceEdge, new Edge("", EdgeKind.Free), parts);
        if (taken.Survey is not { } survey || room is null) return (null, new(null, Missing: false));
        var heights = HeightBase.Of(room, (fields["name"] as Entry.Text)?.Value ?? "");
        return (edges is null || fields["edges"] is null ? null : new FaceShape.Surveyed(survey, edges) { Room = room }, heights);
    }

    private static (FaceShape? Shape, HeightBase Heights) Readings(Fields fields, Uniques parts)
    {
        var values = fields.Values;
        var (readings, heights) = Readings(fields["readings"], values);
        var sides = Fields.Open(fields["edges"], Forms.FaceSides, values);
        var foot = Side("foot", EdgeKind.Floor);
        var right = Side("right", EdgeKind.InsideCorner);
        var head = Side("head", EdgeKind.Ceiling);
        var left = Side("left", EdgeKind.InsideCorner);
        var fixtures = fields.Items("fixtures").Select(n => FixtureReader.Read(n, values, parts, heights)).ToList();
        var shape = readings is null || fixtures.Contains(null)
            ? null
            : new FaceShape.Read(readings, foot, right, head, left, fixtures.OfType<Fixture>().ToSequence());
        return (shape, heights);

        Edge Side(string name, EdgeKind usual) => EdgeReader.Read(sides?[name], Forms.Edge, new Edge(name, usual), values);
    }

    private static (FaceReadings? Readings, HeightBase Heights) Readings(Entry? entry, Values values)
    {
        if (Fields.Open(entry, Forms.Readings, values) is not { } fields) return (null, new(null, Missing: false));
        var width = Fields.Open(fields["width"], Forms.Width, values);
        var height = Fields.Open(fields["height"], Forms.Height, values);
        var line = Fields.Open(fields["levelLine"], Forms.LevelLine, values);
        var lean = Fields.Open(fields["lean"], Forms.Lean, values);
        var (foot, middle, top) = (width?.Length("foot", LengthRange.Size), width?.Length("middle", LengthRange.Size), width?.Length("top", LengthRange.Size));
        var (left, right) = (height?.Length("left", LengthRange.Size), height?.Length("right", LengthRange.Size));
        var (lineLeft, lineRight) = (line?.Length("left", LengthRange.Position), line?.Length("right", LengthRange.Position));
        var leans = new LeanReadings(lean?.Length("left", LengthRange.Lean), lean?.Length("right", LengthRange.Lean));
        var heights = new HeightBase(lineLeft, fields["levelLine"] is null);
        if (foot is not { } f || left is not { } l) return (null, heights);
        var between = (line?.Items("between") ?? []).Select(item => Station(item, values)).ToList();
        if (between.Contains(null)) return (null, heights);
        var struck = lineLeft is { } a && lineRight is { } b ? new LevelLineReadings(a, b) { Between = between.OfType<LineStation>().ToSequence() } : null;
        return (new FaceReadings(new(f, middle, top), new(l, right), struck, leans), heights);
    }

    private static LineStation? Station(Entry entry, Values values)
    {
        if (entry is not Entry.List { Items: [var x, var y] })
        {
            values.Log.Add(entry, "a place and a height [24, \"48 1/4\"]");
            return null;
        }

        var (at, height) = (values.Length(x, LengthRange.Size), values.Length(y, LengthRange.Position));
        return at is { } place && height is { } above ? new(place, above) : null;
    }
}
