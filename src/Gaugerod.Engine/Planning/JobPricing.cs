using System.Globalization;
using Gaugerod.Engine.Prices;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Prices a plan that is done. Nothing of a plan but its price hangs on prices, so nothing is searched for them.</summary>
public static class JobPricing
{
    /// <summary>What has to be said of prices among the findings carries this rule.</summary>
    internal const string Rule = "price";

    /// <summary>The plan with its price; as it is where the job states no prices.</summary>
    public static Plan Priced(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var others = plan.Findings.Where(finding => !string.Equals(finding.Rule, Rule, StringComparison.Ordinal));
        if (plan.Job.Prices is not { } request) return plan.Price is null ? plan : plan with { Price = null, Findings = others.ToSequence() };
        var kinds = request.Labour.Select(task => task.Of).OfType<LabourOf>().ToHashSet();
        var estimate = Estimator.Of(request, JobBuying.Of(plan), kinds.Count == 0 ? [] : JobLabour.Of(plan, kinds));
        return plan with { Price = estimate, Findings = SetSteps.InOrder(others.Concat(Findings(estimate)).Concat(Paces(estimate, plan.Work))) };
    }

    /// <summary>The plan with the prices of a list beside those of its job, which come first, and with what became of every line of the list.</summary>
    /// <param name="plan">A plan.</param>
    /// <param name="list">The list's lines, as read.</param>
    /// <param name="currency">What prices are in where the job does not say.</param>
    public static Plan With(Plan plan, Sequence<ListLine> list, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(list);
        var (request, lines) = ListMatching.Of(plan.Job.Prices ?? new(currency), list, JobBuying.Of(plan));
        var priced = Priced(plan with { Job = plan.Job with { Prices = request } });
        return priced with { Price = priced.Price! with { List = lines } };
    }

    /// <summary>What the plan buys, and the words of the units that each may be priced by, the usual first.</summary>
    public static IEnumerable<(string Item, IReadOnlyList<string> Ways)> Ways(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return JobBuying.Of(plan).Select(one => (one.Item, (IReadOnlyList<string>)[.. one.Ways.Select(way => PriceUnits.Word(way.Unit)).Distinct(StringComparer.Ordinal)]));
    }

    // A pace in the price and one in the order of work are two, and cutting stands in the latter only: who offers by the one and works by the other gives hours away.
    private static IEnumerable<Finding> Paces(Estimate estimate, WorkPlan? work)
    {
        const double Far = 1.25;
        var paid = estimate.Request.Labour.Zip(estimate.Lines.Where(line => line.Group == CostGroup.Labour))
            .Where(pair => pair.First is { Pace: not null, Of: LabourOf.TiledArea or LabourOf.Pieces or LabourOf.CutPieces }).Sum(pair => (double)pair.Second.Quantity.Likely);
        var planned = (work?.Tasks ?? []).Where(task => task.Kind == WorkKind.Setting).Sum(task => task.Minutes ?? 0) / 60.0;
        if (paid == 0 || planned == 0 || (planned <= paid * Far && paid <= planned * Far)) yield break;
        yield return new(
            FindingLevel.Warn, Rule, "the price", "Setting and cutting take other hours in the price than in the order of work: their paces are two. Make one of them that of the other, or leave one out.",
            string.Create(CultureInfo.InvariantCulture, $"{planned:0.#} h in the order of work"), string.Create(CultureInfo.InvariantCulture, $"{paid:0.#} h in the price"), "the paces entered");
    }

    private static IEnumerable<Finding> Findings(Estimate estimate)
    {
        var lacking = estimate.Lacking.ToList();
        if (lacking.Count > 0)
        {
            yield return new(
                FindingLevel.Warn, Rule, "the price", $"No total holds what has no price: {string.Join("; ", lacking.Select(line => $"{line.What} ({line.Lacks})"))}.", "", "", "the prices entered");
        }

        foreach (var idle in estimate.NotUsed) yield return new(FindingLevel.Note, Rule, "the price", $"A price is not used. {idle}.", "", "", "the prices entered");
    }
}
