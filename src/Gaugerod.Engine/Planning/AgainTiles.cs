using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Planning;

/// <summary>Counts what is needed for the rest, and what is left of what was bought.</summary>
internal static class AgainTiles
{
    /// <summary>A line for each product that is tiled with.</summary>
    public static IEnumerable<AgainOrder> Of(Job job, IReadOnlyList<RunPlan> runs, IReadOnlyList<ProductCutting> cutting, IReadOnlyList<OrderLine> order, IReadOnlyList<AgainFound> again)
    {
        for (var i = 0; i < cutting.Count; i++)
        {
            var name = cutting[i].Product;
            var product = job.Products.First(p => string.Equals(p.Name, name, StringComparison.Ordinal));
            List<Piece> todo = [.. again.SelectMany(found => found.ToDo).Where(IsOf)];

            // A tile is gone when anything planned from it is set or cut: what else was to come of it may lie in the skip.
            var done = runs.SelectMany(run => run.Faces).SelectMany(face => face.Pieces).Where(IsOf).Select(piece => piece.Id)
                .Except(runs.SelectMany(run => run.Faces.SelectMany(face => StillPlanned(run, face))).Select(piece => piece.Id), StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
            var gone = cutting[i].Tiles.Count(tile => tile.Pieces.Any(piece => done.Contains(piece.Id)));
            yield return new(name, todo.Count == 0 ? 0 : CuttingPlanner.Count(product, todo), (order[i].Pack * order[i].Packs) - gone);

            bool IsOf(Piece piece) => string.Equals(piece.Product, name, StringComparison.Ordinal);
        }
    }

    private static IEnumerable<Piece> StillPlanned(RunPlan run, FacePlan face)
    {
        if (run.Request.Set.FirstOrDefault(set => face.Face.IsCalled(set.Face)) is not { } set) return face.Pieces;
        return face.Pieces.Where(piece => (piece.Course > set.Courses || piece.Course < set.From) && !set.Cut.Contains(piece.Id, StringComparer.Ordinal));
    }
}
