namespace Gaugerod.Cli.Writing;

/// <summary>Says in plain words why something could not be written or read.</summary>
internal static class WriteTrouble
{
    // The numbers the operating systems give for "no room left": errno ENOSPC and EDQUOT on Linux and macOS,
    // ERROR_HANDLE_DISK_FULL and ERROR_DISK_FULL on Windows.
    private static readonly int[] s_full = [28, 69, 122, unchecked((int)0x80070027), unchecked((int)0x80070070)];

    /// <summary>The reason as the end of a sentence, without a full stop.</summary>
    public static string Say(Exception trouble) => trouble switch
    {
        UnauthorizedAccessException => "this may not be written to; choose another folder or ask for the right to write here",
        DirectoryNotFoundException or FileNotFoundException => "there is no such folder and it cannot be made",
        PathTooLongException => "the name is too long for this disk",
        IOException when s_full.Contains(trouble.HResult) => "the disk is full; free some room or choose another disk",
        _ => trouble.Message.TrimEnd('.'),
    };
}
