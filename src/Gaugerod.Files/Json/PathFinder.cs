using System.Globalization;

namespace Gaugerod.Files.Json;

/// <summary>Follows a path such as <c>faces[1].openings[0].width</c> as far as the file goes with it.</summary>
internal static class PathFinder
{
    public static Entry Nearest(Entry root, string path)
    {
        var entry = root;
        foreach (var step in path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            var next = entry switch
            {
                Entry.Group group when group.Members.TryGetValue(step, out var member) => member.Value,
                Entry.List list when Index(step) is { } index && index < list.Items.Count => list.Items[index],
                _ => null,
            };
            if (next is null) break;
            entry = next;
        }

        return entry;
    }

    private static int? Index(string step) =>
        step is ['[', .. var digits, ']'] && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var index) ? index : null;
}
