using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>A wall with a niche and a bench that are not built yet, some of their measures left open. Invented; lengths in mm.</summary>
/// <param name="Width">The wall's width.</param>
/// <param name="Height">Its height.</param>
/// <param name="Tile">The tile, across and up.</param>
/// <param name="Bond">The bond.</param>
/// <param name="Asked">What is asked for the niche's left, bottom, width and height, the bench's height and its front.</param>
/// <param name="Range">How far each may be from that, down and up; null for what is settled.</param>
/// <param name="Studs">The clear space between the studs, where it counts.</param>
internal sealed record MovableRoom(int Width, int Height, (int Across, int Up) Tile, BondRequest Bond, int[] Asked, (int Down, int Up)?[] Range, (int From, int To)? Studs)
{
    private const int Left = 0, Bottom = 1, NicheWidth = 2, NicheHeight = 3, BenchHeight = 4, Front = 5;

    /// <summary>Rooms a few tiles large, with so many measures open.</summary>
    public static Gen<MovableRoom> Any(int least, int most) =>
        from width in Gen.Int[900, 1700]
        from height in Gen.Int[1000, 1900]
        from across in Gen.Int[140, 330]
        from up in Gen.Int[90, 260]
        from bond in Gen.Int[0, 4]
        from place in Gen.Select(Gen.Double[0.25, 0.4], Gen.Double[0.42, 0.55], Gen.Double[0.15, 0.25], Gen.Double[0.1, 0.2])
        from bench in Gen.Select(Gen.Double[0.15, 0.25], Gen.Double[0.2, 0.5])
        from open in Gen.Shuffle(new[] { 0, 1, 2, 3, 4, 5 })
        from count in Gen.Int[least, most]
        from reach in Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60]).Array[6]
        from studs in Gen.Select(Gen.Bool, Gen.Int[5, 50], Gen.Int[5, 50])
        let asked = new[] { (int)(width * place.Item1), (int)(height * place.Item2), (int)(width * place.Item3), (int)(height * place.Item4), (int)(height * bench.Item1), (int)(width * bench.Item2) }
        select new MovableRoom(
            width, height, (across, up), Bonds[bond], asked,
            Between(studs, [.. Enumerable.Range(0, 6).Select(i => open[..count].Contains(i) ? reach[i] : ((int, int)?)null)]),
            studs.Item1 ? (asked[Left] - studs.Item2, asked[Left] + asked[NicheWidth] + studs.Item3) : null);

    /// <summary>The ranges with those of the niche's left side and width cut to what its studs leave, as a job must have them.</summary>
    /// <param name="studs">Whether there are studs, and how far from the niche the left and the right one stand.</param>
    /// <param name="range">The ranges.</param>
    private static (int Down, int Up)?[] Between((bool Any, int Left, int Right) studs, (int Down, int Up)?[] range)
    {
        if (!studs.Any) return range;
        if (range[Left] is { } left) range[Left] = (Math.Min(left.Down, studs.Left), Math.Min(left.Up, studs.Right + (range[NicheWidth]?.Down ?? 0)));
        if (range[NicheWidth] is { } width) range[NicheWidth] = (width.Down, Math.Min(width.Up, studs.Right + (range[Left]?.Down ?? studs.Left)));
        return range;
    }

    private static BondRequest[] Bonds { get; } =
    [
        new BondRequest.Grid(Lay.Level), new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay), new BondRequest.Running(Lay.Level, 1, 3, Stepping.BackAndForth),
        new BondRequest.Grid(Lay.Upright), new BondRequest.Running(Lay.Upright, 1, 3, Stepping.OneWay),
    ];

    /// <summary>The job with its ranges.</summary>
    public Job Open() => With(Asked, [], ranges: true);

    /// <summary>The job with nothing left open, and so nothing wished for.</summary>
    public Job AsAsked() => With(Asked, [], ranges: false);

    /// <summary>The measures of a settled job's niche and bench, in the order of <see cref="Asked"/>.</summary>
    public static Length[] Measures(Job job)
    {
        var (box, bench) = (job.Faces[0].Openings[0].Ring.Bounds, ((FaceShape.Read)job.Faces[0].Shape).Fixtures[0]);
        return [box.Left, box.Bottom, box.Width, box.Height, bench.HeightLeft, bench.To!.Value];
    }

    /// <summary>Every settled job in which the open measures take some values each, evenly over their ranges; what stands beyond a stud is left out.</summary>
    /// <param name="values">How many values.</param>
    public IEnumerable<Job> Settled(int values)
    {
        var wishes = Wishes().ToSequence();
        foreach (var measures in From(0, (int[])Asked.Clone()))
        {
            if (Studs is { } studs && (measures[Left] < studs.From || measures[Left] + measures[NicheWidth] > studs.To)) continue;
            yield return With(measures, wishes, ranges: false);
        }

        IEnumerable<int[]> From(int i, int[] measures)
        {
            if (i == measures.Length) return [(int[])measures.Clone()];
            return Values(i).SelectMany(value =>
            {
                measures[i] = value;
                return From(i + 1, measures).ToList();
            });
        }

        IEnumerable<int> Values(int i)
        {
            var (least, most) = Reach(i);
            return least == most ? [Asked[i]] : Enumerable.Range(0, values).Select(k => least + ((most - least) * k / (values - 1))).Append(Asked[i]).Distinct();
        }
    }

    /// <summary>Whether a job's measures are all within what is allowed.</summary>
    public bool Allows(Job job)
    {
        var measures = Measures(job);
        for (var i = 0; i < measures.Length; i++)
        {
            var (least, most) = Reach(i);
            if (measures[i] < Mm(least) || measures[i] > Mm(most)) return false;
        }

        return Studs is not { } studs || (measures[Left] >= Mm(studs.From) && measures[Left] + measures[NicheWidth] <= Mm(studs.To));
    }

    private (int Least, int Most) Reach(int i) => Range[i] is { } range ? (Asked[i] - range.Down, Asked[i] + range.Up)
        : i == Left && Studs is { } studs ? (studs.From, studs.To)
        : (Asked[i], Asked[i]);

    /// <summary>What the tool wishes for by itself: every edge that may move on a joint.</summary>
    private IEnumerable<Want> Wishes()
    {
        bool Moves(int i) => Range[i] is not null || (i == Left && Studs is not null);
        foreach (var (edge, moves) in new[]
        {
            ("niche.left", Moves(Left)), ("niche.right", Moves(Left) || Moves(NicheWidth)), ("niche.bottom", Moves(Bottom)), ("niche.top", Moves(Bottom) || Moves(NicheHeight)),
            ("bench", Moves(BenchHeight)), ("bench.right", Moves(Front)),
        })
        {
            if (moves) yield return new Want.JointOnEdge(new("wall", edge), Must: false, Weight: 1) { OfMovable = true };
        }
    }

    private Job With(int[] m, Sequence<Want> wishes, bool ranges)
    {
        Span? Span(int i) => Range[i] is { } range ? new(Mm(Asked[i] - range.Down), Mm(Asked[i] + range.Up)) : null;
        static Edge Side(string name) => new(name, EdgeKind.Fixture);
        var niche = new Opening("niche", Ring.Of(new(Mm(m[Left]), Mm(m[Bottom]), Mm(m[Left] + m[NicheWidth]), Mm(m[Bottom] + m[NicheHeight]))), [Side("bottom"), Side("right"), Side("top"), Side("left")])
        {
            Range = ranges ? new(Span(Left), Span(Bottom), Span(NicheWidth), Span(NicheHeight)) { Studs = Studs is { } studs ? new(Mm(studs.From), Mm(studs.To)) : null } : null,
        };
        var bench = new Fixture("bench", AtHead: false, Length.Zero, Mm(m[Front]), Mm(m[BenchHeight]), Mm(m[BenchHeight]), Side("bench"), Side("bench"))
        {
            Range = ranges ? new(Span(BenchHeight), null, Span(Front)) : null,
        };
        var job = OneWall.Job(
            Mm(Width), Mm(Height), Mm(3), Mm(Tile.Across), JointRange.Only(Mm(3)), Tape.Millimetres, wishes, new(null, Mm(40), HalfTile: true), [niche], Bond, Mm(Tile.Up));
        var wall = job.Faces[0];
        return job with { Faces = [wall with { Shape = (FaceShape.Read)wall.Shape with { Fixtures = [bench] } }] };
    }

    private static Length Mm(int mm) => Length.FromMillimetres(mm);
}
