using Gaugerod.Engine.Sharing;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>Random convex pieces of a tile as rakes and turned bonds leave them, the same for the same seed.</summary>
internal static class Outlines
{
    /// <summary>A tile and two pieces of it, the first of them no rectangle.</summary>
    public static (Stock Stock, Cutout One, Cutout Other) Two(int seed)
    {
        var random = new Random(seed);
        var stock = new Stock(300, seed % 3 == 0 ? 300 : 200, seed % 4, Turns.Half);
        if (seed % 5 == 0) stock = stock with { Turns = Turns.None };
        else if (seed % 3 == 0) stock = stock with { Turns = Turns.Quarters };
        return (stock, Any(stock, random), seed % 6 == 1 ? Rectangle(stock, random) : Any(stock, random));
    }

    /// <summary>So many pieces of one tile.</summary>
    public static (Stock Stock, List<Cutout> Pieces) Many(int seed, int count)
    {
        var random = new Random(seed);
        var stock = new Stock(300, 300, 2, Turns.Quarters);
        return (stock, [.. Enumerable.Range(0, count).Select(_ => random.Next(3) == 0 ? Rectangle(stock, random) : Any(stock, random))]);
    }

    private static Cutout Rectangle(Stock stock, Random random)
    {
        var (width, height) = (random.Next(20, 280), random.Next(20, (int)stock.Height - 20));
        return new(new(width, height, (Sides)random.Next(16) switch { var s when (s & (Sides.Left | Sides.Right)) == (Sides.Left | Sides.Right) || (s & (Sides.Bottom | Sides.Top)) == (Sides.Bottom | Sides.Top) => Sides.Left | Sides.Bottom, var s => s }), null);
    }

    private static Cutout Any(Stock stock, Random random)
    {
        var (w, h) = (stock.Width, stock.Height);
        var (a, b) = (random.Next(20, (int)w - 20), random.Next(20, (int)h - 20));
        var outline = random.Next(4) switch
        {
            // A taper, not far from straight.
            0 => new Outline([new(0, 0), new(a, 0), new(Math.Clamp(a + random.Next(-15, 16) is var to && to == a ? a + 1 : to, 1, w - 1), h), new(0, h)]),
            1 => new([new(0, 0), new(a, 0), new(0, b)]),
            2 => new([new(0, 0), new(w, 0), new(w, b), new(a, h), new(0, h)]),
            _ => new([new(0, 0), new(w, 0), new(0, h)]),
        };
        return Cutout.Of(outline.Turned(random.Next(2) * 2, stock), stock);
    }
}
