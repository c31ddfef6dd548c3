namespace Gaugerod.Engine.Patterns;

/// <summary>A want or a limit, made ready to be checked against what lines do to tiles.</summary>
/// <param name="Want">Its place among the run's wants; -1 for what the limits ask.</param>
/// <param name="Must">Whether it is a must.</param>
/// <param name="Weight">A wish's weight.</param>
internal abstract record PatternCheck(int Want, bool Must, int Weight)
{
    /// <summary>Whether it is surely missed under every one of the ways reckoned; for one way alone, whether it is missed.</summary>
    public abstract bool IsMissed(Reckoning reckoning, in Shifts shifts);

    /// <summary>The want that it is the aim of, as <see cref="Lines.Check.AimOf"/>.</summary>
    public int? AimOf { get; init; }

    /// <summary>Whether the tool asks for it unasked, so that it counts after slivers.</summary>
    public bool IsLate { get; init; }

    /// <summary>The moves that may hold it, where only some do: the search looks along them too. Null where it may be held anywhere.</summary>
    public PointsOnLine? Through { get; init; }

    /// <summary>No leg at some lines is under a size.</summary>
    public sealed record AtLeast(int Want, bool Must, int Weight, int[] Lines, double Size) : PatternCheck(Want, Must, Weight)
    {
        public override bool IsMissed(Reckoning reckoning, in Shifts shifts) => Lines.Any(line => reckoning.Least[line] < Size);
    }

    /// <summary>No leg at some lines is under a part of its tile's depth there.</summary>
    public sealed record PartAtLeast(int Want, bool Must, int Weight, int[] Lines, double Part) : PatternCheck(Want, Must, Weight)
    {
        // Half of a tile is half of it, whatever the last bit of a quotient says.
        private const double Bit = 1e-9;

        public override bool IsMissed(Reckoning reckoning, in Shifts shifts) => Lines.Any(line => reckoning.LeastShare[line] < Part - Bit);
    }

    /// <summary>No tile is cut at some lines, but for as much as a line is out over its length.</summary>
    /// <param name="Out">How much each line is out.</param>
    public sealed record Clear(int Want, bool Must, int Weight, int[] Lines, double[] Out) : PatternCheck(Want, Must, Weight)
    {
        /// <summary>The lines along which tiles' sides are to lie, not a part of a joint beside them; null where tiles need only be whole.</summary>
        public Along? Along { get; init; }

        /// <summary>Whether one of the points stands on the line as well: it is to run in the middle of a joint, not anywhere within it.</summary>
        public bool InTheMiddle { get; init; }

        public override bool IsMissed(Reckoning reckoning, in Shifts shifts)
        {
            if (InTheMiddle && !Through!.MayHold(shifts)) return true;
            for (var i = 0; i < Lines.Length; i++)
            {
                if (reckoning.Taken[Lines[i]] > Out[i] + PointsOnLine.Tolerance) return true;
            }

            return shifts.IsOne && Along is { } along && along.LeavesAGap(shifts);
        }
    }

    /// <summary>The narrowest legs at two sets of lines agree to a mark of the tape; where nothing is cut the leg is the tile's depth.</summary>
    public sealed record Equal(int Want, bool Must, int Weight, int[] Lines, int[] OtherLines, double Whole, double OtherWhole, double Mark) : PatternCheck(Want, Must, Weight)
    {
        public override bool IsMissed(Reckoning reckoning, in Shifts shifts)
        {
            var (most, otherMost) = (Narrowest(reckoning.Least, Lines, Whole), Narrowest(reckoning.Least, OtherLines, OtherWhole));
            return shifts.IsOne ? Math.Abs(most - otherMost) > Mark : reckoning.Ranges.Differ(Lines, most, OtherLines, otherMost, Mark);
        }
    }

    /// <summary>One of some points of the bond stands on a line.</summary>
    public sealed record Stands(int Want, bool Must, int Weight) : PatternCheck(Want, Must, Weight)
    {
        public override bool IsMissed(Reckoning reckoning, in Shifts shifts) => !Through!.MayHold(shifts);
    }

    /// <summary>What cannot be held at any place: there is nothing to stand in line with.</summary>
    public sealed record Never(int Want, bool Must, int Weight) : PatternCheck(Want, Must, Weight)
    {
        public override bool IsMissed(Reckoning reckoning, in Shifts shifts) => true;
    }

    /// <summary>One of some points of the bond stands on a place.</summary>
    public sealed record StandsOn(int Want, bool Must, int Weight, PointsOnPoint Points) : PatternCheck(Want, Must, Weight)
    {
        public override bool IsMissed(Reckoning reckoning, in Shifts shifts) => !Points.MayHold(shifts);
    }

    /// <summary>The narrowest leg at some lines, or the whole where none is cut.</summary>
    public static double Narrowest(ReadOnlySpan<double> legs, int[] lines, double whole)
    {
        var least = whole;
        foreach (var line in lines) least = Math.Min(least, legs[line]);
        return least;
    }
}
