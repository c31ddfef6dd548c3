using Microsoft.JSInterop;

namespace Gaugerod.App.Stations.Lines;

/// <summary>The piece picked out on the drawing. The page outlines what is handed back, a path; the card says it in words.</summary>
public sealed partial class LinesStation
{
    private PieceCard? _card;
    private Picking? _picking;

    /// <summary>Called by the page: the drawing was tapped.</summary>
    /// <param name="x">Where, in the drawing's units from its left.</param>
    /// <param name="y">And from its top.</param>
    /// <param name="nearest">Whether the nearest piece will do where there is none.</param>
    [JSInvokable]
    public string Tap(double x, double y, bool nearest)
    {
        if (_bench is not { } bench || _picking is not { } picking) return "";
        if (!bench.IsPlanned)
        {
            _card?.Show(null, "The pieces are being worked out for where the rods stand now. Tap again in a moment.");
            return "";
        }

        picking.At(x, y, nearest);
        return Picked(picking);
    }

    /// <summary>Called by the page: on to the piece after, or back to the one before, as one reads the walls.</summary>
    [JSInvokable]
    public string Step(int by)
    {
        _picking?.Step(by);
        return _picking is { } picking ? Picked(picking) : "";
    }

    /// <summary>Called by the page: on to the piece beside it on the drawing.</summary>
    [JSInvokable]
    public string Beside(int right, int up)
    {
        _picking?.Beside(right, up);
        return _picking is { } picking ? Picked(picking) : "";
    }

    /// <summary>Called by the page: no piece is picked any more.</summary>
    [JSInvokable]
    public void Unpick()
    {
        _picking?.Clear();
        _card?.Show(null);
    }

    private string Picked(Picking picking)
    {
        _card?.Show(picking.Said);
        if (picking.Face is { } face && face != _bench!.Face) _ = TouchPickedAsync(face);
        return picking.Outline;
    }

    private async Task TouchPickedAsync(int face)
    {
        await TouchAsync(face);
        StateHasChanged();
    }
}
