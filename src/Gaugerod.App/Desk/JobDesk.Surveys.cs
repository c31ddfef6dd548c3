using System.Text.Json.Nodes;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Desk;

/// <summary>What a face's survey comes to as it stands, before the whole job is read: the drawing follows each reading, the plan comes after.</summary>
internal sealed partial class JobDesk
{
    private readonly Dictionary<string, (JsonObject Root, string Text, SurveyLook? Look)> _surveys = new(StringComparer.Ordinal);

    /// <summary>The survey of a face; null where it has none, or its corners cannot be read.</summary>
    /// <param name="face">Where the face stands in the job.</param>
    public SurveyLook? Survey(string face)
    {
        // It is asked for by all that shows it, and weighed once.
        var known = _surveys.TryGetValue(face, out var kept);
        if (known && ReferenceEquals(kept.Root, Root)) return kept.Look;
        if (JobPath.Get(Root, face + ".survey") is not JsonObject survey) return null;
        var tape = Job?.Tape is { } read && read.Unit == Unit ? read : Unit == LengthUnit.Inch ? Tape.Sixteenths : Tape.Millimetres;
        var text = $"{tape} {survey.ToJsonString()}";
        var look = known && string.Equals(kept.Text, text, StringComparison.Ordinal) ? kept.Look : SurveyLook.Of(survey, tape);
        _surveys[face] = (Root, text, look);
        return look;
    }
}
