using System.Globalization;
using System.Text.Json.Nodes;

namespace Gaugerod.Cli.Tests;

public sealed class LargeRunTests
{
    /// <summary>Twenty leaning walls wrapped as one: no search looks at every place of that in the time a person waits.</summary>
    [Fact]
    public async Task A_run_too_large_to_look_at_every_place_ends_with_the_best_of_those_that_promised_most_and_says_so()
    {
        using var bench = new Bench { Works = Works.Real };
        await bench.Run("plan", bench.Put("job.json", Job(walls: 20)), "--json");
        var run = JsonNode.Parse(bench.Out)!["runs"]![0]!;
        Assert.Equal("bounded", run["proof"]!["kind"]!.GetValue<string>());
        Assert.True(run["proof"]!["bound"]!.GetValue<decimal>() > run["score"]!["smallestCut"]!.GetValue<decimal>());
        // A million takes about a minute here, and is what was looked at before the search had a limit.
        Assert.InRange(run["proof"]!["examined"]!.GetValue<long>(), 1, 200_000);
    }

    private static string Job(int walls)
    {
        var faces = Enumerable.Range(0, walls).Select(i => string.Create(
            CultureInfo.InvariantCulture,
            $$"""{ "name": "w{{i}}", "readings": { "width": { "foot": {{2000 + (i * 37)}}, "top": {{1997 + (i * 37) + (i % 7)}} }, "height": { "left": {{2400 + (i % 5)}}, "right": {{2398 + (i % 4)}} }, "lean": { "left": {{(i % 9) - 4}}, "right": {{4 - (i % 8)}} } } }"""));
        var names = Enumerable.Range(0, walls).Select(i => string.Create(CultureInfo.InvariantCulture, $"\"w{i}\""));
        return $$"""
            { "format": "gaugerod-job/1", "name": "hall", "units": "mm",
              "products": [ { "name": "tile", "width": 300, "height": 300, "thickness": 9, "perBox": 10 } ],
              "faces": [ {{string.Join(",\n", faces)}} ],
              "runs": [ { "name": "all", "product": "tile", "faces": [ {{string.Join(", ", names)}} ],
                "bond": { "kind": "running", "offset": "1/3", "lay": "level", "step": "one way" }, "corners": "wrap", "joint": 3 } ] }
            """;
    }
}
