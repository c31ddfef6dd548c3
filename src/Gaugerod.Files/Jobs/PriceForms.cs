namespace Gaugerod.Files.Jobs;

/// <summary>The groups of prices and their fields.</summary>
internal static class PriceForms
{
    private const string APrice = "a price such as \"12.50\"";

    private static readonly Field Note = new("note", "text such as \"spring list\"");

    public static readonly Form Prices = new(
        "prices",
        new("currency", "three capital letters such as \"EUR\"", true), new("items", "a list of prices such as [{ \"item\": \"wall tile\", \"unit\": \"box\", \"price\": \"31.20\" }]"),
        new("labour", "a list of tasks such as [{ \"task\": \"set tile\", \"per\": \"hour\", \"rate\": \"45\" }]"), new("travel", "a group such as { \"price\": \"25\" }"), new("waste", "a group such as { \"price\": \"80\" }"),
        new("margin", "hundredths such as \"20 % on cost\""), new("tax", "hundredths such as \"21 %\""), new("taxOn", "a list such as [\"materials\"]"), new("taxName", "a name such as \"sales tax\""), new("rounding", "a step such as \"0.05\""), new("quote", "a group such as { \"terms\": \"...\" }"));

    public static readonly Form Item = new(
        "itemPrice", new("item", "a name such as \"wall tile\"", true), new("unit", "a unit such as \"box\""), new("price", APrice, true), new("quantity", "a quantity such as \"3\""), new("more", "a number of packs such as \"0 to 1\""), Note);

    public static readonly Form Labour = new(
        "labourPrice",
        new("task", "a name such as \"set wall tile\"", true), new("per", "a unit such as \"hour\"", true), new("rate", APrice, true), new("of", "what of the plan, such as \"tiled area\""), new("run", "a run's name"),
        new("pace", "how much in an hour, such as \"0.8 to 1.2 m2\""), new("quantity", "a quantity such as \"6 to 8\""), new("factor", "a number such as 1.3"), Note);

    public static readonly Form Charge = new("charge", new("price", APrice, true), new("quantity", "a quantity such as \"4\""), new("called", "a name such as \"trip\""), Note);

    public static readonly Form Quote = new(
        "quote",
        new("from", "text"), new("for", "text"), new("date", "a day such as \"2031-03-14\""), new("validUntil", "a day such as \"2031-04-14\""), new("included", "a list of texts [ ]"), new("excluded", "a list of texts [ ]"), new("terms", "text"),
        new("margin", "\"shown\" or \"hidden\""), new("amounts", "\"lines\" or \"groups\""), new("total", "\"likely\" or \"range\""));

    public static readonly IReadOnlyList<Form> All = [Prices, Item, Labour, Charge, Quote];
}
