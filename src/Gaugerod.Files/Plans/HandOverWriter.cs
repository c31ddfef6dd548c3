using System.Text.Json;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes what the client is handed over.</summary>
internal static class HandOverWriter
{
    public static void Write(Utf8JsonWriter json, Plan plan)
    {
        if (HandingOver.Of(plan) is not { } given) return;
        json.WriteStartObject("handover");
        json.WriteNames("care", given.Request.Care);
        json.WriteNames("firstUse", HandOverWords.FirstUse(plan));
        json.WriteList("lots", given.Lots, lots => Write(json, lots));
        json.WriteList("left", given.Left, left => Write(json, left));
        json.WriteString("kept", given.Request.Kept);
        json.WriteList("softJoints", given.Soft, joint => Write(json, joint));
        if (given.Request.Renew is { } years) json.WriteNumber("renew", years);
        else json.WriteNull("renew");
        json.WriteList("photographs", given.Request.Photographs, photograph => Write(json, photograph));
        json.WriteNames("toPhotograph", given.ToPhotograph);
        json.WriteList("tests", given.Request.Tests, test => Write(json, test));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, UsedLots lots)
    {
        json.WriteStartObject();
        json.WriteString("of", lots.Of);
        json.WriteString("what", lots.What);
        json.WriteList("notes", lots.Notes, note => Write(json, note));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, LotNote note)
    {
        json.WriteStartObject();
        json.WriteString("lot", note.Lot);
        json.WriteString("colour", note.Colour);
        json.WriteString("caliber", note.Caliber);
        json.WriteString("note", note.Note);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, LeftOver left)
    {
        json.WriteStartObject();
        json.WriteString("of", left.Of);
        json.WriteString("unit", left.Unit);
        json.WriteNumber("spares", left.Spares);
        json.WriteNumber("over", left.Over);
        json.WriteNumber("breakage", left.Breakage);
        json.WriteNumber("offcuts", left.Offcuts);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SoftEdge joint)
    {
        json.WriteStartObject();
        json.WriteString("run", joint.Run);
        json.WriteString("face", joint.Face);
        json.WriteString("edge", joint.Edge);
        json.WriteString("where", HandOverWords.Where(joint.Kind));
        json.WriteLength("width", joint.Width);
        json.WriteNumber("length", Math.Round(joint.Long, 3));
        json.WriteNames("with", joint.With);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Photograph photograph)
    {
        json.WriteStartObject();
        json.WriteString("of", photograph.Of);
        json.WriteString("what", photograph.What);
        json.WriteString("where", photograph.Where);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, TestNote test)
    {
        json.WriteStartObject();
        json.WriteString("what", test.What);
        json.WriteString("on", Day(test.On));
        json.WriteString("by", test.By);
        json.WriteString("result", test.Result);
        json.WriteString("again", Day(test.Again));
        json.WriteEndObject();
    }

    private static string? Day(DateOnly? day) => day is { } known ? TimeReading.Said(known) : null;
}
