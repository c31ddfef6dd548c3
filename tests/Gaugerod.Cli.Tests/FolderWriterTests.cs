using Gaugerod.Cli.Writing;
using Gaugerod.Plane;

namespace Gaugerod.Cli.Tests;

public sealed class FolderWriterTests
{
    private static readonly Sequence<OutputFile> s_files =
        [new("plan.json", "new plan"u8.ToArray()), new("sheets.pdf", "new sheets"u8.ToArray())];

    [Fact]
    public void Files_replace_those_of_the_same_name_and_leave_the_others()
    {
        using var bench = new Bench();
        bench.Put("plan.json", "old plan");
        bench.Put("notes.txt", "mine");
        Assert.IsType<WriteOutcome.Written>(new FolderWriter().Write(bench.Folder, s_files, default));
        Assert.Equal("new plan", File.ReadAllText(bench.At("plan.json")));
        Assert.Equal(["notes.txt", "plan.json", "sheets.pdf"], Names(bench.Folder));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    public void A_full_disk_keeps_what_was_there_and_leaves_nothing_beside_it(int room)
    {
        using var bench = new Bench();
        bench.Put("plan.json", "old plan");
        var left = room;
        var writer = new FolderWriter(path =>
        {
            var disk = new FullDisk(left, File.Create(path));
            left = 0;
            return disk;
        });
        var refused = Assert.IsType<WriteOutcome.Refused>(writer.Write(bench.Folder, s_files, default));
        Assert.Contains("the disk is full", refused.Text, StringComparison.Ordinal);
        Assert.Contains("Nothing was written; what was there before is kept.", refused.Text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refused.Text);
        Assert.Equal("old plan", File.ReadAllText(bench.At("plan.json")));
        Assert.Equal(["plan.json"], Names(bench.Folder));
    }

    [Fact]
    public void Folders_made_for_a_write_that_failed_are_taken_away_again()
    {
        using var bench = new Bench();
        var writer = new FolderWriter(_ => throw new UnauthorizedAccessException());
        Assert.IsType<WriteOutcome.Refused>(writer.Write(bench.At("new/deep"), s_files, default));
        Assert.False(Directory.Exists(bench.At("new")));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_refused_in_one_line()
    {
        using var bench = new Bench();
        var file = bench.Put("file", "in the way");
        var refused = Assert.IsType<WriteOutcome.Refused>(new FolderWriter().Write(Path.Combine(file, "out"), s_files, default));
        Assert.Contains("Nothing was written", refused.Text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refused.Text);
    }

    [Theory]
    [InlineData("file")]
    [InlineData("file/out")]
    public void A_file_where_the_folder_should_be_is_called_one(string folder)
    {
        using var bench = new Bench();
        bench.Put("file", "in the way");
        var refused = Assert.IsType<WriteOutcome.Refused>(new FolderWriter().Write(bench.At(folder), s_files, default));
        Assert.Contains("file is a file, expected a folder", refused.Text, StringComparison.Ordinal);
        Assert.Equal("in the way", File.ReadAllText(bench.At("file")));
    }

    [Fact]
    public void A_folder_in_the_place_of_a_file_stops_the_write_before_anything_is_replaced()
    {
        using var bench = new Bench();
        bench.Put("plan.json", "old plan");
        Directory.CreateDirectory(bench.At("sheets.pdf"));
        var refused = Assert.IsType<WriteOutcome.Refused>(new FolderWriter().Write(bench.Folder, s_files, default));
        Assert.Contains("sheets.pdf is a folder", refused.Text, StringComparison.Ordinal);
        Assert.Equal("old plan", File.ReadAllText(bench.At("plan.json")));
        Assert.Equal(["plan.json", "sheets.pdf"], Names(bench.Folder));
    }

    [Fact]
    public void Stopping_between_two_files_changes_nothing()
    {
        using var bench = new Bench();
        bench.Put("plan.json", "old plan");
        using var stop = new CancellationTokenSource();
        var writer = new FolderWriter(path =>
        {
            stop.Cancel();
            return File.Create(path);
        });
        Assert.Throws<OperationCanceledException>(() => writer.Write(bench.Folder, s_files, stop.Token));
        Assert.Equal("old plan", File.ReadAllText(bench.At("plan.json")));
        Assert.Equal(["plan.json"], Names(bench.Folder));
    }

    [Fact]
    public void A_file_that_vanishes_before_its_rename_is_reported_with_what_was_kept()
    {
        using var bench = new Bench();
        bench.Put("sheets.pdf", "old sheets");
        using var stop = new CancellationTokenSource();
        var writer = new FolderWriter(path => path.Contains("sheets", StringComparison.Ordinal) ? new MemoryStream() : File.Create(path));
        var refused = Assert.IsType<WriteOutcome.Refused>(writer.Write(bench.Folder, s_files, default));
        Assert.Contains("Written: plan.json. Kept as before: sheets.pdf.", refused.Text, StringComparison.Ordinal);
        Assert.Equal("old sheets", File.ReadAllText(bench.At("sheets.pdf")));
        Assert.Equal(["plan.json", "sheets.pdf"], Names(bench.Folder));
    }

    [Theory]
    [InlineData("Left wall", "face-left-wall.svg")]
    [InlineData("../../etc/passwd", "face-etc-passwd.svg")]
    [InlineData("niche: back & sides?", "face-niche-back-sides.svg")]
    [InlineData("Küche", "face-küche.svg")]
    [InlineData("...", "face-unnamed.svg")]
    [InlineData("CON", "face-con.svg")]
    [InlineData("a\u0000\nb", "face-a-b.svg")]
    public void A_face_may_be_called_anything(string face, string file) => Assert.Equal(file, new FileNames().Make("face-", face, ".svg"));

    [Fact]
    public void Two_faces_whose_names_differ_only_in_capitals_get_two_files()
    {
        var names = new FileNames();
        Assert.Equal("face-back.svg", names.Make("face-", "Back", ".svg"));
        Assert.Equal("face-back-2.svg", names.Make("face-", "back", ".svg"));
        Assert.Equal("face-back-2-2.svg", names.Make("face-", "back 2", ".svg"));
    }

    [Fact]
    public void A_very_long_name_is_cut_short() => Assert.True(new FileNames().Make("face-", new string('w', 5000), ".svg").Length < 100);

    private static IEnumerable<string?> Names(string folder) =>
        Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal);
}
