using Gaugerod.Files.Json;

namespace Gaugerod.Files.Tests.Jobs;

public class SeveralFaultsTests
{
    [Fact]
    public void Several_faults_are_said_together_in_the_files_order()
    {
        var text = Samples.Text("guest-shower")
            .Replace("\"perBox\": 18", "\"per box\": 18", StringComparison.Ordinal)
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

    [Theory]
    [InlineData("plain-wall", "\"products\": [", "\"products\": [], \"note\": [", "products")]
    [InlineData("plain-wall", "\"faces\": [\"wall\"]", "\"faces\": []", "runs[0].faces")]
    [InlineData("plain-wall", "\"faces\": [\"wall\"]", "\"faces\": \"wall\"", "runs[0].faces")]
    public void A_list_that_could_not_be_read_is_not_blamed_on_what_refers_to_it(string sample, string old, string changed, string path) =>
        Assert.Equal([path], Samples.Faults(Samples.With(sample, old, changed)).Select(f => f.Path).Where(p => p is not "note"));

    [Fact]
    public void Edges_that_are_missing_are_not_blamed_on_the_wants()
    {
        var text = Samples.With("cloakroom", "\"edges\": [\n", "\"edges\": null, \"x\": [\n");
        Assert.Equal(["faces[0].edges", "faces[0].x"], Samples.Faults(text).Select(f => f.Path).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_face_that_cannot_be_is_said_beside_a_fault_elsewhere()
    {
        var text = Samples.Text("guest-shower").Replace("\"product\": \"wall tile\"", "\"product\": \"wall tyle\"", StringComparison.Ordinal).Replace("\"left\": \"18 1/8\"", "\"left\": \"-3\"", StringComparison.Ordinal);
        Assert.Equal(["faces[1].openings[0]", "runs[0].product"], Samples.Faults(text).Select(f => f.Path));
    }

    [Fact]
    public void A_face_with_a_fault_of_its_own_is_not_faulted_twice()
    {
        var text = Samples.With("cloakroom", "\"name\": \"tap\"", "\"name\": \"hatch\"");
        Assert.Equal(["faces[0].holes[1].name"], Samples.Faults(text).Select(f => f.Path));
    }

    [Fact]
    public void Sizes_are_not_judged_while_the_unit_is_unknown()
    {
        var text = Samples.Text("guest-shower").Replace("\"units\": \"in\"", "\"units\": \"inches\"", StringComparison.Ordinal).Replace("\"height\": \"5 15/16\"", "\"height\": 4", StringComparison.Ordinal);
        Assert.Equal(["units"], Samples.Faults(text).Select(f => f.Path));
    }

    [Fact]
    public void No_more_faults_are_said_than_a_person_will_read()
    {
        var text = "{\"name\": \"long\", " + string.Join(",", Enumerable.Range(0, 500).Select(i => $"\"faces{i}\": 1")) + "}";
        var faults = Samples.Faults(text);
        Assert.Equal(FaultLog.Most + 1, faults.Count);
        Assert.Contains("more faults than these 100", faults[^1].Found, StringComparison.Ordinal);
    }
}
