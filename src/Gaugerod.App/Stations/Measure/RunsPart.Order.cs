using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Stations.Measure;

/// <summary>What placings are compared by, in the order that counts.</summary>
public sealed partial class RunsPart
{
    // As the job file names them, in the usual order, and as they are said on the page.
    private static readonly (string Word, string Said)[] s_criteria =
    [
        ("musts", "fewest musts missed"), ("wishes", "fewest wishes missed, by their weight"), ("slivers", "fewest slivers"),
        ("smallest", "largest smallest cut"), ("mirror", "left and right most alike"), ("cuts", "fewest tiles cut"), ("tiles", "fewest tiles to buy"),
    ];

    private bool Ordered => JobPath.Get(Desk.Root, At + ".order") is not null;

    // What a file's own order leaves out comes last, so that moving one completes it.
    private IReadOnlyList<string> Order
    {
        get
        {
            var usual = s_criteria.Select(criterion => criterion.Word);
            return [.. JobLists.List(Desk.Root, At + ".order").Select(word => word?.ToString() ?? "").Where(usual.Contains).Concat(usual).Distinct(StringComparer.Ordinal)];
        }
    }

    private static string CriterionWords(string word) => s_criteria.FirstOrDefault(criterion => string.Equals(criterion.Word, word, StringComparison.Ordinal)).Said ?? word;

    private void MoveCriterion(int at, int by)
    {
        var order = Order.ToList();
        (order[at], order[at + by]) = (order[at + by], order[at]);
        var usual = order.SequenceEqual(s_criteria.Select(criterion => criterion.Word), StringComparer.Ordinal);
        Desk.Change($"what counts first on {Name}", root => JobPath.Set(root, At + ".order", usual ? null : new JsonArray([.. order.Select(word => (JsonNode)JsonValue.Create(word))])));
    }

    private void UsualOrder() => Desk.Change($"what counts first on {Name}", root => JobPath.Set(root, At + ".order", null));
}
