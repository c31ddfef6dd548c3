using Gaugerod.Engine;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>A plan made by hand for the sheets' tests: an invented shower of three walls in feet and inches.</summary>
internal static class HandPlan
{
    public static Plan Shower(Paper paper = Paper.A4, bool metric = false)
    {
        var joint = In(0, 1, 8);
        var (tileWidth, tileHeight) = (In(23, 7, 8), In(11, 7, 8));
        var count = 0;
        var tape = metric ? Tape.Millimetres : Tape.Sixteenths;
        var window = ("window", new Box(In(18, 1, 4), In(54), In(42), In(79)), false);
        var niche = ("niche", new Box(In(46), In(39), In(58), In(51)), false);
        var bench = ("bench", new Box(In(19), In(0), In(34, 3, 8), In(18)), true);
        var valve = new Hole("valve", new(In(17), In(43)), In(2, 1, 2));
        var west = new HandWall("west", In(34, 1, 2), In(0, 3, 8), In(95, 3, 4), In(0), []);
        var north = new HandWall("north", In(60, 1, 4), In(0), In(95, 3, 4), In(34, 1, 2), [window, niche]);
        var east = new HandWall("east", In(34, 3, 8), In(0), In(95, 3, 4), In(94, 3, 4), [bench]);
        FacePlan[] faces =
        [
            west.Lay(new(In(-7, 1, 8), In(5, 3, 8), joint), tileWidth, tileHeight, () => ++count, [valve]),
            north.Lay(new(In(18, 3, 16), In(5, 3, 8), joint), tileWidth, tileHeight, () => ++count, []),
            east.Lay(new(In(6), In(5, 3, 8), joint), tileWidth, tileHeight, () => ++count, []),
        ];
        var best = new Proposal(
            new(In(-7, 1, 8), In(5, 3, 8), joint), faces.Select(f => f.Placing).ToSequence(),
            new(0, 0, 0, In(5, 1, 4), In(0, 3, 16), 44, 66, 1),
            [
                new(new Want.FullCourse(new("east", "bench"), Must: true, 1), Held: true, "A whole course stands on the bench: yes, at 18 1/8 in."),
                new(new Want.Centred("north", "window", CentreOn.Either, Must: false, 2), Held: true, "A tile is centred on the window: yes, to 1/16 in."),
                new(new Want.AtLeast(new("north", "head"), null, (1, 2), Must: false, 1), Held: false, "At least half a tile along the head of north: 5 1/4 in, half is 5 15/16 in."),
            ],
            "Whole course on the bench, 5 1/4 in at the floor, equal cuts beside the window.");
        var request = new RunRequest(
            "shower", "Hearth 12 x 24", ["west", "north", "east"], new BondRequest.Grid(Lay.Level), Corners.Restart, JointRange.Only(joint), "north",
            new(null, In(2), HalfTile: true), best.Wants.Select(w => w.Want).ToSequence(), [.. Enum.GetValues<Criterion>()]);
        var run = new RunPlan(
            request, best, new(ProofKind.Exact, In(5, 1, 4), 1264, "No better place exists: every offset at which a tile's side meets a corner of the walls was tried."),
            [
                Other(best, In(1, 1, 2), 3, 61, "Three cuts fewer, but a cut of 1 1/2 in runs along the ceiling."),
                Other(best, In(4, 7, 8), 0, 68, "Joint on the window's sill; two tiles more than the best and 3/8 in off the smallest cut."),
                Other(best, In(4, 1, 2), 0, 66, "Equal cuts at both corners of west; the window is 2 in off the middle."),
                Other(best, In(3), 0, 64, "Whole course at the ceiling; the bench has a cut of 3 in above it."),
            ],
            Lines(), Rods(joint, tileHeight, tileWidth), faces.ToSequence());
        var product = new Product("Hearth 12 x 24", tileWidth, tileHeight, In(0, 3, 8)) { PerBox = 8, Kerf = In(0, 1, 8), Breakage = 3, Spares = 4 };
        var job = new Job(
            "Guest shower, Alder Lane", "Invented for the tests: no such shower exists.", tape, paper, In(0, 1, 8), [product], [], [request]);
        return new(
            job, [run], [Cutting(faces, product)],
            [
                new("Hearth 12 x 24", 73, "tile", 8, 10, 66, 3, 4, 0, "Cut plan of 66 tiles, proved least; whole boxes of 8."),
                new("Trim, 8 ft lengths", 2, "length", 1, 2, 2, 0, 0, 0, "Two free edges of 95 3/4 in."),
            ],
            [
                new(FindingLevel.Note, "half-tile", "shower", "A cut is narrower than half a tile.", "5 15/16 in", "5 1/4 in", "common practice, no source"),
                new(FindingLevel.Warn, "joint", "Hearth 12 x 24", "The joint is narrower than three times the size variation of the tiles.", "3/16 in", "1/8 in", "ANSI A108.02, 4.3.8"),
                new(FindingLevel.Stop, "must", "shower", "A must is missed: for the look of this sheet only.", "", "", "the job's own wants"),
            ]);
    }

