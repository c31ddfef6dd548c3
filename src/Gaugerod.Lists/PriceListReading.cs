using Gaugerod.Engine.Prices;
using Gaugerod.Files;
using Gaugerod.Plane;

namespace Gaugerod.Lists;

/// <summary>What came of reading a price list.</summary>
public abstract record PriceListReading
{
    private PriceListReading()
    {
    }

    /// <summary>It was read, line by line; what of its lines cannot be used says so itself.</summary>
    /// <param name="Lines">Every line with something in it, the head left out.</param>
    /// <param name="Said">How it was read, in words: separator, decimal mark, and what is in doubt.</param>
    public sealed record Understood(Sequence<ListLine> Lines, Sequence<string> Said) : PriceListReading
    {
        /// <summary>The currency that its first priced line names; null for none.</summary>
        public Currency? Currency => Lines.FirstOrDefault(line => line.Price is not null && Engine.Prices.Currency.IsCode(line.Currency)) is { } first ? new(first.Currency) : null;
    }

    /// <summary>It is no price list; nothing of it was used.</summary>
    /// <param name="Fault">Why, and where.</param>
    public sealed record Refused(FileFault Fault) : PriceListReading;
}
