using System.Text.Json;
using System.Xml.Linq;
using Gaugerod.Testing;

namespace Gaugerod.House.Tests;

/// <summary>What comes from others is named with its licence.</summary>
public sealed class NoticesTests
{
    // The licences this project takes: permissive ones, and the open font licence. SPDX names.
    private static readonly string[] s_allowed = ["MIT", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "ISC", "MS-PL", "OFL-1.1"];

    // What serves the tests alone is not handed on, so a licence that asks for its own files to stay open, or to be named, may serve there.
    private static readonly string[] s_testsOnly = ["MPL-2.0", "BSL-1.0", "public domain"];
    private const string TestsHeading = "## To test";

    // A row of a table reads: name, version, licence, what it is for.
    private static readonly string[][] s_rows =
    [
        .. File.ReadAllLines(Path.Combine(Repo.Root, "THIRD-PARTY-NOTICES.md"))
            .Where(l => l.StartsWith('|') && !l.StartsWith("|-", StringComparison.Ordinal) && !l.StartsWith("| Name", StringComparison.Ordinal))
            .Select(l => l.Trim('|').Split('|', StringSplitOptions.TrimEntries)),
    ];

    [Fact]
    public void Every_package_is_listed_with_its_version()
    {
        var asked = XDocument.Load(Path.Combine(Repo.Root, "Directory.Packages.props")).Descendants("PackageVersion")
            .Select(p => $"{(string?)p.Attribute("Include")} {(string?)p.Attribute("Version")}");
        Assert.Empty(asked.Except(Listed()));
    }

    [Theory]
    [InlineData("Gaugerod.Cli")]
    [InlineData("Gaugerod.App")]
    [InlineData("Gaugerod.Serve")]
    public void So_is_every_package_that_those_bring_into_the_program(string project)
    {
        using var locked = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Repo.Root, "src", project, "packages.lock.json")));
        var brought =
            from framework in locked.RootElement.GetProperty("dependencies").EnumerateObject()
            from package in framework.Value.EnumerateObject()
            where package.Value.TryGetProperty("resolved", out _)
            select $"{package.Name} {package.Value.GetProperty("resolved").GetString()}";
        Assert.Empty(brought.Except(Listed()));
    }

    [Fact]
    public void So_is_every_font()
    {
        var fonts = Directory.EnumerateFiles(Path.Combine(Repo.Root, "src"), "*.ttf", SearchOption.AllDirectories).Select(f => Path.GetFileName(f));
        Assert.Empty(fonts.Except(s_rows.SelectMany(row => row[0].Split(", "))));
    }

    [Fact]
    public void Every_licence_is_one_that_may_be_used()
    {
        Assert.NotEmpty(s_rows);
        Assert.Empty(s_rows.Where(row => row.Length != 4 || !(s_allowed.Contains(row[2]) || OnlyTests(row))).Select(row => string.Join(" | ", row)));
    }

    private static bool OnlyTests(string[] row) => s_testsOnly.Contains(row[2]) && File.ReadLines(Path.Combine(Repo.Root, "THIRD-PARTY-NOTICES.md"))
        .SkipWhile(line => !line.StartsWith(TestsHeading, StringComparison.Ordinal))
        .Any(line => line.StartsWith($"| {row[0]} |", StringComparison.Ordinal));

    private static IEnumerable<string> Listed() => s_rows.Select(row => $"{row[0]} {row[1]}");
}
