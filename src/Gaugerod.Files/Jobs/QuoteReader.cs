using Gaugerod.Engine.Prices;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what the client's sheet says beside the figures.</summary>
internal static class QuoteReader
{
    private const int MostLines = 60;

    public static QuoteTerms Read(Entry? entry, PriceValues prices)
    {
        if (entry is null || Fields.Open(entry, PriceForms.Quote, prices.Values) is not { } fields) return new();
        var (date, until) = (prices.Day(fields["date"]) ?? "", prices.Day(fields["validUntil"]) ?? "");
        if (date.Length > 0 && until.Length > 0 && string.CompareOrdinal(until, date) < 0) prices.Values.Log.AddSaid(fields["validUntil"]!, $"a last day, {until}, before the day it is of, {date}", "the same day or a later one");
        return new()
        {
            From = Text("from"), For = Text("for"), Date = date, ValidUntil = until, Included = Lines("included"), Excluded = Lines("excluded"), Terms = Text("terms"),
            ShowsMargin = fields.Word("margin", Words.MarginShown, false), ShowsLines = fields.Word("amounts", Words.AmountsShown, true), ShowsRange = fields.Word("total", Words.TotalShown, false),
        };

        string Text(string field) => prices.Values.Note(fields[field])?.Trim() ?? "";

        Sequence<string> Lines(string field)
        {
            var items = fields.Items(field);
            if (items.Count > MostLines) prices.Values.Log.AddSaid(fields[field]!, $"a list of {Values.Number(items.Count)}", $"at most {Values.Number(MostLines)} lines");
            return items.Select(item => prices.Values.Note(item, Values.MostInRow)?.Trim()).OfType<string>().Where(line => line.Length > 0).ToSequence();
        }
    }
}
