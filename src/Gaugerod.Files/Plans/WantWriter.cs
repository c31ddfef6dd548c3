using System.Globalization;
using System.Text.Json;
using Gaugerod.Engine.Lines;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes a want, in the job file's words, and how it came out.</summary>
internal static class WantWriter
{
    public static void Write(Utf8JsonWriter json, WantOutcome outcome)
    {
        json.WriteStartObject();
        switch (outcome.Want)
        {
            case Want.JointAtHeight joint:
                Kind("joint", joint.Face);
                json.WriteLength("height", joint.Height);
                break;
            case Want.JointOnEdge joint:
                Kind("joint", joint.Edge.Face);
                json.WriteString("edge", joint.Edge.Edge);
                break;
            case Want.AtLeast least:
                Kind("at least", least.Edge.Face);
                json.WriteString("edge", least.Edge.Edge);
                if (least.Size is { } size) json.WriteLength("size", size);
                if (least.PartOfTile is { } part) json.WriteString("part", string.Create(CultureInfo.InvariantCulture, $"{part.Numerator}/{part.Denominator}"));
                break;
            case Want.Centred centred:
                Kind("centred", centred.Face);
                if (centred.Opening is { } opening) json.WriteString("opening", opening);
                json.WriteString("on", Words.Centres.Say(centred.On));
                break;
            case Want.HoleOn hole:
                Kind("hole", hole.Face);
                json.WriteString("hole", hole.Hole);
                json.WriteString("on", Words.Centres.Say(hole.On));
                break;
            case Want.InLine line:
                Kind("in line", line.Face);
                json.WriteString("with", line.With);
                if (line.At is { } at) json.WriteLength("at", at);
                break;
            case Want.EqualCuts equal:
                Kind("equal", equal.One.Face);
                json.WriteString("edge", equal.One.Edge);
                json.WriteStartObject("and");
                json.WriteString("face", equal.Other.Face);
                json.WriteString("edge", equal.Other.Edge);
                json.WriteEndObject();
                break;
            case Want.FullCourse full:
                Kind("full course", full.Edge.Face);
                json.WriteString("edge", full.Edge.Edge);
                break;
            default:
                throw new ArgumentException("A want that the plan file has no words for.", nameof(outcome));
        }

        json.WriteBoolean("must", outcome.Want.Must);
        json.WriteNumber("weight", outcome.Want.Weight);
        json.WriteBoolean("held", outcome.Held);
        if (outcome.Sure is { } sure) json.WriteString("sure", Words.Sure.Say(sure));
        json.WriteString("text", outcome.Text);
        json.WriteEndObject();

        void Kind(string kind, string face)
        {
            json.WriteString("want", kind);
            json.WriteString("face", face);
        }
    }
}
