using System.Globalization;
using Gaugerod.Cli.Reading;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Prices;
using Gaugerod.Lists;
using Gaugerod.Plane;

namespace Gaugerod.Cli.Commands;

/// <summary>The price list of the command line: read, brought to the plan, and every line of it accounted for.</summary>
internal static class PriceLists
{
    // More lines on a screen help nobody; the table of the list names all.
    private const int MostNamed = 20;

    /// <summary>The list; null when it could not be used, which has then been said.</summary>
    public static async Task<PriceListReading.Understood?> Open(string path, Desk desk, CancellationToken token)
    {
        var input = await JobInput.File(path, "a price list", token);
        if (input.Fault is { } unread)
        {
            await desk.Words.WriteLineAsync("error: " + unread);
            return null;
        }

        switch (PriceListReader.Read(input.Bytes, Path.GetFileName(path)))
        {
            case PriceListReading.Understood read:
                return read;
            case PriceListReading.Refused refused:
                await desk.Words.WriteLineAsync("error: " + refused.Fault.Say());
                return null;
            case var other:
                throw new InvalidOperationException($"A reading of a kind that is not known here: {other.GetType().Name}.");
        }
    }

    /// <summary>The plan with the list's prices; null when nobody says what they are in, which has then been said.</summary>
    public static async Task<Plan?> Priced(Plan plan, PriceListReading.Understood list, string path, Desk desk)
    {
        if ((plan.Job.Prices?.Currency ?? list.Currency) is { } currency) return JobPricing.With(plan, list.Lines, currency);
        await desk.Words.WriteLineAsync($"error: {path}: found no currency, expected a column \"currency\" in the list, or \"prices\": {{ \"currency\": \"EUR\" }} in the job.");
        return null;
    }

    /// <summary>Says how the list was read, how many lines were used, and names those to be set right.</summary>
    public static async Task Say(PriceListReading.Understood list, Sequence<ListLine> lines, string? folder, TextWriter words)
    {
        foreach (var said in list.Said) await words.WriteLineAsync(said);
        var counted = lines.GroupBy(line => line.Fate).OrderBy(group => group.Key).Select(group => string.Create(CultureInfo.InvariantCulture, $"{group.Count()} {PriceWords.Of(group.Key)}"));
        await words.WriteLineAsync($"Lines of the price list: {(lines.Count == 0 ? "none" : string.Join(", ", counted))}.");
        var bad = lines.Where(line => line.Fate is not (ListFate.Used or ListFate.NotUsed)).ToList();
        foreach (var line in bad.Take(MostNamed)) await words.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"warn: {line.File}:{line.First}: {(line.Item.Length > 0 ? line.Item + ": " : "")}{line.Said}"));
        if (bad.Count > MostNamed) await words.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"warn: and {bad.Count - MostNamed} more; {(folder is null ? "plan.json" : "price-list.csv")} names every line."));
    }

    /// <summary>What it comes to, in a line.</summary>
    public static string Total(Estimate price)
    {
        var (code, lacking) = (price.Request.Currency, price.Lacking.ToList());
        var range = price.IsRange ? $", from {code.Write(price.Low.Total)} to {code.Write(price.High.Total)}" : "";
        return $"Price: {code.Write(price.Likely.Total)} {code.Code}{range}{(lacking.Count == 0 ? "" : $", without {string.Join(", ", lacking.Select(line => line.What))}")}.";
    }
}
