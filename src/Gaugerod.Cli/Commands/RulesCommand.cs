using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;

namespace Gaugerod.Cli.Commands;

/// <summary>Prints the published limits that the checks go by.</summary>
internal static class RulesCommand
{
    /// <summary>Does it and gives the exit code.</summary>
    /// <param name="region">A region as the job file has it; null for all.</param>
    /// <param name="desk">Where to print.</param>
    public static async Task<int> Run(string? region, Desk desk)
    {
        var of = Enum.GetValues<Region>().Where(one => region is null || string.Equals(RegionWords.Short(one), region, StringComparison.Ordinal)).ToList();
        var lines = LimitTable.All.Where(limit => of.Contains(limit.Region)).Select(Say).ToList();
        if (!of.Contains(Region.America)) lines.Add("For all else the North American figure is shown, and that it is one.");
        return await desk.Result(string.Join('\n', lines) + "\n") ? Exit.Done : Exit.Unusable;
    }

    private static string Say(PublishedLimit limit) =>
        $"{RegionWords.Short(limit.Region)}  {limit.What}: {limit.Words}. {limit.Do} [{limit.Source}{(limit.Known == Known.Printed ? "" : "; hold it against the document")}]";
}
