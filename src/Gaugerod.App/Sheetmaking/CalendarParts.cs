using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;
using Microsoft.AspNetCore.Components.WebAssembly.Services;

namespace Gaugerod.App.Sheetmaking;

/// <summary>What only the writing of a calendar needs: left out of the start, and loaded when one is first asked for.</summary>
internal static class CalendarParts
{
    /// <summary>The same names as in the project file; one that is not there fails the build there and the loading here.</summary>
    private static readonly string[] s_names = ["NodaTime.wasm", "Ical.Net.wasm"];

    /// <summary>The order of work as a calendar; what writes it is loaded first.</summary>
    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Gaugerod.Sheets names what it uses of these parts, so the trimming keeps it.")]
    public static async Task<byte[]> WriteAsync(LazyAssemblyLoader parts, Plan plan)
    {
        await parts.LoadAssembliesAsync(s_names);
        return Write(plan);
    }

    // By itself, so that nothing of the calendar's own parts is looked for before they are loaded.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static byte[] Write(Plan plan) => CalendarWriter.Write(WorkCalendar.Of(plan), plan.Job.Name);
}
