using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Gaugerod.Sheets.Formats;

/// <summary>
/// Goes over a PDF file once it is written. PDFsharp 6.2.4 leaves the checksum (RFC 1950, Adler-32) off its compressed
/// streams, which strict readers complain of, and draws numbers by lot for the file's identity and its font subsets.
/// Here the checksums are added, the numbers follow from the content, and the table of offsets is written anew.
/// </summary>
internal static partial class PdfFinish
{
    private const RegexOptions Plain = RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;
    private const int Milliseconds = 1000;

    private static readonly Encoding Bytes = Encoding.Latin1;

    public static byte[] Of(byte[] pdf)
    {
        var text = Bytes.GetString(pdf);
        var xref = int.Parse(StartXref().Match(text).Groups["at"].Value, CultureInfo.InvariantCulture);
        var entries = Entry().Matches(text[xref..]).Select(m => (At: int.Parse(m.Groups["at"].Value, CultureInfo.InvariantCulture), Used: m.Groups["use"].Value[0] == 'n')).ToArray();
        var order = Enumerable.Range(0, entries.Length).Where(i => entries[i].Used).OrderBy(i => entries[i].At).ToArray();
        var head = text[..entries[order[0]].At];
        var objects = order.Select((number, i) => text[entries[number].At..(i + 1 < order.Length ? entries[order[i + 1]].At : xref)]).Select(Checked).ToArray();
        NameSubsetsInOrder(objects);
        var trailer = text[text.IndexOf("trailer", xref, StringComparison.Ordinal)..text.IndexOf("startxref", xref, StringComparison.Ordinal)];
        return Assemble(head, objects, order, entries.Length, trailer);
    }

    private static byte[] Assemble(string head, string[] objects, int[] order, int count, string trailer)
    {
        for (var i = 0; i < objects.Length; i++) objects[i] = Uuid().Replace(objects[i], "uuid:00000000-0000-0000-0000-000000000000");
        var hash = Convert.ToHexString(SHA256.HashData(Bytes.GetBytes(string.Concat(objects))))[..32];
        var uuid = $"uuid:{hash[..8]}-{hash[8..12]}-{hash[12..16]}-{hash[16..20]}-{hash[20..]}".ToLowerInvariant();
        var file = new StringBuilder(head);
        var offsets = new int[count];
        for (var i = 0; i < objects.Length; i++)
        {
            offsets[order[i]] = file.Length;
            file.Append(Uuid().Replace(objects[i], uuid));
        }

        var xref = file.Length;
        file.Append(CultureInfo.InvariantCulture, $"xref\n0 {count}\n");
        for (var i = 0; i < count; i++) file.Append(CultureInfo.InvariantCulture, $"{offsets[i]:0000000000} {(i == 0 ? "65535 f" : "00000 n")} \n");
        file.Append(Identity().Replace(trailer, $"/ID[<{hash}><{hash}>]"));
        file.Append(CultureInfo.InvariantCulture, $"startxref\n{xref}\n%%EOF\n");
        return Bytes.GetBytes(file.ToString());
    }

    /// <summary>The object with the checksum behind its compressed stream, where it has one.</summary>
    private static string Checked(string item)
    {
        var start = Stream().Match(item);
        if (!start.Success || !start.Groups["dictionary"].Value.Contains("/FlateDecode", StringComparison.Ordinal)) return item;
        var length = Length().Match(start.Groups["dictionary"].Value);
        var size = int.Parse(length.Groups["size"].Value, CultureInfo.InvariantCulture);
        var packed = item.Substring(start.Index + start.Length, size);
        var sum = Adler(Bytes.GetBytes(packed));
        var behind = new string([(char)(sum >> 24), (char)((sum >> 16) & 0xff), (char)((sum >> 8) & 0xff), (char)(sum & 0xff)]);
        if (packed.EndsWith(behind, StringComparison.Ordinal)) return item;
        var dictionary = Length().Replace(start.Value, string.Create(CultureInfo.InvariantCulture, $"/Length {size + 4}"), 1);
        return item[..start.Index] + dictionary + packed + behind + item[(start.Index + start.Length + size)..];
    }

    private static uint Adler(byte[] packed)
    {
        using var plain = new MemoryStream();
        using (var inflate = new DeflateStream(new MemoryStream(packed, 2, packed.Length - 2), CompressionMode.Decompress)) inflate.CopyTo(plain);
        var (a, b) = (1u, 0u);
        foreach (var value in plain.GetBuffer().AsSpan(0, (int)plain.Length))
        {
            a = (a + value) % 65521;
            b = (b + a) % 65521;
        }

        return (b << 16) | a;
    }

    private static void NameSubsetsInOrder(string[] objects)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = 0; i < objects.Length; i++)
        {
            objects[i] = Subset().Replace(objects[i], m =>
            {
                if (!names.TryGetValue(m.Value, out var name)) names[m.Value] = name = "/GAUGE" + (char)('A' + names.Count) + "+";
                return name;
            });
        }
    }

    [GeneratedRegex(@"startxref\s+(?<at>\d+)\s+%%EOF\s*$", Plain, Milliseconds)]
    private static partial Regex StartXref();

    [GeneratedRegex(@"(?<at>\d{10}) \d{5} (?<use>[nf])", Plain, Milliseconds)]
    private static partial Regex Entry();

    [GeneratedRegex(@"^\d+ 0 obj\s*(?<dictionary><<[^\0]*?>>)\s*stream\r?\n", Plain, Milliseconds)]
    private static partial Regex Stream();

    [GeneratedRegex(@"/Length (?<size>\d+)", Plain, Milliseconds)]
    private static partial Regex Length();

    [GeneratedRegex(@"uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}", Plain, Milliseconds)]
    private static partial Regex Uuid();

    [GeneratedRegex(@"/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\]", Plain, Milliseconds)]
    private static partial Regex Identity();

    [GeneratedRegex(@"/[A-Z]{6}\+(?=Inter)", Plain, Milliseconds)]
    private static partial Regex Subset();
}
