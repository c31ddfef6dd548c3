using System.Text.Json.Nodes;
using Gaugerod.App.Parts;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Lines;

/// <summary>The bond turned under the hand: the last angle asked for is shown, those passed over meanwhile are not.</summary>
public sealed partial class LinesStation
{
    private Angle? _turnTo;
    private bool _turning;

    private void Turning(Angle turn)
    {
        _turnTo = turn;
        if (!_turning) _ = TurnAsync();
    }

    private async Task TurnAsync()
    {
        _turning = true;
        while (_turnTo is { } turn && _bench is { } bench && _plan is { } plan)
        {
            _turnTo = null;
            var round = ++_round;
            var turned = await bench.TurnedAsync(plan, turn);
            if (round != _round) break;
            (_bench, _stale) = (turned, true);
            StateHasChanged();
            await Task.Delay(1);
        }

        _turning = false;
    }

    // A place chosen by hand belongs to the turn it was chosen in.
    private void Turned(Angle turn)
    {
        if (_bench is not { } bench) return;
        _turnTo = null;
        var path = FormattableString.Invariant($"runs[{bench.Index}]");
        Desk.Change($"turn of {bench.Run.Request.Name}", root =>
        {
            FieldValue.Put(root, path + ".bond.turned", turn == Angle.Zero ? null : JsonValue.Create(turn.Degrees));
            FieldValue.Put(root, path + ".place", null);
        });
    }
}
