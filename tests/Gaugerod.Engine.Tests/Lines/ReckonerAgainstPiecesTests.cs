using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Tests.Referees;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Lines;

/// <summary>The quick reckoning of a placing against the pieces themselves, cut and counted by the referee.</summary>
public sealed class ReckonerAgainstPiecesTests
{
    private static readonly Limits Limits = new(null, Length.FromMillimetres(50), HalfTile: false);

    [Fact]
    public void On_square_rooms_cuts_slivers_and_the_smallest_cut_are_those_of_the_pieces() =>
        Gen.Select(RandomRooms.Square, Spot.Random).Each((run, spot) => Check(run, spot, slack: 0), iter: 1_000);

    /// <summary>A leg at a slanted wall is rounded once by the reckoner and not at all by the referee: two steps at the most.</summary>
    [Fact]
    public void On_crooked_rooms_they_are_those_of_the_pieces_to_two_steps() =>
        Gen.Select(RandomRooms.Any, Spot.Random).Each((run, spot) => Check(run, spot, slack: 2), iter: 1_000);

    private static void Check(RandomRun run, Spot spot, long slack)
    {
        var model = new RunModel(run.Problem(Limits, ScoreOrder.Usual), run.Joint);
        for (var f = 0; f < run.Faces.Count; f++)
        {
            var face = run.Faces[f];
            var (x, y) = spot.On(face, run.Product);
            var (u, v) = run.Bond.Lay == Lay.Level ? (x, y) : (y, x);
            long[] us = new long[run.Faces.Count], vs = new long[run.Faces.Count];
            (us[f], vs[f]) = (u, v);
            var score = model.ScoreFace(us, vs, f);

            var counted = new CountedPieces(run, face, new(face.Field), x, y);
            Assert.InRange(score.Cuts, counted.CutsAtLeast, counted.CutsAtMost);
            Assert.InRange(score.Slivers, counted.Slivers(Limits.Sliver.Steps - slack), counted.SliversAtMost(Limits.Sliver.Steps + slack));
            double whole = Math.Min(run.Product.Width.Steps, run.Product.Height.Steps);
            var (sure, all) = counted.Least;
            var (low, high) = (Math.Min(whole, all ?? whole), Math.Min(whole, sure ?? whole));
            Assert.InRange(score.SmallestCut.Steps, Math.Max(0, low - slack), high + slack);
        }
    }
}
