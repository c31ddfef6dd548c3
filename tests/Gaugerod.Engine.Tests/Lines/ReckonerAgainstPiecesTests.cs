using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
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

    /// <summary>Arched heads, rounded corners and columns; a crossing with a chord is rounded as one with any slanted side is.</summary>
    [Fact]
    public void On_round_faces_they_are_those_of_the_pieces_and_never_nothing() =>
        Gen.Select(RandomRooms.Round, Spot.Random).Each((run, spot) => Check(run, spot, slack: 2), iter: 400);

    [Fact]
    public void A_column_about_as_wide_as_a_tile_leaves_a_neck_or_none_and_never_a_cut_of_nothing() =>
        RandomRooms.Columns.Each((run, spot) => Check(run, spot, slack: 2), iter: 400);

    /// <summary>Heads and feet of two sides that meet at less than 1 in 8, with a corner of a tile about where they meet.</summary>
    [Fact]
    public void Where_a_corner_of_a_tile_just_passes_two_shallow_sides_the_smallest_cut_is_that_of_the_pieces_and_never_nothing() =>
        Gen.Select(RandomRooms.Shallow, Spot.Random).Each((run, spot) => Check(run, spot, slack: 2), iter: 400);

    /// <summary>What the search says is what the pieces say that are cut there, to what a crossing is rounded by.</summary>
    private static void CheckPieces(RandomRun run, FinishedFace face, Score score, long x, long y)
    {
        var pieces = PieceCutter.Cut(FieldRings.Of(face), run.Laid, new(Length.FromSteps(x), Length.FromSteps(y), run.Joint), run.Product, Tape.Millimetres, "A");
        Assert.All(pieces, piece => Assert.True(piece.Smallest > Length.Zero));
        if (score.SmallestCut < Length.Min(run.Product.Width, run.Product.Height)) Assert.Contains(pieces, piece => (piece.Smallest - score.SmallestCut).Abs().Steps <= 2);
    }

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
            Assert.InRange(score.SmallestCut.Steps, Math.Max(1, Math.Min(whole, all) - slack), Math.Min(whole, sure) + slack);
            CheckPieces(run, face, score, x, y);
        }
    }
}
