using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Stations.Measure;
using Gaugerod.Engine.Prices;

namespace Gaugerod.App.Stations.Order;

/// <summary>The job's own list of prices, found by what they price.</summary>
internal static class JobPrices
{
    public const string Items = "prices.items";

    /// <summary>Where the price of something stands; -1 where it has none.</summary>
    public static int At(JsonObject root, string item) => JobLists.List(root, Items).ToList().FindIndex(one => one is JsonObject group && string.Equals(Plain(group["item"]?.ToString() ?? ""), Plain(item), StringComparison.Ordinal));

    /// <summary>The path of one.</summary>
    public static string Path(string list, int at) => string.Create(CultureInfo.InvariantCulture, $"{list}[{at}]");

    /// <summary>Puts a price; null takes it out.</summary>
    public static void Put(JsonObject root, string item, string unit, string? price, string note = "")
    {
        var at = At(root, item);
        if (price is null)
        {
            if (at >= 0) JobLists.Remove(root, Items, at);
            if (JobPath.Get(root, "prices") is JsonObject { Count: 0 }) JobPath.Set(root, "prices", null);
            return;
        }

        if (at < 0)
        {
            JobLists.Add(root, Items, new JsonObject { ["item"] = item, ["unit"] = unit, ["price"] = price });
            at = At(root, item);
        }

        JobPath.Set(root, Path(Items, at) + ".price", JsonValue.Create(price));
        if (unit.Length > 0) JobPath.Set(root, Path(Items, at) + ".unit", JsonValue.Create(unit));
        if (note.Length > 0) JobPath.Set(root, Path(Items, at) + ".note", JsonValue.Create(note));
    }

    /// <summary>Puts the prices of a list's lines.</summary>
    public static void Put(JsonObject root, IEnumerable<ListLine> used, Currency currency)
    {
        if (JobPath.Get(root, "prices.currency") is null) JobPath.Set(root, "prices.currency", JsonValue.Create(currency.Code));
        foreach (var price in used.Select(line => line.Price!))
        {
            var note = price.Note.Length > 0 ? $"{price.From}: {price.Note}" : price.From;
            Put(root, price.Item, PriceUnits.Word(price.Unit), price.Price is { } known ? PriceText.Plain(known) : PriceText.ByOthers, note);
        }
    }

    private static string Plain(string name) => string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToUpperInvariant();
}
