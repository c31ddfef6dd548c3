using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what is bought by the pack.</summary>
internal static class SupplyReader
{
    public static (string? Name, Supply? Supply) Read(Entry entry, Values values, Uniques names)
    {
        if (Fields.Open(entry, SupplyForms.Supply, values) is not { } fields) return (null, null);
        var name = names.Take(fields["name"], values);
        var (kind, pack) = (values.Word(fields["kind"], Words.SupplyKinds), values.Name(fields["pack"]));
        var makes = kind is { } made ? AmountText.Makes(fields["yield"], values, Supply.MeasureOf(made)) : null;
        var loss = values.Whole(fields["loss"], 0, 100) ?? 0;
        var (life, open) = (TimeReading.Span(fields["potLife"], values, 1, 24 * 60), TimeReading.Span(fields["openTime"], values, 1, 24 * 60));
        var holds = PaceReader.Holds(fields["holds"], values);
        Strange("potLife", kind is SupplyKind.Mortar or SupplyKind.Grout, "mortar or grout");
        Strange("openTime", kind is SupplyKind.Mortar, "mortar");
        var (coat, understood) = Coat(fields, kind, makes);
        return (name, name is null || !understood || kind is not { } of || makes is not { } amount || (fields["pack"] is not null && pack is null) ? null : new(name, of, pack ?? "pack", amount) { LossPercent = loss, Coat = coat, PotLife = life, OpenTime = open, Holds = holds });

        void Strange(string field, bool isOfKind, string kinds)
        {
            if (kind is not null && !isOfKind && fields[field] is { } strange) values.Log.AddSaid(strange, $"\"{field}\" of a supply that is no {kinds}", $"it only of {kinds}", "leave it out");
        }
    }

    /// <summary>How thick a membrane goes on: what a pack covers, or how thick it is dry and what of it stays.</summary>
    private static (Coat? Coat, bool Understood) Coat(Fields fields, SupplyKind? kind, double? makes)
    {
        var (values, covers, dry) = (fields.Values, fields["covers"], fields["dry"]);
        if (kind is not SupplyKind.Membrane)
        {
            foreach (var field in new[] { "covers", "dry", "solids" })
            {
                if (kind is not null && fields[field] is { } strange) values.Log.AddSaid(strange, $"\"{field}\" of a supply that is no membrane", "it only of a membrane", "leave it out");
            }

            return (null, true);
        }

        if (covers is null && dry is null)
        {
            fields.Missing("covers", "what a pack covers as the maker says it, such as \"6 m2\", or how thick it is \"dry\" and its \"solids\"");
            return (null, false);
        }

        if (covers is not null && dry is not null)
        {
            values.Log.AddSaid(dry, "both \"covers\" and \"dry\"", "what a pack \"covers\", or how thick it is \"dry\" and its \"solids\"", "leave it out");
            return (null, false);
        }

        if (covers is not null)
        {
            if (fields["solids"] is { } said) values.Log.AddSaid(said, "\"solids\" beside \"covers\"", "it only beside \"dry\"", "leave it out");
            return AmountText.Area(covers, values) is { } area && makes is { } litres ? (new(litres / area), true) : (null, false);
        }

        if (fields["solids"] is null) fields.Missing("solids", "hundredths of volume such as 50");
        return AmountText.Film(dry, values) is { } thick && values.Whole(fields["solids"], 1, 100) is { } solids ? (Engine.Takeoffs.Coat.DriesTo(thick, solids), true) : (null, false);
    }
}
