using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

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
            : [.. tile.Cuts.Select(cut => $"Fence at {LengthText.Down(cut.Fence, plan.Job.Tape)}, the {Side(cut)} side of {(cut.Over.Width == tile.Cuts[0].Over.Width && cut.Over.Height == tile.Cuts[0].Over.Height ? "the tile" : "what is left")} against it{Gives(tile, cut)}.")];
    }

    /// <summary>What lies between fence and blade: a piece by itself, or several to be parted yet.</summary>
    private static string Gives(CutTile tile, SawCut cut)
    {
        var kept = (cut.Upright, cut.FromFar) switch
        {
            (true, false) => cut.Over with { Right = cut.At },
            (true, true) => cut.Over with { Left = cut.At },
            (false, false) => cut.Over with { Top = cut.At },
            _ => cut.Over with { Bottom = cut.At },
        };
        var own = tile.Pieces.Where(piece => Within(piece.At.Bounds, kept)).Select(piece => piece.Id).ToList();
        return own.Count switch { 0 => "", 1 => $": this gives {own[0]}", _ => $": this part has {string.Join(" and ", own)}" };
    }

    // By its middle: a piece may touch the blade's width.
    private static bool Within(Box piece, Box part) =>
        piece.Left + piece.Right > part.Left + part.Left && piece.Left + piece.Right < part.Right + part.Right
        && piece.Bottom + piece.Top > part.Bottom + part.Bottom && piece.Bottom + piece.Top < part.Top + part.Top;

    private static string Side(SawCut cut) => (cut.Upright, cut.FromFar) switch { (true, false) => "left", (true, true) => "right", (false, false) => "lower", _ => "upper" };
}
