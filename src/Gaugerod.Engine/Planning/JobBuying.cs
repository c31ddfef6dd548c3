using System.Globalization;
using Gaugerod.Engine.Prices;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Planning;

/// <summary>Brings what a plan buys to its prices: how many packs, and by what units each may be priced.</summary>
internal static class JobBuying
{
    private const decimal Step = 3200;

    /// <summary>All that is bought, in the order it is listed in.</summary>
    public static IReadOnlyList<Bought> Of(Plan plan) => [.. plan.Order.Select(line => Ordered(plan, line)), .. plan.Supplies.Select(line => Packed(plan.Job, line))];

    /// <summary>Low is what the plan takes and what is left with the client: nothing breaks, and no flat share is wanted.</summary>
    private static Bought Ordered(Plan plan, OrderLine line)
    {
        var least = (decimal)((line.Planned + line.Spares + line.Pack - 1) / line.Pack);
        return new(line.Item, new(Math.Min(least, line.Packs), line.Packs, line.Packs), [.. Ways(plan, line)], line.Basis.TrimEnd('.'));
    }

    private static IEnumerable<BuyingWay> Ways(Plan plan, OrderLine line)
    {
        if (line.Pack > 1) yield return new(PriceUnit.Box, 1, string.Create(CultureInfo.InvariantCulture, $"box of {line.Pack}"));
        yield return new(PriceUnit.Each, line.Pack, line.Unit);
        if (plan.Job.Trims.FirstOrDefault(trim => string.Equals(trim.Name, line.Item, StringComparison.Ordinal)) is { IsWorked: false } trim)
        {
            var metres = trim.Stock.Millimetres / 1000;
            yield return new(PriceUnit.Metre, metres, PriceUnits.Word(PriceUnit.Metre));
            yield return new(PriceUnit.Foot, PriceUnits.In(PriceUnit.Foot, metres), PriceUnits.Word(PriceUnit.Foot));
        }
        else if (SquareMetres(plan, line.Item) is { } area)
        {
            yield return new(PriceUnit.SquareMetre, line.Pack * area, PriceUnits.Word(PriceUnit.SquareMetre));
            yield return new(PriceUnit.SquareFoot, line.Pack * PriceUnits.In(PriceUnit.SquareFoot, area), PriceUnits.Word(PriceUnit.SquareFoot));
        }
    }

    /// <summary>What a bare tile covers, without joints, or a sheet of board; null where nothing of it is laid.</summary>
    private static decimal? SquareMetres(Plan plan, string product)
    {
        if (plan.Job.Boards.FirstOrDefault(board => string.Equals(board.Name, product, StringComparison.Ordinal)) is { } board) return board.Width.Millimetres * board.Length.Millimetres / 1_000_000;
        var piece = plan.Runs.SelectMany(run => run.Faces).SelectMany(face => face.Pieces).FirstOrDefault(piece => string.Equals(piece.Product, product, StringComparison.Ordinal));
        return piece is null ? null : (decimal)piece.Tile.DoubledArea / 2 / (Step * Step) / 1_000_000;
    }

    /// <summary>Low is without loss.</summary>
    private static Bought Packed(Job job, SupplyLine line)
    {
        var least = (line with { Supply = line.Supply with { LossPercent = 0 } }).Packs;
        return new(line.Supply.Name, new(least, line.Packs, line.Packs), [.. Ways(line.Supply)], SupplyWords.Basis(line, job.Tape).TrimEnd('.'));
    }

    // What is counted is priced by the piece, what is measured by its measure too; a bag has no other price than a bag's.
    private static IEnumerable<BuyingWay> Ways(Supply supply)
    {
        yield return new(PriceUnit.Pack, 1, supply.Pack);
        PriceUnit[] units = supply.Measure switch
        {
            SupplyMeasure.Length => [PriceUnit.Metre, PriceUnit.Foot],
            SupplyMeasure.Area => [PriceUnit.SquareMetre, PriceUnit.SquareFoot],
            _ => [PriceUnit.Each],
        };
        var makes = supply.Measure == SupplyMeasure.Volume ? 1 : (decimal)supply.Makes;
        foreach (var unit in units) yield return new(unit, PriceUnits.In(unit, makes), unit == PriceUnit.Each && supply.Measure == SupplyMeasure.Volume ? supply.Pack : PriceUnits.Word(unit));
    }
}
