using System.Text.Json.Nodes;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Desk;

/// <summary>What a face's survey comes to as it stands, before the whole job is read: the drawing follows each reading, the plan comes after.</summary>
internal sealed partial class JobDesk
{
    private readonly Dictionary<string, (JsonObject Root, string Text, SurveyLook? Look)> _surveys = new(StringComparer.Ordinal);
    private (JsonObject? Root, IReadOnlyList<SurveyRoom> All) _rooms = (null, []);

    /// <summary>The survey of a face; null where it has none, or its corners cannot be read.</summary>
    /// <param name="face">Where the face stands in the job.</param>
    public SurveyLook? Survey(string face)
    {
        // It is asked for by all that shows it, and weighed once.
        var known = _surveys.TryGetValue(face, out var kept);
        if (known && ReferenceEquals(kept.Root, Root)) return kept.Look;
        if (JobPath.Get(Root, face + ".survey") is not JsonObject survey) return null;
        var tape = Job?.Tape is { } read && read.Unit == Unit ? read : Unit == LengthUnit.Inch ? Tape.Sixteenths : Tape.Millimetres;
        foreach (var room in Rooms(tape))
        {
            if (room.Faces.FirstOrDefault(one => string.Equals(one.At, face, StringComparison.Ordinal)) is not { } joined) continue;
            _surveys[face] = (Root, room.Text, room.Look(joined.Name));
            return _surveys[face].Look;
        }

        var text = $"{tape} {survey.ToJsonString()}";
        var look = known && string.Equals(kept.Text, text, StringComparison.Ordinal) ? kept.Look : Alone(survey, tape);
        _surveys[face] = (Root, text, look);
        return look;
    }

    private static SurveyLook? Alone(JsonObject survey, Tape tape) =>
        WrittenSurvey.Of(survey, [], tape) is { } written ? new(written, SurveyView.Of(written.Survey, "", tape)) : null;

    // The surveys that share sides; most jobs have none.
    private IReadOnlyList<SurveyRoom> Rooms(Tape tape)
    {
        if (ReferenceEquals(_rooms.Root, Root)) return _rooms.All;
        var before = _rooms.All;
        var surveyed = (Root["faces"] as JsonArray ?? []).Select((face, i) => (At: FormattableString.Invariant($"faces[{i}]"), Face: face as JsonObject)).Where(one => one.Face?["survey"] is JsonObject).ToList();
        var faces = surveyed.Exists(one => WrittenFace.SameOf((JsonObject)one.Face!["survey"]!).Any())
            ? surveyed.ConvertAll(one => new WrittenFace(one.At, one.Face!["name"]?.ToString() ?? "", (JsonObject)one.Face["survey"]!, one.Face["survey"]!.ToJsonString()))
            : [];
        _rooms = (Root, [.. SurveyRoom.Joined(faces).Select(Kept)]);
        return _rooms.All;

        SurveyRoom Kept(IReadOnlyList<WrittenFace> room)
        {
            var text = SurveyRoom.TextOf(room, tape);
            return before.FirstOrDefault(one => string.Equals(one.Text, text, StringComparison.Ordinal))
                ?? new(room, tape, before.FirstOrDefault(one => one.Faces.Any(face => room.Any(now => string.Equals(now.Name, face.Name, StringComparison.Ordinal)))));
        }
    }
}
