namespace Gaugerod.Cli;

/// <summary>What the program answers the shell with.</summary>
internal static class Exit
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The plan is made, but it breaks a must or holds a stop: somebody has to decide.</summary>
    public const int Decide = 1;

    /// <summary>The input, the words of the command or the folder could not be used; nothing was written.</summary>
    public const int Unusable = 2;

    /// <summary>The program itself went wrong.</summary>
    public const int Broken = 70;

    /// <summary>Stopped with Ctrl-C; nothing was written.</summary>
    public const int Stopped = 130;
}
