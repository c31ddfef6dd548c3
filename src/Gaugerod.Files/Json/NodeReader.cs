using System.Text;
using System.Text.Json;

namespace Gaugerod.Files.Json;

/// <summary>Reads JSON into values that know where they stand. What cannot be read goes to the log, and nothing comes back.</summary>
internal static class NodeReader
{
    public const int DeepestNesting = 32;

    public static Node? Read(FaultLog log)
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

    private static Node? Value(ref Utf8JsonReader reader, Node? parent, string step, FaultLog log)
    {
        var at = (int)reader.TokenStartIndex;
        Node? node = reader.TokenType switch
        {
            JsonTokenType.StartObject => Group(ref reader, new Node.Group(parent, step, at) { End = at + 1 }, log),
            JsonTokenType.StartArray => List(ref reader, new Node.List(parent, step, at) { End = at + 1 }, log),
            JsonTokenType.String => Characters(ref reader, log) is { } text ? new Node.Text(parent, step, at, text) : null,
            JsonTokenType.Number => new Node.Number(parent, step, at, Encoding.UTF8.GetString(reader.ValueSpan)),
            JsonTokenType.True => new Node.Truth(parent, step, at, true),
            JsonTokenType.False => new Node.Truth(parent, step, at, false),
            _ => new Node.Nothing(parent, step, at),
        };
        if (node is not (null or Node.Group or Node.List)) node.End = (int)reader.BytesConsumed;
        return node;
    }

    private static Node.Group? Group(ref Utf8JsonReader reader, Node.Group group, FaultLog log)
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

    private static Node.List? List(ref Utf8JsonReader reader, Node.List list, FaultLog log)
    {
        if (TooDeep(ref reader, list, log)) return null;
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (Value(ref reader, list, Node.StepOf(list.Items.Count), log) is not { } value) return null;
            list.Items.Add(value);
        }

        return list;
    }

    private static bool TooDeep(ref Utf8JsonReader reader, Node node, FaultLog log)
    {
        if (reader.CurrentDepth < DeepestNesting) return false;
        log.Add(node.At, "", "brackets more than 32 deep", "a job, which needs fewer than ten");
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
