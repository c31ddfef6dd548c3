using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace Gaugerod.Sheets.Formats;

/// <summary>
/// Goes over a PDF file once it is written. PDFsharp 6.2.4 leaves the checksum (RFC 1950, Adler-32) off its compressed
/// streams, which strict readers complain of, and draws numbers by lot for the file's identity and its font subsets.
/// Here the checksums are added, the numbers follow from the content, and the table of offsets is written anew.
/// </summary>
internal static class PdfFinish
{
    private static readonly Encoding Bytes = Encoding.Latin1;

    public static byte[] Of(byte[] pdf)
    {
        var text = Bytes.GetString(pdf);
        var xref = PdfScan.Number(text, text.LastIndexOf("startxref", StringComparison.Ordinal) + "startxref".Length);
        var entries = PdfScan.Entries(text, xref);
        var order = Enumerable.Range(0, entries.Length).Where(i => entries[i].Used).OrderBy(i => entries[i].At).ToArray();
        var head = text[..entries[order[0]].At];
        var objects = order.Select((number, i) => text[entries[number].At..(i + 1 < order.Length ? entries[order[i + 1]].At : xref)]).Select(Checked).ToArray();
        NameSubsetsInOrder(objects);
        var trailer = text[text.IndexOf("trailer", xref, StringComparison.Ordinal)..text.IndexOf("startxref", xref, StringComparison.Ordinal)];
        return Assemble(head, objects, order, entries.Length, trailer);
    }

    private static byte[] Assemble(string head, string[] objects, int[] order, int count, string trailer)
    {
        for (var i = 0; i < objects.Length; i++) objects[i] = PdfScan.WithUuid(objects[i], "uuid:00000000-0000-0000-0000-000000000000");
        var hash = Convert.ToHexString(SHA256.HashData(Bytes.GetBytes(string.Concat(objects))))[..32];
        var uuid = $"uuid:{hash[..8]}-{hash[8..12]}-{hash[12..16]}-{hash[16..20]}-{hash[20..]}".ToLowerInvariant();
        var file = new StringBuilder(head);
        var offsets = new int[count];
        for (var i = 0; i < objects.Length; i++)
        {
            offsets[order[i]] = file.Length;
            file.Append(PdfScan.WithUuid(objects[i], uuid));
        }

        var xref = file.Length;
        file.Append(CultureInfo.InvariantCulture, $"xref\n0 {count}\n");
        for (var i = 0; i < count; i++) file.Append(CultureInfo.InvariantCulture, $"{offsets[i]:0000000000} {(i == 0 ? "65535 f" : "00000 n")} \n");
        file.Append(PdfScan.WithIdentity(trailer, $"/ID[<{hash}><{hash}>]"));
        file.Append(CultureInfo.InvariantCulture, $"startxref\n{xref}\n%%EOF\n");
        return Bytes.GetBytes(file.ToString());
    }

    /// <summary>The object with the checksum behind its compressed stream, where it has one.</summary>
    private static string Checked(string item)
    {
        var begins = PdfScan.StreamOf(item);
        if (begins < 0 || !item[..begins].Contains("/FlateDecode", StringComparison.Ordinal)) return item;
        const string Name = "/Length ";
        var at = item.IndexOf(Name, StringComparison.Ordinal) + Name.Length;
        var size = PdfScan.Number(item, at);
        var packed = item.Substring(begins, size);
        var sum = Adler(Bytes.GetBytes(packed));
        var behind = new string([(char)(sum >> 24), (char)((sum >> 16) & 0xff), (char)((sum >> 8) & 0xff), (char)(sum & 0xff)]);
        if (packed.EndsWith(behind, StringComparison.Ordinal)) return item;
        var digits = size.ToString(CultureInfo.InvariantCulture).Length;
        var longer = (size + 4).ToString(CultureInfo.InvariantCulture);
        return item[..at] + longer + item[(at + digits)..begins] + packed + behind + item[(begins + size)..];
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
            objects[i] = PdfScan.WithSubsets(objects[i], subset =>
            {
                if (!names.TryGetValue(subset, out var name)) names[subset] = name = "/GAUGE" + (char)('A' + names.Count) + "+";
                return name;
            });
        }
    }
}
