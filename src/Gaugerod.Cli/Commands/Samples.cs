using System.Text.Json;

namespace Gaugerod.Cli.Commands;

/// <summary>The sample jobs, carried in the program. They are invented, and say so.</summary>
internal static class Samples
{
    /// <summary>Their names, as typed after <c>--sample</c>; the first is the default.</summary>
    public static string[] Names { get; } = ["guest-shower", "attic-shower", "cloakroom", "galley-splash", "porch-floor", "plain-wall"];

    /// <summary>A sample's file with the job's name put in place of its own; all else stays as it was written.</summary>
    public static byte[] Named(string sample, string job)
    {
        using var resource = typeof(Samples).Assembly.GetManifestResourceStream($"samples/{sample}.json")
            ?? throw new ArgumentException($"There is no sample {sample}.", nameof(sample));
        using var copy = new MemoryStream();
        resource.CopyTo(copy);
        return WithName(copy.ToArray(), job);
    }

    /// <summary>The file with the value of its own "name" changed.</summary>
    internal static byte[] WithName(byte[] file, string job)
    {
        var reader = new Utf8JsonReader(file, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        while (reader.Read())
        {
            if (reader.TokenType != JsonTokenType.PropertyName || reader.CurrentDepth != 1 || !reader.ValueTextEquals("name"u8)) continue;
            reader.Read();
            var (from, to) = ((int)reader.TokenStartIndex, (int)reader.BytesConsumed);
            return [.. file.AsSpan(0, from), .. System.Text.Encoding.UTF8.GetBytes(JsonSerializer.Serialize(job)), .. file.AsSpan(to)];
        }

        return file;
    }
}
