using System.Text;

namespace Gaugerod.Files.Json;

/// <summary>A place in a file, line and character counted from 1.</summary>
internal readonly record struct Place(int Line, int Column);

/// <summary>A file's bytes without a byte order mark, and the way from an offset to a line and character.</summary>
internal sealed class Source
{
    private const int LongestShown = 60;

    private readonly ReadOnlyMemory<byte> _bytes;
    private readonly List<int> _lineStarts = [0];

    public Source(ReadOnlyMemory<byte> bytes)
    {
        _bytes = bytes;
        var span = bytes.Span;
        for (var i = 0; i < span.Length; i++)
        {
            if (span[i] == (byte)'\n') _lineStarts.Add(i + 1);
        }
    }

    public ReadOnlySpan<byte> Bytes => _bytes.Span;

    /// <summary>The offset of a byte given by its line, counted from 0, and its place in the line.</summary>
    public int OffsetOf(long line, long byteInLine)
    {
        var start = _lineStarts[(int)Math.Clamp(line, 0, _lineStarts.Count - 1)];
        return (int)Math.Clamp(start + byteInLine, 0, _bytes.Length);
    }

    public Place PlaceOf(int offset)
    {
        var found = _lineStarts.BinarySearch(offset);
        var line = found >= 0 ? found : ~found - 1;
        var before = Bytes[_lineStarts[line]..offset];

        // Every byte that does not carry on a character begins one.
        var characters = 0;
        foreach (var b in before)
        {
            if ((b & 0xC0) != 0x80) characters++;
        }

        return new(line + 1, characters + 1);
    }

    /// <summary>What stands between two offsets, shortened to what fits a message.</summary>
    public string Shown(int from, int to)
    {
        var text = Encoding.UTF8.GetString(Bytes[from..Math.Min(to, from + (4 * LongestShown))]);
        var line = text.AsSpan().IndexOfAny('\r', '\n');
        if (line >= 0) text = text[..line];
        if (text.Length <= LongestShown) return text;
        var end = char.IsHighSurrogate(text[LongestShown - 1]) ? LongestShown - 1 : LongestShown;
        return text[..end] + "...";
    }
}
