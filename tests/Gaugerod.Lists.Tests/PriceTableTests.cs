using System.Globalization;
using System.Numerics;
using System.Text;
using CsCheck;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Prices;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;
using Gaugerod.Testing;
using Sylvan.Data.Csv;

namespace Gaugerod.Lists.Tests;

/// <summary>
/// The exported table, reckoned again by a reader that knows nothing of the engine: another library for the file, whole numbers without a point for the
/// amounts. To the least coin.
/// </summary>
public sealed class PriceTableTests
{
    private const int Digits = 12;

    private static readonly Plan s_plan = Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(File.ReadAllBytes(Path.Combine(Repo.Root, "samples/guest-shower.json")), "job.json")).Job);

    private static readonly Gen<Spread> Amount = Gen.Select(Gen.Int[1, 2_000_000], Gen.Int[0, 500_000], Gen.Int[0, 100]).Select((low, more, part) => new Spread(low / 1000m, (low + (more * (long)part / 100)) / 1000m, (low + more) / 1000m));

    private static readonly Gen<PriceRequest> Requests = Gen.Select(
        Pick("EUR", "USD", "JPY", "KWD"), Amount.Array[2, 6], Pick(PriceUnit.Box, PriceUnit.Each, PriceUnit.SquareMetre, PriceUnit.SquareFoot), Gen.Int[0, 90_000], Gen.Bool, Gen.Int[0, 30_0000], Gen.Int[1, 15], Pick<decimal?>(null, 1, 5, 10))
        .Select((code, amounts, unit, margin, onCost, tax, groups, step) => new PriceRequest(new(code))
        {
            Items = [new("wall tile", unit, amounts[0]), .. amounts.Skip(2).Select((price, i) => new ItemPrice($"thing {i}", PriceUnit.Each, price) { Quantity = amounts[1].Each(one => decimal.Round(one, 2)) })],
            Labour = [new("set", PriceUnit.Hour, amounts[1]) { Of = LabourOf.TiledArea, Pace = new(Spread.Of(0.7m, 1.3m), PriceUnit.SquareMetre) }, new("cut", PriceUnit.Each, amounts[0]) { Of = LabourOf.CutPieces }],
            Travel = new(amounts[1]) { Quantity = Spread.Of(3, 5) }, Margin = new(margin / 1000m, onCost),
            Tax = new(tax / 10_000m, Enumerable.Range(0, 4).Where(i => (groups & (1 << i)) != 0).Select(i => (CostGroup)i).ToSequence()), Rounding = step,
        });

    [Fact]
    public void Whoever_reckons_the_table_again_comes_to_the_same_coin() => Requests.Each(request => Reckon(request), iter: 500);

    [Fact]
    public void Words_that_begin_like_a_formula_are_words_and_numbers_stay_numbers()
    {
        var plan = JobPricing.Priced(s_plan with { Job = s_plan.Job with { Prices = new(new("EUR")) { Items = [new("=1+1, \"x\"", PriceUnit.Each, Spread.Of(2)) { Quantity = Spread.Of(3), Note = "@cmd" }], Waste = new(Spread.Of(0.6m)), Rounding = 1 } } });
        var rows = Rows(CsvWriter.Write(PriceTable.Of(plan.Price!)));
        Assert.Contains(rows, row => row["what"] == "'=1+1, \"x\"" && row["note"] == "'@cmd" && row["amount likely"] == "6.00");
        Assert.Contains(rows, row => row["what"] == "rounding" && row["amount likely"] == "0.40");
    }

    private static Gen<T> Pick<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    private static void Reckon(PriceRequest request)
    {
        var rows = Rows(CsvWriter.Write(PriceTable.Of(JobPricing.Priced(s_plan with { Job = s_plan.Job with { Prices = request } }).Price!)));
        var coin = BigInteger.Pow(10, Digits - request.Currency.Places);
        foreach (var way in (string[])["low", "likely", "high"])
        {
            var lines = rows.Where(row => row["kind"] == "line").ToList();
            foreach (var line in lines) Assert.Equal(Paid(Number(line["quantity " + way]) * Number(line["price " + way]), BigInteger.Pow(10, Digits) * coin) * coin, Number(line["amount " + way]));
            var (cost, margin, tax) = (Sum("cost"), Sum("margin"), Sum("tax"));
            var amounts = lines.ConvertAll(line => Number(line["amount " + way]));
            var asked = lines.ConvertAll(line => Number(line["asked " + way]));
            var total = Total(amounts);
            Assert.Equal(total, Number(cost["amount " + way]));

            // Hundredths on cost, or of a price of which the cost is the rest.
            var percent = Number(margin["price " + way]);
            var hundred = 100 * BigInteger.Pow(10, Digits);
            var parts = margin["unit"] == "% on cost" ? hundred : hundred - percent;
            var put = Paid(total * percent, parts * coin) * coin;
            Assert.Equal((total, put), (Number(margin["quantity " + way]), Number(margin["amount " + way])));
            Assert.Equal(total + put, Total(asked));
            for (var i = 0; i < lines.Count; i++) Assert.True(total == 0 || BigInteger.Abs(((asked[i] - amounts[i]) * total) - (put * amounts[i])) < coin * total, "a share is a coin off");

            var taxed = Total([.. lines.Select((line, i) => line["taxed"] == "yes" ? asked[i] : 0)]);
            var paid = Paid(taxed * Number(tax["price " + way]), hundred * coin) * coin;
            Assert.Equal((taxed, paid), (Number(tax["quantity " + way]), Number(tax["amount " + way])));
            var end = total + put + paid;
            if (rows.Find(row => row["what"] == "rounding" && row["kind"] == "sum") is { } rounding)
            {
                var step = Number(rounding["price " + way]);
                Assert.Equal((Paid(end, step) * step) - end, Number(rounding["amount " + way]));
                end = Paid(end, step) * step;
            }

            Assert.Equal(end, Number(Sum("total")["amount " + way]));
        }

        Dictionary<string, string> Sum(string what) => rows.Single(row => row["kind"] == "sum" && row["what"] == what);
    }

    // To the nearest whole, half away from nought, in whole numbers only.
    private static BigInteger Paid(BigInteger over, BigInteger under) => over.Sign * ((2 * BigInteger.Abs(over)) + under) / (2 * under);

    private static BigInteger Total(List<BigInteger> all) => all.Aggregate(BigInteger.Zero, (sum, one) => sum + one);

    private static BigInteger Number(string text)
    {
        var minus = text.StartsWith('-');
        var halves = text.TrimStart('-').Split('.');
        var number = BigInteger.Parse(halves[0] + (halves.Length > 1 ? halves[1] : "").PadRight(Digits, '0'), CultureInfo.InvariantCulture);
        return minus ? -number : number;
    }

    private static List<Dictionary<string, string>> Rows(byte[] file)
    {
        using var reader = new StreamReader(new MemoryStream(file), new UTF8Encoding(false, throwOnInvalidBytes: true));
        using var csv = CsvDataReader.Create(reader);
        var rows = new List<Dictionary<string, string>>();
        while (csv.Read()) rows.Add(Enumerable.Range(0, csv.FieldCount).ToDictionary(csv.GetName, csv.GetString, StringComparer.Ordinal));
        return rows;
    }
}
