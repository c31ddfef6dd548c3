using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what goes on a face before its tile.</summary>
internal static class UnderReader
{
    /// <summary>What goes under; null for nothing, and whether what stands there could be read.</summary>
    public static (UnderTile? Under, bool Understood) Read(Fields face)
    {
        var (values, entry) = (face.Values, face["under"]);
        if (entry is null) return (null, true);
        if (Fields.Open(entry, SupplyForms.Under, values) is not { } fields) return (null, false);
        var (primer, membrane, filler) = (values.Supplies.Coated(fields["primer"], values, SupplyKind.Primer), Membrane(fields["membrane"], values), values.Supplies.Named(fields["filler"], values, SupplyKind.Filler));
        if (fields["filler"] is { } said && face["flatness"] is null) values.Log.AddSaid(said, "a filler, and nothing that says how flat the face is", "the face's \"flatness\" beside it", "lay a straightedge on it and note the gaps");
        (string Field, object? Read)[] groups = [("primer", primer), ("membrane", membrane), ("filler", filler)];
        return (new() { Primer = primer, Membrane = membrane, Filler = filler }, groups.All(group => (group.Read is null) == (fields[group.Field] is null)));
    }

    private static MembraneRequest? Membrane(Entry? entry, Values values)
    {
        if (Fields.Open(entry, SupplyForms.Membrane, values) is not { } fields) return null;
        var (of, coats) = (values.Supplies.Named(fields["of"], values, SupplyKind.Membrane), values.Whole(fields["coats"], 1, 5));
        var (to, bands, band) = (fields.Length("to", LengthRange.Size), fields.Length("bands", LengthRange.Every), values.Supplies.Named(fields["band"], values, SupplyKind.Band));
        (string Field, object? Read)[] all = [("of", of), ("coats", coats), ("to", to), ("bands", bands), ("band", band)];
        return of is not null && all.All(one => (one.Read is null) == (fields[one.Field] is null)) ? new(of, coats ?? 2) { To = to, Bands = bands, Band = band } : null;
    }
}
