using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Gaugerod.App.Desk;

/// <summary>Jobs as files that are handed to the person.</summary>
internal static class JobFiles
{
    public const string Type = "application/json";

    /// <summary>A file name of a job's name: letters and digits, the rest as hyphens.</summary>
    /// <param name="job">The job's name.</param>
    /// <param name="ending">What the file name ends with.</param>
    public static string NameOf(string job, string ending = ".json")
    {
        var name = new string([.. job.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-')]).Trim('-');
        return (name.Length > 0 ? name : "job") + ending;
    }

    /// <summary>All jobs in one ZIP file, each as its own job file. Jobs of one name are numbered.</summary>
    public static byte[] Zip(IEnumerable<ShelfCopy> jobs)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            var taken = new Dictionary<string, int>(StringComparer.Ordinal);
            foreach (var job in jobs)
            {
                var name = NameOf(job.Name);
                var count = taken[name] = taken.GetValueOrDefault(name) + 1;
                var entry = zip.CreateEntry(count == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name[..^5]}-{count}.json"));
                entry.LastWriteTime = DateTimeOffset.FromUnixTimeMilliseconds((long)job.Saved);
                using var file = entry.Open();
                file.Write(Encoding.UTF8.GetBytes(job.Text));
            }
        }

        return bytes.ToArray();
    }
}
