namespace Gaugerod.Engine.Surveys;

/// <summary>What is taken for granted where too little was read: as few things as settle the shape.</summary>
internal static class Assumed
{
    /// <summary>How far a corner taken as square, or a side taken as level or plumb, may well be off, in mm at a metre: common practice, no source.</summary>
    public const double Accuracy = 5;

    /// <summary>The readings with what must be assumed beside them, these last.</summary>
    /// <param name="network">What was read.</param>
    /// <param name="start">Where the corners may stand.</param>
    /// <param name="corners">How many of the spots are corners.</param>
    /// <param name="isWall">Whether level and plumb are known of it: they are assumed before square corners.</param>
    public static Network Settle(Network network, double[] start, int corners, bool isWall)
    {
        var rank = Rank(network, start);
        foreach (var assumed in Likely(corners, start, isWall))
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

    private static IEnumerable<Reading> Likely(int corners, double[] start, bool isWall)
    {
        for (var side = 0; isWall && side < corners; side++)
        {
            var to = (side + 1) % corners;
            var (dx, dy) = (Math.Abs(start[2 * to] - start[2 * side]), Math.Abs(start[(2 * to) + 1] - start[(2 * side) + 1]));
            if (dx > 5 * dy) yield return Reading.Up(side, to, 0, Accuracy);
            else if (dy > 5 * dx) yield return Reading.Across(side, to, 0, Accuracy);
        }

        for (var corner = 0; corner < corners; corner++)
        {
            yield return Reading.Square((corner + corners - 1) % corners, corner, (corner + 1) % corners, Accuracy);
        }
    }
}
