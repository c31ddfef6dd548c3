using System.Text.Json.Nodes;
using Gaugerod.Engine;
using Gaugerod.Testing;

namespace Gaugerod.Cli.Tests;

public sealed class PlanCommandTests
{
    [Fact]
    public async Task A_plan_goes_into_the_folder_and_nothing_to_standard_output()
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Done, await bench.Run("plan", bench.Put("job.json", "{}"), "--out", bench.At("out")));
        Assert.Equal(["face-back.svg", "plan.json", "sheets.pdf"], Names(bench.At("out")));
        Assert.Equal("", bench.Out);
        Assert.Contains("Whole tiles at the bench.", bench.Words, StringComparison.Ordinal);
        Assert.Contains("Tile: 3 boxes of 4. 9 in the cut plan", bench.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_plain_wall_goes_from_its_file_to_sheets_on_the_disk()
    {
        using var bench = new Bench { Works = Works.Real };
        Assert.Equal(Exit.Done, await bench.Run("plan", Path.Combine(Repo.Root, "samples/plain-wall.json"), "--out", bench.At("out"), "--json"));
        Assert.Equal(["face-wall.svg", "plan.json", "run-wall.svg", "sheets.pdf"], Names(bench.At("out")));
        Assert.StartsWith("{", bench.Out, StringComparison.Ordinal);
        Assert.Equal(await File.ReadAllTextAsync(bench.At("out/plan.json")), bench.Out);
        Assert.StartsWith("%PDF-", await File.ReadAllTextAsync(bench.At("out/sheets.pdf")), StringComparison.Ordinal);
    }

    /// <summary>A wall of 1800 by 2400 mm, invented; tile 600 by 300, joint 3: the first of three columns ends at 3 + 594, a joint on, at 600.</summary>
    [Fact]
    public async Task Where_a_niche_that_was_moved_is_to_be_framed_is_said_before_what_to_buy()
    {
        using var bench = new Bench { Works = Works.Real };
        var job = bench.Put("job.json", """
            { "format": "gaugerod-job/1", "name": "Niche wall", "units": "mm", "edgeJoint": 3, "products": [{ "name": "tile", "width": 600, "height": 300 }],
              "faces": [{ "name": "wall", "readings": { "width": { "foot": 1800 }, "height": { "left": 2400 } },
                "openings": [{ "name": "niche", "left": 620, "bottom": 1250, "width": 300, "height": 600, "range": { "left": [550, 680] } }] }],
              "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """);
        Assert.Equal(Exit.Done, await bench.Run("plan", job, "--out", bench.At("out")));
        var said = bench.Words.IndexOf("wall: Frame niche: left ", StringComparison.Ordinal);
        Assert.InRange(said, 0, bench.Words.IndexOf("tile: ", StringComparison.Ordinal));
        Assert.Contains("bottom 1250 mm, 300 mm wide, 600 mm high", bench.Words[said..], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_run_is_drawn_unrolled_beside_its_faces()
    {
        using var bench = new Bench { Works = Works.Real };
        Assert.Equal(Exit.Done, await bench.Run("plan", Path.Combine(Repo.Root, "samples/guest-shower.json"), "--out", bench.At("out")));
        Assert.Equal(["face-east.svg", "face-north.svg", "face-west.svg", "plan.json", "run-shower-walls.svg", "sheets.pdf"], Names(bench.At("out")));
        Assert.Equal(
            await File.ReadAllTextAsync(Path.Combine(Repo.Root, "docs/picture.svg")), await File.ReadAllTextAsync(bench.At("out/run-shower-walls.svg")));
        Assert.DoesNotContain("is not of this plan", bench.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_prints_the_plan_alone()
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Done, await bench.Run("plan", bench.Put("job.json", "{}"), "--json"));
        Assert.Equal("{\"format\":\"gaugerod-plan/1\"}", bench.Out);
        Assert.Equal(["job.json"], Names(bench.Folder));
    }

    [Fact]
    public async Task Json_and_out_together_do_both()
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Done, await bench.Run("plan", bench.Put("job.json", "{}"), "--json", "--out", bench.At("out")));
        Assert.Equal(await File.ReadAllTextAsync(bench.At("out/plan.json")), bench.Out);
    }

    [Fact]
    public async Task A_hyphen_reads_standard_input()
    {
        byte[]? read = null;
        var works = Bench.Stub();
        using var bench = new Bench
        {
            Typed = new MemoryStream("from the pipe"u8.ToArray()),
            Works = works with { Read = (bytes, name, large) => { read = bytes.ToArray(); return works.Read(bytes, name, large); } },
        };
        Assert.Equal(Exit.Done, await bench.Run("plan", "-", "--json"));
        Assert.Equal("from the pipe"u8.ToArray(), read);
    }

    [Fact]
    public async Task A_broken_must_is_answered_with_1_and_the_plan_is_still_written()
    {
        using var bench = new Bench { Works = Bench.Stub(mustsMissed: 1) };
        Assert.Equal(Exit.Decide, await bench.Run("plan", bench.Put("job.json", "{}"), "--out", bench.At("out")));
        Assert.True(File.Exists(bench.At("out/plan.json")));
    }

    [Theory]
    [InlineData(FindingLevel.Stop, Exit.Decide)]
    [InlineData(FindingLevel.Warn, Exit.Done)]
    [InlineData(FindingLevel.Note, Exit.Done)]
    public async Task A_stop_asks_for_a_decision_and_a_warning_does_not(FindingLevel level, int exit)
    {
        using var bench = new Bench { Works = Bench.Stub(finding: level) };
        Assert.Equal(exit, await bench.Run("plan", bench.Put("job.json", "{}"), "--json"));
    }

    [Fact]
    public async Task All_faults_are_listed_a_line_each_and_nothing_is_written()
    {
        using var bench = new Bench { Works = Bench.Stub(0, null, "job.json:3: first", "job.json:9: second") };
        Assert.Equal(Exit.Unusable, await bench.Run("plan", bench.Put("job.json", "{}"), "--json", "--out", bench.At("out")));
        Assert.Equal("error: job.json:3: first\nerror: job.json:9: second\n", bench.Words.ReplaceLineEndings("\n"));
        Assert.False(Directory.Exists(bench.At("out")));
        Assert.Equal("", bench.Out);
    }

    [Fact]
    public async Task A_missing_file_is_named_with_the_nearest_that_is_there()
    {
        using var bench = new Bench();
        bench.Put("kitchen.json", "{}");
        Assert.Equal(Exit.Unusable, await bench.Run("plan", bench.At("kitchn.json"), "--out", bench.At("out")));
        Assert.Contains("kitchn.json: there is no such file", bench.Words, StringComparison.Ordinal);
        Assert.Contains("Nearest: kitchen.json.", bench.Words, StringComparison.Ordinal);
        Assert.False(Directory.Exists(bench.At("out")));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public async Task No_name_after_out_is_answered_before_anything_is_planned(string folder)
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Unusable, await bench.Run("plan", bench.Put("job.json", "{}"), "--out", folder));
        Assert.Contains("found no name after --out, expected a folder", bench.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wish_that_cannot_be_is_said_in_the_jobs_unit()
    {
        var sample = await File.ReadAllTextAsync(Path.Combine(Repo.Root, "samples/guest-shower.json"));
        var high = sample.Replace("\"want\": \"full course\", \"face\": \"north\", \"edge\": \"bench\"", "\"want\": \"joint\", \"face\": \"north\", \"height\": \"120\"", StringComparison.Ordinal);
        var wide = sample.Replace("\"want\": \"full course\", \"face\": \"north\"", "\"want\": \"at least\", \"size\": \"12\", \"face\": \"north\"", StringComparison.Ordinal);
        Assert.Contains("wants[0].height: found 120 in, expected a height where north has tile, from 3 in to", Fault(high), StringComparison.Ordinal);
        Assert.Contains("wants[0].size: found 12 in, expected no more than the longer side of 'wall tile', 11 15/16 in. Nearest: 11 15/16 in.", Fault(wide), StringComparison.Ordinal);

        static string Fault(string job) => Assert.Single(Works.Real.Read(System.Text.Encoding.UTF8.GetBytes(job), "job.json", false).Faults);
    }

    [Fact]
    public async Task A_face_that_gets_no_tile_is_said()
    {
        var sample = await File.ReadAllTextAsync(Path.Combine(Repo.Root, "samples/plain-wall.json"));
        var (narrow, unused) = (JsonNode.Parse(sample)!, JsonNode.Parse(sample)!);
        narrow["faces"]![0]!["readings"]!["width"]!["foot"] = 8;
        unused["faces"]!.AsArray().Add(JsonNode.Parse("""{ "name": "other", "readings": { "width": { "foot": 900 }, "height": { "left": 900 } } }"""));
        Assert.StartsWith("wall: No tile falls on this face", Bare(narrow), StringComparison.Ordinal);
        Assert.StartsWith("other: This face is in no run", Bare(unused), StringComparison.Ordinal);

        static string Bare(JsonNode job)
        {
            var read = Works.Real.Read(System.Text.Encoding.UTF8.GetBytes(job.ToJsonString()), "job.json", false);
            var plan = Works.Real.Plan(read.Job!).Last().Plan!;
            var finding = Assert.Single(plan.Findings, f => string.Equals(f.Rule, "bare-face", StringComparison.Ordinal));
            return $"{finding.Where}: {finding.Text}";
        }
    }

    [Fact]
    public async Task A_folder_is_not_a_job()
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Unusable, await bench.Run("check", bench.Folder));
        Assert.Contains("this is a folder", bench.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Quiet_says_nothing_when_all_is_well()
    {
        using var bench = new Bench { Watched = true };
        Assert.Equal(Exit.Done, await bench.Run("plan", bench.Put("job.json", "{}"), "--out", bench.At("out"), "--quiet"));
        Assert.Equal("", bench.Words + bench.Out);
    }

    [Fact]
    public async Task Progress_is_said_only_to_a_person_who_watches()
    {
        using var watched = new Bench { Watched = true };
        using var piped = new Bench();
        await watched.Run("plan", watched.Put("job.json", "{}"), "--json");
        await piped.Run("plan", piped.Put("job.json", "{}"), "--json");
        Assert.Contains("Walls: looking", watched.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("looking", piped.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_drawing_left_from_an_earlier_plan_is_named_and_kept()
    {
        using var bench = new Bench();
        Directory.CreateDirectory(bench.At("out"));
        bench.Put("out/face-gone.svg", "old");
        Assert.Equal(Exit.Done, await bench.Run("plan", bench.Put("job.json", "{}"), "--out", bench.At("out")));
        Assert.Contains("face-gone.svg is not of this plan", bench.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("face-back.svg is not of this plan", bench.Words, StringComparison.Ordinal);
        Assert.True(File.Exists(bench.At("out/face-gone.svg")));
    }

    [Fact]
    public async Task Large_reaches_the_reader()
    {
        var lifted = new List<bool>();
        var works = Bench.Stub();
        using var bench = new Bench { Works = works with { Read = (bytes, name, large) => { lifted.Add(large); return works.Read(bytes, name, large); } } };
        await bench.Run("plan", bench.Put("job.json", "{}"), "--json");
        await bench.Run("plan", bench.Put("job.json", "{}"), "--json", "--large");
        Assert.Equal([false, true], lifted);
    }

    [Fact]
    public async Task A_job_of_too_many_pieces_is_refused_unless_it_is_said_to_be_large()
    {
        using var bench = new Bench();
        // The plain wall in tiles of 6 by 6 mm: by area 2400 x 1200 / 9 / 9, about 35,600 pieces.
        var sample = await File.ReadAllTextAsync(Path.Combine(Repo.Root, "samples/plain-wall.json"));
        var vast = System.Text.Encoding.UTF8.GetBytes(sample.Replace(": 300", ": 6", StringComparison.Ordinal));
        var fault = Assert.Single(Works.Real.Read(vast, "vast.json", false).Faults);
        Assert.StartsWith("vast.json:23: runs[0].faces: found about ", fault, StringComparison.Ordinal);
        Assert.Contains("--large", fault, StringComparison.Ordinal);
        Assert.Empty(Works.Real.Read(vast, "vast.json", true).Faults);
    }

    [Fact]
    public async Task Standard_output_that_takes_nothing_is_said()
    {
        using var bench = new Bench { ResultTo = new FullDisk(0) };
        Assert.Equal(Exit.Unusable, await bench.Run("plan", bench.Put("job.json", "{}"), "--json"));
        Assert.Contains("standard output: the disk is full", bench.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mistake_of_the_program_is_not_blamed_on_the_input()
    {
        using var bench = new Bench { Works = Bench.Stub() with { Plan = _ => throw new InvalidOperationException("our own") } };
        Assert.Equal(Exit.Broken, await bench.Run("plan", bench.Put("job.json", "{}"), "--out", bench.At("out")));
        Assert.Contains("gaugerod itself went wrong", bench.Words, StringComparison.Ordinal);
        Assert.False(Directory.Exists(bench.At("out")));
    }

    [Fact]
    public async Task Check_prints_the_findings_and_writes_no_file()
    {
        using var bench = new Bench { Works = Bench.Stub(mustsMissed: 1, finding: FindingLevel.Warn) };
        Assert.Equal(Exit.Decide, await bench.Run("check", bench.Put("job.json", "{}")));
        Assert.Equal(
            "warn: Walls: The joint is narrow. (limit 3 mm; here 2 mm; source: common practice, no source)\n",
            bench.Out);
        Assert.Equal(["job.json"], Names(bench.Folder));
    }

    [Fact]
    public async Task Check_says_so_when_nothing_was_found()
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Done, await bench.Run("check", bench.Put("job.json", "{}")));
        Assert.Equal("Nothing found.\n", bench.Out);
    }

    private static IEnumerable<string?> Names(string folder) =>
        Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal);
}
