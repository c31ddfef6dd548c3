namespace Gaugerod.Engine.Surveys;

/// <summary>What is taken for granted where too little was read: as few things as settle the shape.</summary>
internal static class Assumed
{
    /// <summary>How far a corner taken as square, or a side taken as level or plumb, may well be off, in mm at a metre: common practice, no source.</summary>
    public const double Accuracy = 5;

    /// <summary>The readings with what must be assumed beside them, these last.</summary>
    /// <param name="network">What was read.</param>
    /// <param name="start">Where the corners may stand.</param>
    /// <param name="parts">The faces they were read on. Of a wall level and plumb are known: they are assumed before square corners.</param>
    public static Network Settle(Network network, double[] start, NetworkPart[] parts)
    {
        var rank = Rank(network, start);
        foreach (var assumed in parts.SelectMany(part => Likely(part.Corners, start.AsSpan(2 * part.Spot), part.Survey.IsTied).ConvertAll(of => of.Past(part.Spot))))
        {
            if (rank == network.Free.Length) break;
            if (!SaysMore(network, assumed, start)) continue;
            (network, rank) = (network.With(assumed), rank + 1);
        }

        return network;
    }

    /// <summary>Whether a reading would settle something that is still open.</summary>
    public static bool SaysMore(Network network, in Reading more, double[] start) => Rank(network.With(more), start) > Rank(network, start);

    /// <summary>Whether the readings settle every corner.</summary>
    public static bool Settles(Network network, double[] start) => Rank(network, start) == network.Free.Length;

    private static int Rank(Network network, double[] start) => new LeastSquares(network.Slopes(start, out _), Adjustment.Least).Rank;

    private static List<Reading> Likely(int corners, ReadOnlySpan<double> start, bool isWall)
    {
        var likely = new List<Reading>();
        for (var side = 0; isWall && side < corners; side++)
        {
            var to = (side + 1) % corners;
            var (dx, dy) = (Math.Abs(start[2 * to] - start[2 * side]), Math.Abs(start[(2 * to) + 1] - start[(2 * side) + 1]));
            if (dx > 5 * dy) likely.Add(Reading.Up(side, to, 0, Accuracy));
            else if (dy > 5 * dx) likely.Add(Reading.Across(side, to, 0, Accuracy));
        }

        for (var corner = 0; corner < corners; corner++)
        {
            likely.Add(Reading.Square((corner + corners - 1) % corners, corner, (corner + 1) % corners, Accuracy));
        }

        return likely;
    }
}
