using System.Text.Json.Nodes;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Desk;

/// <summary>A surveyed face as the job holds it.</summary>
/// <param name="At">Where it stands in the job: <c>faces[1]</c>.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Survey">Its survey.</param>
/// <param name="Text">The same as text.</param>
internal sealed record WrittenFace(string At, string Name, JsonObject Survey, string Text)
{
    /// <summary>Its sides that were read on other faces too, as they stand.</summary>
    public IEnumerable<JsonObject> Same => SameOf(Survey);

    /// <summary>Whether it says that a side was read on a face of that name too.</summary>
    public bool Shares(string face) => Same.Any(side => string.Equals(side["face"]?.ToString(), face, StringComparison.Ordinal));

    /// <summary>Those of a survey.</summary>
    public static IEnumerable<JsonObject> SameOf(JsonObject survey) => (survey["same"] as JsonArray ?? []).OfType<JsonObject>();
}

/// <summary>
/// The surveys of a room that share sides, while they are taken: each is read by itself, and all are weighed together. A face
/// that cannot be read is left out.
/// </summary>
internal sealed class SurveyRoom
{
    private readonly Tape _tape;
    private readonly Dictionary<string, (string Key, WrittenSurvey? Written)> _read = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SurveyLook?> _looks = new(StringComparer.Ordinal);
    private readonly Sequence<JoinedSurveys> _joined;
    private readonly List<string> _joinedNames;

    /// <summary>Reads them all, as far as they can be read.</summary>
    /// <param name="faces">The faces, each of a name of its own.</param>
    /// <param name="tape">The tape they are read with.</param>
    /// <param name="before">The room before the last change: what did not change of it is not read anew.</param>
    public SurveyRoom(IReadOnlyList<WrittenFace> faces, Tape tape, SurveyRoom? before)
    {
        (Faces, _tape, Text) = (faces, tape, TextOf(faces, tape));
        var joined = new List<FaceSurveyed>();
        for (var i = 0; i < faces.Count; i++)
        {
            var (face, near) = (faces[i], faces.Where(other => other != faces[i] && faces[i].Shares(other.Name)).ToList());
            var key = string.Join('\n', near.Select(other => $"{other.Name} {other.Survey["corners"]?.ToJsonString()}").Prepend($"{tape} {face.Text}"));
            var written = before is not null && before._read.TryGetValue(face.Name, out var kept) && string.Equals(kept.Key, key, StringComparison.Ordinal)
                ? kept.Written
                : WrittenSurvey.Of(face.Survey, near.Select(other => (other.Name, other.Survey["corners"])), tape);
            _read[face.Name] = (key, written);
            if (written is not null) joined.Add(new(face.Name, i, written.Survey));
        }

        (_joined, _joinedNames) = (JoinedSurveys.Of(joined.ToSequence()), joined.ConvertAll(one => one.Face));
    }

    /// <summary>The faces, in the job's order.</summary>
    public IReadOnlyList<WrittenFace> Faces { get; }

    /// <summary>All that it hangs on: while it is the same, so is the room.</summary>
    public string Text { get; }

    /// <summary>The same of faces before they are read.</summary>
    public static string TextOf(IEnumerable<WrittenFace> faces, Tape tape) => string.Join('\n', faces.Select(face => $"{face.At} {face.Name} {face.Text}").Prepend($"{tape}"));

    /// <summary>The faces of a job that share sides, directly or through others; each of them two or more.</summary>
    public static IEnumerable<IReadOnlyList<WrittenFace>> Joined(IReadOnlyList<WrittenFace> faces)
    {
        var (left, alone) = (faces.ToList(), faces.GroupBy(face => face.Name, StringComparer.Ordinal).Where(named => named.Key.Length == 0 || named.Count() > 1).SelectMany(named => named).ToHashSet());
        left.RemoveAll(alone.Contains);
        while (left.Count > 0)
        {
            var room = new List<WrittenFace> { left[0] };
            left.RemoveAt(0);
            for (var i = 0; i < room.Count; i++)
            {
                var more = left.FindAll(other => room[i].Shares(other.Name) || other.Shares(room[i].Name));
                room.AddRange(more);
                left.RemoveAll(more.Contains);
            }

            if (room.Count > 1) yield return [.. faces.Where(room.Contains)];
        }
    }

    /// <summary>The survey of one of them; null where its corners cannot be read.</summary>
    public SurveyLook? Look(string name)
    {
        if (_looks.TryGetValue(name, out var kept)) return kept;
        var look = _read[name].Written is { } written ? new SurveyLook(written, SurveyView.Of(_joined[_joinedNames.IndexOf(name)], name, _tape), this) : null;
        return _looks[name] = look;
    }

    /// <summary>Whether something of a face may be in error.</summary>
    public bool IsInDoubt(string name) => _read.ContainsKey(name) && Look(name) is { IsInDoubt: true };
}
