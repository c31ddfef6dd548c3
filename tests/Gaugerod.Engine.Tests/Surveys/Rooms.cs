using Gaugerod.Engine.Surveys;

namespace Gaugerod.Engine.Tests.Surveys;

/// <summary>A room as it truly is, and a set of readings that settles it.</summary>
/// <param name="Name">What kind it is.</param>
/// <param name="Places">Where its corners truly stand.</param>
/// <param name="Network">The readings, true to the last digit.</param>
internal sealed record TrueRoom(string Name, double[] Places, Network Network)
{
    public int Corners => Places.Length / 2;

    /// <summary>The same readings as a hand takes them: each off by its accuracy after the normal law.</summary>
    public Network Read(Random chance) => Network with { Readings = [.. Network.Readings.Select(r => r with { Value = r.Value + (r.Accuracy * Normal(chance)) })] };

    public static double Normal(Random chance)
    {
        // G. Box and M. Muller 1958.
        var (one, other) = (1 - chance.NextDouble(), chance.NextDouble());
        return Math.Sqrt(-2 * Math.Log(one)) * Math.Cos(2 * Math.PI * other);
    }
}

/// <summary>Rooms at random, out of square as rooms are.</summary>
internal static class Rooms
{
    public const double Accuracy = 1.5;

    public static TrueRoom Any(Random chance) => chance.Next(4) switch
    {
        0 => Four(chance),
        1 => FourAndSquare(chance),
        2 => Ell(chance),
        _ => Wall(chance),
    };

    /// <summary>Four sides and both diagonals.</summary>
    public static TrueRoom Four(Random chance) => True("four sides, two diagonals", Box(chance), [(0, 1), (1, 2), (2, 3), (3, 0), (0, 2), (1, 3)], _ => []);

    /// <summary>The same with three-four-five at two corners.</summary>
    public static TrueRoom FourAndSquare(Random chance) => True(
        "four sides, two diagonals, two corners checked", Box(chance), [(0, 1), (1, 2), (2, 3), (3, 0), (0, 2), (1, 3)],
        _ => [new(ReadingOf.Length, new(0, 1, 1200), new(0, 3, 900), 0, Accuracy), new(ReadingOf.Length, new(2, 3, 1200), new(2, 1, 900), 0, Accuracy)]);

    /// <summary>Six sides and every diagonal.</summary>
    public static TrueRoom Ell(Random chance)
    {
        var (w, h) = (chance.Next(2500, 5000), chance.Next(2200, 4000));
        var (a, b) = (w * (0.35 + (0.3 * chance.NextDouble())), h * (0.35 + (0.3 * chance.NextDouble())));
        double[] places = [0, 0, w, 0, w, b, a, b, a, h, 0, h];
        return True("an L, all measured", Shaken(places, chance), [.. from i in Enumerable.Range(0, 6) from j in Enumerable.Range(i + 1, 5 - i) select (i, j)], _ => []);
    }

    /// <summary>A wall: widths and heights held level and plumb, leans, both diagonals.</summary>
    public static TrueRoom Wall(Random chance)
    {
        var (w, h) = (chance.Next(1200, 4000), chance.Next(2200, 2800));
        var places = Shaken([0, 0, w, 0, w, h, 0, h], chance);
        List<Reading> level =
        [
            Reading.Across(0, 1, 0, Accuracy), Reading.Across(3, 2, 0, Accuracy), Reading.Up(0, 3, 0, Accuracy), Reading.Up(1, 2, 0, Accuracy),
            Reading.Across(0, 3, 0, 1), Reading.Across(1, 2, 0, 1), Reading.Up(0, 1, 0, 1), Reading.Length(0, 2, 0, Accuracy), Reading.Length(1, 3, 0, Accuracy),
        ];
        return Told("a wall", places, level, isWall: true);
    }

    public static bool[] Fixed(int corners, bool isWall)
    {
        var held = new bool[2 * corners];
        (held[0], held[1], held[3]) = (true, true, !isWall);
        return held;
    }

    private static double[] Box(Random chance)
    {
        var (w, h) = (chance.Next(2200, 5000), chance.Next(2000, 4000));
        return Shaken([0, 0, w, 0, w, h, 0, h], chance);
    }

    private static double[] Shaken(double[] places, Random chance)
    {
        for (var i = 2; i < places.Length; i++) places[i] += chance.Next(-60, 61);
        return places;
    }

    private static TrueRoom True(string name, double[] places, (int From, int To)[] lengths, Func<double[], IEnumerable<Reading>> more)
    {
        places[3] = 0;
        return Told(name, places, [.. lengths.Select(l => Reading.Length(l.From, l.To, 0, Accuracy)), .. more(places)], isWall: false);
    }

    private static TrueRoom Told(string name, double[] places, IEnumerable<Reading> readings, bool isWall) => new(
        name, places, new(places.Length / 2, [.. readings.Select(r => r with { Value = ReadingSlope.Of(r, places, new double[places.Length]) })], Fixed(places.Length / 2, isWall)));
}
