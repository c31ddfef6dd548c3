using System.Text;
using System.Text.Json;

namespace Gaugerod.Files.Json;

/// <summary>Reads JSON into values that know where they stand. What cannot be read goes to the log, and nothing comes back.</summary>
internal static class EntryReader
{
    public const int DeepestNesting = 32;

    public static Entry? Read(FaultLog log)
    {
        // Our own limit is reached first and said in our own words.
        var options = new JsonReaderOptions { MaxDepth = DeepestNesting * 2, CommentHandling = JsonCommentHandling.Disallow, AllowTrailingCommas = false };
        var reader = new Utf8JsonReader(log.Source.Bytes, options);
        try
        {
            reader.Read();
            var root = Value(ref reader, null, "", log);
            if (root is not null) reader.Read();
            return root;
        }
        catch (JsonException e)
        {
            SyntaxFault.Say(log, log.Source.OffsetOf(e.LineNumber ?? 0, e.BytePositionInLine ?? 0));
            return null;
        }
    }

    private static Entry? Value(ref Utf8JsonReader reader, Entry? parent, string step, FaultLog log)
    {
        var at = (int)reader.TokenStartIndex;
        Entry? entry = reader.TokenType switch
        {
            JsonTokenType.StartObject => Group(ref reader, new Entry.Group(parent, step, at) { End = at + 1 }, log),
            JsonTokenType.StartArray => List(ref reader, new Entry.List(parent, step, at) { End = at + 1 }, log),
            JsonTokenType.String => Characters(ref reader, log) is { } text ? new Entry.Text(parent, step, at, text) : null,
            JsonTokenType.Number => new Entry.Number(parent, step, at, Encoding.UTF8.GetString(reader.ValueSpan)),
            JsonTokenType.True => new Entry.Truth(parent, step, at, true),
            JsonTokenType.False => new Entry.Truth(parent, step, at, false),
            _ => new Entry.Nothing(parent, step, at),
        };
        if (entry is not (null or Entry.Group or Entry.List)) entry.End = (int)reader.BytesConsumed;
        return entry;
    }

    private static Entry.Group? Group(ref Utf8JsonReader reader, Entry.Group group, FaultLog log)
    {
        if (TooDeep(ref reader, group, log)) return null;
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var nameAt = (int)reader.TokenStartIndex;
            if (Characters(ref reader, log) is not { } name) return null;
            reader.Read();
            if (Value(ref reader, group, "." + name, log) is not { } value) return null;
            if (!group.Members.TryAdd(name, new(nameAt, value)))
            {
                var first = log.Source.PlaceOf(group.Members[name].NameAt).Line;
                log.Add(nameAt, group.PathTo(name), string.Create(System.Globalization.CultureInfo.InvariantCulture, $"this field a second time, the first is in line {first}"), "every field once");
            }
        }

        return group;
    }

    private static Entry.List? List(ref Utf8JsonReader reader, Entry.List list, FaultLog log)
    {
        if (TooDeep(ref reader, list, log)) return null;
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (Value(ref reader, list, Entry.StepOf(list.Items.Count), log) is not { } value) return null;
            list.Items.Add(value);
        }

        return list;
    }

    private static bool TooDeep(ref Utf8JsonReader reader, Entry entry, FaultLog log)
    {
        if (reader.CurrentDepth < DeepestNesting) return false;
        log.Add(entry.At, "", "brackets more than 32 deep", "a job, which needs fewer than ten");
        return true;
    }

    private static string? Characters(ref Utf8JsonReader reader, FaultLog log)
    {
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            // Half a character: \ud83d without the half that belongs to it.
            var at = (int)reader.TokenStartIndex;
            log.Add(at, "", log.Source.Shown(at, (int)reader.BytesConsumed), "text whose \\u codes make whole characters");
            return null;
        }
    }
}
