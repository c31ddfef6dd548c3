using System.Text;
using System.Text.Json;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>A grain and boxes in a job file, and what plan.json then says. The plain wall of the samples is 32 tiles of 10 to a box.</summary>
public sealed class DirectionFieldTests
{
    [Fact]
    public void A_product_says_which_side_its_grain_runs_along_and_how_many_boxes_are_open()
    {
        var product = Assert.IsType<JobReading.Understood>(Samples.Read(Blended)).Job.Products[0];
        Assert.Equal((Grain.AlongHeight, 3), (product.Grain, product.Blend));
        var plain = Samples.Job("plain-wall").Products[0];
        Assert.Null(plain.Grain);
        Assert.Null(plain.Blend);
    }

    [Theory]
    [InlineData("\"perBox\": 10, \"grain\": \"across\"", "products[0].grain", "\"along width\" or \"along height\"")]
    [InlineData("\"perBox\": 10, \"blend\": 1", "products[0].blend", "a whole number from 2 to 12")]
    [InlineData("\"blend\": 3", "products[0].blend", "\"perBox\" beside it")]
    public void What_cannot_be_meant_is_refused_with_what_could_stand_there(string fields, string path, string expected)
    {
        var fault = Assert.Single(Samples.Faults(Samples.With("plain-wall", "\"perBox\": 10", fields)));
        Assert.Equal((path, expected), (fault.Path, fault.Expected));
    }

    [Fact]
    public void The_plan_says_each_piece_s_grain_and_each_tile_s_box_and_keeps_to_its_schema()
    {
        var text = Written(Blended);
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, text));
        using var plan = JsonDocument.Parse(text);
        var pieces = plan.RootElement.GetProperty("runs")[0].GetProperty("faces")[0].GetProperty("pieces").EnumerateArray();
        Assert.All(pieces, piece => Assert.Equal(90, piece.GetProperty("grain").GetInt32()));
        var product = plan.RootElement.GetProperty("cutting").GetProperty("products")[0];
        Assert.Equal((3, 4, 10), (product.GetProperty("blend").GetProperty("open").GetInt32(), product.GetProperty("blend").GetProperty("boxes").GetInt32(), product.GetProperty("blend").GetProperty("perBox").GetInt32()));
        Assert.Equal([1, 2, 3, 4], product.GetProperty("tiles").EnumerateArray().Select(tile => tile.GetProperty("box").GetInt32()).Distinct().Order());
        var finding = plan.RootElement.GetProperty("findings").EnumerateArray().Single(f => f.GetProperty("rule").GetString() == "boxes");
        Assert.Contains("one lot and one caliber", finding.GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_without_them_does_not_speak_of_them()
    {
        foreach (var name in Samples.Names)
        {
            var text = Written(Samples.Text(name));
            Assert.All(new[] { "\"grain\"", "\"box\"", "\"blend\"", "\"boxes\"" }, word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_border_that_turns_the_grain_of_its_tiles_is_warned_of_once()
    {
        var job = Assert.IsType<JobReading.Understood>(Samples.Read(Samples.With("porch-floor", "\"name\": \"frame tile\"", "\"grain\": \"along width\", \"name\": \"frame tile\""))).Job;
        var finding = Assert.Single(Planner.Plan(job).Findings, f => f.Rule == "grain");
        Assert.Equal(("frame", "level, plumb"), (finding.Where, finding.Value));
    }

    private static string Blended => Samples.With("plain-wall", "\"perBox\": 10", "\"perBox\": 10, \"grain\": \"along height\", \"blend\": 3");

    private static string Written(string job) => Encoding.UTF8.GetString(PlanWriter.Write(Planner.Plan(Assert.IsType<JobReading.Understood>(Samples.Read(job)).Job)));
}
