using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Patterns;

/// <summary>Legs at rounds, reckoned as a pattern's. The straight bond's own are held to a geometry library's outlines by ReckonerAgainstPiecesTests.</summary>
public sealed class RoundLegsTests
{
    private static readonly Limits Limits = new(null, Length.FromMillimetres(50), HalfTile: false);

    [Fact]
    public void A_straight_bond_reckoned_as_a_pattern_has_the_same_smallest_cut_on_round_faces() =>
        Gen.Select(RandomRooms.Round, Spot.Random).Each(Check, iter: 300);

    [Fact]
    public void It_has_the_same_about_a_column_as_wide_as_a_tile() => RandomRooms.Columns.Each(Check, iter: 300);

    [Fact]
    public void On_round_faces_no_pattern_has_a_smallest_cut_of_nothing_and_its_pieces_have_the_same() =>
        Gen.Select(PatternRuns.Round, Gen.Long[-3_000_000, 3_000_000], Gen.Long[-3_000_000, 3_000_000]).Each(
            (run, x, y) =>
            {
                var model = new PatternModel(run.Problem(Limits));
                var place = model.At(x, y);
                Assert.True(place.Smallest > 0);
                var pieces = model.Fields.SelectMany(field => new PatternCutter(field, model.Judged, run.Given.Products, Tape.Millimetres).Cut(x, y, "A")).ToList();
                Assert.All(pieces, piece => Assert.True(piece.Smallest > Length.Zero));
                var least = model.Lines.Max(line => line.GreatestDepth);
                if (place.Smallest < least) Assert.Contains(pieces, piece => Math.Abs(piece.Smallest.Steps - place.Smallest) <= 1);
            },
            iter: 300);

    private static void Check(RandomRun run, Spot spot)
    {
        foreach (var face in run.Faces)
        {
            // Where course 0 of any other begins is another place in a pattern.
            if (run.Bond is not BondRequest.Grid { Lay: Lay.Level }) continue;
            var single = run with { Faces = [face with { Unrolled = Length.Zero, Raised = Length.Zero }], Restart = false };
            var (x, y) = spot.On(face, run.Product);
            var (u, v) = run.Bond.Lay == Lay.Level ? (x, y) : (y, x);
            var straight = new RunModel(single.Problem(Limits, ScoreOrder.Usual), run.Joint).Score([u], [v]);
            var pattern = new PatternModel(new(single.Problem(Limits, ScoreOrder.Usual), [run.Product], Angle.Zero)).At(x, y);
            // What is narrower than a hair a pattern does not cut at all.
            if (straight.SmallestCut.Steps <= PatternCutter.Hair) continue;
            var whole = Math.Min(run.Product.Width.Steps, run.Product.Height.Steps);
            Assert.InRange(Math.Min(pattern.Smallest, whole), straight.SmallestCut.Steps - 2, straight.SmallestCut.Steps + 2);
        }
    }
}
