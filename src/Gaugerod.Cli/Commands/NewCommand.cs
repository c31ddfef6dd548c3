using Gaugerod.Cli.Writing;

namespace Gaugerod.Cli.Commands;

/// <summary>Writes a sample job to begin from. It never writes over a file.</summary>
internal static class NewCommand
{
    /// <summary>Does it and gives the exit code.</summary>
    /// <param name="name">The new file, with or without .json; its last part becomes the job's name.</param>
    /// <param name="sample">One of <see cref="Samples.Names"/>.</param>
    /// <param name="desk">Where to say what was done.</param>
    public static async Task<int> Run(string name, string sample, Desk desk)
    {
        var path = name.EndsWith(".json", StringComparison.OrdinalIgnoreCase) ? name : name + ".json";
        if (Path.GetFileNameWithoutExtension(path) is not { Length: > 0 } job)
        {
            await desk.Words.WriteLineAsync($"error: {name}: this names no file; expected a name such as kitchen or jobs/kitchen.");
            return Exit.Unusable;
        }

        var refused = Write(path, () => Samples.Named(sample, job));
        await desk.Words.WriteLineAsync(refused is null
            ? $"{path}: written, from the sample {sample}, which is invented. Put in your own readings, then: gaugerod plan {path} --out {Path.ChangeExtension(path, null)}-sheets"
            : $"error: {path}: {refused}");
        return refused is null ? Exit.Done : Exit.Unusable;
    }

    private static string? Write(string path, Func<byte[]> sample)
    {
        const string There = "this is there already and was kept; choose another name";
        if (Path.Exists(path)) return There + ".";
        var bytes = sample();
        var beside = Path.Combine(Path.GetDirectoryName(path) ?? "", $".{Path.GetFileName(path)}.part");
        try
        {
            using (var file = new FileStream(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            try
            {
                File.Move(beside, path, overwrite: false);
                return null;
            }
            catch (IOException)
            {
                File.Delete(beside);
                throw;
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{WriteTrouble.Say(e)}. Nothing was written.";
        }
    }
}
