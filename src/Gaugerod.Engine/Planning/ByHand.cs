using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Bonds;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Puts a run where a person wants it, and says how that compares with what the search found.</summary>
internal static class ByHand
{
    /// <summary>The place a person chose in place of the best, which then leads the alternatives.</summary>
    /// <param name="found">What the search found.</param>
    /// <param name="place">The place.</param>
    public static LinesFound Take(LinesFound found, HeldPlace place)
    {
        var (model, u, v) = At(found.Model.Problem, place);
        var placing = new RunPlacing(u, v, model.Score(u, v));
        placing = placing with { Score = placing.Score with { Tiles = new TileCounter(model).Tiles(placing) } };
        var proof = found.Proof with { Kind = ProofKind.None, Words = Words(placing.Score, found.Best.Score, found.Model.Problem) };
        return new(model, placing, proof, found.Alternatives.Prepend(found.Best).ToSequence());
    }

    /// <summary>A run with the joint of a place, and the place on each face.</summary>
    public static (RunModel Model, long[] U, long[] V) At(RunProblem problem, HeldPlace place)
    {
        var model = new RunModel(problem, place.Joint ?? problem.Joint.Wanted);
        var (u, v) = (new long[model.Frames.Length], new long[model.Frames.Length]);
        for (var f = 0; f < u.Length; f++)
        {
            var face = model.Frames[f].Face;
            var x = (place.X.Count == 1 ? place.X[0] - face.Unrolled : place.X[f]).Steps;
            var y = (place.Y - face.Raised).Steps;
            (u[f], v[f]) = model.Bond.Lay == Lay.Level ? (x, y) : (y, x);
        }

        return (model, u, v);
    }

    /// <summary>How a place chosen by hand compares with what the search found.</summary>
    public static string Words(Score placing, Score best, RunProblem problem)
    {
        if (new ScoreOrder(problem.Order).Compare(placing, best) <= 0) return "Chosen by hand; the search found no better place.";
        var smallest = best.Cuts == 0 ? "no cut" : $"a smallest cut of {LengthText.Narrowest(best.SmallestCut, problem.Tape)}";
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Chosen by hand. The best place that the search found has {smallest}, {best.Slivers} {(best.Slivers == 1 ? "sliver" : "slivers")} and {best.Cuts} {(best.Cuts == 1 ? "cut tile" : "cut tiles")}.");
    }
}
