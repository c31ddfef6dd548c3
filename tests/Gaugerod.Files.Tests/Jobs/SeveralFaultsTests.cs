using Gaugerod.Files.Json;

namespace Gaugerod.Files.Tests.Jobs;

public class SeveralFaultsTests
{
    [Fact]
    public void Several_faults_are_said_together_in_the_files_order()
    {
        var text = Samples.Text("guest-shower")
            .Replace("\"perBox\": 24", "\"per box\": 24", StringComparison.Ordinal)
            .Replace("\"foot\": \"36 1/8\"", "\"foot\": \"3' 14\\\"\"", StringComparison.Ordinal)
            .Replace("\"least\": \"1/16\"", "\"least\": \"-1/16\"", StringComparison.Ordinal)
            .Replace("\"niche.bottom\"", "\"nich.bottom\"", StringComparison.Ordinal);
        Assert.Equal(["products[0].per box", "faces[0].readings.width.foot", "runs[0].joint.least"], Samples.Faults(text).Select(f => f.Path));
    }

    [Fact]
    public void A_face_that_could_not_be_read_is_not_blamed_on_what_refers_to_it()
    {
        var text = Samples.With("plain-wall", "\"foot\": 2400", "\"foot\": \"wide\"");
        Assert.Equal(["faces[0].readings.width.foot"], Samples.Faults(text).Select(f => f.Path));
    }

    [Fact]
    public void Sizes_are_not_judged_while_the_unit_is_unknown()
    {
        var text = Samples.Text("guest-shower").Replace("\"units\": \"in\"", "\"units\": \"inches\"", StringComparison.Ordinal).Replace("\"height\": \"3 15/16\"", "\"height\": 4", StringComparison.Ordinal);
        Assert.Equal(["units"], Samples.Faults(text).Select(f => f.Path));
    }

    [Fact]
    public void No_more_faults_are_said_than_a_person_will_read()
    {
        var text = "{" + string.Join(",", Enumerable.Range(0, 500).Select(i => $"\"x{i}\": 1")) + "}";
        Assert.Equal(FaultLog.Most, Samples.Faults(text).Count);
    }
}
