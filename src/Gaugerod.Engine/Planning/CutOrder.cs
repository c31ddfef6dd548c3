using Gaugerod.Engine.Cutting;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Pieces that are cut last, since they wait for something made elsewhere.</summary>
/// <param name="For">What they wait for.</param>
/// <param name="Settings">Their saw settings, the largest fence first.</param>
/// <param name="ByHand">Those of them that are marked by hand.</param>
public sealed record CutLater(string For, Sequence<SawSetting> Settings, Sequence<string> ByHand)
{
    /// <summary>All of them, each once.</summary>
    public IEnumerable<string> Pieces => Settings.SelectMany(setting => setting.Pieces).Concat(ByHand).Distinct(StringComparer.Ordinal);
}

/// <summary>In which order a product is cut: what waits for something made elsewhere comes last and is kept apart, for it is measured when that is in.</summary>
public static class CutOrder
{
    /// <summary>The cut plan without what waits, and what waits, in the order in which the job names what it waits for. A tile that both come out of is parted for the first, and its rest is laid by; one of which all waits is parted when that is in.</summary>
    /// <param name="job">Says what is made elsewhere and which pieces wait for it.</param>
    /// <param name="cutting">A product's cut plan.</param>
    public static (ProductCutting Now, Sequence<CutLater> Later) Of(Job job, ProductCutting cutting)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(cutting);
        var (later, told, parted) = (new List<CutLater>(), new HashSet<string>(StringComparer.Ordinal), new HashSet<int>());
        var waiting = (job.Work?.Made ?? []).SelectMany(made => made.Pieces).ToHashSet(StringComparer.Ordinal);
        foreach (var made in job.Work?.Made ?? [])
        {
            var own = made.Pieces.Where(told.Add).ToHashSet(StringComparer.Ordinal);
            var tiles = cutting.Tiles.Where(tile => tile.Pieces.All(piece => waiting.Contains(piece.Id)) && tile.Pieces.Any(piece => own.Contains(piece.Id))).Select(tile => tile.Number).Where(parted.Add).ToHashSet();
            var waits = new CutLater(made.Name, Settings(cutting, own.Contains, tiles.Contains), cutting.ByHand.Where(own.Contains).ToSequence());
            if (waits.Pieces.Any()) later.Add(waits);
        }

        if (later.Count == 0) return (cutting, []);
        return (cutting with { Settings = Settings(cutting, id => !told.Contains(id), number => !parted.Contains(number)), ByHand = cutting.ByHand.Where(id => !told.Contains(id)).ToSequence() }, later.ToSequence());
    }

    private static Sequence<SawSetting> Settings(ProductCutting cutting, Func<string, bool> isOf, Func<int, bool> isParted) => cutting.Settings
        .Select(setting => setting with { Pieces = setting.Pieces.Where(isOf).ToSequence(), Parts = setting.Parts.Where(isParted).ToSequence() })
        .Where(setting => setting.Pieces.Count > 0 || setting.Parts.Count > 0).ToSequence();
}
