using Xunit;

namespace Gaugerod.Testing;

/// <summary>Compares text with its accepted copy under tests/Golden; GOLDEN_ACCEPT=1 accepts what came out.</summary>
public static class Golden
{
    /// <summary>Fails, leaving a .received file, unless <paramref name="actual"/> equals the accepted copy.</summary>
    public static void Matches(string name, string actual)
    {
        var accepted = Path.Combine(Repo.Root, "tests", "Golden", name);
        var received = accepted + ".received";
        actual = actual.ReplaceLineEndings("\n");
        Directory.CreateDirectory(Path.GetDirectoryName(accepted)!);
        if (Environment.GetEnvironmentVariable("GOLDEN_ACCEPT") == "1") File.WriteAllText(accepted, actual);
        var expected = File.Exists(accepted) ? File.ReadAllText(accepted).ReplaceLineEndings("\n") : "";
        if (expected == actual)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, actual);
        Assert.Fail($"{name} differs from its accepted copy. See {received}; run again with GOLDEN_ACCEPT=1 if it is right.");
    }
}
