namespace Gaugerod.App.Sheetmaking;

/// <summary>What only the writing of a PDF needs: left out of the start, and loaded when sheets are first asked for.</summary>
internal static class PdfParts
{
    /// <summary>The same names as in the project file; one that is not there fails the build there and the loading here.</summary>
    public static IReadOnlyList<string> Names { get; } = ["PdfSharp.wasm", "PdfSharp.Shared.wasm", "PdfSharp.System.wasm", "System.ComponentModel.Primitives.wasm"];
}
