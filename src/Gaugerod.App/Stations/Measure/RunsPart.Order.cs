using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Measure;

/// <summary>What placings are compared by, in the order that counts.</summary>
public sealed partial class RunsPart : IAsyncDisposable
{
    private Script? _stay;
    private (string Id, double Stood, int Key)? _moved;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

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

    private string CriterionId(string word) => FieldId.Of($"{At}.order.{word}");

    private async Task MoveCriterionAsync(int at, int by)
    {
        var order = Order.ToList();
        var id = CriterionId(order[at]);
        var stood = await (_stay ??= new(Js, "stay")).AskAsync<double>("top", id);
        _moved = (id, stood, by < 0 ? 0 : 1);
        (order[at], order[at + by]) = (order[at + by], order[at]);
        var usual = order.SequenceEqual(s_criteria.Select(criterion => criterion.Word), StringComparer.Ordinal);
        Desk.Change($"what counts first on {Name}", root => JobPath.Set(root, At + ".order", usual ? null : new JsonArray([.. order.Select(word => (JsonNode)JsonValue.Create(word))])));
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_moved is not { } moved) return;
        _moved = null;
        await _stay!.TellAsync("hold", moved.Id, moved.Stood, moved.Key);
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync() => _stay?.DisposeAsync() ?? ValueTask.CompletedTask;

    private void UsualOrder() => Desk.Change($"what counts first on {Name}", root => JobPath.Set(root, At + ".order", null));
}
