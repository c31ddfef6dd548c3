using Gaugerod.Engine.Prices;

namespace Gaugerod.Engine.Tests.Prices;

/// <summary>Prices as people and spreadsheets write them; read by hand beside each.</summary>
public sealed class PriceTextTests
{
    [Theory]
    [InlineData("12.50", DecimalMark.Point, "12.5", "")]
    [InlineData("12,50", DecimalMark.Comma, "12.5", "")]
    [InlineData("1,234.50", DecimalMark.Point, "1234.5", "")]
    [InlineData("1.234,50", DecimalMark.Comma, "1234.5", "")]
    [InlineData("1'234.50 CHF", DecimalMark.Point, "1234.5", "CHF")]
    [InlineData("1 234,50 €", DecimalMark.Comma, "1234.5", "€")]
    [InlineData("$12.50", DecimalMark.Point, "12.5", "$")]
    [InlineData("-3", DecimalMark.Point, "-3", "")]
    [InlineData("0.0235", DecimalMark.Point, "0.0235", "")]
    [InlineData("12 to 15", DecimalMark.Point, "12 to 15", "")]
    [InlineData("12–15", DecimalMark.Point, "12 to 15", "")]
    [InlineData("12-15", DecimalMark.Point, "12 to 15", "")]
    [InlineData("12,5 to 15, likely 13", DecimalMark.Comma, "12.5 to 15, likely 13", "")]
    [InlineData("12 EUR to 15 EUR", DecimalMark.Point, "12 to 15", "EUR")]
    public void A_price_is_read_as_it_is_meant(string text, DecimalMark mark, string said, string sign)
    {
        var read = Assert.IsType<PriceReading.Understood>(PriceText.Read(text, mark));
        Assert.Equal((said, sign), (PriceText.Plain(read.Value), read.Sign));
    }

    [Theory]
    [InlineData("")]
    [InlineData("12,50")]
    [InlineData("1,23,456.00")]
    [InlineData("12.")]
    [InlineData(".5")]
    [InlineData("1.23456")]
    [InlineData("12.5O")]
    [InlineData("12 apples")]
    [InlineData("15 to 12")]
    [InlineData("12 to")]
    [InlineData("12 to 15, likely 16")]
    [InlineData("12 EUR to 15 USD")]
    [InlineData("99999999999999")]
    public void What_can_be_read_in_no_way_or_in_two_is_refused(string text) => Assert.IsType<PriceReading.Refused>(PriceText.Read(text, DecimalMark.Point));

    [Fact]
    public void A_comma_typed_for_a_point_is_named_as_the_nearest() =>
        Assert.Equal("12.50", Assert.IsType<PriceReading.Refused>(PriceText.Read("12,50", DecimalMark.Point)).Nearest);

    /// <summary>ISO 4217, from memory: yen have no hundredths, dinars of Kuwait thousandths.</summary>
    [Theory]
    [InlineData("EUR", "0.125", "0.13")]
    [InlineData("EUR", "-0.125", "-0.13")]
    [InlineData("JPY", "12.5", "13")]
    [InlineData("KWD", "0.0005", "0.001")]
    public void Half_of_the_least_coin_is_rounded_away_from_nought(string code, string amount, string paid)
    {
        var invariant = System.Globalization.CultureInfo.InvariantCulture;
        Assert.Equal(paid, new Currency(code).Write(new Currency(code).Paid(decimal.Parse(amount, invariant))));
    }
}
