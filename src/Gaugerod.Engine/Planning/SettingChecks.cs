using System.Globalization;

namespace Gaugerod.Engine.Planning;

/// <summary>Refuses mortar and grout that nothing says the thickness of.</summary>
internal static class SettingChecks
{
    public static IEnumerable<Fault> Find(Job job, int run)
    {
        if (job.Runs[run].Setting is not { } setting) yield break;
        var (product, path) = (JobRuns.ProductOf(job, job.Runs[run]), string.Create(CultureInfo.InvariantCulture, $"runs[{run}].setting"));
        if (setting.Mortar is { } mortar && SettingSupplies.Bed(product, setting) == 0 && setting.BackButter == default)
        {
            yield return new(path + ".mortar", $"\"{mortar}\", and nothing that says how thick it lies", "a \"trowel\" beside it, or the tile's \"bondCoat\"", "\"trowel\": { \"width\": .., \"depth\": .., \"tooth\": .. }");
        }

        if (setting.Grout is { } grout && SettingSupplies.Depth(product, setting) == default)
        {
            yield return new(path + ".grout", $"\"{grout}\", and nothing that says how deep the joints are", "the tile's \"thickness\", or a \"jointDepth\" beside it", "measure how thick the tile is");
        }
    }
}
