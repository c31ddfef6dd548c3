using CsCheck;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Patterns;

/// <summary>What some places promise is kept: none of them does better in anything that counts.</summary>
public sealed class PromiseTests(ITestOutputHelper output)
{
    /// <summary>A part of all places: which half is taken, again and again; and places in it, by their parts of its two ways.</summary>
    private static readonly Gen<(PatternRun Run, int Sliver, int Least, int Wants, bool[] Halves, (double One, double Other)[] Within)> Cases =
        from run in PatternRuns.Small
        from sliver in Gen.Int[2, 30]
        from least in Gen.Int[2, 20]
        from wants in Gen.Int[0, 10_000]
        from halves in Gen.Bool.Array[0, 16]
        from within in Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1]).Array[1, 12]
        select (run, sliver, least, wants, halves, within);

    private int _places, _parts;

    [Fact]
    public void No_place_does_better_than_the_part_it_lies_in_promises()
    {
        Cases.Each(Check, iter: 800);
        output.WriteLine($"{_parts} parts, {_places} places");
    }

    [Fact]
    public void A_place_that_is_moved_by_steps_of_the_lattice_lays_the_same_tiles()
    {
        Gen.Select(PatternRuns.Any, Gen.Long[-3_000_000, 3_000_000], Gen.Long[-3_000_000, 3_000_000], Gen.Select(Gen.Int[-4, 4], Gen.Int[-4, 4])).Each(
            (run, x, y, steps) =>
            {
                var model = new PatternModel(run.Problem(new(null, Length.FromMillimetres(20), HalfTile: true)));
                var (a, b) = (model.Domain.A, model.Domain.B);
                var (here, there) = (model.At(x, y), model.At(x + (steps.Item1 * a.X) + (steps.Item2 * b.X), y + (steps.Item1 * a.Y) + (steps.Item2 * b.Y)));
                Assert.Equal((here.Score, here.Smallest), (there.Score, there.Smallest));
            },
            iter: 300);
    }

    [Fact]
    public void Where_a_part_says_that_cuts_at_two_edges_surely_differ_they_differ_at_every_place_of_it()
    {
        var (ruled, open) = (0, 0);
        Gen.Select(PatternRuns.Small, Gen.Int[0, 10_000], Gen.Bool.Array[4, 18], Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1]).Array[30]).Each(
            (run, edges, halves, within) =>
            {
                var draw = new Random(edges);
                EdgeRef Edge() => run.Faces[draw.Next(run.Faces.Count)] is var face ? new(face.Name, face.Edges[draw.Next(face.Edges.Count)].Name) : null!;
                var model = new PatternModel(run.Problem(new(null, Length.FromMillimetres(10), HalfTile: false), new Want.EqualCuts(Edge(), Edge(), Must: true, 1)));
                var part = halves.Aggregate(model.Domain.All, (shifts, far) => far ? shifts.Halves().Far : shifts.Halves().Near);
                if (model.Promise(part).Score.MustsMissed == 0)
                {
                    _ = Interlocked.Increment(ref open);
                    return;
                }

                _ = Interlocked.Increment(ref ruled);
                foreach (var (one, other) in within)
                {
                    var (x, y) = (part.X + (part.OneX * one) + (part.OtherX * other), part.Y + (part.OneY * one) + (part.OtherY * other));
                    var (right, up) = (Grid.Nearest(x).Steps, Grid.Nearest(y).Steps);
                    if (!Holds(part, right, up) || model.Domain.Within(right, up) != (right, up)) continue;
                    Assert.True(model.At(right, up).Score.MustsMissed == 1, $"{part} says they differ; at {right},{up} they do not");
                }
            },
            iter: 2_000);
        output.WriteLine($"{ruled} parts ruled out, {open} left open");
        Assert.True(ruled > open / 4, "too few parts are ruled out for this to say much");
    }

    private void Check((PatternRun Run, int Sliver, int Least, int Wants, bool[] Halves, (double One, double Other)[] Within) given)
    {
        var limits = new Limits(Length.FromMillimetres(given.Least), Length.FromMillimetres(given.Sliver), HalfTile: true);
        var model = new PatternModel(given.Run.Problem(limits, WantsOf(given.Run, given.Wants)));
        foreach (var whole in PatternStarts.Stretches(model).Where(stretch => !stretch.IsOne).Take(3).Prepend(model.Domain.All))
        {
            var part = given.Halves.Aggregate(whole, (shifts, far) => far ? shifts.Halves().Far : shifts.Halves().Near);
            // Places are whole steps; those brought to one may lie half a step outside.
            var length = Math.Sqrt((part.OneX * part.OneX) + (part.OneY * part.OneY));
            var around = part.OtherX == 0 && part.OtherY == 0 ? part with { OtherX = -part.OneY / length, OtherY = part.OneX / length } : part;
            var (promise, smallest) = model.Promise(around);
            _ = Interlocked.Increment(ref _parts);
            foreach (var (one, other) in given.Within)
            {
                var (x, y) = (part.X + (part.OneX * one) + (part.OtherX * other), part.Y + (part.OneY * one) + (part.OtherY * other));
                var (right, up) = (Grid.Nearest(x).Steps, Grid.Nearest(y).Steps);
                if (!Holds(around, right, up) || model.Domain.Within(right, up) != (right, up)) continue;
                var place = model.At(right, up);
                _ = Interlocked.Increment(ref _places);
                var told = $"{part} promises {promise} {smallest}; {place}";
                Assert.True(promise.MustsMissed <= place.Score.MustsMissed, told);
                Assert.True(promise.WishesMissed <= place.Score.WishesMissed, told);
                Assert.True(promise.Slivers <= place.Score.Slivers, told);
                Assert.True(promise.Cuts <= place.Score.Cuts, told);
                Assert.True(smallest >= place.Smallest - 1e-6, told);
            }
        }
    }

    /// <summary>Wants of every kind on the run's faces and their edges.</summary>
    internal static Want[] WantsOf(PatternRun run, int number)
    {
        var draw = new Random(number);
        FinishedFace Face() => run.Faces[draw.Next(run.Faces.Count)];
        EdgeRef Edge()
        {
            var face = Face();
            return new(face.Name, face.Edges[draw.Next(face.Edges.Count)].Name);
        }

        bool Must() => draw.Next(2) == 0;
        var half = Face();
        Want[] all =
        [
            new Want.JointAtHeight(half.Name, Length.FromSteps((half.Field.Outer.Bounds.Bottom.Steps + half.Field.Outer.Bounds.Top.Steps) / 2), Must(), 1),
            new Want.JointOnEdge(Edge(), Must(), 2), new Want.FullCourse(Edge(), Must(), 1), new Want.AtLeast(Edge(), Length.FromMillimetres(draw.Next(5, 40)), null, Must(), 3),
            new Want.AtLeast(Edge(), null, (1, 3), Must(), 1), new Want.Centred(Face().Name, null, (CentreOn)draw.Next(3), Must(), 1), new Want.EqualCuts(Edge(), Edge(), Must(), 1),
        ];
        return [.. all.Where(_ => draw.Next(3) == 0)];
    }

    /// <summary>Whether a place lies in a part, by its parts of the part's two ways.</summary>
    private static bool Holds(Shifts part, long x, long y)
    {
        var across = (part.OneX * part.OtherY) - (part.OneY * part.OtherX);
        var (right, up) = (x - part.X, y - part.Y);
        return Math.Abs(((right * part.OtherY) - (up * part.OtherX)) / across) <= 1 && Math.Abs(((part.OneX * up) - (part.OneY * right)) / across) <= 1;
    }
}
