using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>A group of the file, read by its form: unknown and missing fields are logged, the known ones handed out.</summary>
internal sealed class Fields
{
    private readonly Node.Group _group;

    private Fields(Node.Group group, Values values) => (_group, Values) = (group, values);

    public Values Values { get; }

    public Node Node => _group;

    /// <summary>The field's value; null when it is not there or the file says null.</summary>
    public Node? this[string name] => _group.Members.TryGetValue(name, out var member) && member.Value is not Node.Nothing ? member.Value : null;

    /// <summary>Opens a group and checks its fields' names against a form; null, and a fault, when the node is no group.</summary>
    public static Fields? Open(Node? node, Form form, Values values)
    {
        if (node is null) return null;
        if (Group(node, values) is not { } group) return null;
        var known = form.Names.ToList();
        var meant = new HashSet<string?>(StringComparer.Ordinal);
        foreach (var (name, member) in group.Members)
        {
            if (known.Contains(name)) continue;
            var nearest = Near.Of(name, known.Where(k => !group.Members.ContainsKey(k)));
            meant.Add(nearest);
            values.Log.Add(member.NameAt, group.PathTo(name), $"an unknown field {values.Log.Source.Shown(member.NameAt, NameEnd(member, values))}", Values.OneOf(known), Values.Quoted(nearest));
        }

        var fields = new Fields(group, values);
        foreach (var field in form.Fields)
        {
            // A misspelt field is said once, not as missing too.
            if (field.Required && fields[field.Name] is null && !meant.Contains(field.Name)) fields.Missing(field.Name, field.Example);
        }

        return fields;
    }

    /// <summary>The group as it is, for a look at what kind it is before its form is known.</summary>
    public static Node.Group? Group(Node node, Values values)
    {
        if (node is Node.Group group) return group;
        values.Log.Add(node, "a group { }");
        return null;
    }

    public void Missing(string name, string example) => Values.Log.Add(_group.At, _group.PathTo(name), "nothing", example);

    public Length? Length(string name, LengthRange range) => Values.Length(this[name], range);

    public Length Length(string name, LengthRange range, Length otherwise) => Values.Length(this[name], range) ?? otherwise;

    public string? Name(string name = "name") => Values.Name(this[name]);

    public T Word<T>(string name, Words<T> words, T otherwise)
        where T : struct => Values.Word(this[name], words) ?? otherwise;

    /// <summary>The items of a list; none when it is not there or no list, which is then logged.</summary>
    public IReadOnlyList<Node> Items(string name, int atLeast = 0)
    {
        var node = this[name];
        if (node is null) return [];
        if (node is not Node.List list)
        {
            Values.Log.Add(node, "a list [ ]");
            return [];
        }

        if (list.Items.Count < atLeast) Values.Log.AddSaid(node, "an empty list", "at least one");
        return list.Items;
    }

    private static int NameEnd(Node.Member member, Values values)
    {
        var between = values.Log.Source.Bytes[member.NameAt..member.Value.At];
        return member.NameAt + between.LastIndexOf((byte)'"') + 1;
    }
}
