using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sharing;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Cutting;

/// <summary>
/// What the fence is set to. Sizes no further apart than the tolerance share a setting, the smallest of them, so that no piece comes
/// out too large. From the largest size down each setting takes in all it may: no other way has fewer, since the largest of each
/// lies further from those of the others than one setting reaches.
/// </summary>
internal sealed class Fences
{
    private readonly Dictionary<Length, Length> _settings = [];
    private readonly Tape _tape;
    private readonly Length _keep;
    private readonly Length _least;

    /// <param name="product">The tile.</param>
    /// <param name="pieces">The pieces that are cut against a fence.</param>
    /// <param name="tape">The tape the fence is set by.</param>
    /// <param name="aims">How far sizes may differ, and what is kept.</param>
    public Fences(Product product, IEnumerable<Piece> pieces, Tape tape, CuttingAims aims)
    {
        (_tape, _keep, _least) = (tape, aims.Keep, product.Snaps ?? Length.Zero);
        var sizes = pieces.SelectMany(piece => piece.Cuts).Select(cut => tape.Down(cut.Least)).Distinct().OrderDescending().ToList();
        for (var from = 0; from < sizes.Count;)
        {
            var to = from + 1;
            while (to < sizes.Count && sizes[from] - sizes[to] <= aims.Fence) to++;
            for (var i = from; i < to; i++) _settings[sizes[i]] = sizes[to - 1];
            from = to;
        }
    }

    /// <summary>The setting for what is to be kept.</summary>
    public Length For(Length kept) => _tape.Down(kept) is var size && _settings.TryGetValue(size, out var setting) ? setting : size;

    /// <summary>As the other, in steps.</summary>
    public Length For(long kept) => For(Length.FromSteps(kept));

    /// <summary>Whether an offcut is large enough to keep.</summary>
    public bool IsKept(Area area) => Math.Min(area.Width, area.Height) >= _keep.Steps;

    /// <summary>Whether a strip breaks off clean, where the tile is snapped; any does under a saw.</summary>
    public bool Parts(long strip) => strip >= _least.Steps;

    /// <summary>As the other.</summary>
    public bool IsKept(Box box) => Length.Min(box.Width, box.Height) >= _keep;
}
