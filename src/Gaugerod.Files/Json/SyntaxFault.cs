using System.Globalization;
using System.Text;

namespace Gaugerod.Files.Json;

/// <summary>Says in plain words why a file is not JSON, from the byte that does not fit and what stands before it.</summary>
internal static class SyntaxFault
{
    public static void Say(FaultLog log, int at)
    {
        var source = log.Source;
        var bytes = source.Bytes;
        var open = OpenBrackets(bytes[..at], out var openQuote);
        if (at >= bytes.Length || bytes[at..].Trim(" \t\r\n"u8).IsEmpty)
        {
            SayEnd(log, bytes, open, openQuote);
            return;
        }

        if (openQuote < 0) at = WordStart(bytes, at);
        var here = (char)bytes[at];
        var before = LastBefore(bytes, at);
        var (found, expected, nearest) = (here, before) switch
        {
            ('\n' or '\r', _) when openQuote >= 0 => ("a line that ends inside quotes", "the closing \" on the same line", null),
            (< ' ', _) when openQuote >= 0 => ("a tab or another unprintable character inside quotes", "printable text", "a blank in its place"),
            (_, _) when openQuote >= 0 => (source.Shown(Math.Max(at - 1, openQuote), at + 1), "after a \\ one of \" \\ / n t or u with four figures", "\\\\ for a \\ of your own"),
            ('"', '"') when at > 0 && bytes[at - 1] == '"' => ("\" twice", "an inch mark inside quotes to be written \\\"", "leave the inch mark out, as in \"40 1/2\""),
            ('/', _) => ("a comment", "plain JSON, which has no comments", "put it in \"note\""),
            ('}' or ']', ',') => ($"a comma with nothing after it before {here}", "the next value, or no comma", "take the comma out"),
            ('\'', _) => ("a single quote '", "double quotes \" around names and text", null),
            (>= '0' and <= '9', >= '0' and <= '9') => (FirstWord(source, at), "a comma before it", "a length with a blank in it goes in quotes, as in \"40 1/2\""),
            ((char)0xE2, _) => (FirstWord(source, at), "straight double quotes \" around names and text", null),
            (_, _) => (FirstWord(source, at), Expected(bytes, at, open, before), (string?)null),
        };
        log.Add(at, "", found, expected, nearest);
    }

    private static void SayEnd(FaultLog log, ReadOnlySpan<byte> bytes, List<int> open, int openQuote)
    {
        if (bytes.Trim(" \t\r\n"u8).IsEmpty)
        {
            log.Add(0, "", "nothing", "a job that begins with {");
            return;
        }

        var from = openQuote >= 0 ? openQuote : open.Count > 0 ? open[^1] : -1;
        if (from < 0)
        {
            log.Add(bytes.Length, "", "the end of the file", "a whole job between { and }");
            return;
        }

        var line = log.Source.PlaceOf(from).Line;
        var closing = bytes[from] switch { (byte)'{' => '}', (byte)'[' => ']', _ => '"' };
        log.Add(bytes.Length, "", "the end of the file", string.Create(CultureInfo.InvariantCulture, $"the closing {closing} for the {(char)bytes[from]} in line {line}"));
    }

    private static string Expected(ReadOnlySpan<byte> bytes, int at, List<int> open, char before)
    {
        if (open.Count == 0) return before == '\0' ? "a job that begins with {" : "nothing after the job's last }";
        var group = bytes[open[^1]] == '{';
        var closing = group ? '}' : ']';
        return before switch
        {
            '{' => "a field's name in double quotes, or }",
            '[' or ':' => "a length, a number, text in double quotes, true, false, null, { or [",
            ',' when group => "a field's name in double quotes",
            ',' => "the next value of the list",
            '"' when group && bytes[at] != '"' => $": after a field's name, or a comma or {closing} after its value",
            _ => $"a comma or {closing} before it",
        };
    }

    private static string FirstWord(Source source, int at)
    {
        var text = source.Shown(at, Math.Min(source.Bytes.Length, at + 24));
        var word = text.Split([' ', ',', ':', '}', ']', '\t'], 2)[0];
        if (word.Length > 0) return word;
        return text.Length > 0 && Rune.DecodeFromUtf16(text, out var first, out _) == System.Buffers.OperationStatus.Done ? first.ToString() : "an end of line";
    }

    // tru and 01 are refused at their end; a person looks for their beginning.
    private static int WordStart(ReadOnlySpan<byte> bytes, int at)
    {
        while (at > 0 && (char.IsAsciiLetterOrDigit((char)bytes[at - 1]) || bytes[at - 1] is (byte)'.' or (byte)'-' or (byte)'+')) at--;
        return at;
    }

    private static char LastBefore(ReadOnlySpan<byte> bytes, int at)
    {
        var text = bytes[..at].TrimEnd(" \t\r\n"u8);
        return text.IsEmpty ? '\0' : (char)text[^1];
    }

    private static List<int> OpenBrackets(ReadOnlySpan<byte> bytes, out int openQuote)
    {
        var open = new List<int>();
        openQuote = -1;
        for (var i = 0; i < bytes.Length; i++)
        {
            var b = bytes[i];
            if (openQuote >= 0)
            {
                if (b == '\\') i++;
                else if (b == '"') openQuote = -1;
            }
            else if (b == '"') openQuote = i;
            else if (b is (byte)'{' or (byte)'[') open.Add(i);
            else if (b is (byte)'}' or (byte)']' && open.Count > 0) open.RemoveAt(open.Count - 1);
        }

        return open;
    }
}
