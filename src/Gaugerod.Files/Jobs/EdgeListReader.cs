using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads the edges of an outline: a list, one for each side, in the corners' order.</summary>
internal static class EdgeListReader
{
    /// <summary>The edges; null, and a fault, when they are not as many as the sides.</summary>
    public static Sequence<Edge>? Read(Fields owner, int? sides, Form form, Edge usual, Uniques names)
    {
        var values = owner.Values;
        var items = owner.Items("edges");
        if (owner["edges"] is Entry.List list && sides is { } count && count != items.Count)
        {
            values.Log.AddSaid(list, string.Create(CultureInfo.InvariantCulture, $"{items.Count} edges"), string.Create(CultureInfo.InvariantCulture, $"one for each of the outline's {count} sides"));
        }

        var edges = new List<Edge>();
        foreach (var item in items)
        {
            var name = item is Entry.Group group && group.Members.TryGetValue("name", out var member) ? names.Take(member.Value, values) : null;
            edges.Add(EdgeReader.Read(item, form, usual with { Name = name ?? SideName(edges.Count) }, values));
        }

        if (owner["edges"] is not null && edges.Count != sides) return null;
        while (edges.Count < sides) edges.Add(usual with { Name = SideName(edges.Count) });
        return edges.ToSequence();
    }

    private static string SideName(int index) => string.Create(CultureInfo.InvariantCulture, $"side {index + 1}");
}
