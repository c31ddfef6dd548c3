using Gaugerod.Engine;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>A fault that the engine finds later still gets the line a person must go to.</summary>
public class LocateTests
{
    [Theory]
    [InlineData("faces[0].readings.width.foot", 14, 28)]
    [InlineData("runs[0].wants[1].and.edge", 28, 77)]
    [InlineData("faces[0].readings.width.top", 14, 18)]
    [InlineData("faces[3]", 10, 12)]
    [InlineData("", 1, 1)]
    public void A_path_leads_to_its_line_or_to_the_group_that_could_hold_it(string path, int line, int column)
    {
        var reading = Assert.IsType<JobReading.Understood>(Samples.Read(Samples.Text("plain-wall")));
        var fault = reading.Locate(new Fault(path, "this", "that", "the other"));
        Assert.Equal(new FileFault("job.json", line, column, path, "this", "that", "the other"), fault);
    }

    [Fact]
    public void A_column_counts_characters_and_not_bytes()
    {
        var fault = Assert.Single(Samples.Faults(Samples.With("cloakroom", "\"name\": \"waste\", \"x\": 620", "\"name\": \"½ waste\", \"x\": true")));
        Assert.Equal((35, 35), (fault.Line, fault.Column));
    }
}
