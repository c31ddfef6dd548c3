using System.Diagnostics.CodeAnalysis;
using Gaugerod.Lists;
using Microsoft.AspNetCore.Components.WebAssembly.Services;

namespace Gaugerod.App.Stations.Order;

/// <summary>What only the reading of a price list needs: left out of the start, and loaded when a list is first opened.</summary>
internal static class ListParts
{
    private static readonly string[] s_names = ["Sep.wasm", "Gaugerod.Lists.wasm"];

    /// <summary>Reads a list; what it needs is loaded first.</summary>
    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Gaugerod.Lists names what it uses of these parts, so the trimming keeps it.")]
    public static async Task<ListRead> ReadAsync(LazyAssemblyLoader parts, byte[] file, string name)
    {
        await parts.LoadAssembliesAsync(s_names);
        return Read(file, name);
    }

    // By itself, so that nothing of the list's own parts is looked for before they are loaded.
    [System.Runtime.CompilerServices.MethodImpl(System.Runtime.CompilerServices.MethodImplOptions.NoInlining)]
    private static ListRead Read(byte[] file, string name) => PriceListReader.Read(file, name) switch
    {
        PriceListReading.Understood read => new(name, read.Lines, read.Said, read.Currency, ""),
        PriceListReading.Refused refused => new(name, [], [], null, refused.Fault.Say()),
        _ => throw new InvalidOperationException("A reading of a kind that is not known here."),
    };
}
