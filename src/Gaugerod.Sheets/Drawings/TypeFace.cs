using System.Buffers.Binary;
using System.Reflection;

namespace Gaugerod.Sheets.Drawings;

/// <summary>
/// One weight of Inter: its bytes and how far each letter advances. The file keeps its figures in two widths; here the
/// ones of a single width (feature <c>tnum</c>) are put in the place of the others, so that columns of figures line up
/// in every format, also where a writer knows nothing of font features.
/// </summary>
internal sealed class TypeFace
{
    private readonly int _cmap, _hmtx, _advances, _unitsPerEm;

    private TypeFace(string resource)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"{resource} is not in the assembly.");
        Bytes = new byte[stream.Length];
        stream.ReadExactly(Bytes);
        _cmap = UnicodeMap();
        _hmtx = Table("hmtx"u8);
        _advances = U16(Table("hhea"u8) + 34);
        _unitsPerEm = U16(Table("head"u8) + 18);
        UseFiguresOfOneWidth();
    }

    public static TypeFace Regular { get; } = new("Inter_400Regular.ttf");

    public static TypeFace Bold { get; } = new("Inter_700Bold.ttf");

    public byte[] Bytes { get; }

    /// <summary>How far a letter advances, in parts of the letter size.</summary>
    public double Advance(char letter) => U16(_hmtx + (Math.Min(Glyph(letter), _advances - 1) * 4)) / (double)_unitsPerEm;

    public bool Has(char letter) => Glyph(letter) != 0;

    private void UseFiguresOfOneWidth()
    {
        var gsub = Table("GSUB"u8);
        var (features, lookups) = (gsub + U16(gsub + 6), gsub + U16(gsub + 8));
        for (var i = 0; i < U16(features); i++)
        {
            var entry = features + 2 + (6 * i);
            if (!Bytes.AsSpan(entry, 4).SequenceEqual("tnum"u8)) continue;
            var lookup = lookups + U16(lookups + 2 + (2 * U16(features + U16(entry + 4) + 4)));
            Substitute(lookup + U16(lookup + 6));
            return;
        }
    }

    /// <summary>OpenType, GSUB lookup 1 format 2 over coverage formats 1 and 2: glyph for glyph.</summary>
    private void Substitute(int table)
    {
        var coverage = table + U16(table + 2);
        for (var figure = '0'; figure <= '9'; figure++)
        {
            var slot = GlyphSlot(figure);
            var index = CoverageIndex(coverage, U16(slot));
            if (index >= 0) BinaryPrimitives.WriteUInt16BigEndian(Bytes.AsSpan(slot), (ushort)U16(table + 6 + (2 * index)));
        }
    }

    private int CoverageIndex(int coverage, int glyph)
    {
        var ranges = U16(coverage) == 2;
        for (var i = 0; i < U16(coverage + 2); i++)
        {
            var at = coverage + 4 + (i * (ranges ? 6 : 2));
            if (!ranges && U16(at) == glyph) return i;
            if (ranges && glyph >= U16(at) && glyph <= U16(at + 2)) return U16(at + 4) + glyph - U16(at);
        }

        return -1;
    }

    private int Glyph(char letter) => Segment(letter) switch
    {
        (_, < 0) => 0,
        (0, var delta) => (letter + delta) & 0xffff,
        (var slot, _) => U16(slot),
    };

    /// <summary>Where the glyph of a figure is written in the character map.</summary>
    private int GlyphSlot(char figure) => Segment(figure).Slot is var slot && slot > 0
        ? slot
        : throw new InvalidOperationException("The font keeps its figures in another way.");

    /// <summary>OpenType, cmap format 4: where the letter's glyph is written, or (slot 0) what is to be added to the letter; -1 when it has none.</summary>
    private (int Slot, int Delta) Segment(char letter)
    {
        var segments = U16(_cmap + 6) / 2;
        var (ends, size) = (_cmap + 14, 2 * segments);
        for (var i = ends; i < ends + size; i += 2)
        {
            if (U16(i) < letter) continue;
            var starts = i + size + 2;
            var (start, delta, offset) = (U16(starts), U16(starts + size), U16(starts + (2 * size)));
            return start > letter ? (0, -1) : offset == 0 ? (0, delta) : (starts + (2 * size) + offset + (2 * (letter - start)), 0);
        }

        return (0, -1);
    }

    private int UnicodeMap()
    {
        var cmap = Table("cmap"u8);
        for (var i = 0; i < U16(cmap + 2); i++)
        {
            var at = cmap + 4 + (8 * i);
            if (U16(at) == 3 && U16(at + 2) == 1) return cmap + (int)BinaryPrimitives.ReadUInt32BigEndian(Bytes.AsSpan(at + 4));
        }

        throw new InvalidOperationException("The font has no Unicode character map.");
    }

    private int Table(ReadOnlySpan<byte> tag)
    {
        for (var at = 12; at < 12 + (16 * U16(4)); at += 16)
        {
            if (Bytes.AsSpan(at, 4).SequenceEqual(tag)) return (int)BinaryPrimitives.ReadUInt32BigEndian(Bytes.AsSpan(at + 8));
        }

        throw new InvalidOperationException("The font lacks a table.");
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(Bytes.AsSpan(at));
}
