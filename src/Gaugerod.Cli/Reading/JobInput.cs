using System.Globalization;

namespace Gaugerod.Cli.Reading;

/// <summary>The bytes of a job, or one line that says why there are none.</summary>
/// <param name="Name">What to call the file in messages.</param>
/// <param name="Bytes">What is in it.</param>
/// <param name="Fault">Why it could not be read; null when it was.</param>
internal sealed record JobInput(string Name, ReadOnlyMemory<byte> Bytes, string? Fault)
{
    /// <summary>The word for standard input.</summary>
    public const string StandardInput = "-";

    /// <summary>A job file is a few kilobytes; past this it is surely something else, and reading on could fill the memory.</summary>
    private const int MostBytes = 16 * 1024 * 1024;

    /// <summary>Reads a job from a file, or from standard input for <c>-</c>.</summary>
    public static async Task<JobInput> Open(string path, Desk desk, CancellationToken token)
    {
        if (string.Equals(path, StandardInput, StringComparison.Ordinal))
        {
            if (desk.InIsTyped) await desk.Words.WriteLineAsync("Waiting for a job on standard input; end it with Ctrl-D (Ctrl-Z and Enter on Windows).");
            return await ReadAll("standard input", desk.In, token);
        }

        return await File(path, "a job file, or - for standard input", token);
    }

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="expected">What it should be, in words.</param>
    /// <param name="token">Ends the waiting.</param>
    public static async Task<JobInput> File(string path, string expected, CancellationToken token)
    {
        if (Directory.Exists(path)) return Unread(path, $"this is a folder; expected {expected}.");
        if (!System.IO.File.Exists(path)) return Unread(path, $"there is no such file; expected {expected}.{NearName.Say(path)}");
        try
        {
            var file = System.IO.File.OpenRead(path);
            await using (file)
            {
                return await ReadAll(path, file, token);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Unread(path, $"this could not be read: {e.Message}");
        }
    }

    private static JobInput Unread(string name, string why) => new(name, ReadOnlyMemory<byte>.Empty, $"{name}: {why}");

    private static async Task<JobInput> ReadAll(string name, Stream stream, CancellationToken token)
    {
        var all = new MemoryStream();
        var part = new byte[81920];
        // A read from a keyboard or pipe does not heed the token itself, so the waiting does.
        for (int n; (n = await stream.ReadAsync(part, token).AsTask().WaitAsync(token)) > 0;)
        {
            all.Write(part, 0, n);
            if (all.Length > MostBytes)
            {
                return Unread(name, string.Create(CultureInfo.InvariantCulture, $"this is more than {MostBytes >> 20} MB; a job file is far smaller."));
            }
        }

        return new(name, all.ToArray(), null);
    }
}