    /// <summary>The same shower with a second run, so that the sheets have two runs to keep apart.</summary>
    public static Plan TwoRuns()
    {
        var plan = Shower();
        var run = plan.Runs[0];
        FacePlan[] faces = [Renamed(run.Faces[2], "side", "B")];
        var second = run with
        {
            Request = run.Request with { Name = "side wall", Faces = ["side"], Through = null },
            Lines = [new(Axis.Level, "side", In(41, 3, 8), "First course stands on it")],
            Rods = [],
            Faces = faces.ToSequence(),
        };
        return plan with { Runs = [run, second] };
    }

    private static FacePlan Renamed(FacePlan face, string name, string letter) => face with
    {
        Face = face.Face with { Name = name, Unrolled = Length.Zero },
        Pieces = face.Pieces.Select(p => p with { Face = name, Id = letter + p.Id[1..] }).ToSequence(),
    };

    private static Length In(long whole, long part = 0, long of = 1) => whole < 0 ? -Length.FromInches(-whole, part, of) : Length.FromInches(whole, part, of);

    private static Proposal Other(Proposal best, Length smallest, int slivers, int tiles, string why) => best with
    {
        Score = best.Score with { SmallestCut = smallest, Slivers = slivers, Tiles = tiles },
        Why = why,
    };

    private static Sequence<SnapLine> Lines() =>
    [
        new(Axis.Level, "west", In(41, 3, 8), "First course stands on it"),
        new(Axis.Plumb, "west", In(17, 1, 8), "Left side of the second column"),
        new(Axis.Level, "north", In(41, 3, 8), "First course stands on it"),
        new(Axis.Plumb, "north", In(18, 3, 16), "Left side of the first tile; the window's middle is half a tile further"),
        new(Axis.Level, "east", In(41, 3, 8), "First course stands on it"),
        new(Axis.Plumb, "east", In(6), "Left side of the whole column"),
    ];

    private static Sequence<Rod> Rods(Length joint, Length height, Length width) =>
    [
        new(Axis.Plumb, "north", "The level line", In(41, 3, 8), Enumerable.Range(-3, 8).Select(i => (height + joint) * i).ToSequence()),
        new(Axis.Level, "north", "The plumb line", In(18, 3, 16), Enumerable.Range(-1, 3).Select(i => (width + joint) * i).ToSequence()),
        new(Axis.Level, "west", "The plumb line", In(17, 1, 8), [-(width + joint), Length.Zero]),
        new(Axis.Level, "east", "The plumb line", In(6), [Length.Zero, width + joint]),
    ];

    private static ProductCutting Cutting(FacePlan[] faces, Product product)
    {
        var pieces = faces.SelectMany(f => f.Pieces).ToArray();
        var straight = pieces.Where(p => p.Kind == PieceKind.Straight).ToArray();
        var settings = straight
            .GroupBy(p => (Fence: Tape.Sixteenths.Down(p.Cuts[0].Least), Across: p.Cuts[0].Away is TileSide.Left or TileSide.Right))
            .OrderByDescending(g => g.Key.Fence.Steps)
            .Select(g => new SawSetting(g.Key.Fence, g.Key.Across, g.Select(p => p.Id).ToSequence())).ToSequence();
        var narrow = straight.Where(p => p.Cuts[0].Away is TileSide.Left or TileSide.Right && p.Cuts[0].Least < In(11, 1, 2)).ToArray();
        var tiles = new List<CutTile>();
        foreach (var pair in narrow.Chunk(2))
        {
            var at = pair.Select((p, i) => new PieceInTile(p.Id, Ring.Of(i == 0 ? new(In(0), In(0), p.Cuts[0].Least, p.Cell.Height) : new(product.Width - p.Cuts[0].Least, In(0), product.Width, p.Cell.Height)), i * 2));
            tiles.Add(new(tiles.Count + 1, at.ToSequence()));
        }

        foreach (var piece in pieces.Except(narrow)) tiles.Add(new(tiles.Count + 1, [new(piece.Id, piece.Outline.Moved(-piece.Cell.Left, -piece.Cell.Bottom), 0)]));
        var hand = pieces.Where(p => p.Kind is not (PieceKind.Full or PieceKind.Straight)).Select(p => p.Id).ToSequence();
        return new(product.Name, tiles.ToSequence(), tiles.Count, tiles.Count, [], settings, hand);
    }
}
