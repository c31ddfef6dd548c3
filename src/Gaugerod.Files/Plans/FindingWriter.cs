using System.Text.Json;
using Gaugerod.Engine;

namespace Gaugerod.Files.Plans;

/// <summary>Writes the result of a check.</summary>
internal static class FindingWriter
{
    public static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("level", finding.Level switch { FindingLevel.Stop => "stop", FindingLevel.Warn => "warn", _ => "note" });
        json.WriteString("rule", finding.Rule);
        json.WriteString("where", finding.Where);
        json.WriteString("text", finding.Text);
        json.WriteString("limit", finding.Limit);
        json.WriteString("value", finding.Value);
        json.WriteString("source", finding.Source);
        json.WriteEndObject();
    }
}
