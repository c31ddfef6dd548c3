using System.Globalization;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What the tiles left over in the boxes allow, and what one more box would.</summary>
internal static class BoxFreedom
{
    /// <summary>In words; empty where tiles are bought one by one.</summary>
    /// <param name="order">What is bought.</param>
    /// <param name="simple">How many tiles it takes to cut so that no offcut waits for another setting of the fence.</param>
    /// <param name="alone">How many it takes when every cut piece has a tile to itself.</param>
    internal static string Words(OrderLine order, int simple, int alone)
    {
        if (order.Pack < 2) return "";
        var words = new List<string>();
        var (more, all) = (Math.Max(0, simple - order.Planned), Math.Max(0, alone - order.Planned));
        if (more > 0) words.Add(Say(order, more, "cut so that no offcut waits for another setting of the fence", simple));
        if (all > more) words.Add(Say(order, all, "give every cut piece a tile to itself", alone));
        var next = order.Over + order.Pack;
        words.Add(string.Create(CultureInfo.InvariantCulture, $"One more box leaves {next} tiles over, to spoil or to keep for repairs from the same lot."));
        return string.Join(' ', words);
    }

    private static string Say(OrderLine order, int more, string what, int tiles)
    {
        var boxes = (Math.Max(0, more - order.Over) + order.Pack - 1) / order.Pack;
        var counted = string.Create(CultureInfo.InvariantCulture, $"to {what} takes {more} {(more == 1 ? "tile" : "tiles")} more, {tiles} in place of {order.Planned}");
        var buys = boxes switch { 0 => "these boxes hold them", 1 => "one more box", _ => string.Create(CultureInfo.InvariantCulture, $"{boxes} more boxes") };
        return char.ToUpperInvariant(counted[0]) + counted[1..] + ": " + buys + ".";
    }
}
