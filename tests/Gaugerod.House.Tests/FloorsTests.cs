using System.Text.RegularExpressions;
using System.Xml.Linq;
using Gaugerod.Testing;

namespace Gaugerod.House.Tests;

/// <summary>Which floor may know which, and what may be brought into the lower ones.</summary>
public sealed class FloorsTests
{
    // From the cellar up. Projects on one floor do not know each other.
    private static readonly Dictionary<string, int> s_floors = new(StringComparer.Ordinal)
    {
        ["Gaugerod.Plane"] = 0,
        ["Gaugerod.Engine"] = 1,
        ["Gaugerod.Files"] = 2,
        ["Gaugerod.Sheets"] = 2,
        ["Gaugerod.Lists"] = 3,
        ["Gaugerod.Cli"] = 4,
        ["Gaugerod.App"] = 4,
        ["Gaugerod.Serve"] = 4,
    };

    [Fact]
    public void References_between_projects_only_go_down()
    {
        var offences =
            from project in Projects("src")
            from reference in Items(project, "ProjectReference")
            let to = Path.GetFileNameWithoutExtension(reference.Replace('\\', '/'))
            where !s_floors.TryGetValue(Name(project), out var own) || !s_floors.TryGetValue(to, out var other) || other >= own
            select $"{Name(project)} refers to {to}";
        Assert.Empty(offences);
    }

    [Fact]
    public void Every_project_stands_on_a_floor() => Assert.Empty(Projects("src").Select(Name).Except(s_floors.Keys));

    [Theory]
    [InlineData("Gaugerod.Plane")]
    [InlineData("Gaugerod.Engine")]
    [InlineData("Gaugerod.Files")]
    public void The_lower_floors_bring_in_no_packages(string project)
    {
        Assert.Empty(Items(Path.Combine(Repo.Root, "src", project, project + ".csproj"), "PackageReference"));
    }

    [Theory]
    [InlineData("src/Gaugerod.Sheets/Formats", "Gaugerod.Engine", "a format knows nothing of tiles")]
    [InlineData("src/Gaugerod.Sheets/Formats", "Gaugerod.Sheets.Sheets", "a format knows no sheet")]
    [InlineData("src/Gaugerod.Sheets/Drawings", "Gaugerod.Engine", "a picture knows nothing of tiles")]
    [InlineData("src/Gaugerod.Sheets/Drawings", "Gaugerod.Sheets.Formats", "a picture knows no file format")]
    [InlineData("src/Gaugerod.Sheets/Drawings", "PdfSharp", "a picture knows no file format")]
    [InlineData("src/Gaugerod.Sheets/Sheets", "Gaugerod.Sheets.Formats", "a sheet knows no file format")]
    [InlineData("src/Gaugerod.Sheets/Sheets", "PdfSharp", "a sheet knows no file format")]
    public void Pictures_formats_and_sheets_keep_apart(string folder, string forbidden, string because)
    {
        // A name relative to Gaugerod.Sheets, such as Formats.PdfWriter, says the same as the whole one.
        var tail = Regex.Escape(forbidden.Replace("Gaugerod.Sheets.", "", StringComparison.Ordinal));
        var offences = Source.In(folder)
            .Where(s => Regex.IsMatch(s.Code, $@"(?<!namespace\s+[\w.]*){Regex.Escape(forbidden)}\b|(?<![\w.]){tail}\.[A-Z]"))
            .Select(s => s.Path);
        Assert.False(offences.Any(), $"{because}: {string.Join(", ", offences)}");
    }

    [Theory]
    [InlineData(@"\bDateTime(Offset)?\.(Now|UtcNow|Today)\b", "the clock")]
    [InlineData(@"\b(Stopwatch|TimeProvider)\b", "the clock")]
    [InlineData(@"\b(Random|RandomNumberGenerator)\b|\bGuid\.NewGuid\b", "randomness")]
    [InlineData(@"\bCurrent(UI)?Culture\b", "the culture of the thread")]
    [InlineData(@"(?<![\w.])(File|Directory|Path|Console|Environment)\.[A-Z]", "the machine it runs on")]
    [InlineData(@"\b(FileStream|HttpClient|Socket|Process)\b\s*[(.]", "the machine it runs on")]
    [InlineData(@"\bSystem\.Reflection\b|\.GetType\(\)|\bActivator\.", "reflection, which does not survive trimming")]
    public void The_cellar_and_the_ground_floor_know_nothing_of(string pattern, string what)
    {
        var offences = Source.In("src/Gaugerod.Plane").Concat(Source.In("src/Gaugerod.Engine"))
            .Where(s => Regex.IsMatch(s.Code, pattern)).Select(s => s.Path);
        Assert.False(offences.Any(), $"{what}: {string.Join(", ", offences)}");
    }

    [Fact]
    public void The_solution_holds_every_project_so_that_the_tests_build_them_all()
    {
        var listed = XDocument.Load(Path.Combine(Repo.Root, "Gaugerod.slnx")).Descendants("Project").Select(p => (string?)p.Attribute("Path"));
        var there = new[] { "src", "tests", "bench" }.SelectMany(Projects).Select(p => Path.GetRelativePath(Repo.Root, p).Replace('\\', '/'));
        Assert.Equal(there.Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Projects(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Repo.Root, folder), "*.csproj", SearchOption.AllDirectories);

    private static string Name(string project) => Path.GetFileNameWithoutExtension(project);

    private static IEnumerable<string> Items(string project, string kind) =>
        XDocument.Load(project).Descendants(kind).Select(i => (string?)i.Attribute("Include")).OfType<string>();
}
