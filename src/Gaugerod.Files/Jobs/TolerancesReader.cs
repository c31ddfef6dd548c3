using Gaugerod.Engine.Tolerances;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads how far things may be off on the wall.</summary>
internal static class TolerancesReader
{
    public static SettingErrors? Read(Entry? entry, Values values)
    {
        if (entry is null || Fields.Open(entry, Forms.Tolerances, values) is not { } fields) return null;
        var usual = SettingErrors.Usual(values.Unit);
        return new(fields.Length("reading", LengthRange.Tolerance, usual.Reading), fields.Length("setOut", LengthRange.Tolerance, usual.SetOut), fields.Length("joint", LengthRange.Joint, usual.Joint));
    }
}
