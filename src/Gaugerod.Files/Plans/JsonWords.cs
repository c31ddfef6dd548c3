using System.Globalization;
using System.Text;
using System.Text.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Plans;

/// <summary>How lengths, rings and lists are written, in one place.</summary>
internal static class JsonWords
{
    public static void WriteLength(this Utf8JsonWriter json, string name, Length length) => json.WriteNumber(name, length.Millimetres);

    public static void WriteLength(this Utf8JsonWriter json, string name, Length? length)
    {
        if (length is { } known) json.WriteLength(name, known);
        else json.WriteNull(name);
    }

    public static void WriteList<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items) write(item);
        json.WriteEndArray();
    }

    public static void WriteNames(this Utf8JsonWriter json, string name, IEnumerable<string> names) => json.WriteList(name, names, json.WriteStringValue);

    public static void WriteLengths(this Utf8JsonWriter json, string name, IEnumerable<Length> lengths)
    {
        json.WritePropertyName(name);
        json.WriteRawValue($"[{string.Join(", ", lengths.Select(Text))}]");
    }

    public static void WriteRing(this Utf8JsonWriter json, string name, Ring ring)
    {
        json.WritePropertyName(name);
        json.WriteRingValue(ring);
    }

    // A ring to a line: a corner to every four lines would hide the plan from a reader's eye.
    public static void WriteRingValue(this Utf8JsonWriter json, Ring ring)
    {
        var text = new StringBuilder("[");
        foreach (var point in ring.Points) text.Append(text.Length > 1 ? ", " : "").Append(Text(point));
        json.WriteRawValue(text.Append(']').ToString());
    }

    public static void WriteRings(this Utf8JsonWriter json, string name, Sequence<Ring> rings) => json.WriteList(name, rings, json.WriteRingValue);

    public static void WritePoint(this Utf8JsonWriter json, string name, Point point)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(Text(point));
    }

    public static void WriteEmptyList(this Utf8JsonWriter json, string name)
    {
        json.WriteStartArray(name);
        json.WriteEndArray();
    }

    private static string Text(Point point) => $"[{Text(point.X)}, {Text(point.Y)}]";

    private static string Text(Length length) => length.Millimetres.ToString(CultureInfo.InvariantCulture);
}
