using CsCheck;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using Xunit.Abstractions;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>
/// Several musts above what is set, against every way of choosing every course's joint in steps of half a millimetre: tiles of 200, joints
/// from 2 to 4, joints that must stand at heights, and a cut at the ceiling that must be so large.
/// </summary>
public sealed class AgainMustsTests(ITestOutputHelper output)
{
    private const int Head = 2 * 2397, Tile = 2 * 200;

    [Fact]
    public void Where_any_joints_keep_all_musts_of_800_walls_a_way_does()
    {
        var (gate, kept, several, lost) = (new Lock(), 0, 0, 0);
        Gen.Select(Gen.Int[1, 10], Gen.Int[-24, 24], Gen.Int[1, 11], Gen.Int[1, 11], Gen.Int[0, 30]).Each(
            drawn =>
            {
                // The plan has its joints of 3 at the heights asked for, of which those below what is set are none.
                var (set, off, one, other, less) = drawn;
                var fresh = Plan([]);
                var bottoms = fresh.Runs[0].Faces[0].Pieces.GroupBy(piece => piece.Course).OrderBy(course => course.Key).Select(course => Halves(course.First().Cell.Bottom)).ToList();
                var heights = new[] { one, other }.Distinct().Where(course => course < bottoms.Count && course > set).Select(course => bottoms[course] - 3).Order().ToList();
                if (set >= bottoms.Count) return;
                var least = Head - bottoms[^1] - less;
                List<Want> wants = [.. heights.Select(height => new Want.JointAtHeight("wall", Half(height), true, 1))];
                if (least > 0) wants.Add(new Want.AtLeast(new("wall", "head"), Half(least), null, true, 1));
                var top = bottoms[set - 1] + Tile + off;
                var plan = Plan(wants.ToSequence(), new("wall", set, Half(top), null));
                if (!plan.Runs[0].Best.Wants.All(want => want.Held)) return;
                var any = Any(top, [.. heights.Where(height => height > top)], least);
                var best = plan.Again[0].Ways[0];
                if (any) Assert.True(best.MustsMissed == 0, $"{best.Words} {string.Join(' ', best.Missed)}");
                lock (gate)
                {
                    if (any) kept++;
                    else lost++;
                    if (any && best.Words.StartsWith("Level joints from", StringComparison.Ordinal)) several++;
                }
            },
            iter: 800);
        output.WriteLine($"{kept} kept, {several} of them by joints of several kinds; in {lost} no joints keep all");
        Assert.True(kept > 200 && several > 10 && lost > 100, $"{kept}, {several}, {lost}");
    }

    [Fact]
    public void Where_any_joints_keep_the_cuts_at_a_window_and_a_joint_of_800_walls_a_way_does()
    {
        var (gate, kept, several, lost) = (new Lock(), 0, 0, 0);
        Gen.Select(Gen.Int[1, 4], Gen.Int[-26, 26], Gen.Int[1900, 2600], Gen.Int[700, 1300], Gen.Int[5, 20], Gen.Select(Gen.Int[0, 40], Gen.Int[0, 40], Gen.Int[0, 24])).Each(
            drawn =>
            {
                var (set, off, sill, high, at, less) = drawn;
                var window = new Opening("window", Around(300, sill, 400, high), new[] { "bottom", "right", "top", "left" }.Select(name => new Edge(name, EdgeKind.Fixture)).ToSequence());
                var fresh = Plan([], null, window);
                var face = fresh.Runs[0].Faces[0];
                var bottoms = face.Pieces.GroupBy(piece => piece.Course).OrderBy(course => course.Key).Select(course => Halves(course.First().Cell.Bottom)).ToList();
                var (under, over) = (Halves(face.Face.Edges.First(edge => edge.Name == "window.bottom").From.Y), Halves(face.Face.Edges.First(edge => edge.Name == "window.top").From.Y));
                // What is planned at each edge, less a little, must be kept; where an edge is in a joint, anything.
                var (below, above, ceiling) = (Most(bottoms.Select(bottom => under - bottom)) - less.Item1, Most(bottoms.Select(bottom => bottom + Tile - over)) - less.Item2, Most(bottoms.Select(bottom => Head - bottom)) - less.Item3);
                if (below <= 4 || above <= 4 || ceiling <= 4) return;
                // In some there is a joint asked for as well.
                int? height = at < bottoms.Count ? bottoms[at] - 3 : null;
                Sequence<Want> wants =
                [
                    .. height is { } joint ? [new Want.JointAtHeight("wall", Half(joint), true, 1)] : Array.Empty<Want>(), new Want.AtLeast(new("wall", "window.bottom"), Half(below), null, true, 1),
                    new Want.AtLeast(new("wall", "window.top"), Half(above), null, true, 1), new Want.AtLeast(new("wall", "head"), Half(ceiling), null, true, 1),
                ];
                var top = bottoms[set - 1] + Tile + off;
                var plan = Plan(wants, new("wall", set, Half(top), null), window);
                var same = plan.Runs[0].Faces[0].Pieces.GroupBy(piece => piece.Course).OrderBy(course => course.Key).Select(course => Halves(course.First().Cell.Bottom));
                if (height <= top || under <= top || !same.SequenceEqual(bottoms) || !plan.Runs[0].Best.Wants.All(want => want.Held)) return;
                var any = AnyAtWindow(top, height, [(under, below, false), (over, above, true), (Head, ceiling, false)]);
                var best = plan.Again[0].Ways[0];
                if (any) Assert.True(best.MustsMissed == 0, $"{best.Words} {string.Join(' ', best.Missed)}");
                lock (gate)
                {
                    if (any) kept++;
                    else lost++;
                    if (any && best.Words.StartsWith("Level joints from", StringComparison.Ordinal)) several++;
                }
            },
            iter: 800);
        output.WriteLine($"{kept} kept, {several} of them by joints of several kinds; in {lost} no joints keep all");
        Assert.True(kept > 30 && several > 5 && lost > 10, $"{kept}, {several}, {lost}");

        static int Most(IEnumerable<int> cuts) => cuts.FirstOrDefault(cut => cut is > 0 and < Tile);
    }

