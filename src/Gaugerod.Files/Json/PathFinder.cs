using System.Globalization;

namespace Gaugerod.Files.Json;

/// <summary>Follows a path such as <c>faces[1].openings[0].width</c> as far as the file goes with it.</summary>
internal static class PathFinder
{
    public static Node Nearest(Node root, string path)
    {
        var node = root;
        foreach (var step in path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            var next = node switch
            {
                Node.Group group when group.Members.TryGetValue(step, out var member) => member.Value,
                Node.List list when Index(step) is { } index && index < list.Items.Count => list.Items[index],
                _ => null,
            };
            if (next is null) break;
            node = next;
        }

        return node;
    }

    private static int? Index(string step) =>
        step is ['[', .. var digits, ']'] && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var index) ? index : null;
}
