namespace Gaugerod.Engine.Surveys;

/// <summary>Says readings as one would call them across the room.</summary>
/// <param name="room">The readings of all faces that are weighed together.</param>
/// <param name="at">The face in hand: of the others their names are said too.</param>
/// <param name="place">What is being read.</param>
internal sealed class SurveyWords(JoinedNetwork room, int at, ReadingPlace place)
{
    /// <summary>What a reading is, such as <c>A to C</c>; on another face <c>floor: A to C</c>.</summary>
    public string Said(in Reading reading) => reading.Of == ReadingOf.Alike
        ? $"{Side(reading.Second)} taken for {Side(reading.First)}"
        : $"{Elsewhere(reading, ": ")}{Spoken(reading)}";

    // The face in hand needs no name.
    private string Elsewhere(in Reading reading, string then) => Part(reading.First.From) is var on && on != room.Parts[at] ? on.Of.Face + then : "";

    private string Spoken(in Reading reading) => reading.Of switch
    {
        ReadingOf.Across => $"{Spot(reading.First)} to {Spot(reading.Second)}, level",
        ReadingOf.Up => $"{Spot(reading.First)} to {Spot(reading.Second)}, plumb",
        ReadingOf.Off => $"{Spot(reading.Second)} off {Line(reading.First)}",
        ReadingOf.Crossing => $"{Name(reading.First.From)} to where the strings {Line(reading.First)} and {Spot(reading.Second)} to {Spot(reading.Third)} cross",
        ReadingOf.Square => $"a square corner at {Name(reading.First.From)}",
        _ => $"{Spot(reading.First)} to {Spot(reading.Second)}",
    };

    /// <summary>What is assumed, such as <c>a square corner at B</c>.</summary>
    public string Taken(in Reading assumed) => assumed.Of switch
    {
        ReadingOf.Across => $"{Line(assumed.First.From, assumed.Second.From)} plumb",
        ReadingOf.Up => $"{Line(assumed.First.From, assumed.Second.From)} level",
        _ => Said(assumed),
    };

    /// <summary>What one reading would settle instead of assuming it.</summary>
    public string Settled(in Reading assumed) => assumed.Of switch
    {
        ReadingOf.Across => $"plumb {Line(assumed.First.From, assumed.Second.From)}",
        ReadingOf.Up => $"level {Line(assumed.First.From, assumed.Second.From)}",
        _ => $"read {Said(Settling(assumed))}",
    };

    /// <summary>What is read instead of taking something for granted: a square corner across, between the corners beside it, or where that is read already one of its sides.</summary>
    public Reading Settling(in Reading assumed)
    {
        if (assumed.Of != ReadingOf.Square) return assumed;
        var (before, corner, after, accuracy) = (assumed.First.Towards, assumed.First.From, assumed.Second.From, assumed.Accuracy);
        Reading[] ways = [Reading.Length(before, after, 0, accuracy), Reading.Length(corner, after, 0, accuracy), Reading.Length(before, corner, 0, accuracy)];
        return ways.Where(way => !room.Read.IsRead(way)).DefaultIfEmpty(ways[0]).First();
    }

    /// <summary>What to do for a reading.</summary>
    public string Asked(in Reading reading) => reading.Of == ReadingOf.Crossing
        ? $"{(Elsewhere(reading, "") is { Length: > 0 } face ? $"on {face} " : "")}pull a string from {Name(reading.First.From)} to {Name(reading.First.Towards)} and one from {Spot(reading.Second)} to {Spot(reading.Third)}, and read along the first from {Name(reading.First.From)} to where they cross"
        : $"read {Said(reading)}";

    private NetworkPart Part(int spot) => Array.Find(room.Parts, part => part.HasSpot(spot))!;

    private string Name(int spot)
    {
        var part = Part(spot);
        return part.Survey.NameOf(spot - part.Spot);
    }

    private string Side(Spot line) => $"{Line(line)} of {Part(line.From).Of.Face}";

    private string Line(Spot line) => Line(line.From, line.Towards);

    private string Line(int from, int to) => $"{Name(from)}–{Name(to)}";

    private string Spot(Spot spot) => spot.IsCorner
        ? Name(spot.From)
        : $"a mark on {Line(spot)}, {place.Say(SurveyNetwork.Rounded(spot.Along))} from {Name(spot.From)}";
}