    /// <summary>Whether some joints bring one to a height and leave no less at each edge than is asked.</summary>
    private static bool AnyAtWindow(int top, int? height, (int At, int Least, bool TileAbove)[] edges)
    {
        var now = new HashSet<(int Top, bool Met)> { (top, height is null) };
        while (now.Count > 0)
        {
            var next = new HashSet<(int, bool)>();
            foreach (var (from, met) in now)
            {
                for (var joint = 4; joint <= 8; joint++)
                {
                    var (bottom, done) = (from + joint, met || (2 * from) + joint == 2 * height);
                    if (Array.Exists(edges, edge => bottom < edge.At && bottom + Tile > edge.At && (edge.TileAbove ? bottom + Tile - edge.At : edge.At - bottom) < edge.Least)) continue;
                    if (bottom + Tile >= Head && done) return true;
                    if (bottom + Tile < Head) next.Add((bottom + Tile, done));
                }
            }

            now = next;
        }

        return false;
    }

    private static Ring Around(int left, int bottom, int width, int height) =>
        new([new(Mm(left), Half(bottom)), new(Mm(left + width), Half(bottom)), new(Mm(left + width), Half(bottom + height)), new(Mm(left), Half(bottom + height))]);

    /// <summary>Whether some joints keep all; in half millimetres.</summary>
    private static bool Any(int top, List<int> heights, int least)
    {
        var now = new HashSet<(int Top, int Met)> { (top, 0) };
        while (now.Count > 0)
        {
            var next = new HashSet<(int, int)>();
            foreach (var (from, met) in now)
            {
                for (var joint = 4; joint <= 8; joint++)
                {
                    var (bottom, all) = (from + joint, met);
                    for (var i = 0; i < heights.Count; i++) all |= (2 * from) + joint == 2 * heights[i] ? 1 << i : 0;
                    var done = all == (1 << heights.Count) - 1;
                    if (bottom >= Head ? done : bottom + Tile >= Head && done && Head - bottom >= least) return true;
                    if (bottom + Tile < Head) next.Add((bottom + Tile, all));
                }
            }

            now = next;
        }

        return false;
    }

    private static Plan Plan(Sequence<Want> wants, SetSoFar? set = null, Opening? window = null)
    {
        var job = OneWall.Job(Mm(1005), Mm(2400), Mm(3), Mm(200), new(Mm(2), Mm(3), Mm(4)), Tape.Millimetres, wants, limits: new(null, Mm(20), HalfTile: false), openings: window is null ? [] : [window]);
        return Planner.Plan(set is null ? job : job with { Runs = [job.Runs[0] with { Set = [set] }] });
    }

    private static int Halves(Length length) => (int)(length.Steps / 1600);

    private static Length Half(int halves) => Length.FromSteps(halves * 1600L);
}
