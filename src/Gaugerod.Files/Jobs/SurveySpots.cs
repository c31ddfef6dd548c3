using Gaugerod.Engine.Surveys;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>The places that readings of a survey may name.</summary>
/// <param name="corners">Its corners' names; null for one that could not be read.</param>
/// <param name="spots">Its other spots' names.</param>
/// <param name="values">Takes what is wrong.</param>
internal sealed class SurveySpots(IReadOnlyList<string?> corners, IReadOnlyList<string?> spots, Values values)
{
    /// <summary>The level line, where a reading goes to it.</summary>
    public const string LevelLine = "level line";

    /// <summary>A corner, a spot, the level line, or a mark on the way from one corner to another.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="line">Whether it may be the level line.</param>
    /// <param name="start">Where the reading begins; nobody means that place again.</param>
    public SurveySpot? Read(Entry? entry, bool line = true, SurveySpot? start = null)
    {
        if (entry is not Entry.Group) return Named(entry, [.. corners, .. spots, .. line ? [LevelLine] : Array.Empty<string>()], "a corner or spot of the survey", start?.At) is { } at ? SurveySpot.Of(at) : null;
        if (Fields.Open(entry, Forms.Mark, values) is not { } fields) return null;
        var (from, towards, along) = (Corner(fields["from"]), Corner(fields["towards"]), fields.Length("at", LengthRange.Size));
        if (from is not { } a || towards is not { } b || along is not { } far) return null;
        if (a != b) return new(a, b, far);
        values.Log.Add(fields["towards"]!, "another corner than the mark is measured from");
        return null;
    }

    public int? Corner(Entry? entry) => Named(entry, corners, "a corner of the survey");

    /// <summary>Two corners in a list.</summary>
    public (int From, int To)? Two(Entry? entry, string what)
    {
        if (entry is Entry.List { Items: [var one, var other] } list)
        {
            if (Corner(one) is not { } from || Corner(other) is not { } to) return null;
            if (from != to) return (from, to);
            values.Log.AddSaid(list, "one corner twice", what);
        }
        else if (entry is not null)
        {
            values.Log.Add(entry, what);
        }

        return null;
    }

    /// <summary>The corner that a side begins at, given by its two corners either way round.</summary>
    public int? Side(Entry? entry)
    {
        const string What = "two corners, one after the other";
        if (Two(entry, What) is not var (from, to)) return null;
        if (After(from) == to) return from;
        if (After(to) == from) return to;
        values.Log.AddSaid(entry!, $"{Values.Quoted(corners[from] ?? "")} and {Values.Quoted(corners[to] ?? "")}, with no side between them", What, $"[{Values.Quoted(corners[from] ?? "")}, {Values.Quoted(corners[After(from)] ?? "")}]");
        return null;
    }

    public bool IsLine(SurveySpot spot) => spot.At == corners.Count + spots.Count;

    public int After(int corner) => (corner + 1) % corners.Count;

    public int Before(int corner) => (corner + corners.Count - 1) % corners.Count;

    private int? Named(Entry? entry, IReadOnlyList<string?> names, string what, int? not = null)
    {
        if (not is { } again && entry is Entry.Text { Value: var said } && string.Equals(said, names[again], StringComparison.Ordinal)) return again;
        if (entry is null || KnownNames.Known(entry, values, what, names.Where((_, i) => i != not)) is not { } name) return null;
        for (var i = 0; i < names.Count; i++)
        {
            if (string.Equals(names[i], name, StringComparison.Ordinal)) return i;
        }

        return null;
    }
}
