using System.Text.Json;
using Gaugerod.Files.Jobs;
using Json.Schema;

namespace Gaugerod.Files.Tests.Schemas;

/// <summary>The schemas against draft 2020-12, by an independent validator.</summary>
public class SchemaTests
{
    // A schema's id may be taken once in a process.
    internal static readonly JsonSchema JobSchema = JsonSchema.FromText(Samples.Schema("gaugerod-job-1"));
    internal static readonly JsonSchema PlanSchema = JsonSchema.FromText(Samples.Schema("gaugerod-plan-1"));

    [Theory]
    [InlineData("guest-shower")]
    [InlineData("cloakroom")]
    [InlineData("plain-wall")]
    public void A_sample_is_valid(string name) => Assert.Empty(Faults(JobSchema, Samples.Text(name)));

    [Theory]
    [InlineData("\"foot\": 2400", "\"fot\": 2400")]
    [InlineData("\"foot\": 2400", "\"foot\": true")]
    [InlineData("\"perBox\": 10", "\"perBox\": 0")]
    [InlineData("\"kind\": \"grid\"", "\"kind\": \"gird\"")]
    [InlineData("\"units\": \"mm\"", "\"units\": \"cm\"")]
    [InlineData("gaugerod-job/1", "gaugerod-job/2")]
    public void What_the_reader_refuses_by_its_form_the_schema_refuses_too(string old, string changed)
    {
        var text = Samples.With("plain-wall", old, changed);
        Assert.NotEmpty(Faults(JobSchema, text));
        Assert.NotEmpty(Samples.Faults(text));
    }

    [Fact]
    public void The_schema_and_the_reader_know_the_same_fields_and_need_the_same_ones()
    {
        using var schema = JsonDocument.Parse(Samples.Schema("gaugerod-job-1"));
        var definitions = schema.RootElement.GetProperty("$defs").EnumerateObject()
            .Where(d => d.Value.TryGetProperty("properties", out _))
            .ToDictionary(d => d.Name, d => (Known: Names(d.Value), Needed: Required(d.Value)));
        var forms = Forms.All.ToDictionary(f => f.Name, f => (Known: Sorted(f.Names), Needed: Sorted(f.Fields.Where(x => x.Required).Select(x => x.Name))));
        Assert.Equal(Sorted(forms.Keys), Sorted(definitions.Keys));
        foreach (var (name, form) in forms)
        {
            Assert.Equal((name, form.Known), (name, definitions[name].Known));
            Assert.Equal((name, form.Needed), (name, definitions[name].Needed));
        }
    }

    [Fact]
    public void The_schema_and_the_reader_know_the_same_words()
    {
        using var schema = JsonDocument.Parse(Samples.Schema("gaugerod-job-1"));
        Same("job", "units", Words.Units.All);
        Same("job", "paper", Words.Papers.All);
        Same("job", "region", Words.Regions.All);
        Same("product", "turn", Words.Turns.All);
        Same("product", "grain", Words.Grains.All);
        Same("product", "class", Words.Classes.All);
        Same("surveyCorner", "is", Words.SurveyCorners.All);
        Same("surveyReading", "held", Words.Held.All);
        Same("surveyReading", "by", Words.Instruments.All);
        Same("edge", "kind", Words.EdgeKinds.All);
        Same("edge", "lap", Words.Laps.All);
        Same("edge", "finish", Words.Finishes.All);
        Same("faceEdge", "kind", Words.EdgeKinds.All);
        Same("fixture", "at", Words.FixtureEnds.All);
        Same("fixture", "heightsFrom", Words.HeightBases.All);
        Same("rectangleOpening", "heightsFrom", Words.HeightBases.All);
        Same("outlineOpening", "heightsFrom", Words.HeightBases.All);
        Same("hole", "heightsFrom", Words.HeightBases.All);
        Same("jointWant", "heightsFrom", Words.HeightBases.All);
        Same("grid", "lay", Words.Lays.All);
        Same("running", "lay", Words.Lays.All);
        Same("running", "step", Words.Steps.All);
        Same("run", "corners", Words.CornerWays.All);
        Same("centredWant", "on", Words.Centres.All);
        Same("holeWant", "on", Words.Centres.All);
        var order = schema.RootElement.GetProperty("$defs").GetProperty("run").GetProperty("properties").GetProperty("order").GetProperty("items").GetProperty("enum");
        Assert.Equal(Words.Criteria.All, order.EnumerateArray().Select(w => w.GetString()));

        void Same(string group, string field, IEnumerable<string> words)
        {
            var known = schema.RootElement.GetProperty("$defs").GetProperty(group).GetProperty("properties").GetProperty(field).GetProperty("enum");
            Assert.Equal((field, Sorted(words)), (field, Sorted(known.EnumerateArray().Where(w => w.ValueKind == JsonValueKind.String).Select(w => w.GetString()!))));
        }
    }

    [Theory]
    [InlineData("gaugerod-job-1")]
    [InlineData("gaugerod-plan-1")]
    public void Every_field_is_described(string name)
    {
        using var schema = JsonDocument.Parse(Samples.Schema(name));
        var bare = new List<string>();
        Walk(schema.RootElement, "");
        Assert.Empty(bare);

        void Walk(JsonElement element, string path)
        {
            if (element.ValueKind == JsonValueKind.Array) foreach (var item in element.EnumerateArray()) Walk(item, path);
            if (element.ValueKind != JsonValueKind.Object) return;
            foreach (var part in element.EnumerateObject())
            {
                if (part.NameEquals("properties"))
                {
                    foreach (var field in part.Value.EnumerateObject())
                    {
                        if (!field.Value.TryGetProperty("description", out _) && !field.Value.TryGetProperty("$ref", out _) && !field.Value.TryGetProperty("const", out _) && !field.Value.TryGetProperty("not", out _)) bare.Add(path + "." + field.Name);
                    }
                }

                Walk(part.Value, path + "." + part.Name);
            }
        }
    }

    internal static List<string> Faults(JsonSchema schema, string text)
    {
        using var document = JsonDocument.Parse(text);
        var result = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        if (result.IsValid) return [];
        return [.. (result.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}")];
    }

    private static string Names(JsonElement definition) => Sorted(definition.GetProperty("properties").EnumerateObject().Select(p => p.Name));

    private static string Required(JsonElement definition) =>
        definition.TryGetProperty("required", out var required) ? Sorted(required.EnumerateArray().Select(r => r.GetString()!)) : "";

    private static string Sorted(IEnumerable<string> words) => string.Join(' ', words.Order(StringComparer.Ordinal));
}
