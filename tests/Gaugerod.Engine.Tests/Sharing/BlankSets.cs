using Gaugerod.Engine.Sharing;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>Random jobs at the saw, the same for the same seed.</summary>
internal static class BlankSets
{
    /// <summary>Two fifths corner pieces, a quarter strips of one way and a fifth of the other, some strips that need no end, a few pieces with one factory side.</summary>
    public static (Stock Stock, List<Blank> Blanks) Mixed(int seed, int count)
    {
        var random = new Random(seed);
        var stock = new Stock(300, 200, seed % 2 == 0 ? 2 : 0, (seed % 5) switch { 0 => Turns.None, _ => Turns.Half });
        if (seed % 7 == 3) stock = stock with { Height = 300, Turns = Turns.Quarters };
        var blanks = new List<Blank>(count);
        for (var i = 0; i < count; i++)
        {
            var (width, height) = (random.Next(20, 280), random.Next(20, (int)stock.Height - 20));
            var (kind, side) = (random.NextDouble(), random.Next(4));
            blanks.Add(kind switch
            {
                < 0.4 => new(width, height, Corner(side)),
                < 0.65 => new(width, stock.Height, Sides.Bottom | Sides.Top | (side < 2 ? Sides.Left : Sides.Right)),
                < 0.85 => new(stock.Width, height, Sides.Left | Sides.Right | (side < 2 ? Sides.Bottom : Sides.Top)),
                < 0.95 => new(width, stock.Height, Sides.Bottom | Sides.Top),
                _ => new(width, height, (Sides)(1 << side)),
            });
        }

        return (stock, blanks);
    }

    /// <summary>Corner pieces only.</summary>
    public static (Stock Stock, List<Blank> Blanks) Corners(int seed, int count)
    {
        var random = new Random(seed);
        var stock = new Stock(300, 200, 2, Turns.Half);
        var blanks = new List<Blank>(count);
        for (var i = 0; i < count; i++) blanks.Add(new(random.Next(20, 280), random.Next(20, 180), Corner(random.Next(4))));
        return (stock, blanks);
    }

    private static Sides Corner(int number) => number switch
    {
        0 => Sides.Left | Sides.Bottom,
        1 => Sides.Right | Sides.Bottom,
        2 => Sides.Right | Sides.Top,
        _ => Sides.Left | Sides.Top,
    };
}
