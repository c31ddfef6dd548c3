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
    /// <summary>The groups of a plan in the order they are cut, what waits for something made elsewhere last; of several tiles each is named.</summary>
    public static IEnumerable<CutGroup> Of(Plan plan)
    {
        var pieces = plan.Runs.SelectMany(run => run.Faces).SelectMany(face => face.Pieces).ToDictionary(piece => piece.Id, StringComparer.Ordinal);
        var orders = plan.Cutting.Select(product => (Of: plan.Cutting.Count > 1 ? ": " + product.Product : "", Order: CutOrder.Of(plan.Job, product))).ToList();
        var groups = orders.SelectMany(one => Groups(one.Order.Now.Settings, one.Order.Now.ByHand, one.Of))
            .Concat(orders.SelectMany(one => one.Order.Later.SelectMany(later => Groups(later.Settings, later.ByHand, $"{one.Of}, waits for {later.For}"))));
        return groups.Select((group, i) => new CutGroup(i + 1, group.Title, group.Setting, [.. group.Pieces.Select(id => pieces[id])]));

        IEnumerable<(string Title, SawSetting? Setting, IEnumerable<string> Pieces)> Groups(IEnumerable<SawSetting> settings, IReadOnlyCollection<string> byHand, string behind) => settings
            .Select(setting => ($"Fence {LengthText.Down(setting.Fence, plan.Job.Tape)} along the {(setting.Across ? "width" : "height")}{behind}", (SawSetting?)setting, setting.Pieces.AsEnumerable()))
            .Concat(byHand.Count > 0 ? [("Marked by hand" + behind, null, byHand)] : []);
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
