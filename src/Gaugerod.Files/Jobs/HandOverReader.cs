using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what the setter notes for the hand-over.</summary>
/// <param name="values">Takes what is wrong.</param>
/// <param name="bought">What tiles, trims, boards and supplies are called; null among them for one that could not be read.</param>
internal sealed class HandOverReader(Values values, IReadOnlyList<string?> bought)
{
    /// <summary>None is longer: a sheet is read, not searched.</summary>
    private const int MostLines = 200;

    private const int MostYears = 50;

    public HandOverRequest? Read(Entry? entry)
    {
        if (Fields.Open(entry, HandOverForms.HandOver, values) is not { } fields) return null;
        return new()
        {
            Care = Items(fields, "care").Select(Text).OfType<string>().ToSequence(),
            Lots = Items(fields, "lots").Select(Lot).OfType<LotNote>().ToSequence(),
            Kept = Text(fields["kept"]),
            Photographs = Items(fields, "photographs").Select(Photograph).OfType<Photograph>().ToSequence(),
            Renew = values.Whole(fields["renew"], 1, MostYears),
            Tests = Items(fields, "tests").Select(Test).OfType<TestNote>().ToSequence(),
        };
    }

    private LotNote? Lot(Entry entry)
    {
        if (Fields.Open(entry, HandOverForms.Lot, values) is not { } fields) return null;
        var of = KnownNames.Known(fields["of"], values, "a tile, a trim, a board or a supply of this job", bought);
        var (lot, colour, caliber, note) = (Text(fields["lot"]), Text(fields["colour"]), Text(fields["caliber"]), Text(fields["note"]));
        return of is null ? null : new(of, lot, colour, caliber, note);
    }

    private Photograph? Photograph(Entry entry)
    {
        if (Fields.Open(entry, HandOverForms.Photograph, values) is not { } fields) return null;
        var (of, what, where) = (Said(fields, "of"), Said(fields, "what"), Text(fields["where"]));
        return of is null || what is null ? null : new(of, what, where);
    }

    private TestNote? Test(Entry entry)
    {
        if (Fields.Open(entry, HandOverForms.Test, values) is not { } fields) return null;
        var (what, on, again) = (Said(fields, "what"), TimeReading.Date(fields["on"], values), TimeReading.Date(fields["again"], values));
        if (on is { } done && again < done) values.Log.Add(fields["again"]!, "a day not before \"on\"", $"\"{TimeReading.Said(done)}\"");
        var (by, result) = (Text(fields["by"]), Text(fields["result"]));
        return what is null ? null : new(what, on, by, result, again);
    }

    // A field that is needed and says nothing is as good as missing.
    private string? Said(Fields fields, string field)
    {
        if (fields[field] is not { } entry || values.Note(entry, Values.MostInRow) is not { } text) return null;
        if (text.Trim().Length > 0) return text.Trim();
        values.Log.Add(entry, "text that says something");
        return null;
    }

    private string? Text(Entry? entry) => values.Note(entry, Values.MostInRow)?.Trim() is { Length: > 0 } text ? text : null;

    private IReadOnlyList<Entry> Items(Fields fields, string field)
    {
        var items = fields.Items(field);
        if (items.Count <= MostLines) return items;
        values.Log.AddSaid(fields[field]!, $"a list of {Values.Number(items.Count)}", $"at most {Values.Number(MostLines)}");
        return [];
    }
}
