using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>What is read by the rule but may have been meant otherwise is said, and does not stop the job.</summary>
public class DoubtTests
{
    /// <summary>Half an inch is 12.7 mm; whoever types 3 1/2 in a job in mm may mean 3.5 mm and gets 88.9.</summary>
    [Fact]
    public void A_fraction_in_a_job_in_millimetres_is_a_finding_that_names_both_readings()
    {
        var text = Samples.With("plain-wall", "\"thickness\": 8", "\"thickness\": \"3 1/2\"");
        var read = Assert.IsType<JobReading.Understood>(Samples.Read(text));
        var finding = Assert.Single(read.Job.Remarks);
        Assert.Equal((FindingLevel.Warn, "fraction", "line 8"), (finding.Level, finding.Rule, finding.Where));
        Assert.Equal("thickness: \"3 1/2\", read as inches: 88.9 mm. A fraction without a unit is inches, in a job in mm too. Write 3 1/2 in or 3.5 mm.", finding.Text);
        Assert.Contains(finding, Planner.Plan(read.Job).Findings);
    }

    [Fact]
    public void It_is_said_beside_the_faults_it_may_have_made()
    {
        var faults = Samples.Messages(Samples.With("plain-wall", "\"width\": { \"foot\": 2400 }", "\"width\": { \"foot\": \"2400 1/2\", \"tpo\": 2400 }"));
        Assert.Equal("job.json:14: faces[0].readings.width.foot: found \"2400 1/2\", read as inches: 60972.7 mm, expected a unit behind it in a job in mm. Nearest: 2400 1/2 in or 2400.5 mm.", faults[^1]);
        Assert.Equal(2, faults.Length);
    }

    /// <summary>A later version's field, or somebody's own, is no reason to refuse a job; but whoever relied on it must hear.</summary>
    [Fact]
    public void A_strange_field_is_passed_over_and_said()
    {
        var read = Assert.IsType<JobReading.Understood>(Samples.Read(Samples.With("plain-wall", "\"joint\": 3,", "\"joint\": 3, \"paint\": \"white\",")));
        var finding = Assert.Single(read.Job.Remarks);
        Assert.Equal((FindingLevel.Note, "field", "line 25"), (finding.Level, finding.Rule, finding.Where));
        Assert.Equal("runs[0].paint: this field is not known here. It is kept in the file and not used.", finding.Text);
    }

    [Theory]
    [InlineData("\"kerf\": 2,", "one of another group")]
    [InlineData("\"jiont\": 2,", "one misspelt")]
    public void A_field_that_was_meant_to_count_is_refused(string field, string why)
    {
        var text = Samples.With("plain-wall", "\"joint\": 3,", "\"joint\": 3, " + field);
        Assert.True(Samples.Read(text) is JobReading.Refused, why);
    }

    [Fact]
    public void A_fraction_in_a_job_in_inches_is_no_doubt() => Assert.Empty(Samples.Job("guest-shower").Remarks);
}
