using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;

namespace Gaugerod.House.Tests;

/// <summary>
/// The README's worked example. Its numbers are reckoned there by hand, from the rule that a cut under half a tile is
/// avoided by taking a whole tile away (ANSI A108.02, 4.3.2, from memory); the planner must find the same.
/// </summary>
public sealed class ReadmeTests
{
    [Fact]
    public void The_plain_wall_comes_out_as_the_readme_reckons_it_by_hand()
    {
        var read = Assert.IsType<JobReading.Understood>(JobReader.Read(File.ReadAllBytes(Path.Combine(Repo.Root, "samples/plain-wall.json")), "plain-wall.json"));
        var plan = Planner.Plan(read.Job);
        var run = Assert.Single(plan.Runs);
        var pieces = Assert.Single(run.Faces).Pieces;
        var whole = pieces.Where(p => p.Kind == PieceKind.Full).ToList();

        Assert.Equal(Table(), new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["first whole tile, from the left corner"] = Mm(whole.Min(p => p.Cell.Left)),
            ["first whole tile, above the floor"] = Mm(whole.Min(p => p.Cell.Bottom)),
            ["smallest cut"] = Mm(run.Best.Score.SmallestCut),
            ["slivers"] = Count(run.Best.Score.Slivers),
            ["pieces"] = Count(pieces.Count),
            ["whole tiles"] = Count(whole.Count),
            ["pieces with one cut"] = Count(pieces.Count(p => p.Kind == PieceKind.Straight)),
            ["corner pieces"] = Count(pieces.Count(p => p.Kind == PieceKind.Corner)),
            ["tiles to cut from"] = Count(Assert.Single(plan.Cutting).Bought),
            ["boxes of ten"] = Count(Assert.Single(plan.Order).Packs),
        });
        Assert.Equal(ProofKind.Exact, run.Proof.Kind);
    }

    /// <summary>The rows between the two comments of the README.</summary>
    private static Dictionary<string, string> Table() => File.ReadAllLines(Path.Combine(Repo.Root, "README.md"))
        .SkipWhile(l => !l.StartsWith("<!-- example", StringComparison.Ordinal))
        .TakeWhile(l => !l.StartsWith("<!-- end of example", StringComparison.Ordinal))
        .Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Skip(1)
        .Select(l => l.Trim('|').Split('|', StringSplitOptions.TrimEntries))
        .ToDictionary(cells => cells[0], cells => cells[1], StringComparer.Ordinal);

    private static string Mm(Length length) => string.Create(CultureInfo.InvariantCulture, $"{length.Millimetres:0.####} mm");

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
