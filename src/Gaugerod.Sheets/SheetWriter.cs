using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets;

/// <summary>Writes sheets as one file: the one place that knows both the sheets and a file format.</summary>
public static class SheetWriter
{
    /// <summary>The sheets as the bytes of one PDF; the same sheets give the same bytes.</summary>
    /// <exception cref="ArgumentException">There are no sheets.</exception>
    public static byte[] Pdf(Sequence<Drawing> pages, string title) => PdfWriter.Write(pages, title);

    /// <summary>All sheets of a plan as the bytes of one PDF.</summary>
    public static byte[] Pdf(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return PdfWriter.Write(JobSheets.Pages(plan), plan.Job.Name);
    }
}
