using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Gaugerod.Testing;

namespace Gaugerod.Cli.Tests;

/// <summary>
/// Jobs with one to three values spoilt go the whole way, from the file to the sheets in memory: they are planned, or
/// refused with a place for every fault. Nothing here may throw.
/// </summary>
public sealed partial class SpoiltJobTests
{
    private static readonly string[] Files =
        [.. new[] { "plain-wall", "cloakroom", "guest-shower" }.Select(name => File.ReadAllText(Path.Combine(Repo.Root, $"samples/{name}.json")))];

    private static readonly Gen<Slip> OneSlip =
        Gen.Select(Gen.Int[0, 9_999], Gen.Int[0, JobMangler.Kinds - 1], Gen.Int[0, 9_999]).Select((where, how, with) => new Slip(where, how, with));

    [Fact]
    public void Spoilt_jobs_are_planned_or_refused_with_a_place_for_every_fault()
    {
        var (planned, refused) = (0, 0);
        Gen.Select(Gen.Int[0, Files.Length - 1], OneSlip.Array[1, 3]).Each(
            (file, slips) =>
            {
                if (GoesAllTheWay(JobMangler.Mangled(Files[file], slips))) Interlocked.Increment(ref planned);
                else Interlocked.Increment(ref refused);
            },
            iter: 300);

        // Neither half may dry up unnoticed, or the test proves nothing.
        Assert.True(planned >= 50 && refused >= 50, $"{planned} planned, {refused} refused");
    }

    private static bool GoesAllTheWay(string text)
    {
        var reading = Works.Real.Read(Encoding.UTF8.GetBytes(text), "job.json", false);
        if (reading.Job is not { } job)
        {
            Assert.NotEmpty(reading.Faults);
            Assert.All(reading.Faults, fault => Assert.Matches(Place(), fault));
            return false;
        }

        Assert.Empty(reading.Faults);
        var plan = Works.Real.Plan(job).Last().Plan!;
        Assert.NotEmpty(Works.Real.PlanFile(plan));
        Assert.NotEmpty(Works.Real.Sheets(plan));
        return true;
    }

    [GeneratedRegex(@"^job\.json:[1-9][0-9]*: [^\n]*found [^\n]+, expected [^\n]+\.$")]
    private static partial Regex Place();
}
