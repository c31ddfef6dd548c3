using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads curbs and benches that are built up solid.</summary>
internal static class FillReader
{
    public static FillRequest? Read(Entry entry, Values values, Uniques names)
    {
        if (Fields.Open(entry, SupplyForms.Fill, values) is not { } fields) return null;
        var (name, of) = (names.Take(fields["name"], values), values.Supplies.Named(fields["of"], values, SupplyKind.Masonry));
        var (length, width, height) = (fields.Length("length", LengthRange.Body), fields.Length("width", LengthRange.Body), fields.Length("height", LengthRange.Body));
        return name is null || of is null || length is not { } l || width is not { } w || height is not { } h ? null : new(name, of, l, w, h);
    }
}
