using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// Zones that might do in place of one that cannot be cut, the nearest to what was asked first. They are guesses at where it
/// ends clear of what is in its way; whether one does is seen by cutting it.
/// </summary>
internal sealed class ZoneOffers(Tape tape)
{
    private const int Shrinks = 16;

    /// <summary>Bands with another foot, another head or both, or moved as they are.</summary>
    /// <param name="band">The band.</param>
    /// <param name="marks">Heights at which it may end: where other zones and the face do.</param>
    public IEnumerable<ZoneOffer> Of(Zone.Strip band, IReadOnlyCollection<Length> marks)
    {
        var (from, to) = (band.From, band.To);
        var offers = marks.Select(mark => band with { From = mark }).Concat(marks.Select(mark => band with { To = mark }));
        if (to is { } head && head > from) offers = offers.Concat(marks.SelectMany(mark => new[] { band with { From = mark, To = mark + head - from }, band with { From = mark - head + from, To = mark } }));
        offers = offers.Concat(marks.SelectMany(low => marks.Select(high => band with { From = low, To = high })));
        if (to is { } foot && foot < from) offers = offers.Prepend(band with { From = foot, To = from });
        var end = to ?? marks.Max();
        return offers.Where(offer => offer.To is not { } top || top > offer.From)
            .OrderBy(offer => offer.From == to && offer.To == from ? 0 : (offer.From - from).Abs().Steps + ((offer.To ?? end) - end).Abs().Steps)
            .Select(offer => new ZoneOffer(offer, Words(band, offer)));
    }

    /// <summary>Rugs of which a side or two stand elsewhere, or that lie elsewhere as they are, or smaller round their middle.</summary>
    /// <param name="rug">The rug.</param>
    /// <param name="lefts">Where its left side may stand, right of what is in its way.</param>
    /// <param name="rights">Where its right side may stand, left of what is in its way.</param>
    /// <param name="bottoms">Where its foot may stand.</param>
    /// <param name="tops">Where its head may stand.</param>
    /// <param name="least">The least it may be wide and high.</param>
    public IEnumerable<ZoneOffer> Of(Zone.Rug rug, IReadOnlyCollection<Length> lefts, IReadOnlyCollection<Length> rights, IReadOnlyCollection<Length> bottoms, IReadOnlyCollection<Length> tops, Length least)
    {
        var box = rug.Box;
        var across = Spans(box.Left, box.Right, lefts, box.Width < least ? [.. rights, box.Left + least] : rights).ToList();
        var up = Spans(box.Bottom, box.Top, bottoms, box.Height < least ? [.. tops, box.Bottom + least] : tops).ToList();
        var boxes = across.SelectMany(wide => up.Select(high => new Box(wide.From, high.From, wide.To, high.To))).Concat(Shrunk(box));
        return boxes.Where(other => other != box && other.Right > other.Left && other.Top > other.Bottom)
            .OrderBy(other => Moved(box.Left, box.Right, other.Left, other.Right) + Moved(box.Bottom, box.Top, other.Bottom, other.Top))
            .Select(other => new ZoneOffer(rug with { Box = other }, Words(rug, other)));
    }

    /// <summary>A length to the last mark at or below it.</summary>
    public Length Down(Length length) => tape.Down(length);

    /// <summary>A length to the first mark above it.</summary>
    public Length Up(Length length) => tape.Down(length) + tape.Mark;

    // As it is; with one end elsewhere; moved as it is; with both ends elsewhere.
    private static IEnumerable<(Length From, Length To)> Spans(Length from, Length to, IReadOnlyCollection<Length> least, IReadOnlyCollection<Length> most) =>
        new[] { (from, to) }
            .Concat(least.SelectMany(low => new[] { (low, to), (low, low + to - from) }))
            .Concat(most.SelectMany(high => new[] { (from, high), (high - to + from, high) }))
            .Concat(least.SelectMany(low => most.Select(high => (low, high))))
            .Distinct();

    private IEnumerable<Box> Shrunk(Box box)
    {
        for (var i = Shrinks - 1; i > 0; i--)
        {
            var (x, y) = (Part(box.Width), Part(box.Height));
            yield return new(box.Left + x, box.Bottom + y, box.Right - x, box.Top - y);
            // From one corner or side, for a face with slopes.
            foreach (var right in new[] { box.Right, box.Right - (x * 2) })
            {
                foreach (var top in new[] { box.Top, box.Top - (y * 2) }) yield return new(box.Left, box.Bottom, right, top);
            }

            Length Part(Length size) => tape.Down(Length.FromSteps(size.Steps * (Shrinks - i) / (2 * Shrinks)));
        }
    }

    /// <summary>What a change is to the setter: how much is taken off or put on, and how far the thing is moved; size weighs more.</summary>
    private static long Moved(Length from, Length to, Length otherFrom, Length otherTo) =>
        ((otherTo - otherFrom) - (to - from)).Abs().Steps + Math.Min((otherFrom - from).Abs().Steps, (otherTo - to).Abs().Steps);

    private string Words(Zone.Strip was, Zone.Strip now)
    {
        if (was.From == now.To && was.To == now.From) return "the two heights exchanged";
        var parts = new List<string>();
        if (was.From != now.From) parts.Add($"from {Say(now.From - was.ReadFrom)}");
        if (was.To != now.To) parts.Add(now.To is { } head ? $"to {Say(head - was.ReadFrom)}" : "no \"to\"");
        return string.Join(" ", parts) + (was.ReadFrom == Length.Zero ? "" : ", counted from the level line");
    }

    private string Words(Zone.Rug was, Box now)
    {
        var (box, parts) = (was.Box, new List<string>());
        if (box.Left != now.Left) parts.Add($"left {Say(now.Left)}");
        if (box.Bottom != now.Bottom) parts.Add($"bottom {Say(now.Bottom - was.ReadFrom)}{(was.ReadFrom == Length.Zero ? "" : " from the level line")}");
        if (box.Width != now.Width) parts.Add($"width {Say(now.Width)}");
        if (box.Height != now.Height) parts.Add($"height {Say(now.Height)}");
        return string.Join(", ", parts);
    }

    private string Say(Length length) => LengthText.Finer(length, tape);
}
