using System.Globalization;
using System.Text;
using System.Text.Json;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Tests.Plans;

public class PlanWriterTests
{
    [Fact]
    public void A_written_plan_is_valid_against_its_schema() =>
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(SmallPlan.Make()))));

    [Fact]
    public void Lengths_are_exact_millimetres()
    {
        // 25.4 mm to the inch, exactly: 2 1/16 in is 52.3875 mm, one step is 0.0003125 mm.
        var run = Root().GetProperty("runs")[0];
        Assert.Equal(52.3875m, run.GetProperty("proof").GetProperty("bound").GetDecimal());
        Assert.Equal("3.175", run.GetProperty("joint").GetRawText());
        Assert.Equal("0.0003125", run.GetProperty("faces")[0].GetProperty("holes")[0].GetProperty("x").GetRawText());
        Assert.Equal([-101.6m, 0m, 103.1875m], run.GetProperty("rods")[0].GetProperty("marks").EnumerateArray().Select(m => m.GetDecimal()));
    }

    [Fact]
    public void Every_piece_names_the_tile_it_is_cut_from_and_whether_it_is_turned()
    {
        var pieces = Root().GetProperty("runs")[0].GetProperty("faces")[0].GetProperty("pieces").EnumerateArray();
        Assert.Equal(
            ["A1 full 1 False", "A2 straight 2 True", "A3 hole null False"],
            pieces.Select(p => $"{p.GetProperty("id")} {p.GetProperty("kind")} {p.GetProperty("tile").GetRawText()} {p.GetProperty("turned").GetBoolean()}"));
    }

    [Fact]
    public void Sections_that_have_nothing_yet_are_there_and_empty()
    {
        var root = Root();
        Assert.Equal(["[]", "{}", "{}", "[]"], new[] { "trim", "prep", "price", "sequence" }.Select(s => root.GetProperty(s).GetRawText()));
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes_whatever_the_thread_speaks()
    {
        var bytes = PlanWriter.Write(SmallPlan.Make());
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(bytes, PlanWriter.Write(SmallPlan.Make()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Equal((byte)'{', bytes[0]);
        Assert.DoesNotContain((byte)'\r', bytes);
        Assert.Equal("}\n", Encoding.UTF8.GetString(bytes[^2..]));
    }

    [Fact]
    public void An_empty_plan_is_valid_too()
    {
        var plan = SmallPlan.Make() with { Runs = [], Cutting = [], Order = [], Findings = [] };
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, Encoding.UTF8.GetString(PlanWriter.Write(plan))));
    }

    [Fact]
    public void A_face_outline_comes_back_as_it_was()
    {
        var plan = SmallPlan.Make();
        var ring = Root().GetProperty("runs")[0].GetProperty("faces")[0].GetProperty("outline").EnumerateArray()
            .Select(p => new Gaugerod.Plane.Shapes.Point(FromMillimetres(p[0]), FromMillimetres(p[1]))).ToSequence();
        Assert.Equal(plan.Runs[0].Faces[0].Face.Outline.Points, ring);
    }

    private static Length FromMillimetres(JsonElement number) => Length.FromSteps((long)(number.GetDecimal() * Length.StepsPerMillimetre));

    private static JsonElement Root()
    {
        using var document = JsonDocument.Parse(PlanWriter.Write(SmallPlan.Make()));
        return document.RootElement.Clone();
    }
}
