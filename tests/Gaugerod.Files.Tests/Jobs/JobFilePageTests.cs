using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Tests.Schemas;
using Gaugerod.Testing;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>What docs/job-file.md shows can be read, and it names every field there is.</summary>
public partial class JobFilePageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Repo.Root, "docs", "job-file.md"));

    [Fact]
    public void The_faces_on_the_page_can_be_read()
    {
        var faces = CodeBlock().Matches(Page).Select(m => JsonNode.Parse(m.Groups[1].Value)!).ToList();
        Assert.Equal(6, faces.Count);
        Assert.All(faces, face => Accepted(face, []));
    }

    [Fact]
    public void The_wants_on_the_page_can_be_read()
    {
        var north = JsonNode.Parse(Samples.Text("guest-shower"))!;
        var wants = WantCell().Matches(Page).Select(m => JsonNode.Parse(m.Groups[1].Value)).ToArray();
        Assert.Equal(WantReader.Wants.Order(), wants.Select(w => (string?)w!["want"]!).Distinct().Order());
        north["runs"]![0]!["wants"] = new JsonArray(wants);
        Assert.IsType<JobReading.Understood>(Samples.Read(north.ToJsonString()));
    }

    [Fact]
    public void Every_field_is_named_on_the_page() =>
        Assert.All(Forms.All.SelectMany(f => f.Names).Distinct(), name => Assert.Matches($"[`\"]{name}[`\"]", Page));

    [Fact]
    public void The_message_on_the_page_is_the_one_that_is_said() =>
        Assert.Contains(Samples.Messages(Samples.With("plain-wall", "\"foot\": 2400", "\"foot\": \"3' 14\\\"\""))[0], Page, StringComparison.Ordinal);

    private static void Accepted(JsonNode face, JsonArray wants)
    {
        var job = JsonNode.Parse(Samples.Text("guest-shower"))!;
        job["faces"] = new JsonArray(face.DeepClone());
        var run = job["runs"]![0]!;
        (run["faces"], run["wants"], run["through"]) = (new JsonArray((string)face["name"]!), wants, null);
        Assert.IsType<JobReading.Understood>(Samples.Read(job.ToJsonString()));
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, job.ToJsonString()));
    }

    [GeneratedRegex("```json\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();

    [GeneratedRegex(@"^\| `(\{ ""want"".*?\})` \|", RegexOptions.Multiline)]
    private static partial Regex WantCell();
}
