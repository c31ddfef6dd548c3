namespace Gaugerod.Files.Tests.Refusals;

/// <summary>What a refusal calls nearest is put in its place, and then the job is refused no more. Advice that is no value counts for none.</summary>
public sealed class NearestTests
{
    public static IEnumerable<object[]> Good => BadJobs.Bonds().Concat(BadJobs.Zones()).Concat(BadJobs.HolesAndArcs()).Concat(BadJobs.WordsAndFields()).Select(slip => slip.Job).Distinct().Select(job => new object[] { job });

    [Theory]
    [MemberData(nameof(Good))]
    public void The_jobs_that_are_spoilt_here_are_good_before(string job) => Assert.Empty(Slips.Faults(job.Replace('\'', '"')).Faults);

    [Fact]
    public void What_is_nearest_to_a_bond_that_cannot_be_is_a_bond_that_can() => EachIsMended(BadJobs.Bonds());

    [Fact]
    public void What_is_nearest_to_a_zone_that_cannot_be_is_a_zone_that_can() => EachIsMended(BadJobs.Zones());

    [Fact]
    public void What_is_nearest_to_a_hole_an_arc_or_a_range_that_cannot_be_is_one_that_can() => EachIsMended(BadJobs.HolesAndArcs());

    [Fact]
    public void What_is_nearest_to_a_word_or_a_field_that_cannot_be_is_one_that_can() => EachIsMended(BadJobs.WordsAndFields());

    /// <summary>
    /// What the engine offers makes the job good at once. The reader knows one number and no tiles: what it offers may be refused for
    /// them, and then the next offer is taken, three times at the most.
    /// </summary>
    private static void EachIsMended(IEnumerable<Slip> slips)
    {
        var (wrong, table) = (new List<string>(), slips.ToList());
        foreach (var slip in table)
        {
            var spoilt = Slips.Made(slip);
            var (faults, read) = Slips.Faults(spoilt);
            if (faults.Count == 0) wrong.Add($"not refused: {slip}");
            foreach (var fault in faults.Where(fault => !HasNone(fault)))
            {
                if (Left(spoilt, fault, read ? 1 : 3) is { } left) wrong.Add($"{slip.Path} = {slip.Value}: {fault}\n    {string.Join("\n    ", left)}");
            }

            if (Environment.GetEnvironmentVariable("GAUGEROD_SAID") is not null) wrong.AddRange(faults.Select(fault => $"said: {fault}"));
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count} of {table.Count}:\n" + string.Join("\n", wrong));
    }

    /// <summary>Of lengths above nothing none is the least.</summary>
    private static bool HasNone(FileFault fault) => fault.Expected.Contains("of more than 0", StringComparison.Ordinal) && fault.Found is "0";

    private static IEnumerable<string>? Left(string job, FileFault fault, int tries)
    {
        if (fault.Mends.Count == 0) return ["nothing to put"];
        var mended = Slips.With(job, fault.Mends);
        var (left, read) = Slips.Faults(mended);
        if (left.Count == 0) return null;
        // A zone that was mended may leave a part more of the face, which is said next.
        if (left[0].Path == "faces[0].zones") return Left(mended, left[0], 1);
        return tries > 1 ? Left(mended, left[0], read ? 1 : tries - 1) : left.Select(other => $"with {string.Join(", ", fault.Mends)}: {other}");
    }
}
