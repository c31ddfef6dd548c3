using System.Text;
using Gaugerod.Cli.Writing;
using Gaugerod.Engine;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Cli.Tests;

/// <summary>
/// A command line with a folder of its own and the rooms below it replaced: these tests are about words, streams, exit
/// codes and files, not about tiles.
/// </summary>
internal sealed class Bench : IDisposable
{
    private readonly MemoryStream _out = new();
    private readonly StringWriter _words = new();

    public Bench() => Directory.CreateDirectory(Folder);

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "gaugerod-test-" + Path.GetRandomFileName());

    public string Out => Encoding.UTF8.GetString(_out.ToArray());

    public string Words => _words.ToString();

    public Stream? Typed { get; init; }

    public Stream? ResultTo { get; init; }

    public bool Watched { get; init; }

    public Works Works { get; init; } = Stub();

    public Desk Desk => new(Typed ?? new MemoryStream("{}"u8.ToArray()), ResultTo ?? _out, _words, InIsTyped: false, WordsAreSeen: Watched);

    public string At(string name) => Path.Combine(Folder, name);

    public string Put(string name, string text)
    {
        File.WriteAllText(At(name), text);
        return At(name);
    }

    public Task<int> Run(params string[] args) => CommandLine.Run(args, Works, Desk);

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public static Works Stub(int mustsMissed = 0, FindingLevel? finding = null, params string[] faults) => new(
        (_, _, _) => faults.Length > 0 ? new(null, [.. faults]) : new(Job(), []),
        job => [new("Walls: looking", null), new("done", Plan(job, mustsMissed, finding))],
        _ => "{\"format\":\"gaugerod-plan/1\"}"u8.ToArray(),
        _ => [new OutputFile("sheets.pdf", "sheets"u8.ToArray()), new OutputFile("face-back.svg", "<svg/>"u8.ToArray())]);

    private static Job Job() => new("Stub job", null, Tape.Millimetres, Paper.A4, Length.Zero, [], [], []);

    private static Plan Plan(Job job, int mustsMissed, FindingLevel? finding)
    {
        Want want = new Want.JointAtHeight("back", Length.FromMillimetres(900), Must: true, Weight: 1);
        var score = new Score(mustsMissed, 0, 0, Length.FromMillimetres(100), Length.Zero, 0, 1, mustsMissed);
        var best = new Proposal(default, [default(Placing)], score, [new(want, mustsMissed == 0, "a joint at 900 mm on back")], "Whole tiles at the bench.");
        var run = new RunRequest(
            "Walls", "Tile", ["back"], new BondRequest.Grid(Lay.Level), Corners.Wrap, JointRange.Only(Length.FromMillimetres(3)),
            null, new(null, Length.FromMillimetres(50), HalfTile: true), [want], []);
        return new(
            job, [new(run, best, new(ProofKind.Exact, Length.Zero, 1, ""), [], [], [], [])], [],
            [new("Tile", 10, "tile", 4, 3, 9, 1, 0, 0, "9 in the cut plan, 1 for breakage.")],
            finding is { } level ? [new(level, "joint", "Walls", "The joint is narrow.", "3 mm", "2 mm", "common practice, no source")] : []);
    }
}
