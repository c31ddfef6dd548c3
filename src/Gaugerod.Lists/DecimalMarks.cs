using Gaugerod.Engine.Prices;

namespace Gaugerod.Lists;

/// <summary>Tells by all prices of a list which mark stands before the parts of one.</summary>
internal static class DecimalMarks
{
    /// <summary>The mark, and whether a price without a plain one could be read with the other too.</summary>
    /// <param name="prices">What stands in the column of prices.</param>
    /// <param name="separator">What parts fields: where a comma does, a point is likelier inside them.</param>
    public static (DecimalMark Mark, bool Sure) Of(IEnumerable<string> prices, char separator)
    {
        var (points, commas) = (0, 0);
        foreach (var price in prices)
        {
            switch (Plainly(price))
            {
                case DecimalMark.Point: points++; break;
                case DecimalMark.Comma: commas++; break;
            }
        }

        var likelier = separator == ';' ? DecimalMark.Comma : DecimalMark.Point;
        return (points > commas ? DecimalMark.Point : commas > points ? DecimalMark.Comma : likelier, points != commas);
    }

    /// <summary>Whether a price says another number with the other mark.</summary>
    public static bool IsDoubtful(string price) =>
        PriceText.Read(price, DecimalMark.Point) is PriceReading.Understood(var point, _) && PriceText.Read(price, DecimalMark.Comma) is PriceReading.Understood(var comma, _) && point != comma;

    // What only one of them can read, as 12.50 or 1.234,00, tells. 1.234 tells nothing.
    private static DecimalMark? Plainly(string price)
    {
        if (price.AsSpan().IndexOfAny('.', ',') < 0) return null;
        var (point, comma) = (PriceText.Read(price, DecimalMark.Point) is PriceReading.Understood, PriceText.Read(price, DecimalMark.Comma) is PriceReading.Understood);
        return point == comma ? null : point ? DecimalMark.Point : DecimalMark.Comma;
    }
}
