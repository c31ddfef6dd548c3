using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Plans the boxes of the products that ask for it.</summary>
internal static class JobBoxes
{
    /// <summary>The boxes of one product; null where it does not ask.</summary>
    public static BoxPlan? Of(Product product, ProductCutting cutting, OrderLine order, IEnumerable<RunPlan> runs) => product.Blend is null
        ? null
        : BoxDealing.Of(product, cutting, order.Packs, runs.SelectMany(run => FaceOrder.Of(run).Select(face => new SetFace(face.Pieces, run.Best.Placing.Joint))));

    /// <summary>The cut plan with each tile's box said.</summary>
    public static ProductCutting Said(ProductCutting cutting, BoxPlan boxes) =>
        cutting with { Tiles = cutting.Tiles.Select((tile, i) => tile with { Box = boxes.OfTile[i] }).ToSequence() };
}
