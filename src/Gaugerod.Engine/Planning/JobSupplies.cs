using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Gathers what a job takes of what is bought by the pack.</summary>
internal static class JobSupplies
{
    /// <summary>A line for every supply that is used, in the job's order; then what beds are made of.</summary>
    public static Sequence<SupplyLine> Of(Job job, IReadOnlyList<RunPlan> runs, JobBases bases, IReadOnlyList<MovementJoint> movement, BoardPlan boards)
    {
        var uses = job.Supplies.ToDictionary(supply => supply.Name, _ => new List<SupplyUse>(), StringComparer.Ordinal);
        var alike = SameCorners.Of(job, runs);
        foreach (var (of, use) in UnderSupplies.Of(job, bases, alike).Concat(runs.SelectMany(run => SettingSupplies.Of(job, run))).Concat(SoftSupplies.Of(job, runs, alike, movement)).Concat(BoardSupplies.Of(job, boards))) uses[of].Add(use);
        var lines = job.Supplies.Where(supply => uses[supply.Name].Count > 0).Select(supply => new SupplyLine(supply, uses[supply.Name].ToSequence()));
        return lines.Concat(Mixes(job, bases)).ToSequence();
    }

    private static IEnumerable<SupplyLine> Mixes(Job job, JobBases bases) => bases.Beds
        .Where(bed => bed.Request.Bag is not null)
        .GroupBy(bed => new Supply(bed.Request.Bag!.Called, SupplyKind.Mix, "bag", bed.Request.Bag.Litres))
        .Select(beds => new SupplyLine(beds.Key, beds.Select(bed => new SupplyUse(bed.Face, bed.Volume / 1e6, $"its bed, {Amounts.Area(bed.Area, job.Tape)}")).ToSequence()));
}
