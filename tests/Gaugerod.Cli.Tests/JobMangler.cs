using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Cli.Tests;

/// <summary>One slip of the hand in a job.</summary>
/// <param name="Where">Which value, counted over all of the file and begun anew at its end.</param>
/// <param name="How">What happens to it.</param>
/// <param name="With">With what: a factor, another value.</param>
internal readonly record struct Slip(int Where, int How, int With);

/// <summary>Spoils the values of a job that is otherwise well-formed JSON.</summary>
internal static class JobMangler
{
    /// <summary>How many kinds of slips there are.</summary>
    public const int Kinds = 10;

    private static readonly decimal[] Factors = [0, -1, 0.001m, 0.1m, 0.5m, 0.9m, 0.999m, 1.001m, 1.01m, 1.1m, 1.5m, 2, 10, 25.4m, 1000];
    private static readonly string[] Odd = ["", "0", "-0", "1/2", "5' 14\"", "1,234", "40 1/3", "é", "left", "foot", "niche.bottom", "63/64", "north"];

    private sealed record Slot(JsonNode Owner, string? Name, int Index)
    {
        public JsonNode? Value
        {
            get => Name is null ? Owner[Index] : Owner[Name];
            set
            {
                if (Name is null) Owner[Index] = value;
                else Owner[Name] = value;
            }
        }

        public void Drop()
        {
            if (Name is null) Owner.AsArray().RemoveAt(Index);
            else Owner.AsObject().Remove(Name);
        }
    }

    /// <summary>The job after all slips.</summary>
    public static string Mangled(string job, IEnumerable<Slip> slips)
    {
        var root = JsonNode.Parse(job)!;
        var unit = string.Equals((string?)root["units"], "in", StringComparison.Ordinal) ? LengthUnit.Inch : LengthUnit.Millimetre;
        foreach (var slip in slips) Make(slip, root, unit);
        return root.ToJsonString(new() { WriteIndented = true });
    }

    private static void Make(Slip slip, JsonNode root, LengthUnit unit)
    {
        var slots = Slots(root).ToList();
        if (slots.Count == 0) return;
        var slot = slots[slip.Where % slots.Count];
        var other = slots[slip.With % slots.Count];
        switch (slip.How)
        {
            case 0:
                slot.Drop();
                break;
            case 1:
                slot.Value = other.Value?.DeepClone();
                break;
            case 2:
                slot.Value = Odd[slip.With % Odd.Length];
                break;
            case 3:
                slot.Value = (slip.With % 4) switch { 0 => null, 1 => true, 2 => new JsonArray(), _ => new JsonObject() };
                break;
            case 4 when slot.Owner is JsonArray list:
                list.Insert(slot.Index, slot.Value?.DeepClone());
                break;
            case 5 when slot.Owner is JsonArray list && list.Count > 1:
                var next = (slot.Index + 1) % list.Count;
                (list[slot.Index], list[next]) = (list[next]?.DeepClone(), list[slot.Index]?.DeepClone());
                break;
            default:
                // Most slips are of a figure: the next length from here on.
                var figures = slots.Skip(slip.Where % slots.Count).Concat(slots).Where(s => LengthOf(s.Value, unit) is not null).ToList();
                if (figures.Count > 0) figures[0].Value = Scaled(LengthOf(figures[0].Value, unit)!.Value, Factors[slip.With % Factors.Length]);
                break;
        }
    }

    private static IEnumerable<Slot> Slots(JsonNode? node)
    {
        if (node is JsonObject group)
        {
            foreach (var name in group.Select(member => member.Key).ToList())
            {
                yield return new(group, name, -1);
                foreach (var inner in Slots(group[name])) yield return inner;
            }
        }
        else if (node is JsonArray list)
        {
            for (var i = 0; i < list.Count; i++)
            {
                yield return new(list, null, i);
                foreach (var inner in Slots(list[i])) yield return inner;
            }
        }
    }

    private static Length? LengthOf(JsonNode? node, LengthUnit unit) =>
        node is JsonValue value && value.GetValueKind() is System.Text.Json.JsonValueKind.String or System.Text.Json.JsonValueKind.Number
            && LengthText.Read(node.ToString(), unit) is LengthReading.Understood { Value: var length } ? length : null;

    private static string Scaled(Length length, decimal factor) =>
        (length.Millimetres * factor).ToString("0.######", CultureInfo.InvariantCulture) + " mm";
}
