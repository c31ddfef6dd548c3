using Gaugerod.Sheets.Drawings;
using PdfSharp.Fonts;

namespace Gaugerod.Sheets.Formats;

/// <summary>Gives the PDF library its fonts from the assembly; it never looks for any on the machine.</summary>
internal sealed class PdfFonts : IFontResolver
{
    public const string Family = "Inter";

    private static readonly Lock Gate = new();

    /// <summary>The library keeps its resolver for the whole process; it is set once, and another's is left alone.</summary>
    public static void Install()
    {
        lock (Gate)
        {
            GlobalFontSettings.FontResolver ??= new PdfFonts();
        }
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        string.Equals(familyName, Family, StringComparison.Ordinal) ? new(bold ? "Inter-700" : "Inter-400") : null;

    public byte[]? GetFont(string faceName) => faceName switch
    {
        "Inter-700" => TypeFace.Bold.Bytes,
        "Inter-400" => TypeFace.Regular.Bytes,
        _ => null,
    };
}
