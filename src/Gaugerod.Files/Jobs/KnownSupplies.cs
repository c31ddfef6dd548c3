using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>The supplies of a job that others may name: their names, and those that could be read.</summary>
internal sealed class KnownSupplies(IReadOnlyList<(string? Name, Supply? Supply)> supplies)
{
    public static readonly KnownSupplies None = new([]);

    /// <summary>The name of a supply of a kind. What could not be read itself may be what is meant.</summary>
    public string? Named(Entry? entry, Values values, SupplyKind kind) => KnownNames.Known(
        entry, values, $"a supply of this job of kind \"{Words.SupplyKinds.Say(kind)}\"", supplies.Where(one => one.Supply is null || one.Supply.Kind == kind).Select(one => one.Name));

    /// <summary>What is put on all over.</summary>
    public Coated? Coated(Entry? entry, Values values, SupplyKind kind)
    {
        if (Fields.Open(entry, SupplyForms.Coated, values) is not { } fields) return null;
        var coats = values.Whole(fields["coats"], 1, 5);
        return Named(fields["of"], values, kind) is { } of && (coats is null) == (fields["coats"] is null) ? new(of, coats ?? 1) : null;
    }
}
