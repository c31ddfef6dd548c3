using System.Text.Json;
using Gaugerod.Engine.Prices;

namespace Gaugerod.Files.Plans;

/// <summary>Writes what a job costs.</summary>
internal static class PriceWriter
{
    public static void Write(Utf8JsonWriter json, Estimate? price)
    {
        json.WriteStartObject("price");
        if (price is not null)
        {
            json.WriteString("currency", price.Request.Currency.Code);
            json.WriteList("lines", price.Lines, line => Write(json, line));
            Write(json, "low", price.Low);
            Write(json, "likely", price.Likely);
            Write(json, "high", price.High);
            json.WriteNames("lacking", price.Lacking.Select(line => line.What));
            json.WriteNames("notUsed", price.NotUsed);
            if (price.List.Count > 0) json.WriteList("list", price.List, line => Write(json, line));
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, EstimateLine line)
    {
        json.WriteStartObject();
        json.WriteString("group", PriceWords.Of(line.Group));
        json.WriteString("what", line.What);
        Write(json, "quantity", line.Quantity);
        json.WriteString("unit", line.Unit);
        Write(json, "price", line.Price);
        Write(json, "cost", line.Cost);
        Write(json, "asked", line.Asked);
        json.WriteString("basis", line.How);
        json.WriteString("note", line.Note);
        json.WriteString("from", line.From);
        json.WriteString("lacks", line.Lacks);
        json.WriteBoolean("byOthers", line.IsByOthers);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Spread? spread)
    {
        if (spread is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteNumber("low", known.Low);
        json.WriteNumber("likely", known.Likely);
        json.WriteNumber("high", known.High);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Sums sums)
    {
        json.WriteStartObject(name);
        json.WriteNumber("cost", sums.Cost);
        json.WriteNumber("margin", sums.Margin);
        json.WriteNumber("taxed", sums.Taxed);
        json.WriteNumber("tax", sums.Tax);
        json.WriteNumber("rounding", sums.Rounding);
        json.WriteNumber("total", sums.Total);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ListLine line)
    {
        json.WriteStartObject();
        json.WriteNumber("line", line.First);
        json.WriteNumber("last", line.Last);
        json.WriteString("item", line.Item);
        json.WriteString("became", PriceWords.Of(line.Fate));
        json.WriteString("why", line.Said);
        json.WriteEndObject();
    }
}
