using System.Text;
using System.Text.Json;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Prices;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>An invented wall with invented prices, and slips in them.</summary>
public sealed class PricesJobTests
{
    private const string Wall = """
        { "format": "gaugerod-job/1", "name": "Utility wall", "note": "Invented, its prices too.", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "tile", "width": 300, "height": 300, "thickness": 8, "perBox": 10 }],
          "prices": { "currency": "EUR",
            "items": [{ "item": "tile", "unit": "box", "price": "28 to 32, likely 29", "more": "0 to 1", "note": "spring list" }, { "item": "floor cover", "unit": "lump", "price": 40 }],
            "labour": [{ "task": "set", "of": "tiled area", "run": "wall", "per": "hour", "rate": "45", "pace": "0.8 to 1.2 m2", "factor": "1.1" }, { "task": "clean", "per": "hour", "rate": 40, "quantity": "1 to 2" }],
            "travel": { "price": "12.50", "quantity": 4, "called": "trip" }, "waste": { "price": 60 },
            "margin": "20 % on cost", "tax": "21 %", "taxOn": ["materials", "labour"], "taxName": "VAT", "rounding": "0.05",
            "quote": { "for": "nobody", "date": "2031-03-14", "validUntil": "2031-04-14", "included": ["setting"], "excluded": ["plumbing"], "terms": "Half now.", "margin": "shown", "amounts": "groups", "total": "range" } },
          "faces": [{ "name": "wall", "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]],
            "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }] }],
          "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    [Fact]
    public void Prices_are_read_as_the_schema_has_them_and_the_plan_says_what_they_come_to()
    {
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, Wall));
        var job = Job(Wall);
        var prices = job.Prices!;
        Assert.Equal((new Spread(28, 29, 32), new Spread(0, 0.5m, 1)), (prices.Items[0].Price!.Value, prices.Items[0].More));
        Assert.Equal((new Margin(20, true), 0.05m), (prices.Margin!, prices.Rounding!.Value));
        Assert.Equal((true, false, true), (prices.Quote.ShowsMargin, prices.Quote.ShowsLines, prices.Quote.ShowsRange));

        var plan = Planner.Plan(job);
        var file = Encoding.UTF8.GetString(PlanWriter.Write(plan));
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, file));
        using var read = JsonDocument.Parse(file);
        var likely = read.RootElement.GetProperty("price").GetProperty("likely");
        Assert.Equal(plan.Price!.Likely.Total, likely.GetProperty("total").GetDecimal());

        // By hand: 2.994 by 2.394 m are 7.17 m²; 1.1 times that at 1 m² an hour, 7.89 h at 45.
        Assert.Equal((7.89m, 355.05m), (plan.Price.Lines[2].Quantity.Likely, plan.Price.Lines[2].Cost!.Value.Likely));
        Assert.Equal(0, plan.Price.Likely.Total % 0.05m);
    }

    [Fact]
    public void A_job_without_prices_has_none() => Assert.Null(Planner.Plan(Samples.Job("plain-wall")).Price);

    [Theory]
    [InlineData("\"EUR\"", "\"eur\"", "job.json:3: prices.currency: found \"eur\", expected the three capital letters of a currency (ISO 4217), such as \"EUR\". Nearest: \"EUR\".")]
    [InlineData("\"price\": 40", "\"price\": 0", "job.json:4: prices.items[1].price: found 0, expected a price of more than nothing; for what others buy, \"by others\".")]
    [InlineData("\"price\": 40", "\"price\": -4", "job.json:4: prices.items[1].price: found -4, expected a price of more than nothing; for what others buy, \"by others\".")]
    [InlineData("\"price\": 40", "\"price\": \"40,50\"", "job.json:4: prices.items[1].price: found \"40,50\", expected a number to 10,000,000 such as \"12.50\", or \"12 to 15\". Nearest: \"40.50\".")]
    [InlineData("\"price\": 40", "\"price\": \"1,200\"", "job.json:4: prices.items[1].price: found \"1,200\", expected a price without a comma.")]
    [InlineData("\"price\": 40", "\"price\": \"40 USD\"", "job.json:4: prices.items[1].price: found a price in USD, expected a price in EUR, the job's currency.")]
    [InlineData("\"item\": \"floor cover\"", "\"item\": \"tile\"", "job.json:4: prices.items[1].item: found \"tile\", which is taken, expected a name of its own among the priced items. Nearest: \"tile 2\".")]
    [InlineData("\"item\": \"floor cover\"", "\"item\": \"TILE\"", "job.json:4: prices.items[1].item: found \"TILE\", which is taken, expected a name of its own among the priced items. Nearest: \"TILE 2\".")]
    [InlineData("\"perBox\": 10 }],", "\"perBox\": 10 }], \"supplies\": [{ \"name\": \"TILE\", \"kind\": \"grout\", \"yield\": \"2 l\" }],", "job.json:4: prices.items[0].item: found \"tile\", which is the name of a tile and of a supply, expected what only one thing that is bought is called. Nearest: another name for one of them.")]
    [InlineData("\"unit\": \"lump\"", "\"unit\": \"lot\"", "job.json:4: prices.items[1].unit: found \"lot\", expected \"box\", \"each\", \"m2\", \"ft2\", \"m\", \"ft\", \"hour\", \"pack\" or \"lump\".")]
    [InlineData("\"run\": \"wall\", \"per\"", "\"run\": \"floor\", \"per\"", "job.json:5: prices.labour[0].run: found \"floor\", expected a run of this job: \"wall\".")]
    [InlineData("\"0.8 to 1.2 m2\"", "\"0.8 to 1.2 m\"", "job.json:5: prices.labour[0].pace: found \"0.8 to 1.2 m\", expected how much tiled area in an hour, such as \"0.8 to 1.2 m2\".")]
    [InlineData("\"pace\": \"0.8 to 1.2 m2\", ", "", "job.json:5: prices.labour[0].pace: found nothing, expected how much is done in an hour, such as \"1 m2\".")]
    [InlineData("\"quantity\": \"1 to 2\"", "\"pace\": \"1 m2\"", "job.json:5: prices.labour[1].pace: found a \"pace\" and no \"of\", expected what of the plan is meant beside it. Nearest: \"of\": \"tiled area\".")]
    [InlineData("\"20 % on cost\"", "\"20 %\"", "job.json:7: prices.margin: found \"20 %\", expected hundredths, and of what: \"20 % on cost\" or \"15 % of price\".")]
    [InlineData("\"20 % on cost\"", "\"100 % of price\"", "job.json:7: prices.margin: found \"100 % of price\", expected at most 90 hundredths of the price.")]
    [InlineData("\"rounding\": \"0.05\"", "\"rounding\": \"3\"", "job.json:7: prices.rounding: found \"3\", expected \"0.01\", \"0.05\", \"0.1\", \"0.5\", \"1\", \"5\" or \"10\".")]
    [InlineData("\"2031-04-14\"", "\"2031-02-30\"", "job.json:8: prices.quote.validUntil: found \"2031-02-30\", expected a day that is in the calendar, as year-month-day, such as \"2031-03-14\".")]
    [InlineData("\"2031-04-14\"", "\"2031-03-13\"", "job.json:8: prices.quote.validUntil: found a last day, 2031-03-13, before the day it is of, 2031-03-14, expected the same day or a later one.")]
    [InlineData("\"tax\": \"21 %\", ", "", "job.json:7: prices.taxOn: found a \"taxOn\" and no \"tax\", expected the \"tax\" beside it. Nearest: \"tax\": \"..\".")]
    public void A_slip_in_a_price_is_said_where_it_stands(string old, string changed, string said)
    {
        Assert.Equal(2, Wall.Split(old).Length);
        Assert.Contains(said, Samples.Messages(Wall.Replace(old, changed, StringComparison.Ordinal)));
    }

    // By hand: two sides of 2394 mm and two of 2994 between soft joints of 3, 10.776 m, at 4 a metre; a board of 2994 by 2391 mm, 3 mm off the corners and the ceiling, 6 off the floor, without a seam.
    [Fact]
    public void Soft_joints_are_paid_by_the_metre_and_board_by_its_area()
    {
        var text = Wall.Replace("{ \"task\": \"clean\"", "{ \"task\": \"seal\", \"of\": \"soft joints\", \"per\": \"m\", \"rate\": \"4\" }, { \"task\": \"put up\", \"of\": \"board area\", \"run\": \"wall\", \"per\": \"m2\", \"rate\": \"10\" }, { \"task\": \"clean\"", StringComparison.Ordinal)
            .Replace("\"faces\": [{", "\"boards\": [{ \"name\": \"board\", \"width\": 2600, \"length\": 3100 }], \"faces\": [{ \"board\": { \"of\": \"board\", \"edges\": 3, \"foot\": 6 }, ", StringComparison.Ordinal);
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, text));
        var lines = Planner.Plan(Job(text)).Price!.Lines.ToDictionary(line => line.What, StringComparer.Ordinal);
        Assert.Equal((10.78m, 43.12m, "soft joints: 10.78 m"), (lines["seal"].Quantity.Likely, lines["seal"].Cost!.Value.Likely, lines["seal"].How));
        Assert.Equal((7.16m, "board area of wall: 7.16 m²"), (lines["put up"].Quantity.Likely, lines["put up"].How));
    }

    /// <summary>A price hangs on no search: the plan before is gone on from, and is the same as one from the beginning.</summary>
    [Fact]
    public void A_price_that_is_typed_searches_nothing_anew()
    {
        var before = Planner.Plan(Job(Wall.Replace("\"currency\": \"EUR\",", "\"currency\": \"EUR\", \"mine\": 1,", StringComparison.Ordinal)));
        var ready = JobCheck.Steps(Job(Wall.Replace("\"price\": 40", "\"price\": 41", StringComparison.Ordinal)), large: true).Last()!;
        var after = Unsearched(ready, before);
        Assert.Same(before.Cutting, after.Cutting);
        Assert.Same(before.Runs, after.Runs);
        Assert.Equal(41, after.Price!.Lines[1].Cost!.Value.Likely);
        Assert.Equal(Planner.Plan(ready.Job).Findings, after.Findings);
        Assert.Equal(Planner.Plan(ready.Job).Price, after.Price);
    }

    /// <summary>What may be moved stays where it was moved to.</summary>
    [Fact]
    public void Nor_where_a_bench_may_be_moved()
    {
        var text = Samples.Text("plain-wall").Replace("\"units\": \"mm\",", "\"units\": \"mm\", \"prices\": { \"currency\": \"EUR\", \"waste\": { \"price\": 60 } },", StringComparison.Ordinal)
            .Replace("\"readings\"", "\"fixtures\": [{ \"name\": \"bench\", \"from\": 1800, \"height\": 500, \"range\": [450, 550] }], \"readings\"", StringComparison.Ordinal);
        var before = Planner.Plan(Job(text));
        Assert.NotEmpty(before.ToBuild);
        var ready = JobCheck.Steps(Job(text.Replace("\"price\": 60", "\"price\": 61", StringComparison.Ordinal)), large: true).Last()!;
        var after = Unsearched(ready, before);
        Assert.Same(before.Runs, after.Runs);
        Assert.Equal(61, after.Price!.Likely.Total);
        var other = JobCheck.Steps(Job(text.Replace("[450, 550]", "[400, 550]", StringComparison.Ordinal)), large: true).Last()!;
        Assert.Contains(Planner.Steps(other, after), step => step.Text.Contains("looking for", StringComparison.Ordinal));
    }

    [Fact]
    public void A_list_prices_what_the_job_does_not_and_each_of_its_lines_is_in_the_plan()
    {
        var plan = Planner.Plan(Job(Wall.Replace("{ \"item\": \"tile\", \"unit\": \"box\", \"price\": \"28 to 32, likely 29\", \"more\": \"0 to 1\", \"note\": \"spring list\" }, ", "", StringComparison.Ordinal)));
        Assert.Equal(["tile"], plan.Price!.Lacking.Select(line => line.What));
        Assert.Contains(plan.Findings, finding => finding.Rule == "price" && finding.Text == "No total holds what has no price: tile (no price).");
        var priced = JobPricing.With(plan, [new("list.csv", 2, 2, "Tile", ListFate.NotUsed, "") { Price = new("Tile", PriceUnit.Box, Spread.Of(30)) { From = "list.csv, line 2" } }, new("list.csv", 3, 3, "", ListFate.Unread, "found nothing")], new("EUR"));
        Assert.Empty(priced.Price!.Lacking);
        Assert.DoesNotContain(priced.Findings, finding => finding.Rule == "price");
        var file = Encoding.UTF8.GetString(PlanWriter.Write(priced));
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, file));
        using var read = JsonDocument.Parse(file);
        Assert.Equal(["used", "not read"], read.RootElement.GetProperty("price").GetProperty("list").EnumerateArray().Select(line => line.GetProperty("became").GetString()!));
    }

    // Between the parts that come after the search the page may draw; a search says what it looks for.
    private static Plan Unsearched(CheckedJob ready, Plan before)
    {
        var steps = Planner.Steps(ready, before).ToList();
        Assert.DoesNotContain(steps, step => step.Text.Contains("looking for", StringComparison.Ordinal));
        return steps[^1].Plan!;
    }

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(Samples.Read(text)).Job;
}
