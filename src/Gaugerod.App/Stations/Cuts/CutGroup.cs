using System.Globalization;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Cuts;

/// <summary>What is cut at one setting of the fence, or marked by hand.</summary>
/// <param name="Number">Its number on the list, from 1.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Setting">The setting; null where it is marked by hand.</param>
/// <param name="Pieces">The pieces.</param>
internal sealed record CutGroup(int Number, string Title, SawSetting? Setting, List<Piece> Pieces)
{
    /// <summary>The groups of a plan in the order they are cut; of several tiles each is named.</summary>
    public static IEnumerable<CutGroup> Of(Plan plan)
    {
        var pieces = plan.Runs.SelectMany(run => run.Faces).SelectMany(face => face.Pieces).ToDictionary(piece => piece.Id, StringComparer.Ordinal);
        var number = 0;
        foreach (var product in plan.Cutting)
        {
            var of = plan.Cutting.Count > 1 ? ": " + product.Product : "";
            foreach (var setting in product.Settings)
            {
                var title = $"Fence {LengthText.Down(setting.Fence, plan.Job.Tape)} along the {(setting.Across ? "width" : "height")}{of}";
                yield return new(++number, title, setting, [.. setting.Pieces.Select(id => pieces[id])]);
            }

            if (product.ByHand.Count > 0) yield return new(++number, "Marked by hand" + of, null, [.. product.ByHand.Select(id => pieces[id])]);
        }
    }

    /// <summary>Which tiles are only parted here, in words; empty for none.</summary>
    public string Parting => Setting is not { Parts: { Count: > 0 } parts } ? "" : $"Parts {Numbers(parts)}: the cuts in order are with the pieces of {(parts.Count == 1 ? "that tile" : "those tiles")}.";

    /// <summary>What a piece comes out as where the setting is that of a smaller one; empty where it comes out as asked.</summary>
    public string ComesOut(Plan plan, Piece piece)
    {
        return Setting is { } setting && setting.Short(piece, plan.Job.Tape, plan.Job.Cutting.Fence) > Length.Zero ? $"comes out {LengthText.Down(setting.Fence, plan.Job.Tape)}" : "";
    }

    /// <summary>Tiles by their numbers: <c>tile 4</c>, <c>tiles 4, 7</c>.</summary>
    public static string Numbers(IReadOnlyList<int> tiles) =>
        (tiles.Count == 1 ? "tile " : "tiles ") + string.Join(", ", tiles.Select(number => number.ToString(CultureInfo.InvariantCulture)));

    /// <summary>For every piece the tile it comes from and what else does, in a word or two.</summary>
    public static Dictionary<string, string> Sources(Plan plan)
    {
        var sources = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var tile in plan.Cutting.SelectMany(product => product.Tiles))
        {
            foreach (var piece in tile.Pieces)
            {
                var others = tile.Pieces.Select(other => other.Id).Where(id => !string.Equals(id, piece.Id, StringComparison.Ordinal)).ToList();
                sources[piece.Id] = Numbers([tile.Number]) + (others.Count == 0 ? "" : ", with " + string.Join(", ", others));
            }
        }

        return sources;
    }
}
