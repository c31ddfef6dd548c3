using System.Globalization;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>Refuses a survey that no shape can have.</summary>
internal static class SurveyFaults
{
    /// <summary>A reading that the others put further off than one part in so many, and than this, is no slip of the tape but of the pen: common practice, no source.</summary>
    private const double Share = 20;

    private const double AlwaysPlausible = 50;

    /// <summary>What is wrong, of readings that enclose nothing or miss each other by far; null where they do.</summary>
    public static Fault? CannotClose(JoinedNetwork room, NetworkPart part, int[] suspects, Ring ring, ReadingPlace place)
    {
        var adjusted = room.Adjusted!;
        if (suspects.Length > 0 && suspects.All(i => IsAbsurd(adjusted, i)))
        {
            // No face closes while it stands: all of them say so, in the words of the face that it was read on.
            var first = suspects[0];
            var on = Array.FindIndex(room.Parts, other => other.HasReading(first));
            var words = new SurveyWords(room, on, place);
            var path = Path(room.Parts[on], room.Parts[on] == part ? place.Path : string.Create(CultureInfo.InvariantCulture, $"faces[{room.Parts[on].Of.At}]"), first);
            var (reading, by) = (adjusted.Network.Readings[first], Without(adjusted, first));
            if (reading.Of == ReadingOf.Alike) return new(path, Differ(first), "one side read on both faces", "look which corners it lies between on each of them");
            var read = $"{words.Said(reading)}, read as {place.Say(SurveyNetwork.Rounded(reading.Value))}";
            var others = suspects.Length == 1 ? "" : $", or another of {string.Join("; ", suspects.Skip(1).Select(Otherwise))}";
            return new(path, read, $"readings that close: by all the others it is {place.Say(by)}{others}", place.Say(by))
            {
                // As it would be read: to the tape's mark.
                Mends = by > Length.Zero ? [Mend.Of(path, place.Tape.Nearest(by), place.Tape)] : [],
            };

            string Otherwise(int i) => adjusted.Network.Readings[i].Of == ReadingOf.Alike ? Differ(i) : $"{words.Said(adjusted.Network.Readings[i])}, which by the others is {place.Say(Without(adjusted, i))}";

            string Differ(int i) => $"{words.Said(adjusted.Network.Readings[i])}: they differ by {place.Say(Without(adjusted, i).Abs())}";
        }

        if (adjusted.IsSettled && ring.DoubledArea > 0 && RingChecks.IsSimple(ring)) return null;
        return new($"{place.Path}.survey.readings", "readings that enclose no shape: its sides cross", "sides and diagonals that close", "look for a side and a diagonal that were changed about, or a corner that is an outside corner");
    }

    /// <summary>What a reading is by all the others. So far off, that is no longer told by a straight rule: they are weighed again without it.</summary>
    public static Length Without(Adjusted adjusted, int reading)
    {
        var network = adjusted.Network with { Readings = [.. adjusted.Network.Readings.Where((_, i) => i != reading)] };
        return SurveyNetwork.Rounded(Adjustment.Of(network, adjusted.Places).Value(adjusted.Network.Readings[reading]));
    }

    private static bool IsAbsurd(Adjusted adjusted, int reading)
    {
        var off = Math.Abs(adjusted.ByOthers(reading) - adjusted.Network.Readings[reading].Value);
        return off > AlwaysPlausible && off > Math.Abs(adjusted.Network.Readings[reading].Value) / Share;
    }

    private static string Path(NetworkPart on, string face, int reading) => reading >= on.Shared
        ? string.Create(CultureInfo.InvariantCulture, $"{face}.survey.same[{on.Sides[reading - on.Shared]}]")
        : string.Create(CultureInfo.InvariantCulture, $"{face}.survey.readings[{reading - on.Reading}].is");
}
