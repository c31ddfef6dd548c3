using System.Globalization;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;

namespace Gaugerod.Files.Tests.Plans;

/// <summary>The samples with patterns: read, planned and written the same wherever it is done.</summary>
public class PatternPlanTests
{
    [Theory]
    [InlineData("galley-splash")]
    [InlineData("porch-floor")]
    public void A_pattern_is_planned_the_same_in_every_culture_and_step_by_step(string name)
    {
        var once = InCulture("en-US", () => PlanWriter.Write(Planner.Plan(Samples.Job(name))));
        var again = InCulture("de-DE", () => PlanWriter.Write(Planner.Plan(Samples.Job(name))));
        var turkish = InCulture("tr-TR", () => PlanWriter.Write(Planner.Steps(Samples.Job(name)).Last().Plan!));
        Assert.Equal(once, again);
        Assert.Equal(once, turkish);
    }

    [Theory]
    [InlineData("galley-splash")]
    [InlineData("porch-floor")]
    public void A_sample_with_a_pattern_is_valid_and_says_that_it_is_invented(string name)
    {
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, Samples.Text(name)));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, System.Text.Encoding.UTF8.GetString(PlanWriter.Write(Planner.Plan(Samples.Job(name))))));
        Assert.Contains("invented", Samples.Job(name).Note, StringComparison.Ordinal);
    }

    private static byte[] InCulture(string culture, Func<byte[]> work)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            return work();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
