using CsCheck;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
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

    private static Plan Plan(Sequence<Want> wants, SetSoFar? set = null)
    {
        var job = OneWall.Job(Mm(1005), Mm(2400), Mm(3), Mm(200), new(Mm(2), Mm(3), Mm(4)), Tape.Millimetres, wants, limits: new(null, Mm(20), HalfTile: false));
        return Planner.Plan(set is null ? job : job with { Runs = [job.Runs[0] with { Set = [set] }] });
    }

    private static int Halves(Length length) => (int)(length.Steps / 1600);

    private static Length Half(int halves) => Length.FromSteps(halves * 1600L);
}
