using System.Text;
using Gaugerod.Engine;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>Finds where a field belongs that stands where it has no business.</summary>
internal static class Misplaced
{
    /// <summary>
    /// The name that a misspelt field was meant to have; what stands there already is to be left out. What belongs to a tile is said with the tiles that have none
    /// yet. With each goes what to put there; nothing is said of any other.
    /// </summary>
    public static (string? Words, Sequence<Mend> Mends) Of(Entry.Group group, string name, Entry value, Form form, Source source, string? meant)
    {
        if (meant is not null) return (Values.Quoted(meant), Moved(group, name, [group.PathTo(meant)], value, source));
        if (Near.Of(name, form.Names) is { } twin) return ($"leave it out: \"{twin}\" stands there already", [new(group.PathTo(name), "null")]);
        // What other groups have too, a width or a name, may be meant of anything.
        if (form == Forms.Product || form == Forms.Trim || !Forms.Product.Names.Contains(name, StringComparer.Ordinal)) return (null, []);
        if (Forms.All.Any(other => other != Forms.Product && other != Forms.Trim && other.Names.Contains(name, StringComparer.Ordinal))) return (null, []);
        var tiles = (group.Root as Entry.Group)?.Members.TryGetValue("products", out var products) == true && products.Value is Entry.List list ? list.Items.OfType<Entry.Group>().ToList() : [];
        var bare = tiles.Where(tile => !tile.Members.ContainsKey(name)).ToList();
        if (tiles.Count == 0) return (null, []);
        return bare.Count == 0
            ? ("leave it out: every tile has its own", [new(group.PathTo(name), "null")])
            : ($"\"{name}\" of {string.Join(", ", bare.Select(tile => tile.Path))}", Moved(group, name, bare.Select(tile => tile.PathTo(name)), value, source));
    }

    /// <summary>A field's value put in other places; none for a list or a group, which is not written a second time.</summary>
    private static Sequence<Mend> Moved(Entry.Group group, string name, IEnumerable<string> places, Entry value, Source source) =>
        value is Entry.Group or Entry.List ? [] : [.. places.Select(place => new Mend(place, Encoding.UTF8.GetString(source.Bytes[value.At..value.End]))), new(group.PathTo(name), "null")];
}
