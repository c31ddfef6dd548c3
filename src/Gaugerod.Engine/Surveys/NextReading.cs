namespace Gaugerod.Engine.Surveys;

/// <summary>How readings are taken that are still to be taken.</summary>
/// <param name="Accuracy">Their standard deviation, in mm.</param>
/// <param name="Whole">What marks on a wall are set out by, in mm: an inch or a centimetre.</param>
/// <param name="Foot">What three, four and five are counted in, in mm: feet or 30 cm.</param>
internal readonly record struct Taken(double Accuracy, double Whole, double Foot);

/// <summary>What else to read, of all that a tape can reach.</summary>
internal static class NextReading
{
    /// <summary>Marks a third along a side stand well away from its corners and from what is alike about both.</summary>
    private static readonly double[] Marks = [1 / 3.0, 2 / 3.0];

    /// <summary>The reading that tells best which of a few is in error; null where none tells any two apart.</summary>
    /// <param name="adjusted">All readings weighed.</param>
    /// <param name="suspects">The few.</param>
    /// <param name="parts">The faces that it may be read on.</param>
    /// <param name="with">How it would be taken.</param>
    public static Reading? ToTell(Adjusted adjusted, int[] suspects, IEnumerable<NetworkPart> parts, Taken with)
    {
        var told = Best(adjusted, parts, with, (along, square) =>
        {
            var (alike, worst) = (0.0, 0.0);
            for (var i = 0; i < suspects.Length; i++)
            {
                for (var j = i + 1; j < suspects.Length; j++)
                {
                    var like = Math.Abs(adjusted.LikeIf(suspects[i], suspects[j], along, square));
                    worst = Math.Max(worst, like);
                    if (like > Suspects.NoTelling) alike++;
                }
            }

            return (alike, worst);
        });
        return told is ({ } reading, var pairs) && pairs < suspects.Length * (suspects.Length - 1) / 2.0 ? reading : null;
    }

    /// <summary>The reading after which the fewest go unchecked, and a slip must be least to be found; null where nothing within reach checks any more of them.</summary>
    /// <param name="adjusted">All readings weighed.</param>
    /// <param name="part">The face that it is to be read on.</param>
    /// <param name="with">How it would be taken.</param>
    public static Reading? ToCheck(Adjusted adjusted, NetworkPart part, Taken with)
    {
        var all = Enumerable.Range(0, adjusted.Network.Readings.Count).ToArray();
        var found = Best(adjusted, [part], with, (along, square) =>
        {
            var (bare, least) = (0.0, 1.0);
            foreach (var reading in all)
            {
                var checkedBy = adjusted.RedundancyIf(reading, along, square);
                if (checkedBy < 1e-3) bare++;
                else least = Math.Min(least, checkedBy);
            }

            return (bare, -least);
        });

        // What leaves as many unchecked, as of a spot that is read by two offsets only, is not asked for.
        return found is ({ } reading, var left) && left < all.Count(adjusted.IsUnchecked) ? reading : null;
    }

    private static (Reading Reading, double First)? Best(Adjusted adjusted, IEnumerable<NetworkPart> parts, Taken with, Func<double[], double, (double First, double Second)> score)
    {
        (Reading Reading, (double First, double Second) Score)? best = null;
        foreach (var reading in parts.SelectMany(part => InReach(adjusted, part, with)))
        {
            var along = adjusted.Along(reading);
            var scored = score(along, LeastSquares.Dot(along, along));

            // What is hardly better is not worth a mark on the wall: corners come first.
            if (best is { } b && (scored.First > b.Score.First || (scored.First == b.Score.First && scored.Second > b.Score.Second - 1e-3))) continue;
            best = (reading, scored);
        }

        return best is { } found ? (found.Reading, found.Score.First) : null;
    }

    /// <summary>
    /// Corner to corner first, then three-four-five at a corner, then where two strings cross, then from marks on sides. Only the
    /// strings tell four sides and two diagonals from each other: where they cross hangs on every corner both ways.
    /// </summary>
    private static IEnumerable<Reading> InReach(Adjusted adjusted, NetworkPart part, Taken with) =>
        InReach(part.PlacesOf(adjusted.Places), part.Corners, with).Select(reading => reading.Past(part.Spot)).Where(reading => !adjusted.Network.IsRead(reading));

    private static IEnumerable<Reading> InReach(double[] places, int corners, Taken with)
    {
        var accuracy = with.Accuracy;
        var reach = new Reach(places, corners);
        for (var one = 0; one < corners; one++)
        {
            for (var other = one + 1; other < corners; other++)
            {
                if (reach.Sees(Spot.At(one), Spot.At(other))) yield return Reading.Length(one, other, 0, accuracy);
            }
        }

        for (var corner = 0; corner < corners; corner++)
        {
            var (before, after) = ((corner + corners - 1) % corners, (corner + 1) % corners);
            var unit = Math.Min(with.Foot, with.Whole * Math.Floor(Math.Min(reach.Side(before) / 3, reach.Side(corner) / 4) / with.Whole));
            yield return new(ReadingOf.Length, new(corner, before, 3 * unit), new(corner, after, 4 * unit), 0, accuracy);
        }

        var marks = Enumerable.Range(0, corners).SelectMany(side => Marks.Select(share => new Spot(side, (side + 1) % corners, with.Whole * Math.Round(share * reach.Side(side) / with.Whole)))).ToArray();
        foreach (var crossing in Strings(reach, corners, [.. Enumerable.Range(0, corners).Select(Spot.At), .. marks], accuracy)) yield return crossing;
        foreach (var mark in marks)
        {
            for (var corner = 0; corner < corners; corner++)
            {
                if (corner != mark.From && corner != mark.Towards && reach.Sees(mark, Spot.At(corner))) yield return new(ReadingOf.Length, mark, Spot.At(corner), 0, accuracy);
            }

            foreach (var other in marks)
            {
                if (other.From > mark.From && reach.Sees(mark, other)) yield return new(ReadingOf.Length, mark, other, 0, accuracy);
            }
        }
    }

    private static IEnumerable<Reading> Strings(Reach reach, int corners, Spot[] marks, double accuracy)
    {
        for (var a = 0; a < corners; a++)
        {
            for (var c = 0; c < corners; c++)
            {
                if (Math.Abs(a - c) is 0 or 1 || Math.Abs(a - c) == corners - 1 || !reach.Sees(Spot.At(a), Spot.At(c))) continue;
                for (var b = 0; b < corners; b++)
                {
                    if (b == a || b == c) continue;
                    foreach (var end in marks)
                    {
                        var crossing = new Reading(ReadingOf.Crossing, new(a, c, 0), Spot.At(b), 0, accuracy) { Third = end };
                        if (end.From != b && end.Towards != b && reach.Sees(Spot.At(b), end) && reach.Crosses(crossing)) yield return crossing;
                    }
                }
            }
        }
    }
}
