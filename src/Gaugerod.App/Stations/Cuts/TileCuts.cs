using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Cuts;

/// <summary>How the tile that a piece shares with others is cut, in words and in order; nothing where it has a tile to itself.</summary>
internal static class TileCuts
{
    public static IReadOnlyList<string> Of(Plan plan, Piece piece)
    {
        var tile = plan.Cutting.Where(cutting => string.Equals(cutting.Product, piece.Product, StringComparison.Ordinal)).SelectMany(cutting => cutting.Tiles)
            .FirstOrDefault(tile => tile.Pieces.Any(own => string.Equals(own.Id, piece.Id, StringComparison.Ordinal)));
        if (tile is null || tile.Pieces.Count < 2) return [];
        return tile.Nests
            ? ["Mark both pieces on the tile, then cut along the marks."]
            : [.. tile.Cuts.Select(cut => $"Fence at {LengthText.Down(cut.Fence, plan.Job.Tape)}, the {Side(cut)} side of {(cut.Over.Width == tile.Cuts[0].Over.Width && cut.Over.Height == tile.Cuts[0].Over.Height ? "the tile" : "what is left")} against it.")];
    }

    private static string Side(SawCut cut) => (cut.Upright, cut.FromFar) switch { (true, false) => "left", (true, true) => "right", (false, false) => "lower", _ => "upper" };
}
