using System.Text.Json;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Files.Plans;

/// <summary>Writes something to buy.</summary>
internal static class OrderWriter
{
    public static void Write(Utf8JsonWriter json, OrderLine line)
    {
        json.WriteStartObject();
        json.WriteString("item", line.Item);
        json.WriteNumber("need", line.Need);
        json.WriteString("unit", line.Unit);
        json.WriteNumber("pack", line.Pack);
        json.WriteNumber("packs", line.Packs);
        json.WriteString("basis", line.Basis);
        json.WriteNumber("planned", line.Planned);
        json.WriteNumber("breakage", line.Breakage);
        json.WriteNumber("spares", line.Spares);
        json.WriteNumber("flat", line.Flat);
        json.WriteNumber("over", line.Over);
        if (line.Freedom.Length > 0) json.WriteString("freedom", line.Freedom);
        json.WriteEndObject();
    }
}
