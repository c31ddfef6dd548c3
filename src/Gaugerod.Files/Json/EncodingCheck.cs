using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Unicode;

namespace Gaugerod.Files.Json;

/// <summary>Takes a file's bytes for what they are: UTF-8 text, with or without its mark, or something else that is named.</summary>
internal static class EncodingCheck
{
    public const int LargestFile = 8 * 1024 * 1024;

    private const string SaveAgain = "save the file again as UTF-8";

    /// <summary>The file's text, and a log that holds a fault when it is none.</summary>
    /// <param name="file">The file's bytes.</param>
    /// <param name="name">What it is called in messages.</param>
    /// <param name="what">What it should hold, such as <c>a job</c>.</param>
    public static FaultLog Open(ReadOnlyMemory<byte> file, string name, string what = "a job")
    {
        var bytes = file.Span;
        if (bytes.Length > LargestFile)
        {
            return Refused(name, "a file of more than 8 MB", what + " of at most 8 MB", null);
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) || LooksWide(bytes))
        {
            return Refused(name, "text in UTF-16 or UTF-32", "text in UTF-8", SaveAgain);
        }

        if (bytes.Contains((byte)0)) return Refused(name, "a file that is no text", what + ", saved as text in UTF-8", null);
        var text = bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? file[3..] : file;
        var log = new FaultLog(name, new Source(text));
        if (!Utf8.IsValid(text.Span))
        {
            var at = FirstBad(text.Span);
            var value = text.Span[at].ToString("X2", CultureInfo.InvariantCulture);
            log.Add(at, "", $"a byte (hexadecimal {value}) that is not UTF-8", "text in UTF-8", SaveAgain);
        }

        return log;
    }

    private static FaultLog Refused(string name, string found, string expected, string? nearest)
    {
        var log = new FaultLog(name, new Source(ReadOnlyMemory<byte>.Empty));
        log.Add(0, "", found, expected, nearest);
        return log;
    }

    // Without a mark it gives itself away by the empty half of its first characters.
    private static bool LooksWide(ReadOnlySpan<byte> bytes) => bytes.Length >= 2 && (bytes[0] == 0) != (bytes[1] == 0);

    private static int FirstBad(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == OperationStatus.Done) at += length;
        return at;
    }
}
