using System.Globalization;
using Gaugerod.Plane;

namespace Gaugerod.Cli.Writing;

/// <summary>What came of writing a folder.</summary>
internal abstract record WriteOutcome
{
    private WriteOutcome()
    {
    }

    /// <summary>Every file is in place and on the disk.</summary>
    public sealed record Written : WriteOutcome;

    /// <summary>It could not be done.</summary>
    /// <param name="Text">One line: why, and what was kept.</param>
    public sealed record Refused(string Text) : WriteOutcome;
}

/// <summary>
/// Writes files so that none is ever half there: first all of them beside their places under other names, through to
/// the disk, then each is renamed into its place. Whatever goes wrong before the first rename changes nothing.
/// </summary>
/// <param name="create">Makes a new file to write to; null for the disk's own. A test puts a full disk in its place.</param>
internal sealed class FolderWriter(Func<string, Stream>? create = null)
{
    private readonly Func<string, Stream> _create = create ?? CreateOnDisk;

    /// <summary>Writes the files, over others of the same names.</summary>
    /// <param name="folder">The folder; made when it is missing, and taken away again when nothing could be written.</param>
    /// <param name="files">The files, all rendered.</param>
    /// <param name="token">Heeded until the first rename; from there on the work is finished.</param>
    /// <exception cref="OperationCanceledException">Stopped; nothing was changed.</exception>
    public WriteOutcome Write(string folder, Sequence<OutputFile> files, CancellationToken token)
    {
        var missing = MissingFolders(folder);
        var waiting = new List<(string Beside, string Place)>();
        var placed = 0;
        try
        {
            if (missing.FirstOrDefault(File.Exists) is { } standing) throw new IOException($"{Path.GetFileName(standing)} is a file, expected a folder");
            Directory.CreateDirectory(folder);
            foreach (var file in files)
            {
                token.ThrowIfCancellationRequested();
                var place = Path.Combine(folder, file.Name);
                if (Directory.Exists(place)) throw new IOException($"{file.Name} is a folder");
                var beside = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $".{file.Name}.{Environment.ProcessId}.part"));
                waiting.Add((beside, place));
                WriteThrough(beside, file.Bytes);
            }

            token.ThrowIfCancellationRequested();
            for (; placed < waiting.Count; placed++) File.Move(waiting[placed].Beside, waiting[placed].Place, overwrite: true);
            return new WriteOutcome.Written();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            CleanUp(waiting, placed, missing);
            return new WriteOutcome.Refused($"{folder}: {WriteTrouble.Say(e)}. {Kept(files, placed)}");
        }
        catch (OperationCanceledException)
        {
            CleanUp(waiting, placed, missing);
            throw;
        }
    }

    private static string Kept(Sequence<OutputFile> files, int placed) => placed == 0
        ? "Nothing was written; what was there before is kept."
        : $"Written: {string.Join(", ", files.Take(placed).Select(f => f.Name))}. Kept as before: {string.Join(", ", files.Skip(placed).Select(f => f.Name))}.";

    private static FileStream CreateOnDisk(string path) =>
        new(path, new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 0 });

    private void WriteThrough(string path, ReadOnlyMemory<byte> bytes)
    {
        using var stream = _create(path);
        stream.Write(bytes.Span);
        if (stream is FileStream onDisk) onDisk.Flush(flushToDisk: true);
        else stream.Flush();
    }

    /// <summary>The folders that will be made, the innermost first.</summary>
    private static List<string> MissingFolders(string folder)
    {
        var missing = new List<string>();
        for (var f = Path.GetFullPath(folder); f is not null && !Directory.Exists(f); f = Path.GetDirectoryName(f)) missing.Add(f);
        return missing;
    }

    private static void CleanUp(List<(string Beside, string Place)> waiting, int placed, List<string> made)
    {
        foreach (var (beside, _) in waiting.Skip(placed)) Try(() => File.Delete(beside));
        if (placed > 0) return;
        foreach (var folder in made) Try(() => Directory.Delete(folder));
    }

    /// <summary>Cleaning up after a fault must not hide the fault.</summary>
    private static void Try(Action clean)
    {
        try
        {
            clean();
        }
        catch (IOException)
        {
        }
        catch (UnauthorizedAccessException)
        {
        }
    }
}
