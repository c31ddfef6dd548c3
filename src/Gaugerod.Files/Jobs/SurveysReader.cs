using Gaugerod.Engine.Surveys;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>
/// Reads the surveys of all faces before the faces themselves: a side may be read on two of them, and is weighed with both.
/// </summary>
internal sealed class SurveysReader
{
    private const string AFace = "another surveyed face of this job";

    private readonly Values _values;

    // By where they stand in the file: names may be wrong, or there twice.
    private readonly Dictionary<Entry, SurveyReadIn> _read = [];
    private readonly Dictionary<Entry, JoinedSurveys> _rooms = [];

    private SurveysReader(Values values) => _values = values;

    public static SurveysReader Of(IReadOnlyList<Entry> faces, Values values)
    {
        var reader = new SurveysReader(values);
        var found = new List<(int At, string? Name, Entry Entry)>();
        for (var i = 0; i < faces.Count; i++)
        {
            if (SurveyOf(faces[i]) is { } survey) found.Add((i, NameOf(faces[i]), survey));
        }

        foreach (var (_, _, entry) in found) reader._read[entry] = SurveyReader.Read(entry, values);
        var joined = new List<(Entry Entry, FaceSurveyed Face)>();
        foreach (var (at, name, entry) in found)
        {
            var read = reader._read[entry];
            var same = read.Same.Select(side => reader.Shared(side, entry, found.ConvertAll(one => (one.Name, one.Entry)))).ToList();
            if (read.Survey is null) continue;
            var survey = same.Contains(null) ? null : read.Survey with { Same = same.OfType<SharedSide>().ToSequence() };
            reader._read[entry] = read with { Survey = survey };
            if (survey is not null) joined.Add((entry, new(name ?? "", at, survey)));
        }

        var rooms = JoinedSurveys.Of(joined.Select(one => one.Face).ToSequence());
        for (var i = 0; i < joined.Count; i++) reader._rooms[joined[i].Entry] = rooms[i];
        return reader;
    }

    /// <summary>The survey at an entry, and the room it is weighed with; no room where it cannot be used.</summary>
    public (SurveyReadIn Read, JoinedSurveys? Room) At(Entry? entry) =>
        entry is not null && _read.TryGetValue(entry, out var read) ? (read, _rooms.GetValueOrDefault(entry)) : (SurveyReader.Read(entry, _values), null);

    private SharedSide? Shared(SideReadIn side, Entry own, List<(string? Name, Entry Entry)> all)
    {
        if (side.Face is null || KnownNames.Known(side.Face, _values, AFace, all.Where(one => one.Entry != own).Select(one => one.Name)) is not { } name) return null;
        var other = all.Find(one => one.Entry != own && string.Equals(one.Name, name, StringComparison.Ordinal)).Entry;
        if (other is null || _read[other].Corners is not { Count: > 0 } corners) return null;
        return new SurveySpots(corners, [], _values).Side(side.As) is { } at && side.Side is { } from ? new(from, name, at, side.Within) : null;
    }

    private static Entry? SurveyOf(Entry face) =>
        face is Entry.Group { Members: var members } && members.TryGetValue("survey", out var survey) && survey.Value is not Entry.Nothing && !Has(members, "outline") && !Has(members, "readings") ? survey.Value : null;

    private static bool Has(Dictionary<string, Entry.Member> members, string name) => members.TryGetValue(name, out var member) && member.Value is not Entry.Nothing;

    // Whether it is a name at all the face says.
    private static string? NameOf(Entry face) => face is Entry.Group { Members: var members } && members.TryGetValue("name", out var name) && name.Value is Entry.Text { Value: var text } ? text : null;
}
