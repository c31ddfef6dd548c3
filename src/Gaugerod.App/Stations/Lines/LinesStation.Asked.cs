using System.Text.Json.Nodes;
using Gaugerod.Engine.Lines;

namespace Gaugerod.App.Stations.Lines;

/// <summary>What is asked for at the station, written to the job.</summary>
public sealed partial class LinesStation
{
    private Task TapEdgeHereAsync(string edge) => TapEdgeAsync(_bench!.Face, edge);

    private void CloseEdge() => _edge = "";

    private void Ask(JsonObject want)
    {
        if (_bench is not { } bench) return;
        Desk.Change("a want", root =>
        {
            var run = root["runs"]!.AsArray()[bench.Index]!.AsObject();
            if (run["wants"] is not JsonArray wants) run["wants"] = wants = [];
            wants.Add((JsonNode)want);
        });
        _edge = "";
        _card?.Show(null, "Asked for. Whether it is held stands under Wants, once it is worked out.");
    }

    private void TakeOut(Want want)
    {
        if (_bench is not { } bench) return;
        // What the plan wishes by itself, of things that give way, is not in the job; and a strip has only what is wanted of it.
        var at = bench.Job.Runs[bench.Index].Wants.ToList().IndexOf(want is Want.InLine line ? line with { At = null } : want);
        var own = (Desk.Root["runs"] as JsonArray)?[bench.Index]?["wants"] as JsonArray;
        if (at >= 0 && at < (own?.Count ?? 0)) Desk.Set(FormattableString.Invariant($"runs[{bench.Index}].wants[{at}]"), null, "a want taken out");
    }
}
