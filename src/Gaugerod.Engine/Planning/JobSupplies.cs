using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Sharing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Gathers what a job takes of what is bought by the pack.</summary>
internal static class JobSupplies
{
    /// <summary>A line for every supply that is used, in the job's order; then what beds are made of.</summary>
    public static Sequence<SupplyLine> Of(Job job, IReadOnlyList<RunPlan> runs, JobBases bases, IReadOnlyList<MovementJoint> movement, BoardPlan boards)
    {
        var uses = job.Supplies.ToDictionary(supply => supply.Name, _ => new List<SupplyUse>(), StringComparer.Ordinal);
        var alike = SameCorners.Of(job, runs);
        foreach (var (of, use) in UnderSupplies.Of(job, bases, boards, alike).Concat(runs.SelectMany(run => SettingSupplies.Of(job, run))).Concat(SoftSupplies.Of(job, runs, alike, movement)).Concat(BoardSupplies.Of(job, boards)).Concat(runs.SelectMany(run => BattenSupplies.Of(job, run))).Concat(Fills(job))) uses[of].Add(use);
        var lines = job.Supplies.Where(supply => uses[supply.Name].Count > 0).Select(supply => Line(supply, uses[supply.Name].ToSequence()));
        return lines.Concat(Mixes(job, bases)).ToSequence();
    }

    // Battens of all runs are cut together: they hang at the same time.
    private static SupplyLine Line(Supply supply, Sequence<SupplyUse> uses) => new(supply, uses)
    {
        Lengths = uses.SelectMany(use => use.Pieces).Select(piece => piece.Steps).ToList() is { Count: > 0 } pieces ? Bars.Count(BattenSupplies.BarOf(supply).Steps, pieces) : null,
    };

    private static IEnumerable<(string Of, SupplyUse Use)> Fills(Job job) => job.Fills.Select(fill => (fill.Of, new SupplyUse(
        fill.Name, fill.Litres, $"{LengthText.Nearest(fill.Length, job.Tape)} by {LengthText.Nearest(fill.Width, job.Tape)} by {LengthText.Nearest(fill.Height, job.Tape)}")));

    private static IEnumerable<SupplyLine> Mixes(Job job, JobBases bases) => bases.Beds
        .Where(bed => bed.Request.Bag is not null)
        .GroupBy(bed => new Supply(bed.Request.Bag!.Called, SupplyKind.Mix, "bag", bed.Request.Bag.Litres))
        .Select(beds => new SupplyLine(beds.Key, beds.Select(bed => new SupplyUse(bed.Face, bed.Volume / 1e6, $"its bed, {Amounts.Area(bed.Area, job.Tape)}")).ToSequence()));
}
