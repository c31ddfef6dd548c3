using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Trims;

/// <summary>Puts the joints of one line of trim where they are wanted, as well as can be (docs/trims.md).</summary>
internal static class JointPlacing
{
    /// <summary>The best arrangement; null where none keeps what is asked.</summary>
    /// <param name="line">The line.</param>
    /// <param name="joints">Where its joints are wanted.</param>
    /// <param name="twice">Twice the least stagger asked for; looked at where joints stagger, repeat or are centred.</param>
    public static Arrangement? Best(TrimLine line, TrimJoints joints, long twice)
    {
        if (Alone(line) is { } alone) return alone;
        return joints switch
        {
            TrimJoints.Free => Along(line, _ => Ranges.Of(0, line.Length), 0, stagger: false),
            TrimJoints.InLine => Along(line, OnJoints(line), 0, stagger: false),
            TrimJoints.Staggered => Along(line, line.Clear, twice, stagger: line.Beside.Count > 0),
            TrimJoints.Repeating => RepeatedJoints.Best(line, twice),
            TrimJoints.Centred => CentredJoints.Best(line, twice),
            TrimJoints.Unbroken => null,
            _ => throw new ArgumentOutOfRangeException(nameof(joints), joints, "No way to place these joints."),
        };
    }

    /// <summary>Whether pieces of any kind make up the line, wherever their joints fall.</summary>
    public static bool CanBeMade(TrimLine line) => Alone(line) is not null || Holds(line, 0);

    /// <summary>Twice the greatest least stagger that any arrangement can have, whatever it costs; null where there is no arrangement at all or no joint of the field.</summary>
    public static long? GreatestStagger(TrimLine line) =>
        line.Beside.Count == 0 || !Holds(line, 0) ? null : Greatest(0, line.MostStagger, twice => Holds(line, twice));

    /// <summary>The best with joints where they are allowed for a stagger.</summary>
    /// <param name="line">The line.</param>
    /// <param name="allowed">Where joints may begin, for twice a least stagger.</param>
    /// <param name="twice">Twice the least stagger asked for.</param>
    /// <param name="stagger">Whether the greatest stagger is looked for.</param>
    public static Arrangement? Along(TrimLine line, Func<long, Ranges> allowed, long twice, bool stagger)
    {
        if (Find(line.Least, twice, null) is not { Cost: var cost }) return null;
        if (stagger) twice = Greatest(twice, line.MostStagger, more => Exists(line.Least, more, cost));
        var least = GreatestLeast(line, cost, longer => Exists(longer, twice, cost));
        return new(cost, Arrangement.Between(line.Length, line.Joint, Find(least, twice, cost)!.Places));

        PlacesFound? Find(long shortest, long clear, TrimCost? most) => PlaceSearch.Find(Problem(line with { Least = shortest }, allowed(clear)), most);

        bool Exists(long shortest, long clear, TrimCost most) => PlaceSearch.Exists(Problem(line with { Least = shortest }, allowed(clear)), most);
    }

    /// <summary>The greatest least piece at a cost. No shortest piece is longer than the trimmed ones are when they share alike, and often they can.</summary>
    public static long GreatestLeast(TrimLine line, TrimCost cost, Func<long, bool> holds)
    {
        var most = cost.Trimmed == 0 ? line.Stock : (line.Length - ((cost.Pieces - 1) * line.Joint) - ((cost.Pieces - cost.Trimmed) * line.Stock)) / cost.Trimmed;
        return holds(most) ? most : Greatest(line.Least, most - 1, holds);
    }

    /// <summary>The greatest of some numbers for which something holds, which holds for the first and for none beyond one for which it does not.</summary>
    public static long Greatest(long first, long last, Func<long, bool> holds)
    {
        while (first < last)
        {
            var middle = first + ((last - first + 1) / 2);
            if (holds(middle)) first = middle;
            else last = middle - 1;
        }

        return first;
    }

    /// <summary>A whole line, from end to end.</summary>
    public static PlaceProblem Problem(TrimLine line, Ranges allowed)
    {
        var most = line.Length - line.Joint;
        return new(
            line.Stock, line.Joint, line.LeastFirst, line.Least, allowed, (TrimCost.AtEnd(line.Begin, false), TrimCost.AtEnd(line.Begin, true)), (TrimCost.Between(false), TrimCost.Between(true)),
            [new(most - line.Stock, most - Math.Max(line.Stock, line.LeastLast), TrimCost.AtEnd(line.End, false)), new(most - line.Stock + 1, most - line.LeastLast, TrimCost.AtEnd(line.End, true))]);
    }

    /// <summary>One piece without a joint: nothing is better where it can be had.</summary>
    private static Arrangement? Alone(TrimLine line) =>
        line.Length <= line.Stock && line.Length >= line.Least + line.BothTake && TrimCost.Alone(line.Begin, line.End, line.Length < line.Stock) is { } cost
            ? new(cost, [new(0, line.Length)])
            : null;

    private static Func<long, Ranges> OnJoints(TrimLine line)
    {
        var places = Ranges.Of(line.InLine.Select(place => (place, place)));
        return _ => places;
    }

    private static bool Holds(TrimLine line, long twice) => PlaceSearch.Exists(Problem(line, line.Clear(twice)));
}
