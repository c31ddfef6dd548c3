using Gaugerod.Engine.Prices;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads a task and its rate.</summary>
internal static class LabourReader
{
    private const decimal LeastFactor = 0.1m, MostFactor = 20;

    public static LabourPrice? Read(Entry entry, PriceValues prices, Uniques names, IReadOnlyList<string?> runs)
    {
        var values = prices.Values;
        if (Fields.Open(entry, PriceForms.Labour, values) is not { } fields) return null;
        var (name, per, rate) = (names.Take(fields["task"], values), values.Word(fields["per"], Words.PriceUnits), prices.Price(fields["rate"]));
        var (kind, quantity) = (values.Word(fields["of"], Words.LabourKinds), prices.Quantity(fields["quantity"]));
        var run = KnownNames.Known(fields["run"], values, "a run of this job", runs);
        var pace = kind is { } of ? prices.Pace(fields["pace"], of) : null;
        var (factor, note) = (prices.Plain(fields["factor"], LeastFactor, MostFactor) ?? 1, values.Note(fields["note"], Values.MostInRow) ?? "");
        if (per is PriceUnit.Box or PriceUnit.Pack)
        {
            values.Log.Add(fields["per"]!, Values.OneOf(Words.PriceUnits.All.Except(["box", "pack"], StringComparer.Ordinal)));
            return null;
        }

        var whole = Amounts(fields, per, kind) && (pace is null) == (fields["pace"] is null) && (kind is null) == (fields["of"] is null);
        return name is null || per is null || rate is null || !whole ? null : new(name, per.Value, rate.Value) { Quantity = quantity, Of = kind, Run = run, Pace = pace, Factor = factor, Note = note };
    }

    /// <summary>Whether it is said how much there is of it, once: from the plan, or a quantity.</summary>
    private static bool Amounts(Fields fields, PriceUnit? per, LabourOf? kind)
    {
        var log = fields.Values.Log;
        foreach (var beside in (string[])["pace", "run"])
        {
            if (fields[beside] is not { } said || fields["of"] is not null) continue;
            log.AddSaid(said, $"a \"{beside}\" and no \"of\"", "what of the plan is meant beside it", "\"of\": \"tiled area\"");
            return false;
        }

        if (fields["of"] is { } of && fields["quantity"] is not null)
        {
            log.AddSaid(of, "an \"of\" and a \"quantity\"", "one of the two: what the plan says, or a quantity of your own");
            return false;
        }

        if (fields["of"] is not { } measured)
        {
            if (fields["quantity"] is not null || per is PriceUnit.Lump or null) return true;
            fields.Missing("of", "what of the plan, such as \"tiled area\", or a \"quantity\"");
            return false;
        }

        if (per is not { } unit || kind is not { } known) return true;
        if (unit == PriceUnit.Lump)
        {
            log.AddSaid(measured, "an \"of\" beside a lump", "a lump for all of it, or a rate by the unit");
            return false;
        }

        if (unit == PriceUnit.Hour)
        {
            if (fields["pace"] is not null) return true;
            fields.Missing("pace", "how much is done in an hour, such as \"1 m2\"");
            return false;
        }

        if (fields["pace"] is { } pace)
        {
            log.AddSaid(pace, "a \"pace\" beside a rate that is not by the hour", "a rate by the hour, or none");
            return false;
        }

        if (LabourAmount.IsIn(known, unit)) return true;
        log.AddSaid(fields["per"]!, $"\"{PriceUnits.Word(unit)}\" for {PriceWords.Of(known)}", Values.OneOf(PriceUnits.All.Where(word => LabourAmount.IsIn(known, PriceUnits.Read(word)!.Value)).Append("hour")));
        return false;
    }
}
