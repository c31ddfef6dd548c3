using System.Text.Json;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes soft joints across fields.</summary>
internal static class MovementWriter
{
    public static void Write(Utf8JsonWriter json, MovementJoint joint)
    {
        json.WriteStartObject();
        json.WriteString("run", joint.Run);
        json.WriteString("face", joint.Face);
        json.WriteString("axis", joint.IsPlumb ? "plumb" : "level");
        json.WriteLength("at", joint.At);
        json.WriteLength("width", joint.Width);
        json.WriteNumber("length", Math.Round(joint.Long, 3));
        json.WriteNumber("tilesCut", joint.Cut);
        json.WriteEndObject();
    }
}
