using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>A group of the file, read by its form: misspelt and missing fields are logged, strange ones passed over, the known ones handed out.</summary>
internal sealed class Fields
{
    private readonly Entry.Group _group;

    private Fields(Entry.Group group, Values values) => (_group, Values) = (group, values);

    public Values Values { get; }

    public Entry Entry => _group;

    /// <summary>The field's value; null when it is not there or the file says null.</summary>
    public Entry? this[string name] => _group.Members.TryGetValue(name, out var member) && member.Value is not Entry.Nothing ? member.Value : null;

    /// <summary>Opens a group and checks its fields' names against a form; null, and one fault, when the entry is no group or one of another kind.</summary>
    public static Fields? Open(Entry? entry, Form form, Values values)
    {
        if (entry is null) return null;
        if (Group(entry, values) is not { } group) return null;
        var known = form.Names.ToList();
        if (OfAnotherKind(group, form, values)) return null;
        var meant = new HashSet<string?>(StringComparer.Ordinal);
        foreach (var (name, member) in group.Members)
        {
            // A field that says null says nothing.
            if (known.Contains(name) || member.Value is Entry.Nothing) continue;
            var nearest = Near.Of(name, known.Where(k => !group.Members.ContainsKey(k)));
            if (nearest is null && Near.Of(name, known) is null && !Forms.EveryName.Contains(name))
            {
                // Somebody else's field, or a later version's: nobody can have meant one of ours by it.
                values.Log.PassOver(member.NameAt, group.PathTo(name));
                continue;
            }

            meant.Add(nearest);
            var (words, mends) = Misplaced.Of(group, name, member.Value, form, values.Log.Source, nearest);
            values.Log.Add(member.NameAt, group.PathTo(name), $"an unknown field {values.Log.Source.Shown(member.NameAt, NameEnd(member, values))}", Values.OneOf(known), words, mends);
        }

        var fields = new Fields(group, values);
        foreach (var field in form.Fields)
        {
            // A misspelt field is said once, not as missing too.
            if (field.Required && fields[field.Name] is null && !meant.Contains(field.Name)) fields.Missing(field.Name, field.Example);
        }

        return fields;
    }

    // A group with nothing of what it should hold is one slip, not one for every field.
    private static bool OfAnotherKind(Entry.Group group, Form form, Values values)
    {
        var (names, needed) = (group.Members.Keys.ToList(), form.Fields.Where(f => f.Required).Select(f => f.Name).ToList());
        if (names.Count == 0 && needed.Count > 1)
        {
            values.Log.AddSaid(group, "an empty group { }", "a group with at least " + Values.AllOf(needed));
            return true;
        }

        if (names.Count < 2 || names.Exists(name => form.Names.Contains(name, StringComparer.Ordinal) || Near.Of(name, form.Names) is not null)) return false;
        var more = names.Count > 3 ? " and more" : "";
        values.Log.AddSaid(
            group, $"a group of other fields: {string.Join(", ", names.Take(3).Select(Values.Quoted))}{more}",
            needed.Count > 0 ? "a group with at least " + Values.AllOf(needed) : "only " + Values.OneOf(form.Names));
        return true;
    }

    /// <summary>The group as it is, for a look at what kind it is before its form is known.</summary>
    public static Entry.Group? Group(Entry entry, Values values)
    {
        if (entry is Entry.Group group) return group;
        values.Log.Add(entry, "a group { }");
        return null;
    }

    public void Missing(string name, string example) => Values.Log.Add(_group.At, _group.PathTo(name), "nothing", Values.Example(example));

    public Length? Length(string name, LengthRange range) => Values.Length(this[name], range);

    public Length Length(string name, LengthRange range, Length otherwise) => Values.Length(this[name], range) ?? otherwise;

    public string? Name(string name = "name") => Values.Name(this[name]);

    public T Word<T>(string name, Words<T> words, T otherwise)
        where T : struct => Values.Word(this[name], words) ?? otherwise;

    /// <summary>The items of a list; none when it is not there or no list, which is then logged.</summary>
    public IReadOnlyList<Entry> Items(string name, int atLeast = 0)
    {
        var entry = this[name];
        if (entry is null) return [];
        if (entry is not Entry.List list)
        {
            Values.Log.Add(entry, "a list [ ]");
            return [];
        }

        if (list.Items.Count < atLeast) Values.Log.AddSaid(entry, "an empty list", "at least one");
        return list.Items;
    }

    private static int NameEnd(Entry.Member member, Values values)
    {
        var between = values.Log.Source.Bytes[member.NameAt..member.Value.At];
        return member.NameAt + between.LastIndexOf((byte)'"') + 1;
    }
}
