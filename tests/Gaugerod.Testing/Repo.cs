namespace Gaugerod.Testing;

/// <summary>Where the repository lies on this machine.</summary>
public static class Repo
{
    /// <summary>The folder that holds Gaugerod.slnx.</summary>
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Gaugerod.slnx"))) return folder.FullName;
        }

        throw new InvalidOperationException($"Gaugerod.slnx is in no folder above {AppContext.BaseDirectory}.");
    }
}
