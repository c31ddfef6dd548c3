namespace Gaugerod.Cli.Reading;

/// <summary>Finds the file a person probably meant.</summary>
internal static class NearName
{
    /// <summary>A sentence with a space before it that names the nearest file of its kind in the same folder; empty when none comes near.</summary>
    public static string Say(string path)
    {
        try
        {
            var ending = string.Equals(Path.GetExtension(path), ".csv", StringComparison.OrdinalIgnoreCase) ? ".csv" : ".json";
            var folder = Path.GetDirectoryName(path) is { Length: > 0 } f ? f : ".";
            if (!Directory.Exists(folder)) return "";
            var there = Directory.EnumerateFiles(folder, "*" + ending).Take(1000).Select(file => Path.GetFileNameWithoutExtension(file));
            var near = Spelling.Nearest(Path.GetFileNameWithoutExtension(path), there);
            return near is null ? "" : $" Nearest: {near}{ending}.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }
}
